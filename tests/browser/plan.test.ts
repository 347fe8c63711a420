import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flowIsAwake, read, tap, useBrowser, visit } from './browser.ts';

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

describe('what is in this head unit', () => {
  it('is read by what it does, with each property, its uncertainty and a picture of the points', async () => {
    const { page, faults, close } = await visit('find/what-is-in-the-head-unit/');
    await readUnalteredUnit(page);
    const verdict = page.getByRole('article');
    await verdict.getByRole('heading', { name: /By what it does, this is unaltered:/ }).waitFor();
    const rows = await verdict.getByRole('row').allInnerTexts();
    expect(rows.map((row) => row.replace(/\s+/g, ' '))).toEqual([
      expect.stringMatching(/^Bass boost · 80 Hz over 400 Hz is 4\.4 times, 4\.0 to 4\.9 possible bass boost in$/),
      expect.stringMatching(/^Rear channels · rear over front: left nothing, right nothing rear channels off$/),
      expect.stringMatching(/^EQ with the engine · .* 0\.5 times what it was EQ changes with the engine$/),
      expect.stringMatching(/^Level · loudest clean step 7\.1 V full level$/),
    ]);
    await page.getByRole('img', { name: /80 Hz off: 12\.9 dB; .*80 Hz running: 6\.9 dB/ }).waitFor();
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
    const verdict = page.getByRole('article');
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
});
