import { describe, expect, it } from 'vitest';
import {
  candidates,
  EVERY_PROFILE,
  NOTHING_KNOWN_OF_PROFILE,
  type ProfileNow,
  profileNow,
  type Tri,
  toldAgainstMeter,
} from '../../../src/plan/profile/profile.ts';
import { whyNoProfile } from '../../../src/plan/profile/profile-clash.ts';
import { known } from '../known.ts';

const TRIS: readonly Tri[] = ['yes', 'no', 'unknown'];
const EVERY_STATE: readonly ProfileNow[] = TRIS.flatMap((rear) =>
  TRIS.flatMap((lowered) => TRIS.flatMap((boosted) => TRIS.map((sameEq) => ({ rear, lowered, boosted, sameEq })))),
);
const state = (properties: Partial<ProfileNow>): ProfileNow => ({ ...NOTHING_KNOWN_OF_PROFILE, ...properties });

describe('candidates', () => {
  it('are all profiles while nothing is known', () => {
    expect(candidates(NOTHING_KNOWN_OF_PROFILE, 'two')).toEqual(EVERY_PROFILE);
  });
  it('are one profile for each full set of properties that is stored', () => {
    expect(candidates({ rear: 'no', lowered: 'no', boosted: 'yes', sameEq: 'no' })).toEqual(['unaltered']);
    expect(candidates({ rear: 'yes', lowered: 'yes', boosted: 'no', sameEq: 'yes' })).toEqual(['amplified-same']);
  });
  it('count the unaltered profile of a bike built with rear speakers as rear-on', () => {
    expect(candidates(state({ boosted: 'yes' }), 'four')).toEqual(['rear-on']);
    expect(candidates(state({ boosted: 'yes' }), 'two')).toEqual(['unaltered', 'rear-on']);
  });
});

describe('whyNoProfile', () => {
  it.each(['two', 'four', undefined] as const)(
    'gives a reason exactly when no profile fits, built with %s',
    (with_) => {
      expect(EVERY_STATE).toHaveLength(81);
      for (const now of EVERY_STATE) {
        expect(whyNoProfile(now, with_).length > 0).toBe(candidates(now, with_).length === 0);
      }
    },
  );
  it.each([
    ['lowered with the boost', { lowered: 'yes', boosted: 'yes' }, /lowered level and the bass boost/],
    ['lowered with a silent rear', { lowered: 'yes', rear: 'no' }, /lowered level and rear channels that are off/],
    ['full level with the same EQ', { lowered: 'no', sameEq: 'yes' }, /full level and the same EQ/],
    ['full level without the boost', { lowered: 'no', boosted: 'no' }, /full level and no bass boost/],
  ] as const)('names %s and what to read again', (_, properties, says) => {
    const [clash] = whyNoProfile(state(properties));
    expect(clash?.says).toMatch(says);
    expect(clash?.check).toMatch(/again/);
  });
});

describe('profileNow', () => {
  it('takes a bike that nobody changed as delivered', () => {
    expect(profileNow(known({ 'profile-source': 'never' }, { deliveredWith: 'two' }))).toEqual({
      rear: 'no',
      lowered: 'no',
      boosted: 'yes',
      sameEq: 'no',
    });
    expect(profileNow(known({ 'profile-source': 'never' }, { deliveredWith: 'four' })).rear).toBe('yes');
    expect(profileNow(known({ 'profile-source': 'never' })).rear).toBe('unknown');
  });
  it('does not take it so after a reflash', () => {
    const after = known({ 'profile-source': 'never', 'planned-change': 'after-reflash' }, { deliveredWith: 'two' });
    expect(profileNow(after)).toEqual(NOTHING_KNOWN_OF_PROFILE);
  });
  it('lets a reading beat a paper, and says that they disagree', () => {
    const both = known({ 'profile-source': 'record', 'paper-boosted': 'yes', 'tones-off': 'flat' });
    expect(profileNow(both).boosted).toBe('no');
    expect(toldAgainstMeter(both)).toEqual(['boosted']);
  });
  it('knows nothing from a reading that is unclear, cut, or could not be taken', () => {
    for (const outcome of ['unclear', 'cut', 'cannot', undefined]) {
      expect(profileNow(known({ 'tones-off': outcome })).boosted).toBe('unknown');
    }
  });
  it('takes any sound on the rear pairs as rear channels that are on', () => {
    for (const outcome of ['ok', 'uneven', 'one-only']) {
      expect(profileNow(known({ 'rear-pair': outcome })).rear).toBe('yes');
    }
    expect(profileNow(known({ 'rear-pair': 'none' })).rear).toBe('no');
  });
  it('forgets a paper when the answer becomes “I can measure it now”', () => {
    expect(
      toldAgainstMeter(known({ 'profile-source': 'measure', 'paper-boosted': 'yes', 'tones-off': 'flat' })),
    ).toEqual([]);
  });
});
