import { lookAt } from '../../../observe/bike.ts';
import { type Corner, cornersOf, sideOf } from '../../../rig/corner.ts';
import type { ReadingStep, Situation } from '../../../steps/step.ts';
import { stepName } from '../../../steps/subject.ts';
import type { TestPoint } from '../../../steps/test-points.ts';
import type { Moment } from '../../../world/moment.ts';
import { dcV, ohms } from '../../../world/probe.ts';
import type { World } from '../../../world/state.ts';
import type { Ridden } from '../../../world/symptoms/index.ts';
import { ground, spotOf } from '../../../world/test-points.ts';
import { driverOf, isFitted } from '../../../world/valued-rig.ts';

/* Where the probes of a reading belong, and what a meter would read at another place. */

export interface Points {
  readonly red: TestPoint;
  readonly black: TestPoint;
}

/** Where a reading is taken, or null where the step leaves that open. */
export function pointsOf(step: ReadingStep, name: string, situation: Situation): Points | null {
  const probes = step.readings[name]?.probes ?? step.probes;
  if (probes === 'not drawn') return null;
  return typeof probes === 'function' ? probes(situation) : probes;
}

/** Steps that read a tone. Every other step in volts reads DC. */
const WITH_A_TONE = [
  'rear-pair',
  'rear-pair-again',
  'amp-in',
  'amp-out',
  'tones-off',
  'tones-running',
  'top-step',
  'sense-level',
  'unit-sides',
  'input-sides',
  'output-sides',
];
export const readsTone = (step: ReadingStep): boolean => WITH_A_TONE.includes(stepName(step));

/** The corner whose wires a reading means: of the amplifier in question, else of the rear; the left one where it is open. */
export function cornerOf({ rig, about }: World, name: string): Corner {
  const side = name.startsWith('right') ? 'right' : 'left';
  const both = [...cornersOf('rear'), ...cornersOf('front')].filter((corner) => sideOf(corner) === side);
  const meant = both.find((corner) => isFitted(rig, corner) && (about === null || driverOf(rig, corner) === about));
  return meant ?? (side === 'right' ? 'rear-right' : 'rear-left');
}

/** What is done to the bike at some steps: a bulb on the amplifier's terminals, the key off, the music paused. */
const CONDITIONS: Readonly<Record<string, Partial<Moment>>> = {
  'supply-under-load': { lamp: true, toneHz: null },
  'plus-path': { lamp: true, toneHz: null },
  'remote-key-off': { key: 'off', toneHz: null },
  'half-supply': { toneHz: null },
  'sense-dc': { toneHz: null },
};
export const conditionOf = (step: ReadingStep): Partial<Moment> => CONDITIONS[stepName(step)] ?? {};

/** What a meter reads between two places of the bike, or null where one of them is not there. */
const between =
  (reads: typeof dcV) =>
  (bike: Ridden, moment: Partial<Moment>, { red, black }: Points, corner: Corner): number | null => {
    const look = lookAt(bike, moment);
    const [plus, minus] = [spotOf(red, bike.world, corner), spotOf(black, bike.world, corner)];
    if (!look || !plus || !minus) return null;
    const read = reads(look, plus, minus);
    return read.ok ? read.value : null;
  };
export const dcBetween = between(dcV);
/** Of a bike that is off. */
export const ohmsBetween = between(ohms);

/** DC of a place against ground, with the music paused; nothing where there is no such place. */
export function restsAtV(bike: Ridden, point: TestPoint, corner: Corner): number {
  const look = lookAt(bike, { toneHz: null });
  const spot = spotOf(point, bike.world, corner);
  if (!look || !spot) return 0;
  const read = dcV(look, spot, ground(spot.where));
  return read.ok ? read.value : 0;
}
