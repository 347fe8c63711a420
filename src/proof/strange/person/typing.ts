import { hasAmp } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { ridden } from '../../../world/symptoms/index.ts';
import { between, type Draw, type Observe, type Oddity } from '../oddity.ts';
import { conditionOf, cornerOf, dcBetween, type Points, pointsOf, readsTone } from './places.ts';
import { type Given, LOOKS_AGAIN_SHARE, type ReadingGiven, retyped, saying, typed, unitOf } from './saying.ts';

/* Right readings that become other ones between the display and the question. */

/** Places that have the battery's volts or none, on a bike of which everybody knows only that. */
const OF_THE_SUPPLY = ['fuse-in', 'fuse-out', 'amp-plus', 'amp-remote', 'remote-start'];
const ofTheSupply = ({ red, black }: Points): boolean => black === 'battery-minus' && OF_THE_SUPPLY.includes(red);
/** Too few for anything to run on, and too many for a wire that is open. */
const SOME_V = [0.8, 9] as const;
const isSome = (volts: number | null): boolean => volts !== null && volts > SOME_V[0] && volts < SOME_V[1];

const readsSome = (world: World): boolean =>
  (['amp-plus', 'fuse-out', 'amp-remote'] as const).some((red) =>
    isSome(dcBetween(ridden(world), {}, { red, black: 'battery-minus' }, cornerOf(world, ''))),
  );
function noneOfSome(name: string, value: number, { step, situation }: ReadingGiven): string | undefined {
  const points = pointsOf(step, name, situation);
  if (!points || !ofTheSupply(points) || readsTone(step) || 'lamp' in conditionOf(step)) return undefined;
  return isSome(value) ? typed(0, 'V') : undefined;
}

const openTyped =
  (text: (given: Given) => string) =>
  (given: Given): Given['answer'] =>
    retyped(given, (name, value, { step }) =>
      unitOf(step, name) === 'Ω' && value === Infinity ? text(given) : undefined,
    );
/** What a short would show with these leads. */
const likeAShort = ({ answer }: Given): string =>
  ('readings' in answer && answer.readings['leadsOhm']) || typed(0.2, 'Ω');

/** Two looks lie no further apart than a tenth. All readings of one look are off alike. */
const OFF_RATIO = [0.95, 1.05] as const;
function offThisTime(given: Given, ratio: number): Given['answer'] {
  return retyped(given, (name, value, { step }) => {
    const unit = unitOf(step, name);
    return unit && Number.isFinite(value) ? typed(ratio * value, unit, 3) : undefined;
  });
}

export const TYPING: readonly Oddity[] = [
  {
    id: 'some-volts-told-as-none',
    says: 'somebody who says “nothing” of four or eight volts where twelve are expected',
    class: 'typing',
    fits: (world) => hasAmp(world) && readsSome(world),
    person: saying((given) => retyped(given, noneOfSome)),
  },
  {
    id: 'open-typed-as-one',
    says: 'an old meter that shows a 1 for an open circuit, and somebody who types it',
    class: 'typing',
    fits: () => true,
    person: (observe: Observe, draw: Draw) => {
      const notices = draw() < LOOKS_AGAIN_SHARE;
      return saying((given) => (given.before > 0 && notices ? given.answer : openTyped(() => '1')(given)))(observe);
    },
  },
  {
    id: 'open-called-a-short',
    says: 'somebody who calls an open wire a short, and types what a short would read',
    class: 'typing',
    fits: () => true,
    person: saying(openTyped(likeAShort)),
  },
  {
    id: 'another-number-each-time',
    says: 'numbers that differ by up to a tenth from one look to the next',
    class: 'typing',
    fits: () => true,
    person: (observe: Observe, draw: Draw) =>
      saying((given) => offThisTime(given, between(draw, ...OFF_RATIO)))(observe),
  },
];
