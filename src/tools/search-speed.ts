import { chromium, type Page } from 'playwright-core';
import { CHROMIUM_FLAGS, findChromium } from './chromium.ts';
import { quantile } from './page-speed.ts';
import { serveFolder } from './serve.ts';

/** Milliseconds of a key, on a processor slowed to a quarter. */
interface KeyTimes {
  readonly median: number;
  readonly p95: number;
}
export interface SearchSpeed {
  /** From the key to its list written. */
  readonly written: KeyTimes;
  /** From the key to its list drawn, the field with the new letter in it included. */
  readonly drawn: KeyTimes;
  /** The same of a field that nobody listens to: what the browser takes in any case. */
  readonly fieldAlone: KeyTimes;
}

const SLOWED = 4;
const PHONE = { width: 360, height: 740 } as const;
/** Words as they come, with slips in them, which are the slowest to look up. */
const TYPED = ['rear speekers ded after reflash', 'amplfier wont trun on', 'hinten kein ton', 'waht size wrie for amp'];

/**
 * Types key by key, each at the begin of a frame: its style, layout and paint follow at once, so that nothing of what is
 * measured is waiting for the screen. Gives for each key when the list was written and when it was drawn.
 */
const typeKeys = (page: Page, heard: boolean): Promise<(readonly [written: number, drawn: number])[]> =>
  page.evaluate(
    async ([typed, isHeard]) => {
      const field = document.querySelector<HTMLInputElement>('#search-words');
      if (!field) return [];
      const key = (value: string) =>
        new Promise<readonly [number, number]>((done) => {
          let from = 0;
          let written = 0;
          let set = 0;
          requestAnimationFrame(() => {
            from = performance.now();
            field.value = value;
            set = performance.now();
            if (isHeard) field.dispatchEvent(new Event('input'));
            // The first task after the frame.
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => done([written, performance.now() - from]);
            port2.postMessage(null);
          });
          // Called in the same frame, when all that the key set off has run.
          requestAnimationFrame(() => {
            written = performance.now() - set;
          });
        });
      const all: (readonly [number, number])[] = [];
      for (const words of typed)
        for (let letters = 2; letters <= words.length; letters++) {
          all.push(await key(words.slice(0, letters)));
          await new Promise((next) => setTimeout(next, 30));
        }
      return all;
    },
    [TYPED, heard] as const,
  );

const timesOf = (all: readonly number[]): KeyTimes => ({ median: quantile(all, 0.5), p95: quantile(all, 0.95) });

/** Types on the start page of a built site. */
export async function searchSpeed(folder: string, base: string): Promise<SearchSpeed> {
  const server = await serveFolder({ folder, base, compress: true });
  const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_FLAGS });
  try {
    const page = await browser.newPage({ viewport: PHONE });
    await page.goto(server.url, { waitUntil: 'networkidle' });
    await page.getByRole('searchbox').fill('warm');
    const first = page.locator('.found a').first();
    await first.waitFor();
    const before = await first.textContent();
    await (await page.context().newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    const keys = await typeKeys(page, true);
    if ((await first.textContent()) === before)
      throw new Error('The list must change while somebody types. It did not.');
    const bare = await typeKeys(page, false);
    return {
      written: timesOf(keys.map(([written]) => written)),
      drawn: timesOf(keys.map(([, drawn]) => drawn)),
      fieldAlone: timesOf(bare.map(([, drawn]) => drawn)),
    };
  } finally {
    await browser.close();
    await server.stop();
  }
}
