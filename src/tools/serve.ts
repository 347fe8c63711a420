import { readFile, stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, resolve, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type HeaderRule, headersFor, parseHeaders } from './headers-file.ts';
import { siteBase, siteFolder } from './site.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wav': 'audio/wav',
  '.webmanifest': 'application/manifest+json',
  '.xml': 'application/xml',
};

const IS_TEXT = /^(text|application\/(json|manifest)|image\/svg)/;

export interface Serving {
  /** Where the start page is, with a slash at the end. */
  readonly url: string;
  stop(): Promise<void>;
}

/**
 * Serves a built folder the way a plain web host does: folders have a slash, an unknown address gets the page for it,
 * and `_headers` is obeyed except for caching, so that a new build is seen at once.
 *
 * @param where.base path that the site was built for, with a slash at both ends
 * @param where.port 0 takes any free port
 * @param where.compress sends what is text compressed, as hosts on the web do
 */
export async function serveFolder(where: {
  folder: string;
  base?: string;
  port?: number;
  compress?: boolean;
}): Promise<Serving> {
  const { base = '/', port = 0, compress = false } = where;
  const folder = resolve(where.folder);
  const rules = parseHeaders(await readFile(join(folder, '_headers'), 'utf8').catch(() => ''));
  const server = createServer((request, response) => {
    answer(request, response, { folder, base, rules, compress }).catch(() => response.destroy());
  });
  await new Promise<void>((listening, failed) => {
    server.once('error', failed);
    server.listen(port, () => listening());
  });
  return {
    url: `http://localhost:${(server.address() as AddressInfo).port}${base}`,
    stop: () =>
      new Promise((stopped) => {
        server.close(() => stopped());
        server.closeAllConnections();
      }),
  };
}

interface Site {
  readonly folder: string;
  readonly base: string;
  readonly rules: readonly HeaderRule[];
  readonly compress: boolean;
}

async function answer(request: IncomingMessage, response: ServerResponse, site: Site): Promise<void> {
  const { pathname, search } = new URL(request.url ?? '/', 'http://localhost');
  const found = await find(site, pathname);
  if (found === 'needs a slash') {
    response.writeHead(301, { Location: `${pathname}/${search}` }).end();
    return;
  }
  if (pathname === '/' && site.base !== '/') {
    response.writeHead(302, { Location: site.base }).end();
    return;
  }
  const file = found ?? join(site.folder, '404.html');
  const plain = await readFile(file).catch(() => Buffer.from('Not found'));
  const type = TYPES[extname(file)] ?? 'application/octet-stream';
  const packed = site.compress && IS_TEXT.test(type) && /\bgzip\b/.test(String(request.headers['accept-encoding']));
  const body = packed ? gzipSync(plain, { level: 9 }) : plain;
  const headers = {
    ...headersFor(site.rules, pathname.slice(site.base.length - 1)),
    'Content-Type': type,
    ...(packed && { 'Content-Encoding': 'gzip' }),
    'Cache-Control': 'no-cache',
    'Accept-Ranges': 'bytes',
  };
  const range = found && !packed ? stretch(request.headers.range, body.length) : undefined;
  if (range) {
    const [from, end] = range;
    const part = { 'Content-Range': `bytes ${from}-${end - 1}/${body.length}`, 'Content-Length': end - from };
    response.writeHead(206, { ...headers, ...part });
  } else response.writeHead(found ? 200 : 404, { ...headers, 'Content-Length': body.length });
  response.end(request.method === 'HEAD' ? undefined : body.subarray(...(range ?? [])));
}

async function find({ folder, base }: Site, pathname: string): Promise<string | 'needs a slash' | undefined> {
  if (`${pathname}/` === base) return 'needs a slash';
  if (!pathname.startsWith(base)) return undefined;
  const path = decoded(pathname.slice(base.length));
  if (path === undefined) return undefined;
  const file = normalize(join(folder, path));
  if (file !== folder && !file.startsWith(folder + sep)) return undefined;
  const kind = await stat(file).catch(() => undefined);
  if (kind?.isDirectory() && !/(^|\/)$/.test(path)) return 'needs a slash';
  const page = kind?.isDirectory() ? join(file, 'index.html') : file;
  const isFile = await stat(page).then(
    (it) => it.isFile(),
    () => false,
  );
  return isFile ? page : undefined;
}

function decoded(path: string): string | undefined {
  try {
    return decodeURIComponent(path);
  } catch {
    return undefined;
  }
}

/** The bytes of a range request, first and one past the last, or undefined when the whole is wanted. */
function stretch(range: string | undefined, size: number): [number, number] | undefined {
  const [, from, to] = /^bytes=(\d+)-(\d*)$/.exec(range ?? '') ?? [];
  if (from === undefined || Number(from) >= size) return undefined;
  return [Number(from), Math.min(to ? Number(to) + 1 : size, size)];
}

if (import.meta.main) {
  const port = Number(process.env['PORT'] || 4321);
  try {
    const { url } = await serveFolder({ folder: siteFolder(), base: siteBase(), port });
    await fetch(url);
    console.log(`Sidestand is at ${url}`);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
    console.error(`Port ${port} is taken. Stop what runs there, or choose another one: PORT=4322 npm start`);
    process.exitCode = 1;
  }
}
