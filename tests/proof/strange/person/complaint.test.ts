import { describe, expect, it } from 'vitest';
import { oddRider } from '../../../../src/proof/strange/index.ts';
import type { Step } from '../../../../src/steps/step.ts';
import { careful } from '../bikes.ts';
import { bikeWith, oddity, optionOf, rider, SOUND } from '../riders.ts';

/** What somebody makes of the honest answer of a step that is asked of the complaint. */
function toldInstead(id: string, step: string, options: readonly string[], honest: string, bike = SOUND) {
  const asked = { id: step, kind: 'choice', options: Object.fromEntries(options.map((one) => [one, one])) };
  const sees = oddRider(() => ({ option: honest }), [oddity(id)], 'told');
  return sees(asked as unknown as Step, bike, { rig: bike.world.rig, facts: {} });
}

describe('a quiet rear', () => {
  const quiet = bikeWith('amp-input-too-low@weak');
  it('is told as a silent one, and a rear that plays or is silent as what it is', () => {
    const sees = rider('quiet-told-as-silent');
    expect(optionOf(careful, 'four-corners', quiet)).toBe('rear-weak');
    expect(optionOf(sees, 'four-corners', quiet)).toBe('no-rear');
    expect(optionOf(sees, 'four-corners', SOUND)).toBe('all');
    const which = (honest: string, bike = quiet) =>
      toldInstead('quiet-told-as-silent', 'which-silent', ['both', 'left', 'weak'], honest, bike);
    expect(which('weak')).toEqual({ option: 'both' });
    expect(which('left')).toEqual({ option: 'left' });
    expect(which('weak', SOUND)).toEqual({ option: 'weak' });
  });
  it('that only the fader makes quiet is loud with the fader at its end, and told so', () => {
    const faded = bikeWith('fader-or-balance-off@weak');
    expect(optionOf(rider('quiet-told-as-silent'), 'four-corners', faded)).toBe('all');
    expect(toldInstead('quiet-told-as-silent', 'which-silent', ['both', 'weak'], 'weak', faded)).toEqual({
      option: 'both',
    });
  });
});

describe('one side of the rear', () => {
  it('is told as both', () => {
    const one = bikeWith('coil-open@one-rear');
    const sees = rider('one-side-told-as-both');
    expect(optionOf(careful, 'four-corners', one)).toBe('one-corner');
    expect(optionOf(sees, 'four-corners', one)).toBe('no-rear');
    expect(toldInstead('one-side-told-as-both', 'which-silent', ['both', 'left'], 'left', one)).toEqual({
      option: 'both',
    });
    expect(oddity('one-side-told-as-both').fits(bikeWith('coil-open@both-rear').world)).toBe(false);
  });
});

describe('what comes and goes', () => {
  it('is told as what stopped, or as what always is', () => {
    const loose = bikeWith('battery-lug-loose@amp-ring-on-bumps');
    const sees = rider('comes-and-goes-told-as-steady');
    expect(optionOf(careful, 'amp-history', loose)).toBe('comes-and-goes');
    expect(optionOf(sees, 'amp-history', loose)).toBe('stopped');
    // One time in ten nobody can say when, and this seed draws it: both are what comes and goes.
    expect(['bumps', 'unknown']).toContain(optionOf(careful, 'amp-goes-off', loose));
    expect(optionOf(sees, 'amp-goes-off', loose)).toBe('always');
    const when = toldInstead('comes-and-goes-told-as-steady', 'when-silent', ['always', 'wet'], 'wet', loose);
    expect(when).toEqual({ option: 'always' });
  });
});
