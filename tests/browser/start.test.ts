import { describe, expect, it } from 'vitest';
import { flowIsAwake, tap, theEnd, toTheVerdict, useBrowser, visit } from './browser.ts';

useBrowser();

const start = (address: string) => new URL('../../', address).href;

describe('the start page of a device that keeps a case', () => {
  it('goes on with the old case under “Go on where you stopped”', async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/');
    await flowIsAwake(page);
    await tap(page, 'Yes, the factory one', 'The head unit, no amplifier');
    await page.goto(start(page.url()));
    const goOn = page.getByRole('region', { name: 'Go on where you stopped' });
    await goOn.getByRole('link', { name: /^No sound from the rear\s*2 answers given\.$/ }).click();
    await page.waitForURL(/no-rear-sound/);
    await flowIsAwake(page);
    expect(await page.locator('.terminal').count()).toBe(2);
    expect(faults).toEqual([]);
    await close();
  });

  it('begins a new case under the complaint, says so, and keeps every old one', async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/');
    await toTheVerdict(page);
    for (const kept of [1, 2]) {
      await page.goto(start(page.url()));
      const something = page.getByRole('region', { name: 'Something is wrong' });
      await something.getByRole('link', { name: /Begins a new case\. The one you began is kept\./ }).click();
      await page.getByRole('heading', { name: /Is the head unit the one/ }).waitFor();
      expect(await page.locator('.terminal').count()).toBe(0);
      await flowIsAwake(page);
      await tap(page, kept === 1 ? 'Yes, the factory one' : 'No, it was replaced');
      await page.goto(start(page.url()));
      const earlier = kept === 1 ? '1 earlier case kept' : '2 earlier cases kept';
      await page.getByRole('link', { name: `1 answer given, ${earlier}.` }).waitFor();
    }
    await page.getByRole('link', { name: /earlier cases kept/ }).click();
    await tap(page, 'Open my earlier case again');
    await tap(page, 'Open my earlier case again');
    await theEnd(page).waitFor();
    expect(faults).toEqual([]);
    await close();
  });

  it('begins no new case over an old one that there is no room to keep', async () => {
    const { page, close } = await visit('find/no-rear-sound/');
    await flowIsAwake(page);
    await tap(page, 'Yes, the factory one');
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await tap(page, 'Start a new case');
    await page.getByText('There is no room on this device to keep two cases').waitFor();
    expect(await page.locator('.terminal').innerText()).toContain('factory');
    await close();
  });

  it('is a plain list of what there is to find out where nothing is kept', async () => {
    const { page, close } = await visit('');
    expect(await page.getByText('Go on where you stopped').isVisible()).toBe(false);
    expect(await page.getByRole('link', { name: 'No sound from the rear' }).getAttribute('href')).toMatch(/sound\/$/);
    await close();
  });
});
