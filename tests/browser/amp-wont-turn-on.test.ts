import { describe, expect, it } from 'vitest';
import { flowIsAwake, read, tap, useBrowser, visit } from './browser.ts';

useBrowser();

/** A bike of which nothing is known: one amplifier on a wire, dark since nobody knows what. */
const DARK = [
  'The one for the rear, or for everything',
  'By a remote wire',
  'It did, then it stopped',
  'Nothing that I know of',
  'Off',
] as const;
const SILENT_REAR = [
  'Yes, the factory one',
  'An amplifier',
  'They played, then stopped',
  'Work at the battery',
  'No, the head unit drives the front',
  'Off',
  'By a remote wire',
] as const;

describe('a rider whose amplifier stays off, at 360 px', () => {
  it('finds the flow by what callers say, and goes to a proved verdict with the readings of this bike', async () => {
    const { page, faults, close } = await visit('');
    await page.getByRole('link', { name: /No light on the amp/ }).click();
    await flowIsAwake(page);
    await tap(page, ...DARK, 'Yes, a meter');
    await page.getByRole('img', { name: /Red probe: the remote terminal/ }).waitFor();
    await read(page, { 'Remote terminal': '0.1' });
    await tap(page, 'Nothing else');
    await read(page, { 'Start of the remote wire': '12.4' });
    await tap(page, 'Yes, the factory one');
    const verdict = page.getByRole('article');
    await verdict.getByRole('heading', { name: /The thin remote wire is broken/ }).waitFor();
    const said = (await verdict.innerText()).replaceAll('\u00A0', ' ');
    // A full battery of 12.6 V less the 1 V that a healthy remote wire may lose.
    for (const words of ['above 11.6 V', 'Proved.', '1 A fuse', 'Don’t pay for', 'Prove the cure'])
      expect(said).toContain(words);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    expect(faults).toEqual([]);
    await close();
  });

  it('sees millivolts under the lamp fall on a scale that they can be read on', async () => {
    const { page, close } = await visit('find/amp-wont-turn-on/');
    await flowIsAwake(page);
    await tap(page, ...DARK, 'Yes, a meter');
    await read(page, { 'Remote terminal': '12.3' });
    // A volt is lost on the plus way already, with nothing that draws current: the lamp tells where.
    await read(page, { 'Battery plus': '12.5', 'Amplifier plus': '11.5', 'Amplifier ground': '0.02' });
    await page.getByRole('textbox', { name: 'Battery plus' }).fill('12.3');
    await page.getByRole('textbox', { name: 'Lost on the plus way' }).fill('30 mV');
    await page.getByRole('img', { name: 'Lost on the plus way: 0.03 V is in the band “healthy”' }).waitFor();
    await page.getByRole('textbox', { name: 'Lost on the plus way' }).fill('3');
    await page.getByRole('img', { name: /3 V is in the band “cuts the amplifier off”/ }).waitFor();
    await close();
  });

  it('comes from a silent rear with what was answered there, and goes back with it', async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/');
    await flowIsAwake(page);
    await tap(page, ...SILENT_REAR, 'Go on with “The amplifier stays off”');
    await page.waitForURL(/amp-wont-turn-on/);
    await flowIsAwake(page);
    await page.getByRole('heading', { name: /Has this amplifier ever come on/ }).waitFor();
    await tap(page, 'It did, then it stopped');
    await page.getByRole('heading', { name: /Do you have a multimeter/ }).waitFor();
    // It turns out that the lamp is lit after all: the rear takes over again.
    await page.getByRole('button', { name: 'change the answer to “Amplifier lamp”' }).click();
    await tap(page, 'Lit as usual', 'It stays on, it is only silent', 'Go on with “No sound from the rear”');
    await page.waitForURL(/no-rear-sound/);
    await flowIsAwake(page);
    expect(faults).toEqual([]);
    await close();
  });
});
