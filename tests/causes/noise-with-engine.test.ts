import { describe, expect, it } from 'vitest';
import { titleOf } from '../../src/causes/cause.ts';
import { noiseWithEngine } from '../../src/causes/plugs/noise-with-engine.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ampDriving } from '../../src/rig/rig.ts';
import { answered, found, KNOWN } from './found.ts';

/*
 * A converter with a ground of its own is a common source of a whine, a speaker-level input of a bridge a rare one, and a
 * worn battery smooths no ripple: common practice, no published source.
 */

const CONVERTER = /converter/i;
const onLine: Rig = { ...KNOWN, amps: (KNOWN.amps ?? []).map((amp) => ({ ...amp, input: 'line' as const })) };
const onSpeakerWires: Rig = {
  ...KNOWN,
  amps: (KNOWN.amps ?? []).map((amp) => ({ ...amp, input: 'speaker' as const })),
};
const parted = (rig: Rig) =>
  noiseWithEngine
    .remedy(found(rig))
    .repair.map((action) => JSON.stringify(action))
    .join();

describe('a whine', () => {
  it('with a converter on the way is looked for there first, and said to be there', () => {
    const box = { ...answered({ 'line-converter': 'box' }), rig: onLine };
    expect(titleOf(noiseWithEngine, box)).toMatch(CONVERTER);
    const { background, fix, notBuy } = noiseWithEngine.remedy(box);
    expect(background).toMatch(CONVERTER);
    const at = (words: RegExp) => fix.findIndex((line) => words.test(line));
    expect(at(CONVERTER)).toBeGreaterThan(0);
    expect(at(CONVERTER)).toBeLessThan(at(/straight to the battery negative post/));
    expect(notBuy.join()).toMatch(/Another converter, before this one’s ground has been moved/);
  });
  it('asks for one where nobody has looked, and says nothing of one on speaker wires', () => {
    expect(ampDriving(onLine, 'rear')?.input).toBe('line');
    expect(noiseWithEngine.remedy(found(onLine)).fix.join()).toMatch(/That is a converter/);
    expect(parted(onLine)).toMatch('"of":"converter"');
    expect(noiseWithEngine.remedy(found(onSpeakerWires)).fix.join()).not.toMatch(CONVERTER);
    expect(parted(onSpeakerWires)).not.toMatch('"of":"converter"');
    const looked = { ...answered({ 'line-converter': 'direct' }), rig: onLine };
    expect(noiseWithEngine.remedy(looked).fix.join()).not.toMatch(CONVERTER);
  });
  it('that nothing cures is put down to the battery before anything is bought', () => {
    expect(noiseWithEngine.remedy(found(onSpeakerWires)).fix.at(-1)).toMatch(/Battery first, then the regulator/);
    expect(noiseWithEngine.remedy(found({ amps: [] })).fix.join()).not.toMatch(/regulator/);
  });
});
