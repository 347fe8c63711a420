import { describe, expect, it } from 'vitest';
import { EFFORT, type RepairAction } from '../../../src/causes/repair-action.ts';
import { gainTargetV } from '../../../src/compute/gain.ts';
import { CORNERS } from '../../../src/rig/corner.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import type { Rig } from '../../../src/rig/rig.ts';
import { operate } from '../../../src/world/bike/operate.ts';
import { withAmp, withRuns, withSettings, withSpeakers, withUnit } from '../../../src/world/change.ts';
import { FAULTS, type Fault, keyOf, severityAt } from '../../../src/world/faults/index.ts';
import { harmsOf } from '../../../src/world/harm.ts';
import { healthyWorld, loudestInputV, OPEN, SOUND, shapeOf } from '../../../src/world/healthy.ts';
import { ORDINARY } from '../../../src/world/moment.ts';
import { repaired, withRepairs } from '../../../src/world/repair.ts';
import type { World } from '../../../src/world/state.ts';
import { COMPLAINTS, type ComplaintId, ridden } from '../../../src/world/symptoms/index.ts';
import { TWENTY_RIGS } from '../../observe/rigs.ts';
import { CONVERTER_RIGS, LITHIUM_RIGS } from '../bikes.ts';
import { CURES } from './cures.ts';

const RIGS: Readonly<Record<string, Rig>> = {
  ...TWENTY_RIGS,
  ...CONVERTER_RIGS,
  ...LITHIUM_RIGS,
  'two speakers': EXAMPLE_RIGS['fork-fairing'],
};
const FRAME = EXAMPLE_RIGS['frame-fairing'];

const complains = (flow: ComplaintId, world: World): boolean => COMPLAINTS[flow](ridden(world)) === 'yes';
/** The complaints that a bike has, of those that a fault is weighted for and a sound bike of the build has not. */
const complaintsOf = (fault: Fault, world: World, healthy: World): readonly ComplaintId[] =>
  (Object.keys(fault.weights) as ComplaintId[]).filter((flow) => complains(flow, world) && !complains(flow, healthy));

interface Bad {
  readonly build: string;
  readonly healthy: World;
  readonly world: World;
  readonly complaints: readonly ComplaintId[];
}
/** Bikes of all builds on which a fault shows, mild on one, bad on the next. */
const badBikes = (fault: Fault): readonly Bad[] =>
  Object.entries(RIGS).flatMap(([build, rig], i) => {
    const healthy = healthyWorld(rig);
    if (!fault.fits(healthy)) return [];
    const world = fault.apply(healthy, severityAt(fault, [0.01, 0.5, 0.99][i % 3] ?? 0));
    const complaints = complaintsOf(fault, world, healthy);
    return complaints.length > 0 ? [{ build, healthy, world, complaints }] : [];
  });
const faultOf = (key: string): Fault => FAULTS.find((one) => keyOf(one) === key) ?? expect.fail(`no fault ${key}`);
const curesOf = (key: string, healthy: World) => CURES[key]?.(healthy) ?? expect.fail(`no cure of ${key}`);

/** What no repair can take away, and why. */
const WITHOUT_ACTION: Readonly<Record<string, string>> = {
  'eq-changes-by-design': 'nothing is broken: the sound bike of this build does it',
  'bass-masked-by-noise': 'engine and wind cover the bass, and the circuit is as it was',
  'mirroring-not-offered': 'this unit cannot do it; another unit is another bike, and no repair',
};
/** Everything plays with it; it turns round what is looked for after it. */
const COMPLAINS_OF_NOTHING = ['rear-pairs-crossed@sides-changed', 'rear-pairs-crossed@minuses-changed'];
const isWithout = (fault: Fault): boolean => keyOf(fault) in WITHOUT_ACTION;

