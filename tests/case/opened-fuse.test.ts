import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { openedTheFuse, renewsFuse } from '../../src/case/opened-fuse.ts';
import { late } from '../../src/likelihoods/amp-wont-turn-on.ts';
import { type Answers, caseOn, give, openIn, stand } from '../journey.ts';

/** A dark amplifier on a wire whose main fuse is burnt through. */
const BURNT: Answers = {
  'which-amp': 'rear',
  'rear-amp-turn-on': 'wire',
  'unit-kind': 'factory',
  'amp-history': 'stopped',
  'last-change': 'nothing',
  'fuses-blown': 'none',
  'tried-already': 'nothing',
  'amp-light': 'off',
  'what-else': 'nothing',
  'tools-at-hand': 'meter',
  'amp-terminals': { batteryV: '12.5', plusV: '0', groundV: '0.02' },
  'fuse-look': 'blown',
};
const begun = give(caseOn(ampWontTurnOn), BURNT);
const fuse = late.causes['main-fuse-open'] ?? expect.fail('no main-fuse-open');
const { repair } = fuse.remedy(stand(ampWontTurnOn, begun).findings);
const opened = openedTheFuse(begun, fuse.id, repair);

/** The likeliest cause once it is told when the new fuse opened. */
const leads = (when: string): string | undefined =>
  stand(ampWontTurnOn, give(opened, { 'fuses-blown': when, 'amp-light': 'off', 'what-else': 'nothing' })).decided
    ?.reckoning?.shares[0]?.cause;

describe('a new fuse that opened', () => {
  it('is offered by a fix that renews one, and by no other', () => {
    expect(renewsFuse(repair)).toBe(true);
    const { findings } = stand(ampWontTurnOn, begun);
    const names = Object.values(late.causes)
      .filter((cause) => renewsFuse(cause.remedy(findings).repair))
      .map(({ id }) => id);
    expect(names.toSorted()).toEqual([
      'amp-body-fuse-open',
      'amp-shorted-inside',
      'main-fuse-open',
      'plus-lead-chafed',
    ]);
  });
  it('goes on with the case: the fix is noted, the fuse stands as an answer, and when it opened is asked', () => {
    const standing = stand(ampWontTurnOn, opened);
    expect(standing.repairs).toEqual(['main-fuse-open']);
    expect(standing.facts['spare-fuse']).toEqual({ option: 'opens' });
    expect(openIn(standing)).toBe('fuses-blown?');
  });
  // At once: the lead touches the frame. At switch-on: the amplifier is shorted. Common practice, no published source.
  it('points at a short of the lead where it opened at once, and of the amplifier where it opened at switch-on', () => {
    expect(leads('at-once')).toBe('plus-lead-chafed');
    expect(leads('switch-on')).toBe('amp-shorted-inside');
  });
  it('of the amplifier itself is read as burnt through again', () => {
    const body = openedTheFuse(begun, 'amp-body-fuse-open', [{ do: 'renew-fuse', fuse: 'amp-body' }]);
    expect(stand(ampWontTurnOn, body).facts['body-fuse']).toEqual({ option: 'blown' });
  });
});
