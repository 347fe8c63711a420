import { execFileSync } from 'node:child_process';
import { chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { SIDE_TONES } from '../../src/sound/side-tone.ts';
import { TONES } from '../../src/sound/tone.ts';
import { CHROMIUM_FLAGS } from '../../src/tools/chromium.ts';
import { serveFolder } from '../../src/tools/serve.ts';
import { REAR_IS_OFF, toTheVerdict, watch } from './browser.ts';

const SUB_PATH = { base: '/workshop/audio/', folder: 'dist-sub' } as const;

beforeAll(() => {
  // What the test runner puts into the environment (BASE_URL, MODE …) would win over what the build works out itself.
  const own = Object.entries(process.env).filter(([name]) => /^(PATH|HOME|npm_|LANG|TMPDIR)/.test(name));
  const env = { ...Object.fromEntries(own), SITE_BASE: SUB_PATH.base, SITE_OUT: SUB_PATH.folder };
  execFileSync('npm', ['run', '-s', 'build'], { stdio: 'pipe', env });
});

describe.each([
  ['at the root', { base: '/', folder: 'dist' }],
  ['under a sub-path', SUB_PATH],
])('after the first visit, the site %s', (_, { base, folder }) => {
  let browser: Awaited<ReturnType<typeof chromium.launch>>;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: inject('chromium'), headless: true, args: CHROMIUM_FLAGS });
  });
  afterAll(() => browser.close());

  it('runs a flow to its verdict and plays a tone with the server gone', async () => {
    const server = await serveFolder({ folder, base });
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    const first = await context.newPage();
    await first.goto(server.url, { waitUntil: 'load' });
    await first.evaluate(() => navigator.serviceWorker.ready);
    // The tones come after the pages; the worker says when they are there.
    const tonesKept = () =>
      first.evaluate(async () => {
        const caught = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
        return caught.flat().filter(({ url }) => url.includes('.wav')).length;
      });
    await expect.poll(tonesKept, { timeout: 20_000 }).toBe(TONES.length + SIDE_TONES.length);
    await server.stop();

    const page = await context.newPage();
    const faults = watch(page);
    await page.goto(`${server.url}find/no-rear-sound/?from=somewhere`, { waitUntil: 'load' });
    await toTheVerdict(page);
    await page.getByRole('heading', { name: REAR_IS_OFF }).waitFor();
    const tone = await page.evaluate(
      async (address) => (await (await fetch(address)).arrayBuffer()).byteLength,
      `${server.url}tones/400hz.wav`,
    );
    expect(tone).toBe(44 + 2 * 44_100 * 20);
    expect(faults).toEqual([]);

    const unknown = await context.newPage();
    await unknown.goto(`${server.url}nowhere/`, { waitUntil: 'load' });
    expect(await unknown.getByRole('heading').first().innerText()).toBe('This page is not on your device');
    await context.close();
  });
});