describe('a repair', () => {
  it('is there for every fault that a repair can take away', () => {
    const keys = FAULTS.filter((fault) => !isWithout(fault)).map(keyOf);
    expect(Object.keys(CURES).toSorted()).toEqual(keys.toSorted());
  });
  it('is there for whatever silences the rear or keeps an amplifier off', () => {
    const silenced = FAULTS.filter(({ weights }) => weights['no-rear-sound'] || weights['amp-wont-turn-on']);
    expect(silenced.filter(isWithout).map(keyOf)).toEqual([]);
  });
  // What is wrong on the right is the same in a mirror: see mirror.test.ts.
  const onTheLeft = Object.keys(CURES).filter((key) => faultOf(key).side !== 'right');
  it.each(onTheLeft.filter((key) => !COMPLAINS_OF_NOTHING.includes(key)))(
    'cures %s on every build that complains of it, and harms nothing',
    (key) => {
      const bikes = badBikes(faultOf(key));
      expect(bikes.length).toBeGreaterThan(0);
      for (const { build, healthy, world, complaints } of bikes) {
        const after = withRepairs(world, curesOf(key, healthy));
        const left = complaints.filter((flow) => complains(flow, after));
        const harms = harmsOf(world, after).map(({ id }) => id);
        expect({ build, left, harms }).toEqual({ build, left: [], harms: [] });
      }
    },
  );
});

describe('a repair of what nobody complains of', () => {
  it.each(COMPLAINS_OF_NOTHING)('leaves nothing of %s', (key) => {
    const healthy = healthyWorld(FRAME);
    const world = faultOf(key).apply(healthy, 0);
    expect(world.unit).not.toEqual(healthy.unit);
    expect(withRepairs(world, curesOf(key, healthy)).unit).toEqual(healthy.unit);
  });
});

