// How the web page is built and served while developing: root src/web, output dist/web. YAML examples are parsed here, so that the page needs no parser.
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { parse } from 'yaml'

/** A YAML file as a module of what it holds. */
const yamlFiles = {
  name: 'oxwright-yaml',
  transform(code: string, id: string) {
    if (!id.endsWith('.yaml')) return null
    return { code: `export default ${JSON.stringify(parse(code))}`, map: null }
  },
}

export default defineConfig({
  root: 'src/web',
  base: '/',
  plugins: [react(), yamlFiles],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    // About 160 kB packed: React, the component library and the core's readers, in one load.
    chunkSizeWarningLimit: 600,
  },
  server: { host: '127.0.0.1', fs: { allow: ['../..'] } },
})
