import { readdirSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import {
  DESKTOP,
  flowIsAwake,
  NARROWEST,
  PHONE,
  REAR_OFF,
  rideOn,
  theEnd,
  toTheRearPair,
  toTheVerdict,
  useBrowser,
  type Visit,
  visit,
} from './browser.ts';

useBrowser();

const pages = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map((file) => file.replaceAll('\\', '/').replace(/index\.html$/, ''))
  .sort();

/** One page of each folder: its pages have one layout, and all colours come from one file. */
const kinds = [...Map.groupBy(pages, (path) => path.split('/')[0]).values()].flatMap(([first]) => first ?? []);

const LEVELS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const COLOURS = ['color-contrast', 'link-in-text-block'];

/** What a page has against its readers: by all rules, by those that hang on its colours, or by the others. */
async function complaints(page: Page, by: 'all' | 'colours' | 'others' = 'all'): Promise<readonly string[]> {
  // It merges the frames of other origins in a tab of its own, which takes as long as the rest: no page has a frame.
  const axe = new AxeBuilder({ page }).setLegacyMode();
  const { violations } = await (by === 'colours'
    ? axe.withRules(COLOURS)
    : by === 'others'
      ? axe.withTags(LEVELS).disableRules(COLOURS)
      : axe.withTags(LEVELS)
  ).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}
const isWiderThanTheScreen = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);

/** What a finger has to hit and is lower than 48 px. Links in the middle of a text are read, not hit. */
const tooSmall = (page: Page): Promise<readonly string[]> =>
  page
    .locator(
      'button, summary, select, textarea, .button, nav a, label:has(input[type="checkbox"], input[type="radio"])',
    )
    .or(page.locator('input:not([type="checkbox"], [type="radio"])'))
    .evaluateAll((all) =>
      all
        .filter((one) => one.checkVisibility() && Math.round(one.getBoundingClientRect().height) < 48)
        .map((one) => `${one.tagName} ${one.textContent?.trim().slice(0, 40)} ${one.getBoundingClientRect().height}`),
    );

describe('every page', () => {
  let visitor: Visit;
  const elsewhere: string[] = [];
  // One visitor goes through all of them: what a first visit fetches for later, it fetches once.
  beforeAll(async () => {
    visitor = await visit('about/', { colorScheme: 'light' });
    const { origin } = new URL(visitor.page.url());
    visitor.page.on('request', (request) => new URL(request.url()).origin === origin || elsewhere.push(request.url()));
  });
  afterAll(() => visitor.close());

  it.each(pages)('/%s is accessible, fits a phone, and asks nobody else for anything', async (path) => {
    const { page, faults } = visitor;
    faults.length = 0;
    elsewhere.length = 0;
    await page.goto(inject('site') + path, { waitUntil: 'load' });
    expect(await complaints(page, kinds.includes(path) ? 'all' : 'others')).toEqual([]);
    expect(await isWiderThanTheScreen(page)).toBe(false);
    expect(await tooSmall(page)).toEqual([]);
    await page.setViewportSize(NARROWEST);
    expect(await isWiderThanTheScreen(page)).toBe(false);
    await page.setViewportSize(PHONE);
    expect(elsewhere).toEqual([]);
    expect(faults).toEqual([]);
  });
});

describe('a page of each kind', () => {
  it.each(kinds)('/%s is readable in the dark', async (path) => {
    const { page, close } = await visit(path, { colorScheme: 'dark' });
    expect(await complaints(page, 'colours')).toEqual([]);
    await close();
  });
});

describe('a flow page on the way', () => {
  it.each([
    ['a phone', PHONE],
    ['the narrowest phone', NARROWEST],
    ['a wide screen', DESKTOP],
  ])('is accessible at a measurement and at the verdict on %s', async (_, viewport) => {
    const { page, faults, close } = await visit('find/no-rear-sound/', { viewport });
    await toTheRearPair(page);
    await page.getByRole('textbox', { name: 'Front pair' }).fill('1.0');
    await page.getByRole('textbox', { name: 'Rear left pair' }).fill('eighty');
    await page.getByRole('button', { name: /^Go on/ }).click();
    // At the foot of a phone it is opened on wish; beside the wire it stands open.
    await page.locator(viewport === DESKTOP ? 'aside.strip' : 'details.strip').waitFor();
    const strip = page.locator('.strip > summary');
    if (viewport !== DESKTOP) await strip.click();
    expect(await complaints(page)).toEqual([]);
    expect(await isWiderThanTheScreen(page)).toBe(false);
    if (viewport !== DESKTOP) await strip.click();
    expect(await tooSmall(page)).toEqual([]);
    await toTheVerdict(page);
    expect(await complaints(page)).toEqual([]);
    expect(await tooSmall(page)).toEqual([]);
    expect(await isWiderThanTheScreen(page)).toBe(false);
    expect(faults).toEqual([]);
    await close();
  });

  it('keeps everything in reach when the text is twice as large', async () => {
    const { page, close } = await visit('about/');
    // As a reader's own setting does it: before anything is laid out.
    await page.addInitScript(() =>
      new MutationObserver((_, observer) => {
        document.documentElement?.style.setProperty('font-size', '225%');
        if (document.documentElement) observer.disconnect();
      }).observe(document, { childList: true }),
    );
    await page.goto(new URL('../find/no-rear-sound/', page.url()).href);
    await flowIsAwake(page);
    expect(await isWiderThanTheScreen(page)).toBe(false);
    await toTheRearPair(page);
    await page.getByRole('textbox', { name: 'Front pair' }).fill('1.0');
    await page.getByRole('textbox', { name: 'Rear left pair' }).fill('0.02');
    await page.getByRole('textbox', { name: 'Rear right pair' }).fill('0');
    // What is read falls on its scale in text, which grows with the rest.
    const sizePx = await page
      .locator('.zones')
      .first()
      .evaluate((zones) => Number.parseFloat(getComputedStyle(zones).fontSize));
    expect(sizePx).toBeGreaterThan(30);
    expect(await isWiderThanTheScreen(page)).toBe(false);
    await page.getByRole('button', { name: /^Go on/ }).click();
    await rideOn(page, REAR_OFF);
    await theEnd(page).waitFor();
    expect(await isWiderThanTheScreen(page)).toBe(false);
    await close();
  });
});
