import { type Browser, chromium, type Locator, type Page } from 'playwright-core';
import { CHROMIUM_FLAGS, findChromium } from './chromium.ts';
import { serveFolder } from './serve.ts';

/** How fast a flow page is, in milliseconds, in Chromium. */
export interface PageSpeed {
  /** From the tap on an answer to the next question drawn, on a processor slowed to a quarter. */
  readonly answerMs: { readonly median: number; readonly p95: number };
  /** On a line of 400 kbit/s and 2 s, with nothing kept on the device, from the start of the navigation. */
  readonly slowLineMs: {
    readonly firstPaint: number;
    /** A tap on the first question, given as soon as it is painted, is shown as taken. */
    readonly firstTap: number;
    readonly secondQuestion: number;
  };
}

const PHONE = { width: 360, height: 740 } as const;
const SLOWED = 4;
/** 400 kbit/s in bytes, and what each request waits. */
const SLOW_LINE = { offline: false, latency: 2000, downloadThroughput: 50_000, uploadThroughput: 50_000 } as const;
const MOST_ANSWERS = 20;
const ROUNDS = 3;
const PATIENCE_MS = 30_000;
/** Nobody has read a question sooner than this. */
const READING_MS = 500;

/** The value below which so large a part of all lies. */
export function quantile(values: readonly number[], part: number): number {
  if (values.length === 0) throw new RangeError('values must not be empty');
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(part * sorted.length) - 1)] ?? Number.NaN;
}

const OPTIONS = '#flow[data-awake] .answers:not([inert]) .answer:not([disabled])';

/**
 * Taps an option and waits, inside the page, until another question, or an end, has been drawn: the frame after the first
 * change of the heading. Gives the milliseconds, or null where the answer led nowhere else.
 */
const answerOnce = (page: Page, nth: number): Promise<number | null> =>
  page.evaluate(
    ([options, n]) =>
      new Promise<number | null>((done) => {
        const buttons = document.querySelectorAll<HTMLButtonElement>(options);
        const place = document.querySelector('.open-step');
        const heading = () => document.querySelector('.open-step h1')?.textContent;
        const before = heading();
        const button = buttons[n % buttons.length];
        if (!button || !place) return done(null);
        const start = performance.now();
        const seen = new MutationObserver(() => {
          if (heading() === before) return;
          seen.disconnect();
          // After the frame that draws it.
          requestAnimationFrame(() => setTimeout(() => done(performance.now() - start)));
        });
        seen.observe(place, { subtree: true, childList: true, characterData: true });
        setTimeout(() => done(null), 5000);
        button.click();
      }),
    [OPTIONS, nth] as const,
  );

/** Leaves a measurement, which is not timed: its readings take as long as they take. */
const LEAVE = '#flow .answers:not([inert]) > .plain';

const isThere = (what: Locator): Promise<boolean> =>
  what.waitFor({ timeout: 3000 }).then(
    () => true,
    () => false,
  );

async function goOnWithout(page: Page): Promise<boolean> {
  const leave = page.locator(LEAVE).first();
  if (!(await leave.isVisible())) return false;
  await leave.click();
  const without = page.getByRole('button', { name: 'Go on without it' });
  if (await without.isVisible()) await without.click();
  return true;
}

/** Answers question after question, each time other options, and gives how long each next one took. */
async function answerTimes(browser: Browser, url: string): Promise<readonly number[]> {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const context = await browser.newContext({ viewport: PHONE });
    const page = await context.newPage();
    await page.goto(url, { waitUntil: 'networkidle' });
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    for (let i = 0; i < MOST_ANSWERS; i++) {
      const option = page.locator(OPTIONS).first();
      // At its end a flow has neither.
      if (!(await isThere(option.or(page.locator(LEAVE)).first()))) break;
      await page.waitForTimeout(READING_MS);
      if (!(await option.isVisible())) {
        if (!(await goOnWithout(page))) break;
        continue;
      }
      const ms = await answerOnce(page, round + i);
      if (ms !== null) times.push(ms);
    }
    await context.close();
  }
  return times;
}

const sinceNavigation = (page: Page): Promise<number> => page.evaluate(() => performance.now());

async function onSlowLine(browser: Browser, url: string): Promise<PageSpeed['slowLineMs']> {
  const context = await browser.newContext({ viewport: PHONE });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', SLOW_LINE);
  await page.goto(url, { waitUntil: 'commit', timeout: PATIENCE_MS });
  const heading = page.locator('.open-step h1').first();
  const first = await heading.textContent({ timeout: PATIENCE_MS });
  const painted = await page.waitForFunction(
    () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime,
    undefined,
    { timeout: PATIENCE_MS },
  );
  const firstPaint = (await painted.jsonValue()) ?? Number.NaN;
  await page.locator('#flow .answers .answer:not([disabled])').first().click({ timeout: PATIENCE_MS });
  await page.locator('#flow .tap-taken, #flow .terminal').first().waitFor({ timeout: PATIENCE_MS });
  const firstTap = await sinceNavigation(page);
  await page.waitForFunction((before) => document.querySelector('.open-step h1')?.textContent !== before, first, {
    timeout: PATIENCE_MS,
  });
  const secondQuestion = await sinceNavigation(page);
  await context.close();
  return { firstPaint, firstTap, secondQuestion };
}

/** The speed of pages of the built site, by their path. */
export async function pageSpeeds(
  folder: string,
  base: string,
  paths: readonly string[],
): Promise<Readonly<Record<string, PageSpeed>>> {
  if (paths.length === 0) return {};
  const server = await serveFolder({ folder, base, compress: true });
  const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_FLAGS });
  try {
    const measured: [string, PageSpeed][] = [];
    for (const path of paths) {
      const url = server.url + path;
      const slowLineMs = await onSlowLine(browser, url);
      const times = await answerTimes(browser, url);
      measured.push([path, { answerMs: { median: quantile(times, 0.5), p95: quantile(times, 0.95) }, slowLineMs }]);
    }
    return Object.fromEntries(measured);
  } finally {
    await browser.close();
    await server.stop();
  }
}
