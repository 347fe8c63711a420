import type { ToSelect } from '../../plan/verdict.ts';
import type { Corner } from '../../rig/corner.ts';
import { harmsOf } from '../../world/harm.ts';
import type { Moment } from '../../world/moment.ts';
import type { World } from '../../world/state.ts';
import { isLowered, type Stored, withGainsSet, withStored } from '../../world/stored-profiles.ts';
import { type Ridden, ridden } from '../../world/symptoms/index.ts';
import { driverOf } from '../../world/valued-rig.ts';

/*
 * What a bike truly needs: each profile that its head unit holds is selected on the model, every gain is set to it, and it
 * is listened to. Nothing of the plan's rows is known here: what is best is what plays, loudest where nothing makes up for
 * the level, with the same tone where that is wished, and without bass that breaks up first.
 */

/** A pair that nothing makes up for has lost so much when it is starved: 3 dB. An estimate. */
const STARVED_RATIO = 10 ** -0.3;
/** A tone that moves by more than 1 dB against another is not the same. An estimate. */
const MOVED_RATIO = 10 ** 0.1;
/** So far past its limit an output is heard to break up: 1 dB, a distortion of 5 %. */
const BREAKS_UP_DB = 1;
/** A loud step, where a middle tone is clean. */
const LOUD: Partial<Moment> = { volumeRatio: 0.7 };
/** A step at which a middle tone is clean on every bike, and bass that is boosted is not. */
const HALF_WAY: Partial<Moment> = { volumeRatio: 0.4 };
/** A step at which no tone is cut off on any profile. */
const CLEAN: Partial<Moment> = { volumeRatio: 0.1 };

const powerW = (bike: Ridden, moment: Partial<Moment>, corner: Corner): number =>
  bike.at(moment).heard?.[corner].powerW ?? 0;

/** Whether a corner gets only what the head unit sends: nobody can turn its level up. */
function takesWhatComes({ rig }: World, corner: Corner): boolean {
  const driver = driverOf(rig, corner);
  return driver === 'unit' || rig.amps[driver]?.needs === 'unaltered';
}

export interface Wishes {
  readonly sameEq: boolean;
}
/** What is wrong with a profile on a bike, the gravest first: so many corners silent, starved, moving, breaking up. */
type Faults = readonly [silent: number, starved: number, moving: number, breaking: number];

function bikeWith(world: World, stored: Stored): Ridden {
  return ridden(withGainsSet(withStored(world, stored)));
}

function faultsOf(bike: Ridden, others: readonly Ridden[], { sameEq }: Wishes): Faults {
  const { fitted, world } = bike;
  const count = (is: (corner: Corner) => boolean) => fitted.filter(is).length;
  const least = (moment: Partial<Moment>) => (corner: Corner) => {
    const best = Math.max(...others.map((other) => powerW(other, moment, corner)));
    return powerW(bike, moment, corner) < STARVED_RATIO * best;
  };
  const [lessMiddle, lessBass] = [least({ toneHz: 400, ...LOUD }), least({ toneHz: 80, ...CLEAN })];
  const ratio = (corner: Corner, engine: Moment['engine']) =>
    powerW(bike, { toneHz: 80, engine, ...CLEAN }, corner) /
    (powerW(bike, { toneHz: 400, engine, ...CLEAN }, corner) || 1);
  const moves = (corner: Corner) => {
    const times = ratio(corner, 'idle') / (ratio(corner, 'off') || 1);
    return times > MOVED_RATIO || times < 1 / MOVED_RATIO;
  };
  const breaksUp = (corner: Corner) => {
    const at = (toneHz: number) => bike.at({ toneHz, ...HALF_WAY }).heard?.[corner].overdriveDb ?? 0;
    return at(80) > BREAKS_UP_DB && at(400) <= BREAKS_UP_DB;
  };
  return [
    count((corner) => !bike.at({}).heard?.[corner].plays),
    count((corner) => takesWhatComes(world, corner) && (lessMiddle(corner) || lessBass(corner))),
    sameEq ? count(moves) : 0,
    count((corner) => !takesWhatComes(world, corner) && breaksUp(corner)),
  ];
}

const compare = (a: Faults, b: Faults): number => {
  for (const [i, faults] of a.entries()) if (faults !== b[i]) return faults - (b[i] ?? 0);
  return 0;
};

export interface Truth {
  /** The profiles that are as good as any that this head unit holds. */
  readonly best: readonly Stored[];
}

export function truthOf(world: World, held: readonly Stored[], wishes: Wishes): Truth {
  const bikes = new Map(held.map((stored) => [stored, bikeWith(world, stored)] as const));
  const faults = held.map((stored) => {
    const bike = bikes.get(stored);
    return [stored, bike ? faultsOf(bike, [...bikes.values()], wishes) : ([0, 0, 0, 0] as const)] as const;
  });
  const least = faults.map(([, one]) => one).toSorted(compare)[0];
  return { best: faults.filter(([, one]) => least && compare(one, least) === 0).map(([stored]) => stored) };
}

/** What each profile does, by its name alone. */
const does = (stored: Stored) => ({
  rear: stored !== 'unaltered',
  lowered: isLowered(stored),
  boosted: !isLowered(stored),
  sameEq: stored === 'amplified-same',
});

/** What somebody selects who is asked for these properties: of what the head unit holds, what differs least from now. */
export function selected(now: Stored, to: ToSelect, held: readonly Stored[]): Stored {
  const apart = (stored: Stored) =>
    Object.entries(does(stored)).filter(([property, is]) => does(now)[property as keyof ToSelect] !== is).length;
  const fits = held.filter((stored) =>
    Object.entries(to).every(([property, is]) => does(stored)[property as keyof ToSelect] === is),
  );
  return fits.toSorted((a, b) => apart(a) - apart(b))[0] ?? now;
}

/** The site has gains at minimum before a visit. A knob that is turned down leaves a tenth or less: an estimate. */
const MINIMUM_RATIO = 0.1;

/** What the work does that must never be done, gains at minimum as the site says. */
export function harmsBy(world: World, now: Stored, then: Stored): readonly string[] {
  const before = withGainsSet(withStored(world, now));
  const down = before.amps.map((amp) => ({
    ...amp,
    gainRatio: { front: MINIMUM_RATIO * amp.gainRatio.front, rear: MINIMUM_RATIO * amp.gainRatio.rear },
  }));
  return harmsOf(before, withStored({ ...before, amps: down }, then)).map(({ id }) => id);
}
