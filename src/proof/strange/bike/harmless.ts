import { healthyWorld } from '../../../world/healthy.ts';
import { identityOf, oncePer, oncePerKey } from '../../../world/remembered.ts';
import type { World } from '../../../world/state.ts';
import { COMPLAINTS, type ComplaintId, type Ridden, ridden } from '../../../world/symptoms/index.ts';
import type { Draw } from '../oddity.ts';

/* A peculiarity is none of the faults: a sound bike that has it complains of nothing more than without. */

export type Change = (world: World, draw: Draw) => World;

/** The same build without a fault, and the same amplifier meant. */
export const soundOf = ({ rig, about }: World): World => soundBike(rig, about).world;
const soundBikes = oncePerKey<World['rig'], Ridden>();
const soundBike = (rig: World['rig'], about: number | null): Ridden =>
  soundBikes(rig, `${about}`, () => ridden({ ...healthyWorld(rig), about }));

const ALL_COMPLAINTS = Object.keys(COMPLAINTS) as readonly ComplaintId[];
/** What a sound bike of the build does not complain of. */
const notOfASoundOne = oncePer((sound: Ridden) => ALL_COMPLAINTS.filter((id) => COMPLAINTS[id](sound) !== 'yes'));

/** The least and the most of everything that is drawn. */
const ENDS: readonly Draw[] = [() => 0, () => 1 - 1e-9];

/** Whether a sound bike of this build, so changed, complains of nothing that it did not complain of before. */
export function complainsNoMore({ rig, about }: World, change: (world: World) => World): boolean {
  const sound = soundBike(rig, about);
  const bike = ridden(change(sound.world));
  return notOfASoundOne(sound).every((id) => COMPLAINTS[id](bike) !== 'yes');
}
export const isHarmless = (world: World, change: Change): boolean =>
  ENDS.every((draw) => complainsNoMore(world, (sound) => change(sound, draw)));

/** Whether parts of a bike are what they are on a sound one, so that a change to them overwrites no fault. */
export function isUntouched(world: World, parts: (world: World) => readonly object[]): boolean {
  return identityOf(world.rig, ...parts(world)) === identityOf(world.rig, ...parts(soundOf(world)));
}

/** Fits where the parts that it changes are sound, and the change alone is no fault. */
export const harmless =
  (parts: (world: World) => readonly object[], change: Change) =>
  (world: World): boolean =>
    isUntouched(world, parts) && isHarmless(world, change);
