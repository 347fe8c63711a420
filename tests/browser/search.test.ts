import { describe, expect, it } from 'vitest';
import { flowIsAwake, useBrowser, visit } from './browser.ts';

useBrowser();

describe('the search', () => {
  it('leads from a caller’s words into the flow, with what they said as terminals', async () => {
    const { page, faults, close } = await visit('');
    await page.getByRole('searchbox', { name: 'Say it in your words' }).fill('rear dead after reflash');
    const first = page.getByRole('link', {
      name: /No sound from the rear.*Takes along what you said: “A reflash of the head unit”/,
    });
    await first.click();
    await flowIsAwake(page);
    expect(await page.locator('.terminal').innerText()).toMatch(/Last change\s*a reflash/);
    expect(faults).toEqual([]);
    await close();
  });

  it('opens by a key on other pages, and goes through what it found by the arrows', async () => {
    const { page, close } = await visit('safety/');
    await page.keyboard.press('/');
    await page.keyboard.type('gain knob');
    await page.getByRole('link', { name: /To calculate\s*Set the gain/ }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Set the gain', level: 1 }).waitFor();
    await close();
  });

  it('says so of a complaint that has no questions yet, with what to read and to measure', async () => {
    const { page, close } = await visit('');
    await page.getByRole('searchbox').fill('whine that follows the revs');
    const found = page.getByRole('link', { name: /No questions for this yet\. Measure first: / });
    await found.first().click();
    await page.getByRole('heading', { name: 'Noise and ground loops' }).waitFor();
    await close();
  });

  it.each(['', 'z', '<img src=x onerror=alert(1)>', 'x'.repeat(500), 'qqqqqq'])(
    'takes “%s” without a fault',
    async (words) => {
      const { page, faults, close } = await visit('');
      await page.getByRole('searchbox').fill('rear');
      await page.locator('.found a').first().waitFor();
      await page.getByRole('searchbox').fill(words);
      await page.waitForFunction((typed) => {
        const field = document.querySelector<HTMLInputElement>('#search-words');
        return field !== null && (typed.length < 2 ? document.querySelectorAll('.found a').length === 0 : true);
      }, words);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth),
      ).toBe(false);
      expect(faults).toEqual([]);
      await close();
    },
  );
});
