import { describe, expect, it } from 'vitest';
import { drawFrom } from '../../src/observe/draw.ts';
import { believedRig } from '../../src/proof/believed-rig.ts';
import { BIKE_FIELDS } from '../../src/rig/fields.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { validateRig } from '../../src/rig/validate.ts';
import { randomRig } from '../../src/survey/random-rig.ts';

const RIGS = Array.from({ length: 300 }, (_, i) => randomRig(drawFrom('rigs', i)));

describe('a bike as its owner describes it', () => {
  const believed = RIGS.map((rig, i) => ({ rig, believed: believedRig(drawFrom('owner', i), rig) }));
  it('is still one that the form accepts', () => {
    for (const { believed: it_ } of believed) expect(validateRig(it_)).toEqual({ rig: it_, refused: [] });
  });
  it('has gaps and guesses, and no choice that is wrong', () => {
    for (const { rig, believed: it_ } of believed)
      for (const [id, field] of Object.entries(BIKE_FIELDS)) {
        const [truth, said] = [rig[id as keyof typeof rig], it_[id as keyof Rig]];
        if (said === undefined) continue;
        if (field.kind === 'choice') expect(said).toBe(truth);
        else expect(Math.abs((said as number) / (truth as number) - 1)).toBeLessThan(0.25);
      }
    const known = believed.map(({ believed: it_ }) => Object.keys(it_).length);
    expect(Math.min(...known)).toBeLessThan(Object.keys(BIKE_FIELDS).length / 2);
    expect(believed.some(({ believed: it_ }) => it_.amps === undefined)).toBe(true);
  });
  it('names every amplifier that it names with the pair that it drives', () => {
    for (const { rig, believed: it_ } of believed)
      if (it_.amps) expect(it_.amps.map(({ drives }) => drives)).toEqual(rig.amps.map(({ drives }) => drives));
  });
});
