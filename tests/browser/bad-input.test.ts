import { describe, expect, it } from 'vitest';
import { openByHand, openWith, REAR_OFF, toTheRearPair, useBrowser, visit } from './browser.ts';

useBrowser();

async function atTheRearPair() {
  const visited = await visit('find/no-rear-sound/');
  await toTheRearPair(visited.page, '0.001');
  return visited;
}

describe('a reading that cannot be', () => {
  it.each([
    ['80', 'A head unit on a 12 V bike cannot put that across one pair.'],
    ['-0.4', 'A head unit on a 12 V bike cannot put that across one pair.'],
    ['lots', 'type a number'],
    ['', 'This reading is needed.'],
    ['3 ohm', 'volts'],
  ])('such as “%s” is questioned in place, kept as typed, and never gone on from', async (text, sentence) => {
    const { page, faults, close } = await atTheRearPair();
    await page.getByRole('textbox', { name: 'Front pair' }).fill('1.0');
    await page.getByRole('textbox', { name: 'Rear left pair' }).fill('0.9');
    const field = page.getByRole('textbox', { name: 'Rear right pair' });
    await field.fill(text);
    await page.getByRole('button', { name: /^Go on/ }).click();
    const fault = page.locator('.reading-error');
    expect((await fault.innerText()).toLowerCase()).toContain(sentence.toLowerCase());
    expect(await field.inputValue()).toBe(text);
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    await page.getByRole('heading', { name: /What AC voltage is across the rear pairs/ }).waitFor();
    expect(faults).toEqual([]);
    await close();
  });

  it('says so when its field is left, and not while it is being typed', async () => {
    const { page, close } = await atTheRearPair();
    const field = page.getByRole('textbox', { name: 'Front pair' });
    await field.pressSequentially('lots');
    expect(await page.locator('.reading-error').count()).toBe(0);
    await field.press('Tab');
    await page.locator('.reading-error').waitFor();
    expect(await field.inputValue()).toBe('lots');
    await close();
  });

  it('is asked about when it is a lone 1 in ohms, and each answer is a button', async () => {
    const { page, close } = await visit('find/no-rear-sound/');
    const { 'unit-kind': unit = '', 'rear-drive': drive = '' } = REAR_OFF;
    await openWith(page, { 'unit-kind': unit, 'rear-drive': drive });
    await openByHand(page, 'run-ohms');
    const field = page.getByRole('textbox', { name: 'Rear left run' });
    await field.fill('1');
    await field.press('Tab');
    await page.getByText('Is it 1 Ω, or over range?').waitFor();
    await page.getByRole('button', { name: /^Over range \(OL\)/ }).click();
    expect(await field.inputValue()).toBe('OL');
    expect(await page.locator('.reading-error').count()).toBe(0);
    await close();
  });

  it.each(['1.0', '1,0', '1.0 V', '1000 mV'])('is read when it is written “%s”', async (text) => {
    const { page, close } = await atTheRearPair();
    await page.getByRole('textbox', { name: 'Front pair' }).fill(text);
    await page.getByRole('textbox', { name: 'Rear left pair' }).fill(text);
    await page.getByRole('img', { name: 'Rear left pair: 1 V is in the band “healthy”' }).waitFor();
    await close();
  });
});
