import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '../../src/steps/cautions.ts';
import { flowIsAwake, read, tap, theEnd, useBrowser, visit } from './browser.ts';

useBrowser();

/** Reads a head unit that is as delivered: 13 dB of bass boost are 4.5 times, no rear, full level, another EQ running. */
async function readUnalteredUnit(page: Page) {
  await flowIsAwake(page);
  await tap(page, 'Yes, the factory one', 'No, front only', 'Yes, a meter', '0.01 V');
  await read(page, { '400 Hz tone': '0.50', '80 Hz tone': '2.2' });
  await read(page, { 'Front pair': '1.0', 'Rear left pair': '0', 'Rear right pair': '0' });
  await read(page, { 'Front pair, loudest clean step': '7.1' });
  await read(page, { '400 Hz tone': '0.54', '80 Hz tone': '1.2' });
}

/** The sides of paper that a page prints on, by the page objects of its PDF (ISO 32000-1, 7.7.3.3). */
async function sidesOf(page: Page): Promise<number> {
  const pdf = await page.pdf({ preferCSSPageSize: true });
  return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;
}

describe('what is in this head unit', () => {
  it('is read by what it does, with each property, its uncertainty and a picture of the points', async () => {
    const { page, faults, close } = await visit('find/what-is-in-the-head-unit/');
    await readUnalteredUnit(page);
    const verdict = theEnd(page);
    await verdict.getByRole('heading', { name: /By what it does, this is unaltered:/ }).waitFor();
    const rows = await verdict.getByRole('row').allInnerTexts();
    expect(rows.map((row) => row.replace(/\s+/g, ' '))).toEqual([
      expect.stringMatching(/^Bass boost · 80 Hz over 400 Hz is 4\.4 times, 4\.0 to 4\.9 possible bass boost in$/),
      expect.stringMatching(/^Rear channels · rear over front: left nothing, right nothing rear channels off$/),
      expect.stringMatching(/^EQ with the engine · .* 0\.5 times what it was EQ changes with the engine$/),
      expect.stringMatching(/^Level · loudest clean step 7\.1 V full level$/),
    ]);
    await page.getByRole('img', { name: /80 Hz off: 12\.9 dB; .*80 Hz running: 6\.9 dB/ }).waitFor();
    const words = (await verdict.innerText()).replaceAll('\u00A0', ' ');
    expect(words).toContain('400 Hz tone 0.50 V, 80 Hz tone 2.2 V');
    expect(words).toMatch(/For the counter[\s\S]*80 Hz over 400 Hz is 4\.4 times[\s\S]*Ask whoever works on the bike/);
    expect(await sidesOf(page)).toBe(1);
    expect(faults).toEqual([]);
    await close();
  });

  it('is taken on to the plan, which asks nothing again that was read', async () => {
    const { page, faults, close } = await visit('find/what-is-in-the-head-unit/');
    await readUnalteredUnit(page);
    await tap(page, 'Take these answers to “Does it need a reflash at all?”');
    await page.waitForURL(/is-a-reflash-needed/);
    await flowIsAwake(page);
    await tap(page, 'Rear speakers on the head unit', 'No', 'None', '4 Ω');
    const verdict = theEnd(page);
    await verdict.getByRole('heading', { name: /have only the rear channels switched on/ }).waitFor();
    const words = await verdict.innerText();
    expect(words).toContain('Two tones, engine off');
    expect(words).toMatch(/amplified profile makes it 6 to 8 dB quieter/);
    expect(faults).toEqual([]);
    await close();
  });
});

describe('whether a reflash is needed', () => {
  it('is “nothing to do” after two answers when nothing is wrong and nothing is wished', async () => {
    const { page, close } = await visit('plan/is-a-reflash-needed/');
    await flowIsAwake(page);
    await tap(page, 'Nothing. Somebody said I need a reflash', 'No, nothing');
    await page.getByRole('heading', { name: /nothing needs to be done to the head unit/ }).waitFor();
    await close();
  });

  it('is “most likely no reflash” where nobody read the head unit, with the reading that decides, and is proved by it', async () => {
    const { page, faults, close } = await visit('plan/is-a-reflash-needed/');
    await flowIsAwake(page);
    await tap(
      page,
      'New front speakers, nothing else',
      'No',
      'Yes, the factory one',
      'None',
      'No rear speakers',
      '4 Ω',
    );
    await tap(page, 'No', 'Nobody ever changed it');
    const verdict = theEnd(page);
    await verdict.getByRole('heading', { name: /^Most likely no reflash\. One reading decides/ }).waitFor();
    const words = await verdict.innerText();
    expect(words).toMatch(/Bass boost in: no reflash\. Nobody has to do anything\./);
    expect(words).toMatch(/Bass boost out\? Please select full level, bass boost in\./);
    expect(await sidesOf(page)).toBe(1);
    await tap(page, 'I know it now, or can read it', 'I can measure it now', '0.01 V');
    await read(page, { '400 Hz tone': '0.50', '80 Hz tone': '2.2' });
    await verdict.getByRole('heading', { name: /^No reflash\./ }).waitFor();
    expect(faults).toEqual([]);
    await close();
  });

  it('gives a counter one side of paper, and has every caution in sight, with two amplifiers and nothing read', async () => {
    const { page, faults, close } = await visit('plan/is-a-reflash-needed/');
    await flowIsAwake(page);
    await tap(page, 'An amplifier is added', 'No', 'Yes, the factory one', 'Two', 'One the front, one the rear');
    await tap(page, 'Added later', 'A remote wire', 'No, it takes any source');
    await tap(page, 'Added later', 'Sound on its inputs', 'Yes, the unaltered output only');
    await tap(page, 'No, I do not mind', 'Nobody ever changed it', 'The head unit’s rear outputs', 'No, front only');
    await page.getByRole('heading', { name: 'Did this bike leave the factory with an amplifier?' }).waitFor();
    await tap(page, 'No');
    const verdict = theEnd(page);
    await verdict.waitFor();
    const words = await verdict.innerText();
    for (const title of [
      'Gain, speakers off the amplifier',
      'Speakers to ask for',
      'Ask before the visit',
      'After the visit',
    ])
      expect(words).toContain(title);
    for (const id of ['minus-first', 'fuse', 'warranty', 'loud-tone', 'amp-output'] as const)
      expect(words).toContain(CAUTIONS[id]);
    expect(await sidesOf(page)).toBe(1);
    expect(faults).toEqual([]);
    await close();
  });
});
