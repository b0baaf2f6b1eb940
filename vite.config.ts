// How the web page is built and served while developing: root src/web, output dist/web. YAML examples are parsed here, so that the page needs no parser.
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'
import { parse } from 'yaml'

/** A YAML file as a module of what it holds. */
const yamlFiles = {
  name: 'oxwright-yaml',
  transform(code: string, id: string) {
    if (!id.endsWith('.yaml')) return null
    return { code: `export default ${JSON.stringify(parse(code))}`, map: null }
  },
}

/** Keeps the whole page on the device after one load; a newer version waits until it is taken (src/web/offline). */
const keeping = VitePWA({
  registerType: 'prompt',
  injectRegister: false,
  manifest: {
    name: 'Oxwright',
    short_name: 'Oxwright',
    description: 'From a patient and a goal to an oxygen set-up.',
    lang: 'en-GB',
    start_url: '/',
    scope: '/',
    display: 'standalone',
    background_color: '#f5f4f1',
    theme_color: '#f5f4f1',
    icons: [
      { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: '/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      { src: '/icon.svg', sizes: 'any', type: 'image/svg+xml' },
    ],
  },
  workbox: {
    mode: 'production',
    globPatterns: ['**/*.{js,css,html,svg,png,json,woff2,ttf}'],
    // What prints a sheet is larger than the library's usual limit of 2 MiB.
    maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
    navigateFallback: '/index.html',
    // The first load is kept for that very page, too: it may enter every place without a connection.
    clientsClaim: true,
    cleanupOutdatedCaches: true,
    inlineWorkboxRuntime: true,
    sourcemap: false,
  },
})

export default defineConfig({
  root: 'src/web',
  base: '/',
  plugins: [react(), yamlFiles, keeping],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    // React, the component library and the core's readers in one load: one file packs a tenth smaller than fifty.
    chunkSizeWarningLimit: 900,
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            // What chooses the language is loaded by itself and first: texts are said while the rest loads.
            {
              name: 'speech',
              test: /src[\\/](?:web[\\/]settings[\\/]language|words[\\/]languages)\.ts$/,
              priority: 2,
            },
            { name: 'page', test: /src[\\/]web[\\/]start-page\.tsx$/, priority: 1 },
          ],
        },
      },
    },
  },
  server: { host: '127.0.0.1', fs: { allow: ['../..'] } },
})