describe('a repair of something else', () => {
  /** With each fault a fix that the same complaint often gets, and that is not its own. */
  const WRONG: readonly (readonly [fault: string, flow: ComplaintId, wrong: RepairAction])[] = [
    ['main-fuse-open', 'amp-wont-turn-on', { do: 'renew-holder', fuseA: 1e-3 }],
    ['main-fuse-open', 'amp-wont-turn-on', { do: 'repair-amp' }],
    ['fuse-holder-open', 'amp-wont-turn-on', { do: 'renew-fuse', fuse: 'main' }],
    ['plus-lead-broken', 'amp-wont-turn-on', { do: 'renew-holder', fuseA: 40 }],
    ['plus-lead-broken@intermittent', 'cuts-out', { do: 'tighten-joint', at: 'battery-plus' }],
    ['amp-terminal-loose@severe', 'amp-wont-turn-on', { do: 'renew-holder', fuseA: 40 }],
    [
      'shared-ground-screw@severe',
      'amp-wont-turn-on',
      { do: 'renew-lead', lead: 'plus', sectionM2: 13.3e-6, fuseA: 40 },
    ],
    ['water-inside@fault', 'amp-wont-turn-on', { do: 'renew-fuse', fuse: 'amp-body' }],
    ['input-dc', 'amp-wont-turn-on', { do: 'repair-amp' }],
    ['converter-dead', 'no-rear-sound', { do: 'repair-amp' }],
    ['unit-fuse-open', 'no-sound-at-all', { do: 'renew-pin', plug: 'unit' }],
    ['battery-cuts-off', 'cuts-out', { do: 'charge-battery' }],
    ['input-pin-pushed-back', 'no-rear-sound', { do: 'seat-plug', plug: 'amp-input' }],
    ['input-pin-pushed-back', 'no-rear-sound', { do: 'clean-contacts', plug: 'amp-input' }],
    ['second-connector-dirty@both-rear', 'no-rear-sound', { do: 'clean-contacts', plug: 'rear-dock' }],
    ['second-connector-dirty@open', 'no-rear-sound', { do: 'seat-plug', plug: 'second' }],
    ['looms-unjoined', 'no-rear-sound', { do: 'renew-wire', wire: 'lid-lead' }],
    ['rear-pairs-crossed@like-with-like', 'no-rear-sound', { do: 'renew-pin', plug: 'unit' }],
    ['fuse-holder-resistive@severe', 'amp-wont-turn-on', { do: 'renew-fuse', fuse: 'main' }],
    [
      'fuse-holder-resistive@severe',
      'amp-wont-turn-on',
      { do: 'renew-lead', lead: 'plus', sectionM2: 13.3e-6, fuseA: 40 },
    ],
    ['wire-chafed@plus-lead', 'amp-wont-turn-on', { do: 'renew-fuse', fuse: 'main' }],
    ['wire-chafed@plus-lead', 'amp-wont-turn-on', { do: 'free-wire', wire: 'plus-lead' }],
    ['amp-dead@internal-short', 'amp-wont-turn-on', { do: 'renew-fuse', fuse: 'main' }],
    ['amp-dead@internal-short', 'amp-wont-turn-on', { do: 'repair-amp' }],
    ['amp-ground-open', 'amp-wont-turn-on', { do: 'tighten-joint', at: 'battery-minus' }],
    ['battery-lug-loose@amp-minus-ring', 'amp-wont-turn-on', { do: 'tighten-joint', at: 'amp-ground' }],
    ['amp-body-fuse-open', 'amp-wont-turn-on', { do: 'renew-fuse', fuse: 'main' }],
    ['remote-source-dead', 'amp-wont-turn-on', { do: 'renew-wire', wire: 'remote' }],
    ['remote-wire-open', 'amp-wont-turn-on', { do: 'move-remote', to: 'switched-feed' }],
    ['remote-wire-open@bad-joint', 'amp-wont-turn-on', { do: 'move-remote', to: 'switched-feed' }],
    ['replaced-unit-adapter-gap@remote', 'amp-wont-turn-on', { do: 'renew-wire', wire: 'remote' }],
    ['amp-heat-protect', 'amp-wont-turn-on', { do: 'repair-amp' }],
    ['rear-plug-off@both-rear', 'no-rear-sound', { do: 'seat-plug', plug: 'rear-dock', where: 'front' }],
    ['lid-contacts-dirty@both-rear', 'no-rear-sound', { do: 'seat-plug', plug: 'rear-dock' }],
    ['lid-lead-broken@both-rear', 'no-rear-sound', { do: 'clean-contacts', plug: 'rear-dock' }],
    ['speaker-wire-open@both-rear', 'no-rear-sound', { do: 'renew-wire', wire: 'lid-lead' }],
    ['coil-open@both-rear', 'no-rear-sound', { do: 'renew-wire', wire: 'speaker-run' }],
    ['replaced-unit-adapter-gap@rear-pairs', 'no-rear-sound', { do: 'seat-plug', plug: 'unit' }],
    ['rear-channels-disabled', 'no-rear-sound', { do: 'set-unit-menu', rear: 'on' }],
    ['rear-channels-disabled', 'no-rear-sound', { do: 'select-profile', level: 'full', boost: 'as-delivered' }],
    ['fader-or-balance-off@fader', 'no-rear-sound', { do: 'turn-up-rear-control' }],
    ['rear-control-off', 'no-rear-sound', { do: 'centre-fader' }],
    ['amp-input-plug-off@rear', 'no-rear-sound', { do: 'seat-plug', plug: 'amp-input', where: 'front' }],
    ['amp-channel-dead@rear-pair', 'no-rear-sound', { do: 'seat-plug', plug: 'amp-input' }],
    ['amp-input-too-low', 'no-rear-sound', { do: 'repair-amp' }],
    ['unit-feed-missing', 'no-sound-at-all', { do: 'seat-plug', plug: 'unit' }],
  ];
  it.each(WRONG)('leaves %s with its complaint %s: %o', (key, flow, wrong) => {
    const bikes = badBikes(faultOf(key)).filter(({ complaints }) => complaints.includes(flow));
    expect(bikes.length).toBeGreaterThan(0);
    for (const { build, world } of bikes)
      expect([build, complains(flow, repaired(world, wrong))]).toEqual([build, true]);
  });
});

