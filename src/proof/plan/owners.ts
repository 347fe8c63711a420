import { type Draw, drawFrom, happens, pick } from '../../observe/draw.ts';
import type { PlannedChange } from '../../steps/plan/planned-change.ts';
import { asBuilt, randomRig } from '../../survey/random-rig.ts';
import { healthyWorld } from '../../world/healthy.ts';
import { BASIC_METER, type Meter } from '../../world/meter.ts';
import type { World } from '../../world/state.ts';
import { isLowered, STORED, type Stored } from '../../world/stored-profiles.ts';

/* Random bikes with whatever is stored in them, and the people who own them: not those that the tables are made from. */

export interface Owner {
  readonly name: string;
  /** The bike as it will be, the plan done. */
  readonly world: World;
  readonly held: readonly Stored[];
  readonly delivered: Stored;
  readonly stored: Stored;
  readonly plan: PlannedChange;
  readonly sameEq: boolean;
  readonly meter: Meter;
  /** What he says of the past when he cannot measure. */
  readonly says: 'never' | 'record' | 'unknown';
  /** What his paper is of, right or not. */
  readonly paperOf: Stored;
}

/** ±2 %, one digit of 0.1 V, and a band that ends at 400 Hz, or so far below that 400 Hz reads 40 % low. */
const CHEAP: Meter = { ...BASIC_METER, statement: { ...BASIC_METER.statement, ac: [0.02, 1] } };
const LOW_AT_400: Meter = { ...CHEAP, bandHz: [40, 138.5] };
const LOW_SHARE = 0.25;

/** How such bikes come about. Estimates. */
const REPLACED_SHARE = 0.08;
const AMP_FROM_NEW_SHARE = 0.25;
const NO_FULL_HELD_SHARE = 0.4;
const AS_DELIVERED_SHARE = 0.4;
const FROM_NEW_SHARE = 0.6;
const SAYS_NEVER_WRONGLY_SHARE = 0.04;
const HAS_PAPER_SHARE = 0.25;
const PAPER_WRONG_SHARE = 0.05;

function heldBy(draw: Draw, { deliveredWith, deliveredAmp }: World['rig']): readonly Stored[] {
  const all = STORED.filter((stored) => !(stored === 'unaltered' && deliveredWith === 'four'));
  return deliveredAmp === 'yes' && happens(draw, NO_FULL_HELD_SHARE) ? all.filter(isLowered) : all;
}

function plansFor(world: World, changed: boolean, eqMoves: boolean): readonly PlannedChange[] {
  const { rig } = world;
  const factory = rig.unitKind === 'factory';
  const amps = rig.amps.length > 0;
  return [
    'nothing',
    'louder',
    'more-bass',
    'same-eq',
    ...(factory && eqMoves ? (['bass-gone'] as const) : []),
    ...(factory ? (['unit-swapped'] as const) : []),
    ...(changed ? (['after-reflash', 'after-reflash'] as const) : []),
    ...(amps
      ? (['amp-added', 'amp-added', 'amp-exchanged'] as const)
      : ([
          'front-only',
          'front-only',
          ...(rig.rearFitted === 'yes' ? (['rear-on-unit', 'rear-on-unit'] as const) : []),
          ...(rig.deliveredAmp === 'yes' ? (['amp-removed', 'amp-removed'] as const) : (['amp-removed'] as const)),
        ] as const)),
  ];
}

export function ownerOf(seed: number, index: number): Owner {
  const draw = drawFrom('plan', seed, index);
  const drawn = asBuilt(draw, randomRig(draw));
  const rig = {
    ...drawn,
    unitKind: happens(draw, REPLACED_SHARE) ? ('replaced' as const) : ('factory' as const),
    deliveredAmp: happens(draw, AMP_FROM_NEW_SHARE) ? ('yes' as const) : ('no' as const),
  };
  const world = healthyWorld(rig);
  const held = heldBy(draw, world.rig);
  const full = world.rig.deliveredWith === 'four' ? 'rear-on' : 'unaltered';
  const delivered = world.rig.deliveredAmp === 'yes' ? pick(draw, held) : full;
  const stored = happens(draw, AS_DELIVERED_SHARE) ? delivered : pick(draw, held);
  const changed = stored !== delivered;
  const fromNew = happens(draw, FROM_NEW_SHARE);
  const never = fromNew ? !changed : happens(draw, SAYS_NEVER_WRONGLY_SHARE);
  return {
    name: String(index),
    world,
    held,
    delivered,
    stored,
    plan: pick(draw, plansFor(world, changed, stored !== 'amplified-same')),
    sameEq: world.rig.amps.length > 0 && happens(draw, 0.4),
    meter: happens(draw, LOW_SHARE) ? LOW_AT_400 : CHEAP,
    says: never ? 'never' : happens(draw, HAS_PAPER_SHARE) ? 'record' : 'unknown',
    paperOf: happens(draw, PAPER_WRONG_SHARE) ? pick(draw, held) : stored,
  };
}
