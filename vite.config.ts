/// <reference types="vitest/config" />
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import preact from '@preact/preset-vite';
import { build, defineConfig, type Plugin, type Rolldown } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .toSorted();

/** A hash that changes whenever one of the files does. */
function hashOf(files: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of files) hash.update(readFileSync(file));
  return JSON.stringify(hash.digest('hex').slice(0, 12));
}

const builds = {
  /** A picture saved by other rules is not to be trusted. */
  BUILD: hashOf(filesIn('src/domain')),
  /** Nor is a list that was drawn by another program. */
  PAGE_BUILD: hashOf([...filesIn('src/domain'), ...filesIn('src/ui'), 'package-lock.json']),
};

/** What the content security policy calls a text that stands in the page itself. */
const sourceHash = (text: string): string =>
  `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** A script as one text that needs no other file. */
async function inOnePiece(
  name: string,
  entry: string,
  define: Readonly<Record<string, string>> = {},
): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: { ...builds, ...define },
    build: {
      write: false,
      target: 'es2022',
      lib: { entry, formats: ['iife'], name, fileName: name },
    },
  });
  const [piece] = made as Rolldown.RolldownOutput[];
  return (piece?.output[0].code ?? '').trim();
}

const DESK_FILE = /^assets\/worker-[^/]+\.js$/;
const FIRST_PAINT = /<script type="module"[^>]*first-paint[^>]*><\/script>/;

/**
 * Puts the styles of the first screens and the script of the first paint into the page, which then
 * waits for nothing else, and names both in its content security policy.
 */
function firstPaintInPage(): Plugin[] {
  const mark = '<!-- first paint -->';
  return [
    {
      name: 'mark-first-paint',
      apply: 'build',
      transformIndexHtml: { order: 'pre', handler: (html) => html.replace(FIRST_PAINT, mark) },
    },
    {
      name: 'first-paint-in-page',
      apply: 'build',
      transformIndexHtml: {
        order: 'post',
        async handler(html, { bundle }) {
          const [tag = '', program = ''] =
            /<script type="module"[^>]*src="([^"]+)"[^>]*><\/script>/.exec(html) ?? [];
          const desk = Object.keys(bundle ?? {}).find((name) => DESK_FILE.test(name));
          const script = await inOnePiece('firstPaint', 'src/app/first-paint.ts', {
            PROGRAM: JSON.stringify(program),
            DESK: JSON.stringify(desk && `./${desk}`),
          });
          const [link = '', file = ''] =
            /<link rel="stylesheet"[^>]*href="\.\/([^"]+)"[^>]*>/.exec(html) ?? [];
          const styles = bundle?.[file];
          const isWhole = program !== '' && desk !== undefined && html.includes(mark);
          if (styles?.type !== 'asset' || !isWhole) {
            throw new Error('index.html has not what is to be put into it.');
          }
          delete bundle?.[file];
          const css = String(styles.source).trim();
          return (
            html
              .replace(tag, '')
              // Screens that come later ask whether this file is named here, and then do not fetch it.
              .replace(link, () => `<style>${css}</style>${link.replace('>', ' disabled>')}`)
              .replace(mark, () => `<script>${script}</script>`)
              .replace("script-src 'self'", (own) => `${own} ${sourceHash(script)}`)
              .replace("style-src 'self'", (own) => `${own} ${sourceHash(css)}`)
          );
        },
      },
    },
  ];
}

/** The file that the service worker runs to work out an evening: see src/sw/wake.ts. */
const eveningBeside: Plugin = {
  name: 'evening-beside',
  apply: 'build',
  async generateBundle() {
    const source = await inOnePiece('evening', 'src/sw/evening/tell-this-evening.ts');
    this.emitFile({ type: 'asset', fileName: 'evening.js', source });
  },
};

export default defineConfig({
  // index.html is part of the app, so it lives there and not at the top.
  root: 'src/app',
  publicDir: '../../public',
  // Relative, so that the built folder runs from any host and any sub-path.
  base: './',
  // While developing, the page itself names the program too, and the browser runs it once.
  define: { ...builds, PROGRAM: JSON.stringify('./main.tsx'), DESK: 'undefined' },
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
  worker: {
    format: 'es',
    // And so with the desk: its first views, then tonight by all rules, then all other views.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'first', tags: ['$initial'], priority: 3 },
            { name: 'night', test: /worker\/whole-night/, priority: 2 },
            { name: 'views', test: /worker\/show[.]/, priority: 1 },
          ],
        },
      },
    },
  },
  plugins: [
    preact(),
    ...firstPaintInPage(),
    eveningBeside,
    VitePWA({
      strategies: 'injectManifest',
      srcDir: '../sw',
      filename: 'sw.ts',
      // A new version waits for the keeper's word: reloading under a thumb can lose what it types.
      registerType: 'prompt',
      injectRegister: false,
      injectManifest: {
        globPatterns: ['**/*.{html,js,css,svg,png,wasm,webmanifest}'],
        globIgnores: ['evening.js'],
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
