import { describe, expect, it } from 'vitest';
import { observe } from '../../src/observe/index.ts';
import { ampSwitches } from '../../src/steps/amplifier/amp-switches.ts';
import { gainLowest } from '../../src/steps/amplifier/gain-lowest.ts';
import { highpassTry } from '../../src/steps/amplifier/highpass-try.ts';
import { speakerPapers } from '../../src/steps/amplifier/speaker-papers.ts';
import { bassOrAll } from '../../src/steps/ears/bass-or-all.ts';
import { cleanSource } from '../../src/steps/ears/clean-source.ts';
import { conePress } from '../../src/steps/ears/cone-press.ts';
import { volumeOnset } from '../../src/steps/ears/volume-onset.ts';
import { whereHarsh } from '../../src/steps/ears/where-harsh.ts';
import { outcomeOf } from '../../src/steps/outcome.ts';
import { tonesOff } from '../../src/steps/profile/tones-off.ts';
import { phoneFlat } from '../../src/steps/settings/phone-flat.ts';
import { unitFlat } from '../../src/steps/settings/unit-flat.ts';
import type { Step } from '../../src/steps/step.ts';
import { FAULTS, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { EXACT_METER } from '../../src/world/meter.ts';
import { COMPLAINTS, type Ridden, ridden } from '../../src/world/symptoms/index.ts';
import { bikesOf, type Named, parse, type RowMeans, seeded, shownAt } from './compare.ts';
import { MATRIX_DISTORTION_AT_VOLUME } from './matrix-distortion-at-volume.ts';
import { TWENTY_RIGS } from './rigs.ts';

const is = (step: { readonly id: string }, words: Named['words'] = {}): Named => ({ step: step as Step, words });

/** Tests of the matrix, as steps of ours. */
const TESTS: Readonly<Record<string, Named>> = {
  'other-source': is(cleanSource),
  'where-harsh': is(whereHarsh, {
    all: 'everywhere',
    front: 'one-pair',
    rear: 'one-pair',
    ...Object.fromEntries(['front-left', 'front-right', 'rear-left', 'rear-right'].map((one) => [one, 'one-speaker'])),
  }),
  // Whose scale has how many steps nobody knows: below the last ones is below the last ones.
  'volume-onset': is(volumeOnset, { upper: 'middle' }),
  'bass-or-all': is(bassOrAll, { bass: 'bass-only' }),
  'gain-down': is(gainLowest, { harsh: 'still-harsh' }),
  'highpass-on': is(highpassTry, { cured: 'clean', 'no-change': 'still-harsh', already: 'still-harsh' }),
  'amp-switches-look': is(ampSwitches),
  'cone-look-feel': is(conePress, { loose: 'loose-mount' }),
  'bass-ratio': is(tonesOff),
  'paper-check': is(speakerPapers, { over: 'over-power' }),
};

/** The build of the matrix: one amplifier for all, made for any output. */
const allOnAmp: RowMeans['on'] = ({ frontFedBy, rearFedBy, unitKind, amps = [] }) =>
  frontFedBy === 'amp' &&
  rearFedBy === 'amp' &&
  unitKind === 'factory' &&
  amps.length === 1 &&
  amps.every(({ needs }) => needs !== 'unaltered');
const noAmp: RowMeans['on'] = ({ amps, unitKind }) => amps?.length === 0 && unitKind === 'factory';
const row = (...faults: readonly string[]): RowMeans => ({ faults, on: allOnAmp });

/** Rows of the matrix, as faults of ours. What takes an amplifier down is looked for elsewhere, by its lamp. */
const ROWS: Readonly<Record<string, RowMeans>> = {
  'unaltered-profile-with-amp': row('unaltered-profile-with-amp'),
  'profile-reverted': row('profile-reverted@level'),
  'unit-output-driven-too-far @no-amp': { faults: ['unit-output-driven-too-far'], on: noAmp },
  'amp-input-too-low @unit-at-its-limit': row('amp-input-too-low@unit-at-its-limit'),
  'range-too-sensitive': row('range-too-sensitive'),
  'gain-too-high': row('gain-too-high'),
  'highpass-off-with-boost': row('highpass-off-with-boost'),
  'phone-tone-changed': row('phone-tone-changed@bass-up'),
  'loudness-or-speed-volume': row('loudness-or-speed-volume@bass-up'),
  'coil-rubbing-or-cone-torn': row(
    'coil-rubbing-or-cone-torn',
    'coil-rubbing-or-cone-torn@far',
    'coil-rubbing-or-cone-torn@rear',
    'coil-rubbing-or-cone-torn@rear-far',
  ),
  'speaker-underrated': row('speaker-underrated'),
  'speaker-mount-loose': row('speaker-mount-loose@front', 'speaker-mount-loose@rear'),
};

/** Where the circuit shows something that the hand did not write down. */
const BELIEVED: Readonly<Record<string, string>> = {
  // A lowered output has room to be turned up: there it is the amplifier that ends first.
  'amp-input-too-low @unit-at-its-limit, gain-down': 'clean',
  // A hand misses one in ten.
  'coil-rubbing-or-cone-torn, cone-look-feel': 'smooth',
  'speaker-mount-loose, cone-look-feel': 'smooth',
  // The selectors are read for what is wired; a high-pass that is off fits every wiring. Trying it tells.
  'highpass-off-with-boost, amp-switches-look': 'right',
  // A mild lift behind a flat profile shows only where the rest ends, too.
  'loudness-or-speed-volume, volume-onset': 'near-top',
  'phone-tone-changed, volume-onset': 'near-top',
  // The high-pass of a sound build is on, and takes no power off what it passes.
  'speaker-mount-loose, highpass-on': 'still-harsh',
  'speaker-underrated, highpass-on': 'still-harsh',
  // Two speakers on a rear channel take more volts off a supply that is already loaded than the front pair.
  'unit-output-driven-too-far @no-amp, where-harsh': 'one-pair',
};

const cells = parse(MATRIX_DISTORTION_AT_VOLUME);
const rigs = Object.values(TWENTY_RIGS);

describe('what people find on a bike that distorts', () => {
  it('has rows and tests that the matrix has', () => {
    for (const name of Object.keys(ROWS)) expect([...cells.keys()]).toContain(name);
    const [first] = cells.values();
    for (const test of Object.keys(TESTS)) expect([...(first?.keys() ?? [])]).toContain(test);
  });
  it('is what people of the trade say of each fault, but where the circuit has a reason', () => {
    const unlike: Record<string, string> = {};
    for (const [fault, means] of Object.entries(ROWS)) {
      const bikes = bikesOf('distortion-at-volume', means, rigs);
      expect(bikes.length, fault).toBeGreaterThan(0);
      for (const [test, named] of Object.entries(TESTS)) {
        const cell = cells.get(fault)?.get(test) ?? expect.fail(`${fault}: ${test}`);
        if (cell === 'any') continue;
        // Low and middle are one on our scale.
        const hand = new Set(cell.split('/').map((word) => (word === 'low' ? 'middle' : word)));
        const other = [...shownAt(named, bikes)].filter((word) => word !== 'n/a' && !hand.has(word));
        if (other.length > 0) unlike[`${fault}, ${test}`] = other.toSorted().join('/');
      }
    }
    expect(unlike).toEqual(BELIEVED);
  });
});

describe('what people find on a bike that does not distort', () => {
  const sounds = rigs
    .map((rig) => ridden(healthyWorld(rig)))
    .filter((bike) => COMPLAINTS['distortion-at-volume'](bike) === 'no');
  const saidOf = (step: { readonly id: string }, bike: Ridden, seed: number) => {
    const situation = { rig: bike.world.rig, facts: {} };
    const answer = observe(step as Step, bike, situation, { meter: EXACT_METER, draw: seeded(seed) });
    return outcomeOf(step as Step, { ...situation, facts: { [step.id]: answer } });
  };
  const allSaid = (step: { readonly id: string }, bikes: readonly Ridden[]) =>
    [
      ...new Set(bikes.flatMap((bike) => Array.from({ length: 20 }, (_, seed) => saidOf(step, bike, seed + 1)))),
    ].toSorted();

  it('comes clean by nothing: only what was ugly can', () => {
    expect(sounds.length).toBeGreaterThan(10);
    for (const step of [unitFlat, phoneFlat, highpassTry])
      expect(allSaid(step, sounds), step.id).not.toContain('cured');
    // Some have the bass well up for taste.
    expect(allSaid(unitFlat, sounds)).toEqual(['no-change', 'was-up']);
    expect(allSaid(phoneFlat, sounds)).toEqual(['no-change', 'was-up']);
  });
  it('has no place, no start and no notes of it, and no other source to compare it with', () => {
    for (const step of [whereHarsh, volumeOnset, bassOrAll, cleanSource])
      expect(allSaid(step, sounds), step.id).toEqual(['cannot']);
  });
  it('is not what it is where the tone control or the phone was all that was wrong', () => {
    const loud = bikesOf('distortion-at-volume', row('loudness-or-speed-volume@bass-up'), rigs);
    const phone = bikesOf('distortion-at-volume', row('phone-tone-changed@bass-up'), rigs);
    expect(allSaid(unitFlat, loud)).toContain('cured');
    expect(allSaid(phoneFlat, loud)).not.toContain('cured');
    expect(allSaid(phoneFlat, phone)).toContain('cured');
    expect(allSaid(unitFlat, phone)).not.toContain('cured');
  });
});

describe('where it distorts', () => {
  // Whoever turns it up further hears the others join in. Common practice, no published source.
  it('is said of where it starts: of two amplifiers the one with too much gain', () => {
    const tooHigh =
      FAULTS.find(({ id, variant }) => id === 'gain-too-high' && !variant) ?? expect.fail('no such fault');
    const two = rigs.filter(({ amps = [] }) => amps.length === 2);
    expect(two.length).toBeGreaterThan(0);
    for (const rig of two) {
      const front = (rig.amps ?? []).findIndex(({ drives }) => drives === 'front');
      const bike = ridden(tooHigh.apply({ ...healthyWorld(rig), about: front }, severityAt(tooHigh, 0.9)));
      const situation = { rig, facts: {} };
      const answer = observe(whereHarsh as unknown as Step, bike, situation, { meter: EXACT_METER, draw: seeded(1) });
      expect(answer).toEqual({ option: 'front' });
    }
  });
});
