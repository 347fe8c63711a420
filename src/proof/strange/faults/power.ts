import { decades, even, hasAmp, withAmp, withSupply } from '../../../world/faults/kit.ts';
import { type StrangeFault, withPast } from './strange-fault.ts';

/* Of the way from the battery to the amplifier and back. */

/**
 * The posts of the model have no clamp of their own, so its ohms are among the inner ones of the battery. A charge makes
 * those sound where a battery has lost nothing of what it holds, and it makes no clamp sound: this one has lost a little.
 */
const IN_USE_RATIO = 0.98;

export const STRANGE_POWER: readonly StrangeFault[] = [
  withPast(
    {
      id: 'shared-feed-joint',
      title: 'A clamp at the battery post that head unit and amplifier share, with hardly any contact',
      // With the 8 A of the bike it takes 2 to 3 V: the head unit plays, the amplifier gives up.
      severity: even('clampOhm', 0.24, 0.36),
      weights: { 'amp-wont-turn-on': 3, 'cuts-out': 2 },
      rightCauses: ['battery-lug-loose'],
      fits: hasAmp,
      apply: (world, ohm) =>
        withSupply(world, ({ internalOhm, acceptOhm, capacityRatio }) => ({
          internalOhm: internalOhm + ohm,
          acceptOhm: acceptOhm + ohm,
          capacityRatio: IN_USE_RATIO * capacityRatio,
        })),
    },
    { before: { 'comes-and-goes': 3 }, lastChange: { battery: 3 } },
  ),
  withPast(
    {
      id: 'fuse-seat-opens-hot',
      title: 'A seat of the main fuse that opens when it is hot',
      severity: decades('holderOhm', 0.004, 0.03),
      weights: { 'amp-wont-turn-on': 2, 'cuts-out': 4 },
      rightCauses: ['fuse-holder-bad'],
      fits: hasAmp,
      apply: (world, ohm) => withAmp(world, { holder: { ohm, hotOhm: Infinity } }),
    },
    { before: { 'comes-and-goes': 8 } },
  ),
  withPast(
    {
      id: 'fuse-seat-green',
      title: 'A seat of the main fuse gone green: some volts pass, and no current',
      // Beside the 12 kΩ of an amplifier that is off it leaves 3 to 8 V, which look like a low supply.
      severity: decades('holderOhm', 6_000, 30_000),
      weights: { 'amp-wont-turn-on': 3 },
      rightCauses: ['fuse-holder-bad'],
      fits: hasAmp,
      apply: (world, ohm) => withAmp(world, { holder: { ohm } }),
    },
    { lastChange: { opened: 2 } },
  ),
  withPast(
    {
      id: 'amp-terminal-corroded',
      title: 'The sleeve of the amplifier’s positive terminal corroded under its screw',
      severity: decades('sleeveOhm', 2, 300),
      weights: { 'amp-wont-turn-on': 3 },
      rightCauses: ['amp-terminal-loose'],
      fits: hasAmp,
      apply: (world, ohm) => withAmp(world, { terminal: { ohm, wants: 'cleaning' } }),
    },
    { before: { 'comes-and-goes': 2 }, lastChange: { fitted: 2, opened: 2 } },
  ),
  withPast(
    {
      id: 'lead-of-few-strands',
      title: 'A positive lead of which some strands are left',
      severity: decades('strandsOhm', 1.5, 6),
      weights: { 'amp-wont-turn-on': 2 },
      rightCauses: ['plus-lead-broken', 'plus-lead-too-thin'],
      fits: hasAmp,
      apply: (world, ohm) => withAmp(world, { plusCopper: { ohm } }),
    },
    { lastChange: { workshop: 2 } },
  ),
  withPast(
    {
      id: 'rings-stacked',
      title: 'Rings stacked under one ground screw, the amplifier’s loose among them',
      severity: decades('screwOhm', 2.5, 40),
      weights: { 'amp-wont-turn-on': 3 },
      rightCauses: ['shared-ground-screw', 'amp-ground-resistive'],
      fits: hasAmp,
      apply: (world, ohm) => withAmp(world, { groundRing: { ohm, movedOhm: 0.05 } }),
    },
    { before: { 'comes-and-goes': 4 }, lastChange: { fitted: 3, workshop: 2 } },
  ),
];
