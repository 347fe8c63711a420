import type { World } from '../../world/state.ts';
import { CONTACTS } from './bike/contacts.ts';
import { complainsNoMore, isHarmless } from './bike/harmless.ts';
import { LAMP } from './bike/lamp.ts';
import { LEADS } from './bike/leads.ts';
import { PROTECTION } from './bike/protection.ts';
import { RESIDUE } from './bike/residue.ts';
import { REST } from './bike/rest.ts';
import { SIDES } from './bike/sides.ts';
import { SPEAKERS } from './bike/speakers.ts';
import { SUPPLY } from './bike/supply.ts';
import { TURN_ON } from './bike/turn-on.ts';
import { type Draw, drawFrom, type Observe, ODDITY_CLASSES, type Oddity, type OddityClass, pick } from './oddity.ts';
import { AGREEABLE } from './person/agreeable.ts';
import { BUILD } from './person/build.ts';
import { COMPLAINT } from './person/complaint.ts';
import { CONDITIONS } from './person/conditions.ts';
import { DEEDS } from './person/deeds.ts';
import { EARS } from './person/ears.ts';
import { METER } from './person/meter.ts';
import { OHMS } from './person/ohms.ts';
import { PAST } from './person/past.ts';
import { PLUGS } from './person/plugs.ts';
import { PROBES } from './person/probes.ts';
import { PROOFS } from './person/proofs.ts';
import { TYPING } from './person/typing.ts';
import { UNSURE } from './person/unsure.ts';
import { WORDS } from './person/words.ts';

export { strangeRig, strangeSeverity } from './draws.ts';
export { STRANGE_FAULTS, type StrangeFault } from './faults/index.ts';
export { type Observe, ODDITY_CLASSES, type Oddity, type OddityClass } from './oddity.ts';

/**
 * Every oddity, from the bike outward: what a place reads comes before what the meter makes of it, and that before what
 * somebody says.
 */
export const ODDITIES: readonly Oddity[] = [
  ...SUPPLY,
  ...LEADS,
  ...CONTACTS,
  ...TURN_ON,
  ...SPEAKERS,
  ...SIDES,
  ...REST,
  ...RESIDUE,
  ...LAMP,
  ...PROTECTION,
  ...DEEDS,
  ...PROBES,
  ...CONDITIONS,
  ...PROOFS,
  ...METER,
  ...OHMS,
  ...TYPING,
  ...EARS,
  ...PLUGS,
  ...PAST,
  ...COMPLAINT,
  ...BUILD,
  ...WORDS,
  ...AGREEABLE,
  ...UNSURE,
];

/** Classes that speak to the same question, each its own way. */
const CONTRADICT: readonly (readonly [OddityClass, OddityClass])[] = [
  ['agreeable', 'build'],
  ['agreeable', 'unsure'],
  ['lamp', 'past'],
  ['complaint', 'past'],
  ['probes', 'conditions'],
  ['probes', 'proofs'],
  ['speakers', 'leads'],
];
const contradict = (a: Oddity, b: Oddity): boolean =>
  CONTRADICT.some((pair) => pair.includes(a.class) && pair.includes(b.class) && a.class !== b.class);

function shuffled<T>(draw: Draw, from: readonly T[]): readonly T[] {
  const left = [...from];
  return from.map(() => left.splice(Math.floor(draw() * left.length), 1)[0] as T);
}

const changedBy =
  (chosen: readonly Oddity[]) =>
  (world: World, draw: Draw): World =>
    chosen.reduce((so, { bike }) => bike?.(so, draw) ?? so, world);

/** How many a case has: most have one, few have three. */
const HOW_MANY = [1, 1, 1, 2, 2, 3];

/**
 * One to three oddities that this bike with this fault can have, no two of a class and no two that contradict, and all
 * together no second fault. Each class is as likely as the next.
 */
export function oddities(draw: Draw, world: World): readonly Oddity[] {
  const wanted = pick(draw, HOW_MANY);
  const chosen: Oddity[] = [];
  for (const one of shuffled(draw, ODDITY_CLASSES)) {
    if (chosen.length === wanted) break;
    const fitting = shuffled(
      draw,
      ODDITIES.filter((oddity) => oddity.class === one && !chosen.some((other) => contradict(other, oddity))),
    ).find((oddity) => oddity.fits(world) && (!oddity.bike || isHarmless(world, changedBy([...chosen, oddity]))));
    if (fitting) chosen.push(fitting);
  }
  return ODDITIES.filter((oddity) => chosen.includes(oddity));
}

/** Between the ends of what is drawn a bike may be on the edge of something: then it is drawn again. */
const TRIES = 8;

/** The true bike with its oddities: the same for the same seed and build, before a repair and after it. */
export function oddBike(world: World, chosen: readonly Oddity[], seed: string): World {
  for (let i = 0; i < TRIES; i++) {
    const change = (of: World) =>
      chosen.reduce((so, { id, bike }) => bike?.(so, drawFrom(seed, 'bike', i, id)) ?? so, of);
    if (complainsNoMore(world, change)) return change(world);
  }
  return world;
}

/** Somebody with these oddities. Made once a case: what he is, he stays. */
export const oddRider = (observe: Observe, chosen: readonly Oddity[], seed: string): Observe =>
  chosen.reduce((so, { id, person }) => person?.(so, drawFrom(seed, 'person', id)) ?? so, observe);