/** One action of every kind, with the numbers of a build. */
function everyAction({ rig, about, unit }: World): readonly RepairAction[] {
  const made = rig.amps[about ?? -1];
  const { levelDb, boostDb, engineDifference } = unit.profile;
  const rearTogetherOhm =
    rig.rearRatedOhm * (rig.rearWiring === 'parallel' ? 1 / rig.rearPerChannel : rig.rearPerChannel);
  const ofAmp = (list: (amp: NonNullable<typeof made>) => readonly RepairAction[]) => (made ? list(made) : []);
  return [
    { do: 'centre-fader' },
    { do: 'turn-up-rear-control' },
    ...(unit.rearOn ? ([{ do: 'set-unit-menu', rear: 'on' }] as const) : []),
    { do: 'set-unit-menu', bass: 'flat', compensation: 'off', mirroring: 'on' },
    { do: 'play-here' },
    { do: 'restart-unit' },
    { do: 'flatten-tone', of: 'unit' },
    { do: 'flatten-tone', of: 'phone' },
    // A profile with two tunings is tuned for the one of the road, on a sound bike too.
    ...(engineDifference === null ? ([{ do: 'tune-for-riding' }] as const) : []),
    { do: 'turn-down' },
    {
      do: 'select-profile',
      ...(unit.rearOn && ({ rear: 'on' } as const)),
      level: levelDb === 0 ? 'full' : 'lowered',
      boost: boostDb === 0 ? 'none' : 'as-delivered',
      ...(engineDifference === null && ({ eq: 'same' } as const)),
    },
    ...ofAmp(({ turnOn, powerW, ratedOhm: loadOhm, mainFuseA, plusLeadM2 }) => [
      { do: 'set-selector', selector: 'turn-on', to: turnOn },
      { do: 'set-selector', selector: 'input-mode', to: 'as-wired' },
      { do: 'set-selector', selector: 'range', to: 'as-fed' },
      { do: 'set-filter', highpassHz: 80, bassBoostDb: 0 },
      { do: 'set-gain', axle: 'both', outputV: gainTargetV({ powerW, loadOhm }) },
      { do: 'renew-lead', lead: 'plus', sectionM2: plusLeadM2, fuseA: mainFuseA },
      { do: 'renew-lead', lead: 'ground', sectionM2: plusLeadM2 },
      { do: 'renew-holder', fuseA: mainFuseA },
      ...(turnOn === 'wire'
        ? ([{ do: 'move-remote', to: 'switched-feed' }, { do: 'fit-remote-relay' }, { do: 'wake-by-wire' }] as const)
        : []),
    ]),
    ...(['unit', 'amp-input', 'amp-power', 'rear-dock', 'second'] as const).flatMap((plug): RepairAction[] => [
      { do: 'seat-plug', plug },
      { do: 'clean-contacts', plug },
      { do: 'renew-pin', plug },
    ]),
    ...(['rear-pairs', 'remote'] as const).map((carries): RepairAction => ({ do: 'complete-adapter', carries })),
    ...(['lid-lead', 'speaker-run', 'remote', 'signal'] as const).map(
      (wire): RepairAction => ({ do: 'renew-wire', wire }),
    ),
    ...(['speaker-run', 'plus-lead', 'unit-output'] as const).map((wire): RepairAction => ({ do: 'free-wire', wire })),
    { do: 'join-looms' },
    { do: 'uncross-pairs' },
    { do: 'turn-polarity', where: 'all' },
    ...(['signal-lead', 'phone-lead', 'converter', 'sparks', 'other-device'] as const).map(
      (of): RepairAction => ({ do: 'part-from-noise', of }),
    ),
    { do: 'pair-anew' },
    { do: 'end-voice-mode' },
    { do: 'update-phone' },
    { do: 'renew-phone-link', part: 'cable' },
    { do: 'renew-phone-link', part: 'port' },
    { do: 'allow-without-headset' },
    { do: 'seal-mount', where: 'all' },
    { do: 'isolate-mute-line' },
    { do: 'fasten-trim' },
    { do: 'fit-tweeter-filter', where: 'all' },
    ...(['main', 'amp-body', 'unit'] as const).map((fuse): RepairAction => ({ do: 'renew-fuse', fuse })),
    ...(['battery-plus', 'battery-minus', 'bike-ring', 'amp-ground', 'amp-terminal'] as const).map(
      (at): RepairAction => ({ do: 'tighten-joint', at }),
    ),
    { do: 'own-ground' },
    { do: 'charge-battery' },
    { do: 'replace-battery' },
    { do: 'repair-charging' },
    { do: 'take-off-load' },
    { do: 'replace-speaker', where: 'front', ratedOhm: rig.frontRatedOhm },
    { do: 'replace-speaker', where: 'rear', ratedOhm: rig.rearRatedOhm },
    { do: 'rewire-speakers', where: 'rear', togetherOhm: rearTogetherOhm },
    { do: 'replace-converter' },
    { do: 'cool-amp' },
    { do: 'dry-amp' },
    { do: 'repair-amp' },
    { do: 'repair-unit' },
  ];
}

