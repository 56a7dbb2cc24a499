/** Serves the built site on this machine and says where it is, for a first look. */
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.json': 'application/json; charset=utf-8',
  '.woff2': 'font/woff2',
};

/** A server of a folder below `base`, such as `/` or `/some/path/`. */
export function staticServer(folder: string, base = '/'): Server {
  return createServer((request, response) => {
    void (async () => {
      const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
      const inside = path.startsWith(base) ? normalize(`/${path.slice(base.length)}`) : undefined;
      const file = inside && join(folder, inside.endsWith('/') ? `${inside}index.html` : inside);
      const found = file && (await stat(file).catch(() => undefined))?.isFile();
      if (!found) {
        response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found');
        return;
      }
      response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
      createReadStream(file).pipe(response);
    })().catch(() => response.writeHead(400).end('Bad request'));
  });
}

/** Listens on the wanted port, or on a free one where it is taken. */
export function listen(server: Server, port: number): Promise<number> {
  return new Promise((done, fail) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' && port !== 0) listen(server, 0).then(done, fail);
      else fail(error);
    });
    server.listen(port, '127.0.0.1', () => {
      const address = server.address();
      done(typeof address === 'object' && address ? address.port : port);
    });
  });
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const dist = resolve('dist');
  const port = await listen(staticServer(dist), Number(process.env['PORT'] ?? 4600));
  console.info(`Frameworthy is at http://localhost:${port}/`);
  console.info(`From disk: open ${join(dist, 'index.html')}, or copy that folder anywhere.`);
  console.info('Ctrl+C stops the server.');
}
