import type { Answer, ReadingStep } from '../../../steps/step.ts';
import { hasAmp } from '../../../world/faults/kit.ts';
import type { Draw, Observe, Oddity } from '../oddity.ts';
import { conditionOf, cornerOf, dcBetween, type Points, pointsOf, readsTone } from './places.ts';
import {
  type Given,
  instead,
  LOOKS_AGAIN_SHARE,
  optionIn,
  type ReadingGiven,
  retyped,
  saying,
  typed,
  unitOf,
} from './saying.ts';

/* Probes on the wrong post, for a whole class of readings. */

const readsDc = (step: ReadingStep, name: string): boolean => !readsTone(step) && unitOf(step, name) === 'V';

/** Every DC reading that belongs at some places is taken at others. */
const atOthers =
  (others: (points: Points) => Points | null) =>
  (observe: Observe, draw: Draw): Observe => {
    const notices = draw() < LOOKS_AGAIN_SHARE;
    const wrong = (name: string, { step, situation, bike, before }: ReadingGiven): string | undefined => {
      if (!readsDc(step, name) || (before > 0 && notices)) return undefined;
      const points = pointsOf(step, name, situation);
      const taken = points && others(points);
      if (!taken) return undefined;
      const volts = dcBetween(bike, conditionOf(step), taken, cornerOf(bike.world, name));
      return volts === null ? undefined : typed(volts, 'V');
    };
    return saying((given) => retyped(given, (name, _, at) => wrong(name, at)))(observe);
  };

const isAtTheBattery = ({ red }: Points): boolean => red === 'battery-plus';
/** What a meter drifts to when one probe touches nothing. */
const FLOATING_V = 0.01;

const OTHER: Readonly<Record<string, string>> = { left: 'right', right: 'left' };
const crossed = (name: string): string => name.replace(/left|right/, (side) => OTHER[side] ?? side);
/** The readings of a step that has both sides, each under the name of the other. */
function sidesCrossed(readings: Readonly<Record<string, string>>): Answer {
  const entries = Object.entries(readings).map(([name, typed]) => [name, readings[crossed(name)] ?? typed] as const);
  return { readings: Object.fromEntries(entries) };
}
function otherSide(given: Given): Answer {
  const told = optionIn(given.answer) ?? '';
  return crossed(told) === told ? given.answer : instead(given, crossed(told));
}

export const PROBES: readonly Oddity[] = [
  {
    id: 'red-stays-on-amp-plus',
    says: 'red on the amplifier’s positive where its ground was asked for',
    class: 'probes',
    fits: hasAmp,
    person: atOthers((points) => (points.red === 'amp-ground' ? { ...points, red: 'amp-plus' } : null)),
  },
  {
    id: 'black-on-amp-ground',
    says: 'black on the amplifier’s ground instead of the battery negative post',
    class: 'probes',
    fits: hasAmp,
    person: atOthers((points) =>
      points.black === 'battery-minus' && !isAtTheBattery(points) ? { ...points, black: 'amp-ground' } : null,
    ),
  },
  {
    id: 'black-on-paint',
    says: 'black on a painted bolt of the frame',
    class: 'probes',
    fits: () => true,
    person: (observe, draw) => {
      const notices = draw() < LOOKS_AGAIN_SHARE;
      return saying((given) =>
        retyped(given, (name, _, { step, situation, before }) => {
          const points = before > 0 && notices ? null : pointsOf(step, name, situation);
          if (!points || isAtTheBattery(points) || readsTone(step)) return undefined;
          if (points.black === 'frame') return typed(Infinity, 'Ω');
          return points.black === 'battery-minus' ? typed(FLOATING_V, 'V') : undefined;
        }),
      )(observe);
    },
  },
  {
    id: 'left-for-right',
    says: 'somebody who takes left for right',
    class: 'probes',
    fits: () => true,
    person: saying((given) => ('readings' in given.answer ? sidesCrossed(given.answer.readings) : otherSide(given))),
  },
];
