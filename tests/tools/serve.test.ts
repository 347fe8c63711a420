import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Serving, serveFolder } from '../../src/tools/serve.ts';

const folder = mkdtempSync(join(tmpdir(), 'serve-'));
let site: Serving;

beforeAll(async () => {
  mkdirSync(join(folder, 'about'));
  writeFileSync(join(folder, 'index.html'), 'start');
  writeFileSync(join(folder, 'about/index.html'), 'about');
  writeFileSync(join(folder, '404.html'), 'not here');
  writeFileSync(join(folder, 'tone.wav'), '0123456789');
  writeFileSync(join(folder, '_headers'), '/*\n  X-Kept: yes\n  Cache-Control: immutable\n');
  site = await serveFolder({ folder, base: '/sub/' });
});
afterAll(async () => {
  await site.stop();
  rmSync(folder, { recursive: true });
});

const get = (path: string, headers: Record<string, string> = {}) =>
  fetch(new URL(path, site.url), { redirect: 'manual', headers });

describe('serveFolder', () => {
  it('serves the start page at the base, on a free port', async () => {
    expect(site.url).toMatch(/^http:\/\/localhost:\d+\/sub\/$/);
    expect(await (await get('')).text()).toBe('start');
  });
  it('serves a folder with its slash, and sends an address without it there', async () => {
    expect(await (await get('about/')).text()).toBe('about');
    const moved = await get('about?x=1');
    expect([moved.status, moved.headers.get('Location')]).toEqual([301, '/sub/about/?x=1']);
  });
  it('leads from the origin to the base', async () => {
    expect((await get('/')).headers.get('Location')).toBe('/sub/');
  });
  it.each(['nowhere/', '/elsewhere/', '..%2f..%2fetc%2fpasswd', '%E0%A4%A'])(
    'answers 404 with the page for it at %s',
    async (path) => {
      const answer = await get(path);
      expect([answer.status, await answer.text()]).toEqual([404, 'not here']);
    },
  );
  it('sends the headers of the site, but lets nothing be cached unasked', async () => {
    const { headers } = await get('tone.wav');
    expect([headers.get('X-Kept'), headers.get('Cache-Control'), headers.get('Content-Type')]).toEqual([
      'yes',
      'no-cache',
      'audio/wav',
    ]);
  });
  it('sends the stretch of a sound that a player asks for', async () => {
    const part = await get('tone.wav', { Range: 'bytes=2-4' });
    expect([part.status, part.headers.get('Content-Range'), await part.text()]).toEqual([206, 'bytes 2-4/10', '234']);
  });
  it('refuses a port that is taken, and says so by its code', async () => {
    const port = Number(new URL(site.url).port);
    await expect(serveFolder({ folder, port })).rejects.toHaveProperty('code', 'EADDRINUSE');
  });
});
