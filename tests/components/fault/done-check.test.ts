import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../../machines/amp-wont-turn-on.ts';
import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { CAUSES } from '../../../src/causes/all.ts';
import { splitOf } from '../../../src/causes/cause.ts';
import { viewOf } from '../../../src/components/fault/view.ts';
import { late as ampLate } from '../../../src/likelihoods/amp-wont-turn-on.ts';
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
      'You did its check: “Pins of the signal plug: all pins level”. That speaks against it.',
    );
    expect(checkOf('input-pin-pushed-back', { 'tools-at-hand': 'none' })).toMatch(/look into it from the front/);
  });
  it('is said to speak against its cause only where it does', () => {
    // A pin that stands back is seen by eye: common practice, no published source.
    const back = { 'pin-look': 'back', 'tools-at-hand': 'none' };
    expect(checkOf('input-pin-pushed-back', back)).toMatch(/^You did its check/);
    expect(checkOf('input-pin-pushed-back', back)).not.toMatch(/against/);
  });
  it('stays to be done where it could not be, and with a meter where that tells more', () => {
    expect(checkOf('input-pin-pushed-back', { 'pin-look': null, 'tools-at-hand': 'none' })).toMatch(/from the front/);
    expect(checkOf('input-pin-pushed-back', { 'pin-look': 'level', 'tools-at-hand': 'meter' })).toMatch(/400 Hz tone/);
  });
  it('is any of the steps that show the same', () => {
    for (const step of ['input-plug', 'pin-look'] as const)
      expect(
        viewOf(
          ampWontTurnOn,
          stand(ampWontTurnOn, give(caseOn(ampWontTurnOn), { [step]: 'out', 'tools-at-hand': 'none' })),
          ampLate,
        ).checkOf('amp-input-plug-off'),
      ).toMatch(/^You did its check: “(Pins of the|The amplifier’s) signal plug/);
  });
  it('is not told as a thing to do by the fix either', () => {
    const f = (known: Readonly<Record<string, string>>) => onBike({}, known);
    const fix = (known: Readonly<Record<string, string>>) =>
      CAUSES.find(({ id }) => id === 'amp-input-plug-off')
        ?.remedy(f(known))
        .fix.join(' ');
    expect(fix({})).toMatch(/Pull the signal plug and look at its pins/);
    expect(fix({ 'input-plug': 'out' })).not.toMatch(/look at its pins/);
    expect(fix({ 'pin-look': 'out' })).not.toMatch(/look at its pins/);
  });
  it('is a step that there is', () => {
    const named = Object.values(CAUSES).flatMap((cause) =>
      Object.values(splitOf(cause, onBike({})).asStep ?? {}).flat(),
    );
    expect(named.length).toBeGreaterThan(25);
    for (const id of named) expect(ALL_STEPS).toHaveProperty([id]);
  });
});
