import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flowIsAwake, headingOf, stepNamed, tap, useBrowser, visit } from './browser.ts';

useBrowser();

/** Opens the page of a flow on a line so slow that its scripts are not there yet. */
async function onASlowLine(path: string, page: Page) {
  const held: (() => void)[] = [];
  let isHeld = true;
  await page.route('**/_astro/**', async (route) => {
    if (isHeld) await new Promise<void>((go) => held.push(go));
    await route.continue();
  });
  await page.goto(new URL(`../${path}`, page.url()).href, { waitUntil: 'commit' });
  await page.locator('.open-step h1').waitFor();
  return () => {
    isHeld = false;
    for (const go of held) go();
  };
}
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const terminals = (page: Page) => page.locator('.terminal').allInnerTexts();

/** A device without a worker, which would bring the scripts by itself. */
async function visitWithoutWorker(path: string) {
  const { page, faults, close } = await visit(path, { serviceWorkers: 'block' });
  return { page, close, faults: () => faults.filter((one) => !one.startsWith('Service Worker registration blocked')) };
}

describe('the first question, on a slow line', () => {
  it.each([
    ['find/no-rear-sound/', 'Yes, the factory one', 'rear-drive'],
    ['find/amp-wont-turn-on/', 'The one for the rear, or for everything', 'rear-amp-turn-on'],
    ['find/what-is-in-the-head-unit/', 'Yes, the factory one', 'delivered-with'],
    ['plan/is-a-reflash-needed/', 'New front speakers, nothing else', 'wish-mirroring'],
  ])('of %s is answered before the script is there, and the answer is kept', async (path, answer, next) => {
    const { page, faults, close } = await visitWithoutWorker('about/');
    const arrive = await onASlowLine(path, page);
    await tap(page, answer);
    await page.getByText('Taken. The next question is on its way.').waitFor();
    expect(await button(page, answer).getAttribute('aria-pressed')).toBe('true');
    arrive();
    await headingOf(page, next).waitFor();
    expect(await terminals(page)).toHaveLength(1);
    await flowIsAwake(page);
    expect(await page.getByText('Taken.').count()).toBe(0);
    await page.unroute('**/_astro/**');
    await page.reload();
    await headingOf(page, next).waitFor();
    expect(faults()).toEqual([]);
    await close();
  });

  it('takes the last of several taps, and only one', async () => {
    const { page, faults, close } = await visitWithoutWorker('about/');
    const arrive = await onASlowLine('find/no-rear-sound/', page);
    await tap(page, 'Yes, the factory one', 'I don’t know', 'No, it was replaced');
    expect(await page.locator('.answers [aria-pressed="true"]').allInnerTexts()).toEqual(['No, it was replaced']);
    arrive();
    await headingOf(page, 'rear-drive').waitFor();
    expect(await terminals(page)).toEqual([expect.stringContaining(stepNamed('unit-kind').outcomes['replaced'] ?? '')]);
    expect(faults()).toEqual([]);
    await close();
  });

  it('takes no tap where the question that was left is still to come', async () => {
    const { page, faults, close } = await visitWithoutWorker('find/no-rear-sound/');
    await flowIsAwake(page);
    await tap(page, 'Yes, the factory one');
    await headingOf(page, 'rear-drive').waitFor();
    await page.goto(new URL('../../about/', page.url()).href);
    const arrive = await onASlowLine('find/no-rear-sound/', page);
    expect(await button(page, 'No, it was replaced').isDisabled()).toBe(true);
    arrive();
    await headingOf(page, 'rear-drive').waitFor();
    expect(await terminals(page)).toHaveLength(1);
    expect(faults()).toEqual([]);
    await close();
  });
});
