import { type Draw, drawFrom, happens, pick } from '../observe/draw.ts';
import { asBuilt, randomRig, type WholeRig } from '../survey/random-rig.ts';
import { FAULTS, type Fault, keyOf, severityAt, weightOf } from '../world/faults/index.ts';
import type { ComplaintId } from '../world/symptoms/index.ts';
import { type Bikes, bikesOf, type Present } from './bikes.ts';

/** A random bike, what its papers say, and faults that give it the complaint. */
export interface Subject {
  readonly name: string;
  readonly paper: WholeRig;
  readonly bikes: Bikes;
  readonly faults: readonly Present[];
}

export interface Sample {
  readonly complaint: ComplaintId;
  readonly seed: number;
  /** How many faults are tried on each bike, drawn anew for each; Infinity for all. */
  readonly faultsPerBike: number;
}

/** Faults that nobody counts among the causes of a complaint, tried on each bike all the same. */
const UNEXPECTED_TRIED = 6;

function shuffled<T>(draw: Draw, from: readonly T[]): readonly T[] {
  const left = [...from];
  return from.map(() => left.splice(Math.floor(draw() * left.length), 1)[0] as T);
}

function causes(complaint: ComplaintId, draw: Draw): readonly Fault[] {
  const expected = FAULTS.filter((fault) => weightOf(fault, complaint));
  const others = FAULTS.filter((fault) => !expected.includes(fault));
  const unexpected = new Set(Array.from({ length: UNEXPECTED_TRIED }, () => pick(draw, others)));
  return shuffled(draw, [...expected, ...unexpected]);
}

/** How often it is the front amplifier that stays off, on a bike with two. An estimate. */
const FRONT_MEANT_SHARE = 0.4;
const ABOUT_AN_AMP: readonly ComplaintId[] = ['amp-wont-turn-on', 'amp-goes-off'];
/** Of two amplifiers either may stay off. Every other complaint is about the rear's, if it is about one. */
function meant(complaint: ComplaintId, { amps }: WholeRig, draw: Draw): number | undefined {
  if (!ABOUT_AN_AMP.includes(complaint) || amps.length < 2 || !happens(draw, FRONT_MEANT_SHARE)) return undefined;
  const front = amps.findIndex(({ drives }) => drives === 'front');
  return front < 0 ? undefined : front;
}

/** The bike with this number, the same for the same seed. Undefined when even a sound one of the build complains. */
export function subjectOf({ complaint, seed, faultsPerBike }: Sample, index: number): Subject | undefined {
  const draw = drawFrom(seed, 'bike', index);
  const paper = randomRig(draw);
  const bikes = bikesOf(asBuilt(draw, paper), meant(complaint, paper, draw));
  if (bikes.complains(complaint, [])) return undefined;
  const faults: Present[] = [];
  for (const fault of causes(complaint, draw)) {
    const present = { fault, severity: severityAt(fault, draw()) };
    if (faults.length < faultsPerBike && fault.fits(bikes.healthy) && bikes.complains(complaint, [present]))
      faults.push(present);
  }
  return { name: `${seed}/${index}`, paper, bikes, faults };
}

export const nameOf = (faults: readonly Present[]): string => faults.map(({ fault }) => keyOf(fault)).join(' + ');
