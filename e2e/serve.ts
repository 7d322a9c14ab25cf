import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.txt': 'text/plain',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** The build that `npm run build` makes; `BUILT_APP` names another. */
export const builtApp: string =
  process.env['BUILT_APP'] ?? fileURLToPath(new URL('../dist', import.meta.url));

export interface ServeOptions {
  readonly folder?: string;
  /** Where on the host it lies: `/` or `/some/folder/`. */
  readonly under?: string;
  /** Put before the desk's own script, to give it a world that a test decides: a clock, a full disk. */
  readonly beforeDesk?: () => string;
}

/** A plain file server that a test can take away and give another build. */
export interface Served {
  readonly origin: string;
  readonly url: string;
  /** Serves another build from now on. */
  give(folder: string): void;
  /** Gone: nothing answers at this address any more. */
  stop(): Promise<void>;
}

/** Serves a built app as any static host would, without a single header of its own but no-cache. */
export async function serve(options: ServeOptions = {}): Promise<Served> {
  const { under = '/', beforeDesk } = options;
  let { folder = builtApp } = options;
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const below = pathname.startsWith(under) ? pathname.slice(under.length) : undefined;
    try {
      if (below === undefined) throw new Error('Outside the folder.');
      const path = normalize(join('/', decodeURIComponent(below === '' ? 'index.html' : below)));
      const file = await readFile(join(folder, path));
      const isDesk = beforeDesk !== undefined && /^\/assets\/worker-[^/]+\.js$/.test(path);
      response.writeHead(200, {
        'content-type': TYPES[extname(path)] ?? 'application/octet-stream',
        'cache-control': 'no-cache',
      });
      response.end(isDesk ? `${beforeDesk()}\n${file.toString()}` : file);
    } catch {
      response.writeHead(404).end();
    }
  };
  const server = createServer((request, response) => void answer(request, response));
  const port = await listen(server);
  const origin = `http://127.0.0.1:${port}`;
  return {
    origin,
    url: `${origin}${under}`,
    give(other) {
      folder = other;
    },
    async stop() {
      if (!server.listening) return;
      const closed = new Promise((resolve) => server.close(resolve));
      server.closeAllConnections();
      await closed;
    },
  };
}

const listen = (server: Server): Promise<number> =>
  new Promise((resolve, reject) => {
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => resolve((server.address() as AddressInfo).port));
  });
