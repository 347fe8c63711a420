import { chromium } from 'playwright-core';
import { CHROMIUM_FLAGS, findChromium } from './chromium.ts';
import { quantile } from './page-speed.ts';
import { serveFolder } from './serve.ts';

/** From a key in the search to its list drawn, in milliseconds, on a processor slowed to a quarter. */
export interface SearchSpeed {
  readonly median: number;
  readonly p95: number;
}

const SLOWED = 4;
const PHONE = { width: 360, height: 740 } as const;
/** Words as they come, with slips in them, which are the slowest to look up. */
const TYPED = ['rear speekers ded after reflash', 'amplfier wont trun on', 'hinten kein ton', 'waht size wrie for amp'];

/** Types key by key on the start page of a built site. */
export async function searchSpeed(folder: string, base: string): Promise<SearchSpeed> {
  const server = await serveFolder({ folder, base, compress: true });
  const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_FLAGS });
  try {
    const page = await browser.newPage({ viewport: PHONE });
    await page.goto(server.url, { waitUntil: 'networkidle' });
    await page.getByRole('searchbox').fill('warm');
    await page.locator('.found a').first().waitFor();
    await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    const times = await page.evaluate(async (typed) => {
      const field = document.querySelector<HTMLInputElement>('#search-words');
      const box = document.querySelector('.found-box');
      if (!field || !box) return [];
      const key = (value: string) =>
        new Promise<number>((done) => {
          const start = performance.now();
          const seen = new MutationObserver(() => {
            seen.disconnect();
            done(performance.now() - start);
          });
          // What was found is said anew with every key, also where the list stays as it is.
          seen.observe(box, { childList: true, subtree: true });
          field.value = value;
          field.dispatchEvent(new Event('input'));
        });
      const all: number[] = [];
      for (const words of typed)
        for (let letters = 2; letters <= words.length; letters++) {
          all.push(await key(words.slice(0, letters)));
          await new Promise((next) => setTimeout(next, 30));
        }
      return all;
    }, TYPED);
    return { median: quantile(times, 0.5), p95: quantile(times, 0.95) };
  } finally {
    await browser.close();
    await server.stop();
  }
}
