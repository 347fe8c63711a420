import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { CAUSES } from '../../../src/causes/all.ts';
import { splitOf } from '../../../src/causes/cause.ts';
import { viewOf } from '../../../src/components/fault/view.ts';
import { late } from '../../../src/likelihoods/no-rear-sound.ts';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import { onBike } from '../../causes/on-bike.ts';
import { type Answers, caseOn, give, stand } from '../../journey.ts';

const checkOf = (cause: string, answers: Answers) =>
  viewOf(noRearSound, stand(noRearSound, give(caseOn(noRearSound), answers)), late).checkOf(cause);

describe('a check that was done as a step', () => {
  it('is not asked for again, but told with what it showed', () => {
    const looked = { 'pin-look': 'level', 'tools-at-hand': 'none' };
    expect(checkOf('input-pin-pushed-back', looked)).toBe(
      'You did its check: “Pins of the signal plug: all pins level”.',
    );
    expect(checkOf('input-pin-pushed-back', { 'tools-at-hand': 'none' })).toMatch(/look into it from the front/);
  });
  it('stays to be done where it could not be, and with a meter where that tells more', () => {
    expect(checkOf('input-pin-pushed-back', { 'pin-look': null, 'tools-at-hand': 'none' })).toMatch(/from the front/);
    expect(checkOf('input-pin-pushed-back', { 'pin-look': 'level', 'tools-at-hand': 'meter' })).toMatch(/400 Hz tone/);
  });
  it('is a step that there is', () => {
    const named = Object.values(CAUSES).flatMap((cause) => Object.values(splitOf(cause, onBike({})).asStep ?? {}));
    expect(named.length).toBeGreaterThan(25);
    for (const id of named) expect(ALL_STEPS).toHaveProperty([id]);
  });
});
