import { describe, expect, it } from 'vitest';
import { cautionsOfFix } from '../../src/causes/action-cautions.ts';
import type { PlugName, RepairAction } from '../../src/causes/repair-action.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { FAULTS, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { repaired } from '../../src/world/repair.ts';
import type { World } from '../../src/world/state.ts';
import { TWENTY_RIGS } from '../observe/rigs.ts';
import { CONVERTER_RIGS, LITHIUM_RIGS } from '../world/bikes.ts';
import { changes, isSaid, LAID_ON } from './laid-on.ts';
import { onBike } from './on-bike.ts';

/*
 * Each repair action by itself, whatever cause uses it: it is done to bikes with every fault, and what has changed there
 * says what a hand was laid on, and so what somebody has to be careful of. From memory, common practice, no published
 * source.
 */

type Do = RepairAction['do'];
type Of<D extends Do> = Extract<RepairAction, { readonly do: D }>;
const plugs = <D extends 'seat-plug' | 'clean-contacts' | 'renew-pin'>(name: D): readonly Of<D>[] =>
  (['unit', 'amp-input', 'amp-power', 'rear-dock', 'second'] satisfies PlugName[]).map(
    (plug) => ({ do: name, plug }) as unknown as Of<D>,
  );

/** Every action there is, and each of its kinds. */
const ACTIONS: { readonly [D in Do]: readonly Of<D>[] } = {
  'centre-fader': [{ do: 'centre-fader' }],
  'turn-up-rear-control': [{ do: 'turn-up-rear-control' }],
  'set-unit-menu': [{ do: 'set-unit-menu', rear: 'on', bass: 'flat', compensation: 'off', mirroring: 'on' }],
  'play-here': [{ do: 'play-here' }],
  'restart-unit': [{ do: 'restart-unit' }],
  'flatten-tone': [
    { do: 'flatten-tone', of: 'unit' },
    { do: 'flatten-tone', of: 'phone' },
  ],
  'tune-for-riding': [{ do: 'tune-for-riding' }],
  'turn-down': [{ do: 'turn-down' }],
  'set-filter': [{ do: 'set-filter', highpassHz: 90, bassBoostDb: 0 }],
  'select-profile': [
    { do: 'select-profile', rear: 'on' },
    { do: 'select-profile', level: 'full', boost: 'as-delivered' },
    { do: 'select-profile', level: 'lowered', boost: 'none', eq: 'same' },
  ],
  'set-selector': [
    { do: 'set-selector', selector: 'turn-on', to: 'wire' },
    { do: 'set-selector', selector: 'input-mode', to: 'as-wired' },
    { do: 'set-selector', selector: 'range', to: 'as-fed' },
  ],
  'set-gain': [{ do: 'set-gain', axle: 'both', outputV: 12 }],
  'seat-plug': plugs('seat-plug'),
  'clean-contacts': plugs('clean-contacts'),
  'renew-pin': plugs('renew-pin'),
  'complete-adapter': [
    { do: 'complete-adapter', carries: 'rear-pairs' },
    { do: 'complete-adapter', carries: 'remote' },
  ],
  'renew-wire': (['lid-lead', 'speaker-run', 'remote', 'signal'] as const).map((wire) => ({ do: 'renew-wire', wire })),
  'free-wire': (['speaker-run', 'plus-lead', 'unit-output'] as const).map((wire) => ({ do: 'free-wire', wire })),
  'join-looms': [{ do: 'join-looms' }],
  'uncross-pairs': [{ do: 'uncross-pairs' }],
  'turn-polarity': [{ do: 'turn-polarity', where: 'all' }],
  'part-from-noise': (['signal-lead', 'phone-lead', 'converter', 'sparks', 'other-device'] as const).map((of) => ({
    do: 'part-from-noise',
    of,
  })),
  'pair-anew': [{ do: 'pair-anew' }],
  'end-voice-mode': [{ do: 'end-voice-mode' }],
  'update-phone': [{ do: 'update-phone' }],
  'renew-phone-link': [
    { do: 'renew-phone-link', part: 'cable' },
    { do: 'renew-phone-link', part: 'port' },
  ],
  'allow-without-headset': [{ do: 'allow-without-headset' }],
  'renew-lead': [
    { do: 'renew-lead', lead: 'plus', sectionM2: 21e-6, fuseA: 80 },
    { do: 'renew-lead', lead: 'ground', sectionM2: 21e-6 },
  ],
  'renew-holder': [{ do: 'renew-holder', fuseA: 20 }],
  'renew-fuse': [
    { do: 'renew-fuse', fuse: 'main', fuseA: 20 },
    { do: 'renew-fuse', fuse: 'amp-body' },
    { do: 'renew-fuse', fuse: 'unit' },
  ],
  'tighten-joint': (['battery-plus', 'battery-minus', 'bike-ring', 'amp-ground', 'amp-terminal'] as const).map(
    (at) => ({ do: 'tighten-joint', at }),
  ),
  'own-ground': [{ do: 'own-ground' }],
  'move-remote': [{ do: 'move-remote', to: 'switched-feed' }],
  'fit-remote-relay': [{ do: 'fit-remote-relay' }],
  'wake-by-wire': [{ do: 'wake-by-wire' }],
  'charge-battery': [{ do: 'charge-battery' }],
  'replace-battery': [{ do: 'replace-battery' }],
  'repair-charging': [{ do: 'repair-charging' }],
  'take-off-load': [{ do: 'take-off-load' }],
  'replace-speaker': [{ do: 'replace-speaker', where: 'all' }],
  'rewire-speakers': [{ do: 'rewire-speakers', where: 'all', togetherOhm: 8 }],
  'seal-mount': [{ do: 'seal-mount', where: 'all' }],
  'isolate-mute-line': [{ do: 'isolate-mute-line' }],
  'fasten-trim': [{ do: 'fasten-trim' }],
  'fit-tweeter-filter': [{ do: 'fit-tweeter-filter', where: 'all' }],
  'replace-converter': [{ do: 'replace-converter' }],
  'cool-amp': [{ do: 'cool-amp' }],
  'dry-amp': [{ do: 'dry-amp' }],
  'repair-amp': [{ do: 'repair-amp' }],
  'repair-unit': [{ do: 'repair-unit' }],
};

