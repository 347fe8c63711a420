import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { ALL_STEPS } from '../../src/steps/all.ts';
import type { Step } from '../../src/steps/step.ts';
import { plainly } from '../steps/words.ts';
import { ALL_DONE, type Answers, headingOf, openWith, PHONE, useBrowser, visit } from './browser.ts';

useBrowser();

const MOST_PX = 3 * PHONE.height;

/** How high the open question is, with all that belongs to it. */
const heightPx = (page: Page) =>
  page.locator('.open-step').evaluate((step) => {
    const last = step.lastElementChild as Element;
    return Math.round(last.getBoundingClientRect().bottom - step.getBoundingClientRect().top);
  });

const measurements = (Object.values(ALL_STEPS) as readonly Step[]).filter(({ kind }) => kind === 'reading');

/** Opens each measurement that makes sense here, and gives those that are too long, before and after its preparations. */
async function tooLong(page: Page, seen: Set<string>): Promise<readonly string[]> {
  const found: string[] = [];
  const summary = page.getByText('I already measured that');
  await summary.waitFor();
  for (const { id, short } of measurements) {
    const back = page.getByRole('button', { name: 'Back to the question that was open' });
    if (await back.isVisible()) await back.click();
    if (!(await page.locator('.out-of-turn[open]').isVisible())) await summary.click();
    const listed = page.locator('.out-of-turn').getByRole('button', { name: plainly(short), exact: true });
    if ((await listed.count()) === 0) continue;
    await listed.click();
    await headingOf(page, id, { exact: true }).waitFor();
    seen.add(id);
    const done = page.getByRole('button', { name: ALL_DONE });
    if (await done.isVisible()) {
      const readyPx = await heightPx(page);
      if (readyPx > MOST_PX) found.push(`${id}, to be prepared: ${readyPx}`);
      await done.click();
    }
    await page.getByRole('textbox').first().waitFor();
    const px = await heightPx(page);
    if (px > MOST_PX) found.push(`${id}: ${px}`);
  }
  return found;
}

const ON_UNIT: Answers = { 'unit-kind': 'factory', 'rear-drive': 'unit', 'tools-at-hand': 'meter' };
const ON_AMP: Answers = { 'which-amp': 'rear', 'unit-kind': 'factory', 'tools-at-hand': 'meter', 'amp-light': 'fault' };

describe('a measurement on a phone', () => {
  it('is at most three screens long, and so is what has to be done before it', { timeout: 150_000 }, async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/');
    const seen = new Set<string>();
    const found: string[] = [];
    for (const [path, answers] of [
      ['find/no-rear-sound/', ON_UNIT],
      ['find/no-rear-sound/', { ...ON_UNIT, 'rear-drive': 'amp', 'front-drive': 'unit', 'amp-light': 'on' }],
      ['find/amp-wont-turn-on/', ON_AMP],
      ['find/amp-wont-turn-on/', { ...ON_AMP, 'rear-amp-turn-on': 'signal', 'amp-light': 'off' }],
      [
        'find/amp-wont-turn-on/',
        { ...ON_AMP, 'amp-light': 'off', 'amp-terminals': { batteryV: '12.5', plusV: '11.4', groundV: '0.02' } },
      ],
    ] as const satisfies readonly (readonly [string, Answers])[]) {
      await openWith(page, answers, path);
      found.push(...(await tooLong(page, seen)));
    }
    expect(found).toEqual([]);
    expect(seen.size).toBeGreaterThanOrEqual(15);
    expect(faults).toEqual([]);
    await close();
  });
});
