import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { type Answers, openWith, REAR_IS_OFF, tap, theEnd, toTheVerdict, useBrowser, visit } from './browser.ts';

useBrowser();

/** A verdict that rests on as many answers as riders give. */
const LONG: Answers = {
  'which-amp': 'rear',
  'rear-amp-turn-on': 'wire',
  'unit-kind': 'factory',
  'amp-history': 'stopped',
  'last-change': 'nothing',
  'fuses-blown': 'none',
  'tried-already': 'nothing',
  'amp-light': 'off',
  'what-else': 'nothing',
  'tools-at-hand': 'meter',
  'amp-channels': '2',
  'key-positions': 'steady',
  'remote-volts': { remoteV: '0.1' },
  'remote-source': { startV: '12.4' },
  'amp-terminals': { batteryV: '12.5', plusV: '12.4', groundV: '0.01' },
  'supply-under-load': { batteryV: '12.3', ampV: '12.24', plusDropV: '0.05', groundDropV: '0.01' },
  'remote-jumper': 'wakes',
  'body-fuse': 'whole',
};

const sheets = async (page: Page): Promise<number> => {
  const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
};

describe('a verdict', () => {
  it('has lines to tick, and they are ticked after a reload', async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/');
    await toTheVerdict(page);
    const boxes = theEnd(page).getByRole('checkbox');
    expect(await boxes.count()).toBeGreaterThan(2);
    await boxes.nth(1).check();
    await page.reload({ waitUntil: 'load' });
    await page.getByRole('heading', { name: REAR_IS_OFF }).waitFor();
    expect(await boxes.nth(1).isChecked()).toBe(true);
    expect(await boxes.nth(0).isChecked()).toBe(false);
    expect(faults).toEqual([]);
    await close();
  });

  it('is copied as text with its facts, numbers and cautions', async () => {
    const { page, close } = await visit('find/no-rear-sound/', { permissions: ['clipboard-read', 'clipboard-write'] });
    await toTheVerdict(page);
    await tap(page, 'Copy it as text');
    await page.getByText('Copied. Paste it').waitFor();
    const text = await page.evaluate(() => navigator.clipboard.readText());
    for (const part of ['rear channels are switched off', 'DO THIS\n1. ', '8.5 V', 'NOTICE: ', 'front pair 1.0 V'])
      expect(text).toContain(part);
    await close();
  });

  it('is printed on one side of A4, with nothing of the page around it', async () => {
    const { page, close } = await visit('find/no-rear-sound/');
    await toTheVerdict(page);
    expect(await sheets(page)).toBe(1);
    await openWith(page, LONG, 'find/amp-wont-turn-on/');
    await theEnd(page).waitFor();
    expect(await page.locator('.terminal').count()).toBeGreaterThanOrEqual(17);
    expect(await sheets(page)).toBe(1);
    await page.emulateMedia({ media: 'print' });
    const shown = await page.locator('body').innerText();
    for (const part of ['Do this', 'Cautions', 'WARNING: ', 'Numbers for this bike', 'What was found'])
      expect(shown).toContain(part);
    expect(shown).not.toMatch(/Notes|It’s cured|Copy it as text|My bike/);
    await close();
  });

  it('shows no bare headings of folded parts on paper anywhere', async () => {
    const { page, close } = await visit('find/no-rear-sound/');
    await page.emulateMedia({ media: 'print' });
    for (const summary of await page.locator('summary').all()) expect(await summary.isVisible()).toBe(false);
    await close();
  });
});
