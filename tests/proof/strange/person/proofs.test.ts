import { describe, expect, it } from 'vitest';
import { careful } from '../bikes.ts';
import { bikeWith, oddity, optionOf, readingsOf, rider, SOUND } from '../riders.ts';

describe('twelve volts without a load', () => {
  it('are there behind a bad contact that a lamp would show', () => {
    const bad = bikeWith('fuse-holder-resistive@severe');
    const drop = (sees: typeof careful) =>
      Number.parseFloat(readingsOf(sees, 'supply-under-load', bad)['plusDropV'] ?? '');
    expect(drop(careful)).toBeGreaterThan(5);
    expect(drop(rider('volts-without-load'))).toBeLessThan(0.1);
  });
  it('are not there behind an open one', () => {
    const open = bikeWith('fuse-holder-open');
    const { ampV = '' } = readingsOf(rider('volts-without-load'), 'supply-under-load', open);
    expect(Number.parseFloat(ampV)).toBeLessThan(0.5);
  });
});

describe('other leads of the same kind', () => {
  it('change nothing where better ones would', () => {
    const lost = bikeWith('amp-ground-resistive@severe');
    expect(optionOf(careful, 'temporary-leads', lost)).toBe('ground');
    expect(optionOf(rider('one-kind-of-cable'), 'temporary-leads', lost)).toBe('neither');
    expect(oddity('one-kind-of-cable').fits(SOUND.world)).toBe(false);
  });
});

describe('a fuse that looks whole', () => {
  it('is open, and told as whole', () => {
    const open = bikeWith('main-fuse-open');
    expect(optionOf(careful, 'fuse-look', open)).toBe('blown');
    expect(optionOf(rider('fuse-looks-whole'), 'fuse-look', open)).toBe('whole');
    expect(optionOf(rider('fuse-looks-whole'), 'body-fuse', bikeWith('amp-body-fuse-open'))).toBe('whole');
  });
});

describe('somebody who looked', () => {
  it.each([
    ['main-fuse-open', 'fuse-look', 'blown', 'whole'],
    ['amp-ground-resistive@severe', 'rings-look', 'ground', 'tight'],
    ['lid-contacts-dirty@both-rear', 'contacts-look', 'film', 'clean'],
    ['channel-mode-wrong', 'amp-switches', 'mode', 'right'],
  ] as const)('saw nothing of %s at %s', (key, step, honest, told) => {
    const bike = bikeWith(key);
    expect(oddity('looked-and-all-is-well').fits(bike.world)).toBe(true);
    expect(optionOf(careful, step, bike)).toBe(honest);
    expect(optionOf(rider('looked-and-all-is-well'), step, bike)).toBe(told);
  });
  it('tells what he hears and reads as ever', () => {
    const bike = bikeWith('main-fuse-open');
    for (const step of ['four-corners', 'amp-light'])
      expect(optionOf(rider('looked-and-all-is-well'), step, bike)).toBe(optionOf(careful, step, bike));
    expect(readingsOf(rider('looked-and-all-is-well'), 'fuse-sides', bike)).toEqual(
      readingsOf(careful, 'fuse-sides', bike),
    );
  });
});
