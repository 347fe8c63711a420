import { describe, expect, it } from 'vitest';
import { CAUSES } from '../../src/causes/all.ts';
import { type Cause, splitOf, titleOf } from '../../src/causes/cause.ts';
import { proofFor } from '../../src/causes/proof-of-cure.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { standsFor } from '../../src/survey/survey-of.ts';
import { FAULTS } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { linesOf } from './found.ts';
import { ON_UNIT, onBike } from './on-bike.ts';

/* What is not on the bike is not to be unplugged, watched or turned down. Common sense, no published source. */

const NO_AMP: readonly Rig[] = [
  { ...ON_UNIT, amps: [] },
  { ...ON_UNIT, amps: [], unitKind: 'replaced' },
];
const canHave = (cause: Cause, rig: Rig): boolean =>
  FAULTS.some((fault) => standsFor(cause, fault) && fault.fits(healthyWorld(rig)));
const possible = CAUSES.flatMap((cause) => {
  const rig = NO_AMP.find((one) => canHave(cause, one));
  return rig ? [[cause.id, cause, onBike(rig)] as const] : [];
});

/** “An amplifier” is one that nobody should buy. Any other stands on the bike, and so do its gain and its light. */
const AS_IF_THERE =
  /\b(the|its|this|each|another|new|stronger|off an) amplifier|amplifiers? (gets|stays|switch)|\bgain (by|set|to|down)|\b(light (clear|normal)|switch off at that voltage)|they have been tried/i;

describe('on a bike without an amplifier', () => {
  it('most causes of a silent or ugly speaker are possible', () => expect(possible.length).toBeGreaterThan(35));

  it.each(possible)('%s speaks of none as if it were there', (_, cause, f) => {
    const remedy = cause.remedy(f);
    const { byMeter, without } = splitOf(cause, f);
    const lines = [
      titleOf(cause, f),
      byMeter,
      without,
      ...linesOf(remedy),
      ...remedy.numbers.map(({ label }) => label),
    ];
    expect(lines.filter((line) => AS_IF_THERE.test(line))).toEqual([]);
  });
  it('the short of a rear wire that was read is told from the rest by what plays', () => {
    const f = onBike({ ...ON_UNIT, amps: [] }, { 'wire-to-frame': 'shorted' });
    const cause = CAUSES.find(({ id }) => id === 'speaker-wire-to-frame');
    if (!cause) expect.fail('no such cause');
    expect(splitOf(cause, f).byMeter).toMatch(/with which one off do the rest play/);
  });
});

/* A reading shows that a part is whole. Cured is what the rider hears or sees. Common practice, no published source. */
const SENSED =
  /\b(plays?|clean|sounds?|silent|hum|hiss|loud|listen|light|starts?|comes on|stays on|wakes|flickers?|dark|the same|whole|tone|speakers? clean|quiet|follow voices)\b/i;

describe('the proof of every cure', () => {
  it.each(CAUSES.map((cause) => [cause.id, cause] as const))('%s ends in what is heard or seen', (_, cause) => {
    for (const f of [onBike({}), ...NO_AMP.map((rig) => onBike(rig))]) {
      const { proofOfCure } = cause.remedy(f);
      expect(proofOfCure.byEar).toMatch(SENSED);
      const { first, sensed } = proofFor(proofOfCure, true);
      expect(sensed ?? first).toContain(proofOfCure.byEar.slice(1));
    }
  });
});
