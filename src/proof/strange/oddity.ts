import type { Draw } from '../../observe/draw.ts';
import type { Rig } from '../../rig/rig.ts';
import type { Answer, Situation, Step } from '../../steps/step.ts';
import type { World } from '../../world/state.ts';
import type { Ridden } from '../../world/symptoms/index.ts';

export { between, type Draw, drawFrom, happens, pick } from '../../observe/draw.ts';

/** What somebody sees and says at a bike: the same shape as in the proof, written down here so that nothing else is needed. */
export type Observe = (step: Step, bike: Ridden, situation: Situation) => Answer;

/** What is out of the ordinary. Of one class a case has one oddity at most. */
export const ODDITY_CLASSES = [
  // Bikes.
  'residue',
  'rest',
  'sides',
  'supply',
  'turn-on',
  'leads',
  'contacts',
  'speakers',
  'protection',
  'lamp',
  // People.
  'probes',
  'conditions',
  'proofs',
  'meter',
  'ohms',
  'typing',
  'deeds',
  'plugs',
  'ears',
  'past',
  'complaint',
  'build',
  'words',
  'agreeable',
  'unsure',
] as const;
export type OddityClass = (typeof ODDITY_CLASSES)[number];

/**
 * A habit of a person or a peculiarity of a bike that the model of habits does not have. It lasts a whole case: whoever
 * wraps an observer with `person` does so once.
 */
export interface Oddity {
  readonly id: string;
  readonly says: string;
  readonly class: OddityClass;
  /** Whether this bike with this fault can have it, and it can show there. */
  fits(world: World): boolean;
  /** What it changes on the true bike, which complains of nothing by that alone. The same draws change it alike. */
  bike?(world: World, draw: Draw): World;
  /** What it changes in what is said of the bike. */
  person?(observe: Observe, draw: Draw): Observe;
  /** What its owner has put down of the bike, where that is wrong, too. */
  believed?(rig: Rig): Rig;
}