const KNOWN = EXAMPLE_RIGS['frame-fairing'];
const RIGS: readonly Rig[] = [
  KNOWN,
  { ...KNOWN, amps: [{ ...KNOWN.amps[0], input: 'line' }] },
  { ...KNOWN, amps: [{ ...KNOWN.amps[0], turnOn: 'signal', needs: 'unaltered' }] },
  ...Object.values(TWENTY_RIGS).filter((_, i) => i % 5 === 1),
  ...Object.values(CONVERTER_RIGS).slice(0, 1),
  ...Object.values(LITHIUM_RIGS).slice(0, 1),
];
/** Each rig with every fault that fits it, as slight and as grave as it may be. */
const WORLDS: readonly (readonly [Rig, World])[] = RIGS.flatMap((rig) => {
  const healthy = healthyWorld(rig);
  return FAULTS.filter((fault) => fault.fits(healthy)).flatMap((fault) =>
    [0.3, 0.9].map((at) => [rig, fault.apply(healthy, severityAt(fault, at))] as const),
  );
});

const laidOn = new Set<number>();
const all = (Object.values(ACTIONS) as readonly (readonly RepairAction[])[])
  .flat()
  .map((action) => [JSON.stringify(action), action] as const);
/** A run that is made anew was not started into again and again, and is not hot. */
const OF_A_RUN = /\\\/runs\\\/\[/;

describe('a repair action', () => {
  it.each(all)('%s is warned of for what it does to a bike', (_, action) => {
    for (const [rig, world] of WORLDS) {
      const after = repaired(world, action);
      const paths = changes(world, after);
      if (paths.length === 0) continue;
      const said = cautionsOfFix({ repair: [action] }, onBike(rig));
      LAID_ON.forEach(([changed, says, where], i) => {
        if (!paths.some((path) => changed.test(path)) || (where && !where(world))) return;
        if (action.do === 'renew-wire' && OF_A_RUN.test(changed.source) && ['into-a-short', 'hot'].includes(`${says}`))
          return;
        laidOn.add(i);
        expect(isSaid(says, said), `${says} for ${changed}`).toBe(true);
      });
      if (after.unit.profile.levelDb > world.unit.profile.levelDb && world.amps.length > 0)
        expect(said).toContain('back-to-full');
      if (after.unit.profile.levelDb < world.unit.profile.levelDb && world.amps.length > 0)
        expect(said).toContain('set-gain-again');
    }
  });
  it('does, with the others, all that these rules speak of', () => {
    expect(LAID_ON.filter((_, i) => !laidOn.has(i)).map(([changed, says]) => `${says} for ${changed}`)).toEqual([]);
  });
});
