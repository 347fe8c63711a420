import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { BIKE_KEY } from '../../src/browser/case-keys.ts';
import { useBrowser, visit } from './browser.ts';

useBrowser();

const field = (page: Page, name: RegExp) => page.getByRole('textbox', { name });
const answer = (page: Page) => page.locator('.lines dd b').first().innerText();
/** The figures of the page are those of its fields once its script has run. */
const awake = (page: Page) =>
  page.waitForFunction(() => document.querySelector('.calculation .unknown[aria-pressed="true"]'));

describe('a calculator', () => {
  it('answers before anything is typed, and anew with every key', async () => {
    const { page, faults, close } = await visit('calculate/set-the-gain/');
    await awake(page);
    expect(await answer(page)).toBe('17\u00a0V');
    await field(page, /^Sine power/).fill('50');
    expect(await answer(page)).toBe('13\u00a0V');
    expect(faults).toEqual([]);
    await close();
  });

  it.each(['', '0', '-4', '1e9', '<b>4</b>', '4 A', '2,000'])(
    'keeps the last good result in sight for “%s”, marked as such, and says what is wrong in place',
    async (text) => {
      const { page, faults, close } = await visit('calculate/set-the-gain/');
      await awake(page);
      const power = field(page, /^Sine power/);
      await power.fill('50');
      await power.fill(text);
      await power.press('Tab');
      if (text === '') {
        expect(await answer(page)).toBe('17\u00a0V');
      } else {
        expect(await answer(page)).toBe('13\u00a0V');
        await page.getByText('the last result that could be worked out').first().waitFor();
        expect(await power.getAttribute('aria-invalid')).toBe('true');
        expect(await power.inputValue()).toBe(text);
      }
      expect(faults).toEqual([]);
      await close();
    },
  );

  it('carries its values in an address, which fills the fields of whoever opens it', async () => {
    const { page, close } = await visit('calculate/lead-and-fuse/');
    await awake(page);
    await field(page, /^Positive lead, wire section/).fill('10 AWG');
    await page.getByRole('link', { name: 'Address with these values' }).click();
    const address = new URL(page.url());
    expect(address.hash).toContain('fittedM2=10+AWG');
    await close();
    const { page: other, close: closeOther } = await visit(`calculate/lead-and-fuse/${address.hash}`);
    await other.getByText('Filled in from the link.').waitFor();
    expect(await field(other, /^Positive lead, wire section/).inputValue()).toBe('10 AWG');
    await other.getByText('Too large for its lead').waitFor();
    await closeOther();
  });

  it('is filled in from the saved bike, which it does not change', async () => {
    const { page, close } = await visit('calculate/set-the-gain/');
    await page.evaluate((key) => {
      const rig = { amps: [{ powerW: 60, ratedOhm: 4 }] };
      localStorage.setItem(key, JSON.stringify(rig));
    }, BIKE_KEY);
    const before = await page.evaluate((key) => localStorage.getItem(key), BIKE_KEY);
    await page.reload();
    await page.getByText(/Filled in from “My bike”/).waitFor();
    expect(await field(page, /^Sine power/).inputValue()).toBe('60');
    await field(page, /^Sine power/).fill('70');
    expect(await page.evaluate((key) => localStorage.getItem(key), BIKE_KEY)).toBe(before);
    await close();
  });

  it('says its picture in words and in figures', async () => {
    const { page, close } = await visit('calculate/high-pass/');
    await page.getByRole('img', { name: /falls by 12 dB for each octave down/ }).waitFor();
    await page.getByText('The picture in figures').click();
    expect(await page.getByRole('row').count()).toBeGreaterThan(5);
    await close();
  });
});
