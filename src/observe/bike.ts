import { type Axle, axleOf, type Corner, cornersOf } from '../rig/corner.ts';
import type { Moment } from '../world/moment.ts';
import type { Look } from '../world/probe.ts';
import { oncePerKey } from '../world/remembered.ts';
import type { Amp, Contact, World } from '../world/state.ts';
import { AS_EVER_RATIO, heardCorners, type Ridden, ridden } from '../world/symptoms/symptom.ts';
import { driverOf, isFitted } from '../world/valued-rig.ts';

/* A bike while somebody works at it: what is heard of it, and what it is when a hand has changed something. */

const variants = oncePerKey<Ridden, Ridden>();

/** The bike with something changed by hand, worked out once for each name. One that changes nothing is the same bike. */
export const changed = (bike: Ridden, name: string, change: (world: World) => World): Ridden =>
  variants(bike, name, () => {
    const world = change(bike.world);
    return world === bike.world ? bike : ridden(world);
  });

export const REAR: readonly Corner[] = ['rear-left', 'rear-right'];

export type Playing = 'plays' | 'weak' | 'silent';

/** How a corner plays next to the others and to a sound bike: what is far under either is silent or weak to an ear. */
export function playing(bike: Ridden, corner: Corner, moment: Partial<Moment> = {}): Playing {
  const seen = bike.at(moment);
  if (!heardCorners(bike, seen).includes(corner)) return 'silent';
  const soundW = bike.healthy().at(moment).heard?.[corner].powerW ?? 0;
  return (seen.heard?.[corner].powerW ?? 0) < AS_EVER_RATIO * soundW ? 'weak' : 'plays';
}

/** How the best of some corners plays: whoever hears one of two hears them. */
export function bestOf(bike: Ridden, corners: readonly Corner[], moment: Partial<Moment> = {}): Playing {
  const all = corners.map((corner) => playing(bike, corner, moment));
  return (['plays', 'weak'] as const).find((one) => all.includes(one)) ?? 'silent';
}

/** The worst of some corners: the silent ones, else the weak ones. */
function worstOf(found: Ridden, corners: readonly Corner[]): readonly Corner[] {
  const how = corners.map((corner) => [corner, playing(found, corner)] as const);
  const worst = (['silent', 'weak'] as const).find((one) => how.some(([, it]) => it === one));
  return how.flatMap(([corner, it]) => (it === worst ? [corner] : []));
}

/**
 * The speakers that somebody means who came because of a silence: those of the rear, the silent ones, else the weak ones;
 * of a rear that plays as ever, those of the front; else the rear. Of two sides one may play, and nobody calls that a rear
 * that plays.
 */
export function ofConcern(found: Ridden): readonly Corner[] {
  const rear = worstOf(found, found.world.rig.rearFitted === 'yes' ? REAR : []);
  const worst = rear.length > 0 ? rear : worstOf(found, cornersOf('front'));
  return worst.length > 0 ? worst : REAR;
}

/** The axle that somebody means who came because of a silence. */
export const axleOfConcern = (found: Ridden): Axle => axleOf(ofConcern(found)[0] ?? 'rear-left');

/** The bike at a moment, for a probe. Null when its supply has no operating point. */
export function lookAt(bike: Ridden, moment: Partial<Moment>): Look | null {
  const seen = bike.at(moment);
  return seen.now.ok ? { world: bike.world, moment: seen.moment, now: seen.now } : null;
}

/** The amplifier that the steps mean, by number. */
export const ampOf = ({ world }: Ridden): number | null => world.about;

/** The amplifier that drives the rear, by number. */
export const rearAmp = (bike: Ridden): number | null => ampAt(bike, 'rear-left');

/** The amplifier that drives a corner, by number. */
export function ampAt({ world }: Ridden, corner: Corner): number | null {
  const driver = isFitted(world.rig, corner) ? driverOf(world.rig, corner) : 'unit';
  return driver === 'unit' ? null : driver;
}

/** The lamp of the amplifier; off where there is no supply at all. */
export function lampOf(bike: Ridden, moment: Partial<Moment>): 'off' | 'normal' | 'fault' | 'blinks' {
  const { now } = bike.at(moment);
  return (now.ok && now.amps[ampOf(bike) ?? -1]?.lamp) || 'off';
}

export const isOpen = ({ ohm }: Contact): boolean => ohm === Infinity;

/** Whether a signal plug of the amplifier is not home: open, with nothing in it that wants mending. */
export const inputNotHome = ({ world }: Ridden): boolean =>
  Object.values(world.amps[world.about ?? -1]?.inputPlug ?? {}).some((pair) =>
    Object.values(pair).some((contact) => isOpen(contact) && contact.wants === undefined),
  );

/** Whether the amplifier is on and has nothing to complain of, at an ordinary level. */
export const ampIsOn = (bike: Ridden, moment: Partial<Moment> = {}): boolean => lampOf(bike, moment) === 'normal';

/** A change to the amplifier that the steps mean. */
export const withAmp =
  (part: Partial<Amp>) =>
  (world: World): World => ({
    ...world,
    amps: world.amps.map((amp, i) => (i === world.about ? { ...amp, ...part } : amp)),
  });

/** The corners that the amplifier drives. */
export function cornersOfAmp(bike: Ridden): readonly Corner[] {
  const i = ampOf(bike);
  return i === null ? [] : bike.fitted.filter((corner) => driverOf(bike.world.rig, corner) === i);
}

export const hisses = (bike: Ridden, corners: readonly Corner[]): boolean =>
  corners.some((corner) => bike.at({}).heard?.[corner].hisses);

export const having = (bike: Ridden, name: string, part: Partial<Amp>) => changed(bike, name, withAmp(part));