describe('every action', () => {
  it('is tried below', () => {
    const tried = new Set(
      Object.values(RIGS)
        .flatMap((rig) => everyAction(healthyWorld(rig)))
        .map((action) => action.do),
    );
    expect([...tried].toSorted()).toEqual(Object.keys(EFFORT).toSorted());
  });
  it.each(Object.entries(RIGS))('leaves a sound bike as it was, and harms nothing: %s', (_, rig) => {
    const healthy = healthyWorld(rig);
    // Without a lead of its own thickness for the ground, a build has the one of its positive.
    for (const action of everyAction(healthy)) {
      const after = repaired(healthy, action);
      expect({ action, after }).toEqual({ action, after: healthy });
      expect(harmsOf(healthy, after)).toEqual([]);
    }
  });
  it('changes nothing more when it is done twice, and never the bike that it was given', () => {
    const keys = Object.keys(CURES);
    for (const [i, rig] of Object.values(RIGS).entries()) {
      const healthy = healthyWorld(rig);
      for (const key of keys.filter((_, at) => at % Object.keys(RIGS).length === i)) {
        const fault = faultOf(key);
        const world = fault.fits(healthy) ? fault.apply(healthy, severityAt(fault, 0.5)) : healthy;
        const before = structuredClone(world);
        for (const action of everyAction(healthy)) {
          const once = repaired(world, action);
          // A gain that is set again finds the volume where it was left the first time.
          expect({ key, action, after: repaired(once, action) }).toEqual({ key, action, after: once });
        }
        expect(world).toEqual(before);
      }
    }
  });
  it('does nothing to an amplifier of a bike without one', () => {
    const bare = healthyWorld(TWENTY_RIGS['no amplifier, built with two'] ?? {});
    for (const action of everyAction(healthyWorld(FRAME)).filter((one) => !/speaker|rewire/.test(one.do))) {
      expect(repaired(bare, action).amps).toEqual([]);
    }
  });
});

