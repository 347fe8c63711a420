import { describe, expect, it } from 'vitest';
import { drawFrom } from '../../src/observe/draw.ts';
import { observe } from '../../src/observe/index.ts';
import { engineCompare } from '../../src/steps/ears/engine-compare.ts';
import { revsCompare } from '../../src/steps/ears/revs-compare.ts';
import { tonesOff } from '../../src/steps/profile/tones-off.ts';
import { tonesRunning } from '../../src/steps/profile/tones-running.ts';
import { speedOff } from '../../src/steps/settings/speed-off.ts';
import type { Step } from '../../src/steps/step.ts';
import { FAULTS, keyOf, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { EXACT_METER } from '../../src/world/meter.ts';
import { COMPLAINTS, type Ridden, ridden } from '../../src/world/symptoms/index.ts';
import { sagsAtIdle } from '../../src/world/symptoms/tone.ts';
import { bikesOf, type Named, parse, type RowMeans, shownAt } from './compare.ts';
import { MATRIX_EQ_CHANGES } from './matrix-eq-changes-when-engine-starts.ts';
import { TWENTY_RIGS } from './rigs.ts';

const is = (step: { readonly id: string }, words: Named['words'] = {}): Named => ({ step: step as Step, words });

/** Tests of the matrix, as steps of ours. All of it louder is a change of tone to whoever only hears a change. */
const TESTS: Readonly<Record<string, Named>> = {
  'engine-compare': is(engineCompare, { bass: 'tone-changes', louder: 'tone-changes' }),
  'settings-flat': is(speedOff, { none: 'no-change', speed: 'cured', menu: 'cured' }),
  'bass-ratio': is(tonesOff),
  'bass-ratio-running': { ...is(tonesRunning, {}), after: [tonesOff as unknown as Step] },
};

/** Where a sound bike of the build does it by design, nothing else is told from that. */
const factory: RowMeans['on'] = ({ unitKind, amps = [] }) =>
  unitKind === 'factory' && amps.length > 0 && amps.every(({ needs }) => needs !== 'unaltered');
const replaced: RowMeans['on'] = ({ unitKind }) => unitKind === 'replaced';
const ROWS: Readonly<Record<string, RowMeans>> = {
  'unaltered-profile-with-amp': { faults: ['unaltered-profile-with-amp'], on: factory },
  'profile-reverted': { faults: ['profile-reverted@level'], on: factory },
  'amplified-profile-eq-changes': { faults: ['amplified-profile-eq-changes'], on: factory },
  'loudness-or-speed-volume': { faults: ['loudness-or-speed-volume@speed'], on: factory },
  'bass-masked-by-noise': { faults: ['bass-masked-by-noise'], on: factory },
  'replaced-unit-setting @replaced': { faults: ['replaced-unit-setting@engine'], on: replaced },
};

/** Where the circuit shows something that the hand did not write down. */
const BELIEVED: Readonly<Record<string, string>> = {
  // With the ear at the speaker some hear that nothing changes.
  'bass-masked-by-noise, engine-compare': 'same',
};

const cells = parse(MATRIX_EQ_CHANGES);
const rigs = Object.values(TWENTY_RIGS);

describe('what people find on a bike whose tone changes with the engine', () => {
  it('is what people of the trade say of each fault, but where the circuit has a reason', () => {
    const unlike: Record<string, string> = {};
    for (const [fault, means] of Object.entries(ROWS)) {
      const bikes = bikesOf('eq-changes-when-engine-starts', means, rigs);
      expect(bikes.length, fault).toBeGreaterThan(0);
      for (const [test, named] of Object.entries(TESTS)) {
        const cell = cells.get(fault)?.get(test) ?? expect.fail(`${fault}: ${test}`);
        if (cell === 'any') continue;
        const hand = new Set(cell.split('/'));
        const other = [...shownAt(named, bikes)].filter((word) => word !== 'n/a' && !hand.has(word));
        if (other.length > 0) unlike[`${fault}, ${test}`] = other.toSorted().join('/');
      }
    }
    expect(unlike).toEqual(BELIEVED);
  });
});

const withFault = (key: string, name: string, share = 0.5): Ridden => {
  const fault = FAULTS.find((one) => keyOf(one) === key) ?? expect.fail(`no fault ${key}`);
  return ridden(fault.apply(healthyWorld(TWENTY_RIGS[name] ?? {}), severityAt(fault, share)));
};
const BY_WIRE = 'front and rear on one amplifier by wire';
const seenBy = (step: { readonly id: string }, bike: Ridden, seed = 'seen') => {
  const answer = observe(
    step as Step,
    bike,
    { rig: bike.world.rig, facts: {} },
    { meter: EXACT_METER, draw: drawFrom(seed) },
  );
  return 'option' in answer ? answer.option : 'cannot';
};
const complains = (bike: Ridden) => COMPLAINTS['eq-changes-when-engine-starts'](bike);

describe('the complaint', () => {
  it('is there by design on a bike whose profile is right and has two tunings, and on no other sound one', () => {
    for (const [name, rig] of Object.entries(TWENTY_RIGS)) {
      const sound = healthyWorld(rig);
      const design = sound.unit.profile.engineDifference !== null;
      expect(complains(ridden(sound)), name).toBe(design ? 'yes' : 'no');
    }
  });
  it('is there where a noise comes with the engine, and where a weak battery clears as it charges', () => {
    expect(complains(withFault('ground-loop-two-points', BY_WIRE, 0.9))).toBe('yes');
    const weak = ['battery-worn', 'regulator-out-of-range@low'].some((key) =>
      Object.keys(TWENTY_RIGS).some((name) =>
        [0.3, 0.6, 0.9].some((share) => complains(withFault(key, name, share)) === 'yes'),
      ),
    );
    expect(weak).toBe(true);
  });
  // At idle the alternator makes least: more than that is taken from the battery. Common practice, no published source.
  it('is there where heated gear takes more than is made at idle, and revs or the gear off put it right', () => {
    const found = Object.keys(TWENTY_RIGS)
      .flatMap((name) => [0.05, 0.5, 0.95].map((share) => withFault('load-above-idle-output', name, share)))
      .filter(sagsAtIdle);
    expect(found.length).toBeGreaterThan(0);
    for (const bike of found) {
      expect(complains(bike)).toBe('yes');
      expect(['gear', 'revs']).toContain(seenBy(revsCompare, bike));
    }
    expect(found.some((bike) => seenBy(revsCompare, bike) === 'gear')).toBe(true);
  });
  it('is not there for what sounds ugly in both states', () => {
    expect(complains(withFault('coil-rubbing-or-cone-torn', BY_WIRE))).toBe('no');
    expect(complains(withFault('highpass-off-with-boost', BY_WIRE))).toBe('no');
  });
});
