import { type Draw, drawFrom, happens } from '../observe/draw.ts';
import { asBuilt, randomRig, type WholeRig } from '../survey/random-rig.ts';
import { FAULTS, type Fault, keyOf, severityAt, weightOf } from '../world/faults/index.ts';
import { ABOUT_AN_AMP, type ComplaintId } from '../world/symptoms/index.ts';
import { type Bikes, bikesOf, type Present } from './bikes.ts';
import { weighted } from './weighted.ts';

/** A random bike, what its papers say, what is complained of, and faults that give it the complaint. */
export interface Subject {
  readonly name: string;
  readonly complaint: ComplaintId;
  readonly paper: WholeRig;
  readonly bikes: Bikes;
  readonly faults: readonly Present[];
}

export interface Sample {
  /** The complaints of a flow, each with its share of callers. */
  readonly complaints: Readonly<Record<string, number>>;
  readonly seed: number;
  /** How many faults are drawn for each bike. */
  readonly faultsPerBike: number;
}

/** How often it is the front amplifier that stays off, on a bike with two. An estimate. */
const FRONT_MEANT_SHARE = 0.4;
function meant(complaint: ComplaintId, { amps }: WholeRig, draw: Draw): number | undefined {
  if (!ABOUT_AN_AMP.includes(complaint) || amps.length < 2 || !happens(draw, FRONT_MEANT_SHARE)) return undefined;
  const front = amps.findIndex(({ drives }) => drives === 'front');
  return front < 0 ? undefined : front;
}

/** A fault that does not fit a bike, or does not make it complain, is drawn again so many times. */
const TRIES = 60;

/**
 * The bike with this number, the same for the same seed. Its faults are drawn by how often callers have them. Undefined
 * when nothing drawn gives it the complaint.
 */
export function subjectOf({ complaints, seed, faultsPerBike }: Sample, index: number): Subject | undefined {
  const draw = drawFrom(seed, 'bike', index);
  const complaint = weighted(draw, Object.entries(complaints) as [ComplaintId, number][]) as ComplaintId;
  const paper = randomRig(draw);
  const bikes = bikesOf(asBuilt(draw, paper), meant(complaint, paper, draw));
  // What a sound bike of the build does is by design, and nothing else is looked for there.
  const byDesign = bikes.complains(complaint, []);
  const candidates = FAULTS.flatMap((fault): (readonly [Fault, number])[] => {
    const weight = weightOf(fault, complaint);
    return weight && byDesign === (fault.byDesign ?? false) && fault.fits(bikes.healthy) ? [[fault, weight]] : [];
  });
  const faults: Present[] = [];
  for (let tries = 0; candidates.length > 0 && faults.length < faultsPerBike && tries < TRIES; tries++) {
    const fault = weighted(draw, candidates) as Fault;
    const present = { fault, severity: severityAt(fault, draw()) };
    const twice = faults.some((other) => other.fault === fault);
    if (!twice && bikes.complains(complaint, [present])) faults.push(present);
  }
  return faults.length === 0 ? undefined : { name: `${seed}/${index}`, complaint, paper, bikes, faults };
}

export const nameOf = (faults: readonly Present[]): string => faults.map(({ fault }) => keyOf(fault)).join(' + ');
