import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flowIsAwake, REAR_IS_OFF, tap, theEnd, toTheVerdict, useBrowser, visit } from './browser.ts';

useBrowser();

/** The link that the page makes, as it stands in the field for copying. */
async function linkOf(page: Page): Promise<string> {
  await tap(page, 'Send this case to somebody');
  return page.getByRole('textbox', { name: /The link/ }).inputValue();
}
const pathOf = (link: string) => new URL(link).pathname.slice(1) + new URL(link).hash;

describe('a case as a file', () => {
  it('is saved, and opened in another browser: the same verdict', async () => {
    const sender = await visit('find/no-rear-sound/');
    await toTheVerdict(sender.page);
    await sender.page.getByText('Case as a file', { exact: true }).click();
    const saving = sender.page.waitForEvent('download');
    await tap(sender.page, 'Save this case as a file');
    const saved = await (await saving).path();
    const sent = await theEnd(sender.page).innerText();

    const receiver = await visit('find/amp-wont-turn-on/');
    await flowIsAwake(receiver.page);
    await receiver.page.getByText('Case as a file', { exact: true }).click();
    await receiver.page.getByLabel('Open a case from a file').setInputFiles(saved);
    await receiver.page.getByRole('heading', { name: REAR_IS_OFF }).waitFor();
    expect(await theEnd(receiver.page).innerText()).toBe(sent);
    expect(receiver.faults).toEqual([]);
    await sender.close();
    await receiver.close();
  });
});

describe('what can be done with a case as a whole', () => {
  it.each([360, 1280])('has each of its names on one line, at %i px', async (width) => {
    const { page, close } = await visit('find/no-rear-sound/');
    await page.setViewportSize({ width, height: 780 });
    await toTheVerdict(page);
    const names = page.locator('.case-tools > button, .case-tools > * > button, .case-tools summary');
    await page.getByRole('button', { name: 'Send this case to somebody' }).waitFor();
    const lines = await names.evaluateAll((all) =>
      all.map((one) => {
        const range = document.createRange();
        range.selectNodeContents(one);
        return range.getClientRects().length;
      }),
    );
    expect(lines.length).toBeGreaterThan(3);
    expect(lines).toEqual(lines.map(() => 1));
    await close();
  });
});

describe('a link to a case', () => {
  it('shows the same verdict and the same wire in a fresh profile', async () => {
    const sender = await visit('find/no-rear-sound/');
    await toTheVerdict(sender.page);
    const link = await linkOf(sender.page);
    const sent = await theEnd(sender.page).innerText();
    const wire = await sender.page.locator('.terminal').allInnerTexts();
    await sender.close();

    const receiver = await visit(pathOf(link));
    await receiver.page.getByRole('heading', { name: REAR_IS_OFF }).waitFor();
    expect(await theEnd(receiver.page).innerText()).toBe(sent);
    expect(await receiver.page.locator('.terminal').allInnerTexts()).toEqual(wire);
    expect(receiver.faults).toEqual([]);
    await receiver.close();
  });

  it('keeps the case that was open here, and gives it back', async () => {
    const sender = await visit('find/no-rear-sound/');
    await toTheVerdict(sender.page);
    const link = await linkOf(sender.page);
    await sender.close();

    const { page, close } = await visit('find/no-rear-sound/');
    await flowIsAwake(page);
    await tap(page, 'No, it was replaced');
    await page.goto(new URL(link).href, { waitUntil: 'load' });
    await page.getByRole('heading', { name: REAR_IS_OFF }).waitFor();
    await tap(page, 'Open my earlier case again');
    await page.getByRole('heading', { name: /What drives the rear speakers/ }).waitFor();
    expect(await page.locator('.terminal').innerText()).toContain('replaced');
    await close();
  });

  it.each([
    ['a cut one', '1.VY9LbsMw', 'This link is damaged.'],
    ['one of another version', '7.VY9LbsMw', 'This link was made by another version of this site (7)'],
    ['a foreign fragment', 'section-2.1', 'This link does not hold a case of this site.'],
  ])('that is %s is answered with a sentence, and the flow begins', async (_, fragment, sentence) => {
    const { page, faults, close } = await visit(`find/no-rear-sound/#${fragment}`);
    await page.getByText(sentence).waitFor();
    await tap(page, 'Yes, the factory one');
    await page.getByRole('heading', { name: /What drives the rear speakers/ }).waitFor();
    expect(faults).toEqual([]);
    await close();
  });
});

describe('what is saved on the device', () => {
  it.each([
    ['a case', 'sidestand.case.no-rear-sound', 'The case saved here was damaged.'],
    ['my bike', 'sidestand.bike', 'What was saved as “my bike” was damaged.'],
  ])('is set aside with a sentence when %s is damaged', async (_, key, sentence) => {
    const { page, faults, close } = await visit('about/');
    await page.evaluate((name) => localStorage.setItem(name, '{"half'), key);
    await page.goto(new URL('../find/no-rear-sound/', page.url()).href);
    await page.getByText(sentence).waitFor();
    expect(await page.evaluate((name) => localStorage.getItem(`${name}.damaged`), key)).toBe('{"half');
    expect(faults).toEqual([]);
    await close();
  });
});

describe('a case that is open in two tabs', () => {
  it('is not overwritten by the tab that was left behind, which says so and offers the newer one', async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/');
    await flowIsAwake(page);
    const other = await page.context().newPage();
    await other.goto(page.url(), { waitUntil: 'load' });
    await flowIsAwake(other);
    await tap(other, 'Yes, the factory one');
    await page.getByText('This case went on in another tab.').waitFor();
    await tap(page, 'No, it was replaced');
    await page
      .getByRole('heading', { name: /head unit/ })
      .first()
      .waitFor();
    expect(await page.locator('.terminal').count()).toBe(0);
    await tap(page, 'Take the newer case');
    await page.getByRole('heading', { name: /What drives the rear speakers/ }).waitFor();
    expect(await page.locator('.terminal').innerText()).toContain('factory');
    expect(await page.getByText('This case went on in another tab.').count()).toBe(0);
    expect(faults).toEqual([]);
    await close();
  });
});
