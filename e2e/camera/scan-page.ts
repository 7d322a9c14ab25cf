import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** The policy the app is meant to run under, wherever it is served. */
const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "media-src 'self' blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'self'",
  "form-action 'none'",
].join('; ');

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.wasm': 'application/wasm',
};

/** What the page offers as `window.scanPage`; see page/page.js, and src/scan/scanner.ts for the rest. */
export interface ScanPage {
  readonly read: readonly { readonly text: string; readonly atMs: number }[];
  readonly violations: readonly string[];
  readonly open: (options?: {
    readonly cameraId?: string;
    readonly inView?: string;
    readonly onEnded?: () => void;
    readonly signal?: AbortSignal;
  }) => Promise<
    | { readonly ok: true; readonly scanner: OpenScanner }
    | { readonly ok: false; readonly trouble: string }
  >;
  /** When a text was read, on the page's clock; undefined when it is not within the time. */
  readonly whenRead: (text: string, withinMs: number) => Promise<number | undefined>;
}

interface OpenScanner {
  readonly cameras: readonly { readonly id: string; readonly name: string }[];
  readonly cameraId: string | undefined;
  readonly torch: { readonly on: boolean; set(on: boolean): Promise<boolean> } | undefined;
  readonly stop: () => Promise<void>;
}

declare global {
  interface Window {
    scanPage: ScanPage;
  }
}

export interface ServedPage {
  readonly url: string;
  close(): Promise<void>;
}

/** Builds the page that is only a scanner, with the app's own settings, and serves it under the policy. */
export async function serveScanPage(): Promise<ServedPage> {
  const outDir = await mkdtemp(join(tmpdir(), 'scan-page-'));
  await build({
    configFile: false,
    logLevel: 'warn',
    root: fileURLToPath(new URL('./page', import.meta.url)),
    base: './',
    build: { outDir, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0 },
    worker: { format: 'es' },
  });
  const server = createServer((request, response) => void answer(outDir, request, response));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', () => resolve()));
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  return {
    url: `http://127.0.0.1:${port}/`,
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await rm(outDir, { recursive: true, force: true });
    },
  };
}

async function answer(
  folder: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const { pathname } = new URL(request.url ?? '/', 'http://localhost');
  const path = join(folder, normalize(pathname === '/' ? '/index.html' : pathname));
  try {
    const body = await readFile(path);
    const type = TYPES[extname(path)] ?? 'application/octet-stream';
    response.writeHead(200, { 'content-type': type, 'content-security-policy': POLICY });
    response.end(body);
  } catch {
    response.writeHead(404).end();
  }
}
