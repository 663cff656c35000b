import { createServer, type Server, type ServerResponse } from 'node:http';
import { readFile } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css', '.csv': 'text/csv', '.json': 'application/json',
  '.svg': 'image/svg+xml', '.png': 'image/png', '.webmanifest': 'application/manifest+json', '.map': 'application/json',
};

/** A site of plain files under a path of its own, as any host would serve it; its folder can be changed while it runs. */
export interface StaticSite {
  readonly address: string;
  folder: string;
  close(): Promise<void>;
}

/** Serves `folder` on a free port under `/hangar/`. */
export async function serveSite(folder: string): Promise<StaticSite> {
  const server: Server = createServer((request, response) => void answer(request.url ?? '/', response));
  const answer = async (url: string, response: ServerResponse): Promise<void> => {
    const path = normalize(decodeURIComponent(new URL(url, 'http://localhost').pathname));
    const name = path.startsWith('/hangar/') ? path.slice('/hangar/'.length) : null;
    try {
      if (name === null) throw new Error('outside');
      const file = join(site.folder, name === '' ? 'index.html' : name);
      const content = await readFile(file);
      response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream', 'cache-control': 'no-cache' }).end(content);
    } catch {
      response.writeHead(404).end();
    }
  };
  await new Promise<void>((resolve) => server.listen(0, resolve));
  const { port } = server.address() as AddressInfo;
  const site: StaticSite = {
    address: `http://localhost:${port}/hangar/`,
    folder,
    close: () => new Promise((resolve) => {
      server.closeAllConnections();
      server.close(() => resolve());
    }),
  };
  return site;
}
