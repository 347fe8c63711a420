import { describe, expect, it } from 'vitest';
import {
  type Answers,
  flowIsAwake,
  openByHand,
  openStep,
  openWith,
  rideOn,
  tap,
  theEnd,
  useBrowser,
  visit,
} from './browser.ts';

useBrowser();

/** One amplifier on a wire, dark since nobody knows what; its thin wire is broken on the way. */
const WIRE_BROKEN: Answers = {
  'unit-kind': 'factory',
  'which-amp': 'rear',
  'rear-amp-turn-on': 'wire',
  'amp-history': 'stopped',
  'last-change': 'nothing',
  'amp-light': 'off',
  'what-else': 'nothing',
  'tools-at-hand': 'meter',
  'remote-volts': { remoteV: '0.1' },
  'remote-source': { startV: '12.4' },
  'amp-terminals': { batteryV: '12.5', plusV: '12.4', groundV: '0.01' },
  'remote-jumper': 'wakes',
};
/** A silent rear whose amplifier is dark. */
const DARK_AND_SILENT: Answers = {
  'unit-kind': 'factory',
  'rear-drive': 'amp',
  'front-drive': 'unit',
  'rear-inputs': 'own',
  'rear-amp-turn-on': 'wire',
  'rear-history': 'stopped',
  'last-change': 'battery',
  'amp-light': 'off',
};

describe('a rider whose amplifier stays off, at 360 px', () => {
  it('finds the flow by what callers say, and goes to a verdict with the readings of this bike', async () => {
    const { page, faults, close } = await visit('');
    await page.getByRole('link', { name: /No light on the amp/ }).click();
    await page.waitForURL(/amp-wont-turn-on/);
    const asked = await rideOn(page, WIRE_BROKEN);
    expect(asked).toContain('remote-volts');
    const verdict = theEnd(page);
    await verdict.getByRole('heading', { level: 1, name: /remote wire/ }).waitFor();
    const said = (await verdict.innerText()).replaceAll('\u00A0', ' ');
    for (const words of [/Proved\.|Likely\./, /Don’t pay for/, /Prove the cure/, /How we know/])
      expect(said).toMatch(words);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
    expect(faults).toEqual([]);
    await close();
  });

  it('sees millivolts under the lamp fall on a scale that they can be read on', async () => {
    const { page, close } = await visit('find/amp-wont-turn-on/');
    // A volt is lost on the positive path already, with nothing that draws current: the lamp tells where.
    await openWith(
      page,
      { ...WIRE_BROKEN, 'amp-terminals': { batteryV: '12.5', plusV: '11.5', groundV: '0.02' } },
      'find/amp-wont-turn-on/',
    );
    if ((await openStep(page))?.id !== 'supply-under-load') await openByHand(page, 'supply-under-load');
    await page.getByRole('textbox', { name: 'Battery positive' }).fill('12.3');
    await page.getByRole('textbox', { name: 'Lost on the positive path' }).fill('30 mV');
    await page.getByRole('img', { name: 'Lost on the positive path: 0.03 V is in the band “healthy”' }).waitFor();
    await page.getByRole('textbox', { name: 'Lost on the positive path' }).fill('3');
    await page.getByRole('img', { name: /3 V is in the band “cuts the amplifier off”/ }).waitFor();
    await close();
  });

  it('comes from a silent rear with everything that was answered there', async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/');
    await openWith(page, DARK_AND_SILENT);
    await rideOn(page, DARK_AND_SILENT);
    await theEnd(page)
      .getByRole('button', { name: /^Go on with “/ })
      .click();
    await page.waitForURL(/amp-wont-turn-on/);
    await flowIsAwake(page);
    const rows = async () => (await page.locator('.terminal').allInnerTexts()).join('\n').toLowerCase();
    for (const known of ['amplifier light', 'last change', 'amplifier switched'])
      await expect.poll(rows).toContain(known);
    expect(await page.getByRole('button', { name: 'Back one step' }).count()).toBe(0);
    const open = await openStep(page);
    expect(Object.keys(DARK_AND_SILENT)).not.toContain(open?.id);
    expect(faults).toEqual([]);
    await close();
  });

  it('goes on in its own flow when it is not that', async () => {
    const { page, close } = await visit('find/no-rear-sound/');
    await openWith(page, DARK_AND_SILENT);
    await rideOn(page, DARK_AND_SILENT);
    const title = await page.getByRole('heading', { level: 1 }).innerText();
    await tap(page, 'It is not that, go on here');
    await page.getByRole('heading', { level: 1, name: title, exact: true }).waitFor({ state: 'detached' });
    expect(page.url()).toMatch(/no-rear-sound/);
    await close();
  });
});
