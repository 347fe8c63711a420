import { describe, expect, it } from 'vitest';
import { observe } from '../../src/observe/index.ts';
import { bulbRatio } from '../../src/observe/runs/bulb-to-frame.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { outcomeOf, valuesIn } from '../../src/steps/outcome.ts';
import type { Facts, ReadingStep } from '../../src/steps/step.ts';
import { FAULTS, keyOf, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { EXACT_METER } from '../../src/world/meter.ts';
import type { World } from '../../src/world/state.ts';
import { type Ridden, ridden } from '../../src/world/symptoms/index.ts';
import { expectClose } from '../compute/close.ts';
import { seeded } from './compare.ts';
import { TWENTY_RIGS } from './rigs.ts';

/*
 * What is told and seen of each fault: common practice of the trade, no published source. An outcome that is drawn by
 * chance stands with the others that may be drawn.
 */

const rigNamed = (name: string): Rig => TWENTY_RIGS[name] ?? expect.fail(`no rig ${name}`);
const BY_WIRE = rigNamed('front and rear on one amplifier by wire');
const REAR_ONLY = rigNamed('amplifier on the rear only, by wire');
const LISTENS = rigNamed('amplifier on the rear only that listens');
const LITHIUM: Rig = { ...BY_WIRE, batteryKind: 'lithium' };
const NO_AMP = rigNamed('no amplifier, built with two');

const withFault = (key: string, rig: Rig, share = 0.5): Ridden => {
  const fault = FAULTS.find((one) => keyOf(one) === key) ?? expect.fail(`no fault ${key}`);
  const healthy = healthyWorld(rig);
  expect(fault.fits(healthy), key).toBe(true);
  return ridden(fault.apply(healthy, severityAt(fault, share)));
};
const sound = (rig: Rig) => ridden(healthyWorld(rig));

const stepOf = (id: string) => ALL_STEPS[id] ?? expect.fail(`no step ${id}`);
const FACTS: Facts = { 'meter-digit': { option: '0.001' } };
function said(id: string, bike: Ridden, facts: Facts = {}, seed = 1): string | undefined {
  const situation = { rig: bike.world.rig, facts: { ...FACTS, ...facts } };
  const answer = observe(stepOf(id), bike, situation, { meter: EXACT_METER, draw: seeded(seed) });
  return outcomeOf(stepOf(id), { ...situation, facts: { ...situation.facts, [id]: answer } });
}
/** Everything that different people may say. */
const drawn = (id: string, bike: Ridden, facts: Facts = {}): readonly (string | undefined)[] =>
  [...new Set(Array.from({ length: 60 }, (_, seed) => said(id, bike, facts, seed + 1)))].toSorted();
const changed = (rig: Rig, change: (world: World) => World) => ridden(change(healthyWorld(rig)));

type Row = readonly [step: string, fault: string, rig: Rig, outcomes: string];
const ROWS: readonly Row[] = [
  ['which-silent', 'rear-channels-disabled', NO_AMP, 'both'],
  ['which-silent', 'lid-lead-broken@one-rear', NO_AMP, 'left'],
  ['which-silent', 'rear-control-off@weak', REAR_ONLY, 'weak'],
  ['which-silent', 'main-fuse-open', BY_WIRE, 'front-too'],
  ['which-silent', 'main-fuse-open', REAR_ONLY, 'both'],
  ['which-silent', 'battery-lug-loose@amp-ring-on-bumps', BY_WIRE, 'plays'],
  ['when-silent', 'rear-channels-disabled', NO_AMP, 'always'],
  ['when-silent', 'battery-lug-loose@amp-ring-on-bumps', BY_WIRE, 'bumps/unknown'],
  ['when-silent', 'unit-feed-missing@intermittent', BY_WIRE, 'bumps/steering/unknown'],
  ['when-silent', 'lid-contacts-dirty@both-rear', NO_AMP, 'always/bumps/unknown/wet'],
  ['when-silent', 'amp-heat-protect', BY_WIRE, 'hot/unknown'],
  ['when-silent', 'battery-worn', BY_WIRE, 'loud/unknown'],
  ['when-silent', 'sense-sleeps-in-quiet', LISTENS, 'quiet/unknown'],
  ['fuses-blown', 'wire-chafed@plus-lead', BY_WIRE, 'at-once/none/some/switch-on/unknown'],
  ['fuses-blown', 'remote-wire-open', BY_WIRE, 'loud/none/some/unknown'],
  ['front-plays', 'main-fuse-open', BY_WIRE, 'silent'],
  ['front-plays', 'main-fuse-open', REAR_ONLY, 'plays'],
  ['front-plays', 'coil-open@one', BY_WIRE, 'one-side'],
  ['amp-light', 'amp-dead', BY_WIRE, 'off'],
  // The output stage of a dead channel may hiss on. A speaker whose wire is open hears none of it.
  ['rear-hiss', 'amp-channel-dead@rear-pair', REAR_ONLY, 'hiss/silent'],
  ['rear-hiss', 'coil-open@both-rear', REAR_ONLY, 'silent'],
  ['rear-hiss', 'amp-input-too-low', REAR_ONLY, 'hiss'],
  ['signal-plug-out', 'input-dc', BY_WIRE, 'clears'],
  ['signal-plug-out', 'amp-output-dc', BY_WIRE, 'stays'],
  ['signal-plug-out', 'speaker-wire-to-frame@both-rear', BY_WIRE, 'stays'],
  ['signal-plug-out', 'remote-wire-open', BY_WIRE, 'dark'],
  ['gain-down', 'gain-too-high', BY_WIRE, 'stays-on'],
  ['gain-down', 'amp-load-too-low', BY_WIRE, 'stays-on'],
  ['gain-down', 'shared-ground-screw', BY_WIRE, 'goes-off'],
  ['gain-down', 'main-fuse-open', BY_WIRE, 'cannot'],
  ['water-look', 'water-inside@fault', BY_WIRE, 'dry/wet'],
  ['pin-look', 'input-pin-pushed-back', BY_WIRE, 'back/level'],
  ['pin-look', 'amp-input-plug-off@rear', BY_WIRE, 'level/out'],
  ['wiggle', 'amp-input-plug-off@rear', REAR_ONLY, 'amp-input/no-effect'],
  ['wiggle', 'lid-contacts-dirty@intermittent', NO_AMP, 'rear-run'],
  ['wiggle', 'lid-lead-broken@intermittent', NO_AMP, 'rear-run'],
  ['remote-lamp', 'remote-wire-open', BY_WIRE, 'dark/out'],
  ['remote-lamp', 'remote-source-dead', BY_WIRE, 'dark'],
  ['supply-wiggle', 'remote-wire-open', BY_WIRE, 'no-effect/remote'],
  ['bulb-to-frame', 'speaker-wire-to-frame@both-rear', BY_WIRE, 'to-frame'],
  ['bulb-to-frame', 'speaker-wire-to-frame@lid-moves', BY_WIRE, 'to-frame'],
  ['bulb-to-frame', 'speaker-wire-to-frame@one-rear', NO_AMP, 'to-frame'],
  ['bulb-to-frame', 'speaker-pair-shorted@one-rear', BY_WIRE, 'across'],
  ['bulb-to-frame', 'speaker-pair-shorted@both-rear', NO_AMP, 'across'],
  ['bulb-to-frame', 'coil-open@both-rear', NO_AMP, 'clear'],
  ['second-look', 'second-connector-dirty@open', NO_AMP, 'dirty/none/plays'],
  ['second-look', 'looms-unjoined', NO_AMP, 'apart/none'],
  ['joint-drop', 'amp-terminal-loose@severe', BY_WIRE, 'plus'],
  ['joint-drop', 'fuse-holder-resistive@severe', BY_WIRE, 'ok'],
  ['lowest-volts', 'amp-ground-resistive@severe', BY_WIRE, 'sags'],
  ['lowest-volts', 'main-fuse-open', BY_WIRE, 'none'],
  ['lowest-volts', 'remote-wire-open', BY_WIRE, 'holds'],
  ['lowest-volts', 'amp-dead', BY_WIRE, 'holds'],
  ['charging-volts', 'regulator-out-of-range@low', BY_WIRE, 'low'],
  ['charging-volts', 'regulator-out-of-range@high', BY_WIRE, 'high'],
  ['charging-volts', 'regulator-out-of-range@low', NO_AMP, 'low'],
  ['charging-volts', 'battery-worn', BY_WIRE, 'fills'],
  ['starter-turns', 'battery-worn', BY_WIRE, 'slow'],
  ['starter-turns', 'load-above-idle-output', BY_WIRE, 'slow'],
  ['starter-turns', 'ground-loop-two-points', BY_WIRE, 'brisk'],
  // Up to 0.2 V is usual, more than 0.5 V is bad: common practice, no published source.
  ['battery-ripple', 'ground-loop-two-points', BY_WIRE, 'ok'],
  ['battery-ripple', 'amp-ground-resistive', BY_WIRE, 'ok'],
  ['battery-ripple', 'battery-worn', BY_WIRE, 'raised'],
  ['battery-ripple', 'regulator-ripple', BY_WIRE, 'high'],
  ['battery-ripple', 'stator-phase-lost', BY_WIRE, 'high'],
  ['line-converter', 'ground-loop-two-points', BY_WIRE, 'direct'],
  ['line-converter', 'charge-lead-loop', NO_AMP, 'cannot'],
  ['copper-look', 'plus-lead-clad', BY_WIRE, 'clad'],
  ['copper-look', 'plus-lead-too-thin', BY_WIRE, 'copper'],
  ['shared-screw', 'shared-ground-screw', BY_WIRE, 'cannot/shared'],
  ['battery-kind', 'battery-cuts-off', LITHIUM, 'lithium'],
  ['fuse-look', 'fuse-holder-open', BY_WIRE, 'holder/whole'],
  ['fuse-look', 'main-fuse-open', BY_WIRE, 'blown/whole'],
  // A bad holder may grip the next fuse, for a while. A broken lead has nothing that grips.
  ['spare-fuse', 'fuse-holder-open', BY_WIRE, 'holds/wakes'],
  ['spare-fuse', 'plus-lead-broken', BY_WIRE, 'holds'],
  ['spare-fuse', 'main-fuse-open', BY_WIRE, 'wakes'],
  ['fuse-ohms', 'main-fuse-open', BY_WIRE, 'open'],
  ['fuse-ohms', 'fuse-holder-open', BY_WIRE, 'through'],
  ['fuse-ohms', 'plus-lead-broken', BY_WIRE, 'through'],
  ['amp-ohms', 'water-inside@fault', BY_WIRE, 'leaks'],
  ['amp-ohms', 'water-inside@dark', BY_WIRE, 'leaks'],
  ['amp-ohms', 'amp-output-dc', BY_WIRE, 'ok'],
  ['amp-ohms', 'amp-dead', BY_WIRE, 'ok'],
  ['amp-ohms', 'amp-dead@internal-short', BY_WIRE, 'shorted'],
  ['amp-ohms', 'wire-chafed@plus-lead', BY_WIRE, 'shorted'],
  ['supply-wiggle', 'plus-lead-broken@intermittent', BY_WIRE, 'lead'],
  ['supply-wiggle', 'fuse-holder-resistive', BY_WIRE, 'holder'],
  ['supply-wiggle', 'amp-terminal-loose@bumps', BY_WIRE, 'terminal'],
  ['wiggle', 'unit-feed-missing@intermittent', BY_WIRE, 'unit-plug'],
  ['wiggle', 'input-pin-pushed-back', REAR_ONLY, 'no-effect'],
  ['rings-look', 'shared-ground-screw', BY_WIRE, 'ground/tight'],
  ['rings-look', 'ground-lead-too-thin', BY_WIRE, 'thin'],
  // Too few ohms heat an amplifier on a warm ride as bad cooling does: common practice.
  ['amp-goes-off', 'amp-load-too-low', BY_WIRE, 'hot/loud/unknown'],
  ['breaker-look', 'breaker-trips-hot', BY_WIRE, 'cool/hot'],
  ['breaker-look', 'amp-heat-protect', BY_WIRE, 'cool/fuse'],
  ['lid-check', 'lid-contacts-dirty@weak', NO_AMP, 'cured/reacts'],
  ['lid-check', 'amp-input-too-low@weak', REAR_ONLY, 'weak'],
  ['lid-check', 'rear-plug-off@one-rear', NO_AMP, 'cured'],
  ['fader-centre', 'fader-or-balance-off@weak', NO_AMP, 'cured'],
  ['fader-centre', 'rear-control-off@weak', NO_AMP, 'weak'],
  ['fader-centre', 'coil-open@one-rear', NO_AMP, 'no-change'],
  ['four-corners', 'amp-input-too-low@weak', REAR_ONLY, 'rear-weak'],
  ['four-corners', 'coil-open@one', NO_AMP, 'other'],
  ['input-plug', 'input-pin-pushed-back', LISTENS, 'no-change'],
  ['input-plug', 'amp-input-plug-off@rear', LISTENS, 'cured/out'],
];

describe('what is told and seen of a fault', () => {
  it.each(ROWS)('%s of %s', (step, fault, rig, outcomes) => {
    expect(drawn(step, withFault(fault, rig)).join('/')).toBe(outcomes);
  });
  it('is the engine where a regulator lets the volts rise above what the amplifier stands', () => {
    expect(drawn('when-silent', withFault('regulator-out-of-range@high', BY_WIRE, 0.95)).join('/')).toBe(
      'running/unknown',
    );
  });
  it('is the other side, too', () => {
    const { world } = withFault('coil-open@one-rear', NO_AMP);
    const { 'rear-left': left, 'rear-right': right } = world.speakers;
    const mirrored = ridden({ ...world, speakers: { ...world.speakers, 'rear-left': right, 'rear-right': left } });
    expect(said('which-silent', mirrored)).toBe('right');
  });
});

describe('what is told and seen of a sound bike', () => {
  const SOUND: Readonly<Record<string, string>> = {
    'which-silent': 'plays',
    'when-silent': 'unknown',
    'front-plays': 'plays',
    'fader-centre': 'plays',
    'lid-check': 'plays',
    'four-corners': 'all',
    'amp-light': 'normal',
    'signal-plug-out': 'clears',
    'gain-down': 'cannot',
    'water-look': 'dry',
    'pin-look': 'level',
    'bulb-to-frame': 'clear',
    'second-look': 'clean/none',
    'joint-drop': 'ok',
    'lowest-volts': 'holds',
    'copper-look': 'copper',
    'shared-screw': 'cannot/own',
    'battery-kind': 'lead',
    'fuse-look': 'whole',
  };
  it.each(Object.entries(SOUND))('%s: %s', (step, outcomes) => {
    expect(drawn(step, sound(BY_WIRE)).join('/')).toBe(outcomes);
  });
  it('counts a channel for each corner that the amplifier drives', () => {
    expect(said('amp-channels', sound(BY_WIRE))).toBe('4');
    expect(said('amp-channels', sound(REAR_ONLY))).toBe('2');
    expect(said('amp-channels', sound(NO_AMP))).toBe('cannot');
  });
});

describe('somebody who came because of one silent side', () => {
  const bike = withFault('rear-plug-off@one-rear', NO_AMP);
  it('means that side when asked whether the rear plays', () => {
    expect(said('lid-check', bike)).toBe('cured');
    expect(said('fader-centre', bike)).toBe('no-change');
  });
  it('meets the plug that he pushed home', () => {
    expect(said('run-ohms', bike)).toBe('open');
    expect(said('run-ohms', bike, { 'lid-check': { option: 'cured' } })).toBe('ok');
  });
});

describe('a lamp that blinks', () => {
  const blinking = (rig: Rig) => {
    const { world } = withFault('amp-ground-resistive@severe', rig);
    return ridden({ ...world, amps: world.amps.map((amp) => ({ ...amp, lampBelow: 'blinks' })) });
  };
  it('is told as one, and without a lamp its relay is heard', () => {
    expect(said('amp-light', blinking(BY_WIRE))).toBe('blinks');
    expect(said('amp-signs', blinking(BY_WIRE))).toBe('cycles');
  });
  it('comes of a supply that the meter catches as it goes down', () => {
    expect(said('lowest-volts', blinking(BY_WIRE))).toBe('sags');
    const steady = valuesIn(
      observe(
        stepOf('lowest-volts'),
        sound(BY_WIRE),
        { rig: BY_WIRE, facts: FACTS },
        { meter: EXACT_METER, draw: seeded(1) },
      ),
      stepOf('lowest-volts') as ReadingStep,
    );
    expect(steady['lowestV']).toBeGreaterThan(12);
  });
});

describe('residue of the head unit', () => {
  const residue = (world: World): World => ({
    ...world,
    unit: { ...world.unit, rearOn: false, restsWhenOff: true, residueV: 0.05 },
  });
  it('is read with the tone off, and is no signal: rear channels that are off give nothing', () => {
    const bike = changed(NO_AMP, residue);
    expect(said('rear-pair', bike)).toBe('none');
    const answer = observe(
      stepOf('rear-pair'),
      bike,
      { rig: NO_AMP, facts: FACTS },
      { meter: EXACT_METER, draw: seeded(1) },
    );
    expectClose(valuesIn(answer, stepOf('rear-pair') as ReadingStep)['residueV'] ?? 0, 0.05, 1e-3);
  });
});

describe('the torch bulb', () => {
  it('has less light the more ohms are in its circuit', () => {
    const ratios = [0, 0.2, 0.8, 1.4, 3.3, 7, 30, Infinity].map(bulbRatio);
    expect(ratios).toEqual(ratios.toSorted((a, b) => b - a));
    expectClose(ratios[0] ?? 0, 1, 1e-9);
    expect(ratios.at(-1)).toBeLessThan(0.01);
  });
  it('obeys Ohm’s law with the filament’s own current: 1.5 V less what cell and wires lose', () => {
    // At 0.75 of its volts a filament of 0.3 A draws 0.3 × 0.75^0.55 A (lamp rerating), so 1.125 V are left of 1.5 V
    // where 0.375 V are lost: R = 0.375 V / 0.2561 A − 0.3 Ω = 1.164 Ω.
    const endOnEndV = 1.125 / bulbRatio(1.1643);
    expectClose(endOnEndV + 0.3 * 0.3 * (endOnEndV / 1.5) ** 0.55, 1.5, 1e-3);
  });
});

describe('what changed last', () => {
  const standing = (fault: string) =>
    Array.from({ length: 400 }, (_, seed) => said('last-change', withFault(fault, BY_WIRE), {}, seed + 1)).filter(
      (it) => it === 'stood',
    ).length;
  it('is months of standing for a battery that is empty, far more often than for one that is worn', () => {
    expect(standing('battery-undercharged@stood')).toBeGreaterThan(2 * standing('battery-worn'));
  });
});

describe('what was tried already', () => {
  const odds = (bike: Ridden, tried: string) =>
    Array.from({ length: 400 }, (_, seed) => said('tried-already', bike, {}, seed + 1)).filter((it) => it === tried)
      .length;
  it('is hardly ever what would have cured it', () => {
    expect(odds(withFault('coil-open@both-rear', NO_AMP), 'speakers')).toBeLessThan(
      odds(withFault('speaker-wire-open@both-rear', NO_AMP), 'speakers') / 4,
    );
    expect(odds(withFault('rear-plug-off@both-rear', NO_AMP), 'plugs')).toBeLessThan(
      odds(withFault('coil-open@both-rear', NO_AMP), 'plugs') / 4,
    );
  });
  it('is often a new fuse where a short opens each one', () => {
    const chafed = odds(withFault('wire-chafed@plus-lead', BY_WIRE), 'fuse');
    expect(chafed).toBeGreaterThan(2 * odds(withFault('remote-wire-open', BY_WIRE), 'fuse'));
    expect(odds(withFault('main-fuse-open', BY_WIRE), 'fuse')).toBeLessThan(chafed / 4);
  });
});