describe('a hand touches only what it is laid on', () => {
  const healthy = healthyWorld(FRAME);
  it('at a plug of its axle: a film wants cleaning, a pin that slipped back a new pin, a broken wire a new wire', () => {
    const off = { ohm: Infinity };
    const film = { ohm: 300, wants: 'cleaning' } as const;
    const pin = { ohm: Infinity, wants: 'pin' } as const;
    const world = withRuns(
      withRuns(withRuns(healthy, ['rear-left'], { dock: film }), ['rear-right'], { dock: off }),
      ['front-left'],
      { dock: pin },
    );
    const docks = (action: RepairAction) => {
      const { runs } = repaired(world, action);
      return (['rear-left', 'rear-right', 'front-left'] as const).map((corner) => runs[corner].dock);
    };
    expect(docks({ do: 'seat-plug', plug: 'rear-dock' })).toEqual([film, SOUND, pin]);
    expect(docks({ do: 'clean-contacts', plug: 'rear-dock' })).toEqual([SOUND, SOUND, pin]);
    expect(docks({ do: 'renew-pin', plug: 'rear-dock' })).toEqual([film, SOUND, pin]);
    expect(docks({ do: 'renew-pin', plug: 'front-speaker' })).toEqual([film, off, SOUND]);
    expect(docks({ do: 'renew-wire', wire: 'lid-lead' })).toEqual([film, off, pin]);
  });
  it('on one side when one side is named', () => {
    const world = withRuns(healthy, ['rear-left', 'rear-right'], { dock: OPEN });
    const after = repaired(world, { do: 'seat-plug', plug: 'rear-dock', where: 'rear-right' });
    expect([after.runs['rear-left'].dock, after.runs['rear-right'].dock]).toEqual([OPEN, SOUND]);
  });
  it('at a wire on the frame: off the frame and off its twin', () => {
    const world = withRuns(healthy, ['rear-left'], { toFrame: { ohm: 0.1 }, acrossPair: { ohm: 0.05 } });
    expect(repaired(world, { do: 'free-wire', wire: 'speaker-run', where: 'rear-left' }).runs).toEqual(healthy.runs);
  });
  it('at the battery: every ring on the post, and not the place where the amplifier is grounded', () => {
    const loose = { ohm: 5 };
    const world = withAmp(healthy, { ring: loose, minusRing: loose, groundRing: loose });
    const [amp] = repaired(repaired(world, { do: 'tighten-joint', at: 'battery-plus' }), {
      do: 'tighten-joint',
      at: 'battery-minus',
    }).amps;
    expect([amp?.ring, amp?.minusRing, amp?.groundRing]).toEqual([
      healthy.amps[0]?.ring,
      healthy.amps[0]?.minusRing,
      loose,
    ]);
  });
  it('at an amplifier that is exchanged: its leads, its fuse in the lead and its heat stay', () => {
    const world = withAmp(healthy, { alive: false, fuseOpen: true, groundRing: OPEN, coolsBadly: true });
    expect(repaired(world, { do: 'repair-amp' })).toEqual(
      withAmp(healthy, { fuseOpen: true, groundRing: OPEN, coolsBadly: true }),
    );
  });
  it('at the amplifier that is meant, of two', () => {
    const trunk = { ...healthyWorld(EXAMPLE_RIGS.trunk), about: 0 };
    const dead = { ...trunk, amps: trunk.amps.map((amp) => ({ ...amp, alive: false })) };
    expect(repaired(dead, { do: 'repair-amp' }).amps.map(({ alive }) => alive)).toEqual([true, false]);
  });
});

