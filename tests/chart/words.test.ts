import { describe, expect, it } from 'vitest';
import { FLOWS } from '../../src/case/flows.ts';
import { BUILDS } from '../../src/chart/builds.ts';
import { onOneSheet } from '../../src/chart/on-one-sheet.ts';

const bare = BUILDS.find(({ id }) => id === 'without-an-amplifier');
const amplified = BUILDS.find(({ id }) => id === 'with-an-amplifier');

describe('a chart for the wall', () => {
  it('asks something even where one cause is far ahead before anything was asked', async () => {
    const row = FLOWS['eq-changes-when-engine-starts'];
    if (!bare) throw new Error('no bike without an amplifier');
    const { sheet } = onOneSheet(await row.load(), await row.late(), bare);
    expect(sheet.boxes.length).toBeGreaterThan(0);
  });
  it('names no upper limit where there is none', async () => {
    const row = FLOWS['amp-wont-turn-on'];
    if (!amplified) throw new Error('no bike with an amplifier');
    const { sheet } = onOneSheet(await row.load(), await row.late(), amplified);
    const healthy = sheet.boxes.flatMap((box) => box.healthy ?? []);
    expect(healthy.join('; ')).toMatch(/Lowest 10\.5 V or more/);
    expect(healthy.join('; ')).not.toMatch(/to 20/);
  });
  it('begins its cautions with riding and ends them with the local rules', async () => {
    const row = FLOWS['amp-wont-turn-on'];
    if (!amplified) throw new Error('no bike with an amplifier');
    const { cautions } = onOneSheet(await row.load(), await row.late(), amplified).sheet;
    expect([cautions[0], cautions.at(-1)]).toEqual(['riding', 'local-rules']);
    expect(new Set(cautions).size).toBe(cautions.length);
  });
});
