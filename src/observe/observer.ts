import type { Axle } from '../rig/corner.ts';
import type { Answer, Situation, Step } from '../steps/step.ts';
import type { Meter } from '../world/meter.ts';
import type { Ridden } from '../world/symptoms/index.ts';

/** Somebody who looks, listens and reads. `draw` gives numbers from 0 to 1, the same ones for the same seed. */
export interface Observer {
  readonly meter: Meter;
  readonly draw: () => number;
}

/** A step that is asked at a bike. */
export interface Asked {
  readonly step: Step;
  /** The bike as it was found. */
  readonly found: Ridden;
  /** The bike as earlier steps left it: fader in the middle, plugs home. */
  readonly bike: Ridden;
  readonly situation: Situation;
  readonly observer: Observer;
}

/** What somebody says to a step. */
export type Say = (asked: Asked) => Answer;

/** The axle that a step is about: the rear, where it names none. */
export const axleAsked = ({ step: { about } }: Asked): Axle => {
  const subject = about?.subject;
  return subject === 'front' || subject === 'front-left' || subject === 'front-right' ? 'front' : 'rear';
};

export const CANNOT: Answer = { cannot: true };

export const option = (name: string): Answer => ({ option: name });

export const happens = ({ draw }: Observer, share: number): boolean => draw() < share;

/** One of several, each as often as its odds say. */
export function oneOf<K extends string>(
  { draw }: Pick<Observer, 'draw'>,
  odds: Readonly<Partial<Record<K, number>>>,
): K {
  const all = Object.entries(odds) as [K, number][];
  const sum = all.reduce((total, [, share]) => total + share, 0);
  let left = draw() * sum;
  for (const [name, share] of all) {
    left -= share;
    if (share > 0 && left <= 0) return name;
  }
  return all.findLast(([, share]) => share > 0)?.[0] as K;
}