describe('numbers of an action', () => {
  const healthy = healthyWorld(FRAME);
  it('are the section and the fuse of a new lead, which is as long as the old one', () => {
    const [amp] = repaired(withAmp(healthy, { fuseOpen: true }), {
      do: 'renew-lead',
      lead: 'plus',
      sectionM2: 13.3e-6,
      fuseA: 60,
    }).amps;
    expect(amp).toMatchObject({ plusLead: { lengthM: 1.6, sectionM2: 13.3e-6 }, fuseRatedA: 60, fuseOpen: false });
  });
  it('are the volts at the output at the loudest clean step', () => {
    const after = repaired(healthy, { do: 'set-gain', axle: 'rear', outputV: 12 });
    const now = operate(after, { ...ORDINARY, toneHz: 1000, engine: 'cruise', volumeRatio: 1, apart: ['runs'] });
    if (!now.ok) expect.fail('no operating point');
    const inV = loudestInputV(after.rig, after.unit.profile);
    expect(after.amps[0]?.gainRatio).toEqual({ front: healthy.amps[0]?.gainRatio.front, rear: 12 / inV });
    // The high-pass takes less than a tenth of a decibel at 1 kHz.
    expect(now.amps[0]?.side.waves['rear-left'].cleanV).toBeCloseTo(12, 1);
  });
  it('are the ohms of new speakers: as many as hung there, joined as they were', () => {
    const [left] = CORNERS.slice(2);
    const two = withSpeakers(healthy, ['rear-left'], { count: 2, wiring: 'parallel' });
    const after = repaired(two, { do: 'replace-speaker', where: 'rear', ratedOhm: 8 });
    expect(after.speakers[left ?? 'rear-left']).toMatchObject({
      coilOhm: 2 * healthy.speakers['rear-left'].coilOhm,
      count: 2,
      wiring: 'parallel',
    });
  });
  it('keep what is not named of a profile', () => {
    const { rig } = healthy;
    const world = withUnit(healthy, { rearOn: false, profile: shapeOf(rig, 'unaltered') });
    const { unit } = repaired(world, { do: 'select-profile', level: 'lowered' });
    expect(unit).toMatchObject({ rearOn: false, profile: { ...shapeOf(rig, 'unaltered'), levelDb: -7 } });
    expect(repaired(world, { do: 'select-profile', eq: 'same' }).unit.profile.engineDifference).toBeNull();
  });
  it('never select a profile in a head unit of another maker, nor a menu in the one of the bike', () => {
    const other = withUnit(healthyWorld({ ...FRAME, unitKind: 'replaced' }), { rearOn: false });
    expect(repaired(other, { do: 'select-profile', rear: 'on' }).unit.rearOn).toBe(false);
    expect(repaired(other, { do: 'set-unit-menu', rear: 'on' }).unit.rearOn).toBe(true);
  });
  it('let whoever made up for a low gain turn down again by as much', () => {
    const low = withSettings(
      withAmp(healthy, ({ gainRatio }) => ({ gainRatio: { front: gainRatio.front / 4, rear: gainRatio.rear / 4 } })),
      ({ topVolumeRatio }) => ({ topVolumeRatio: 4 * topVolumeRatio }),
    );
    const { powerW, ratedOhm: loadOhm } = healthy.rig.amps[0] ?? expect.fail('no amplifier');
    const after = repaired(low, { do: 'set-gain', axle: 'both', outputV: gainTargetV({ powerW, loadOhm }) });
    expect(after.settings.topVolumeRatio).toBeCloseTo(healthy.settings.topVolumeRatio, 9);
  });
});

describe('a main fuse that is renewed', () => {
  const healthy = healthyWorld(FRAME);
  const fuse: RepairAction = { do: 'renew-fuse', fuse: 'main' };
  const blown = (part: Parameters<typeof withAmp>[1]) => withAmp(withAmp(healthy, { fuseOpen: true }), part);
  it('opens again at once on a lead that lies on the frame, and holds when that is mended first', () => {
    const world = blown({ leadToFrame: { ohm: 0.05 } });
    expect(repaired(world, fuse).amps[0]?.fuseOpen).toBe(true);
    expect(withRepairs(world, [fuse, { do: 'free-wire', wire: 'plus-lead' }]).amps[0]?.fuseOpen).toBe(true);
    expect(withRepairs(world, [{ do: 'free-wire', wire: 'plus-lead' }, fuse]).amps[0]?.fuseOpen).toBe(false);
  });
  it('opens again at once before an amplifier that is shorted inside', () => {
    expect(repaired(blown({ shortInside: { ohm: 0.05 } }), fuse).amps[0]?.fuseOpen).toBe(true);
  });
  it('is of the rating that was there, unless a number is given', () => {
    expect(repaired(blown({}), fuse).amps[0]?.fuseRatedA).toBe(40);
    expect(repaired(blown({}), { ...fuse, fuseA: 30 }).amps[0]?.fuseRatedA).toBe(30);
  });
});
