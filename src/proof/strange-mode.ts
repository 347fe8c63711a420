import { drawFrom, happens } from '../observe/draw.ts';
import { FAULTS, type Fault, keyOf, weightOf } from '../world/faults/index.ts';
import { healthyWorld } from '../world/healthy.ts';
import type { World } from '../world/state.ts';
import { COMPLAINTS, type ComplaintId, type Ridden, ridden } from '../world/symptoms/index.ts';
import type { Table, Trial } from './modes.ts';
import { rightFor, steady } from './riders.ts';
import {
  oddBike,
  oddities,
  oddRider,
  STRANGE_FAULTS,
  type StrangeFault,
  strangeRig,
  strangeSeverity,
} from './strange/index.ts';
import type { Subject } from './subjects.ts';
import { weighted } from './weighted.ts';

/** How often it is a fault that only the proof knows. An estimate. */
const STRANGE_FAULT_SHARE = 0.15;
const TRIES = 60;

interface Odd {
  readonly fault: Fault | StrangeFault;
  readonly severity: number;
  readonly world: World;
}

const complains = (complaint: ComplaintId) => (bike: Ridden) => COMPLAINTS[complaint](bike) === 'yes';

/** A bike and a fault from other draws than those that the tables were made with. */
function oddCase(complaint: ComplaintId, seeds: readonly (string | number)[]) {
  const draw = drawFrom(...seeds);
  const paper = strangeRig(draw);
  const healthy = healthyWorld(paper);
  const isIt = complains(complaint);
  const byDesign = isIt(ridden(healthy));
  const ordinary = FAULTS.flatMap((fault): (readonly [Fault, number])[] => {
    const weight = weightOf(fault, complaint);
    return weight && byDesign === (fault.byDesign ?? false) && fault.fits(healthy) ? [[fault, weight]] : [];
  });
  const only = byDesign
    ? []
    : STRANGE_FAULTS.filter((fault) => fault.fits(healthy)).map((fault) => [fault, 1] as const);
  for (let i = 0; i < TRIES; i++) {
    const from = only.length > 0 && happens(draw, STRANGE_FAULT_SHARE) ? only : ordinary;
    const fault = weighted<Fault | StrangeFault>(draw, from);
    if (!fault) continue;
    const severity = strangeSeverity(draw, fault);
    const world = fault.apply(healthy, severity);
    if (isIt(ridden(world))) return { paper, odd: { fault, severity, world } satisfies Odd, draw };
  }
  return undefined;
}

const isStrange = (fault: Fault | StrangeFault): fault is StrangeFault => 'rightCauses' in fault;

/** One case a bike of the proof: its number is kept, and nothing else of it. */
export function strangeTrials({ flow, stages }: Table, { name, complaint, faults }: Subject): readonly Trial[] {
  return faults.flatMap((_, nth): Trial[] => {
    const seed = `strange ${name} ${nth}`;
    const made = oddCase(complaint, ['strange', name, nth]);
    if (!made) return [];
    const { paper, draw } = made;
    const { fault, severity, world } = made.odd;
    const chosen = oddities(draw, world);
    const bike = ridden(oddBike(world, chosen, seed));
    const isIt = complains(complaint);
    if (!isIt(bike)) return [];
    const careful = steady([seed]);
    const hides = isStrange(fault) ? (fault.person?.(careful) ?? careful) : careful;
    const present = { fault, severity };
    return [
      {
        faults: [present],
        hardship: `${keyOf(fault)} with ${chosen.map(({ id }) => id).join(', ')}`,
        classes: [...chosen.map((one) => one.class), ...(isStrange(fault) ? ['strange fault'] : [])],
        ride: {
          stages,
          start: flow,
          believed: chosen.reduce(
            (rig, { believed }) => believed?.(rig) ?? rig,
            paper as Parameters<NonNullable<(typeof chosen)[number]['believed']>>[0],
          ),
          bike,
          complains: isIt,
          right: isStrange(fault) ? new Set(fault.rightCauses) : rightFor(stages, [present]),
          rightByIds: isStrange(fault) || fault.byDesign === true,
          ...(!isStrange(fault) && fault.byDesign && { byDesign: true }),
          observe: oddRider(hides, chosen, seed),
        },
      },
    ];
  });
}
