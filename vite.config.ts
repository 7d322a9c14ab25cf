/// <reference types="vitest/config" />
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** Changes whenever the domain does: a picture saved by other rules is not to be trusted. */
function domainHash(): string {
  const hash = createHash('sha256');
  const files = readdirSync('src/domain', { recursive: true, encoding: 'utf8' });
  for (const file of files.filter((name) => name.endsWith('.ts')).toSorted()) {
    hash.update(readFileSync(`src/domain/${file}`));
  }
  return hash.digest('hex').slice(0, 12);
}

export default defineConfig({
  // index.html is part of the app, so it lives there and not at the top.
  root: 'src/app',
  publicDir: '../../public',
  // Relative, so that the built folder runs from any host and any sub-path.
  base: './',
  define: { BUILD: JSON.stringify(domainHash()) },
  build: {
    outDir: '../../dist',
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: { polyfill: false },
    // What the first screen needs comes in one piece: each further file costs a slow phone a frame.
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } },
    },
    assetsInlineLimit: 0,
  },
  worker: { format: 'es' },
  plugins: [
    preact(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: '../sw',
      filename: 'sw.ts',
      // A new version waits for the keeper's word: reloading under a thumb can lose what it types.
      registerType: 'prompt',
      injectRegister: false,
      injectManifest: {
        globPatterns: ['**/*.{html,js,css,svg,png,wasm,webmanifest}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
        rollupFormat: 'iife',
      },
      manifest: {
        id: './',
        name: 'Nightdrop',
        short_name: 'Nightdrop',
        description: 'Rack-side records for ball python breeders.',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#12100d',
        theme_color: '#12100d',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
    }),
  ],
  test: {
    root: '.',
    include: ['tests/**/*.test.{ts,tsx}'],
    // The code under test has no global state, so test files can share a process.
    isolate: false,
    // Properties run to hundreds of cases; a busy machine is no failure, and a hang still is.
    testTimeout: 60_000,
  },
});
