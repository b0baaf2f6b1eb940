// How the web page is built and served while developing: root src/web, output dist/web.
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

export default defineConfig({
  root: 'src/web',
  base: '/',
  plugins: [react()],
  worker: { format: 'es' },
  build: { outDir: '../../dist/web', emptyOutDir: true, target: 'es2022' },
  server: { host: '127.0.0.1' },
})
