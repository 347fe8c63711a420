import type { StagedFlow } from '../../machines/machine.ts';
import { drawFrom } from '../observe/draw.ts';
import { observe } from '../observe/index.ts';
import { findingsOver, learnedRig, outcomeOf } from '../steps/outcome.ts';
import type { Facts, Step } from '../steps/step.ts';
import type { WholeRig } from '../survey/random-rig.ts';
import { UNLISTED } from '../survey/unlisted.ts';
import { FAULTS, type Fault, severityAt, weightOf } from '../world/faults/index.ts';
import { EXACT_METER } from '../world/meter.ts';
import type { ComplaintId, Ridden } from '../world/symptoms/index.ts';
import { bikesOf } from './bikes.ts';
import type { Observe } from './observe.ts';

/** One way in which a bike can have a complaint, as a careful rider finds it. */
export interface Caller {
  readonly fault: Fault;
  /** How often it is this one, beside the others of the bike. */
  readonly weight: number;
  readonly bike: Ridden;
}

/** How often it is something that no reading shows, as a share of everything else together. An estimate. */
const UNLISTED_SHARE = 0.03;

/**
 * Everything that can be behind a complaint on a bike, each as bad as it is in the middle. Nobody where even a sound bike of
 * the build complains.
 */
export function callersOn(complaint: ComplaintId, rig: WholeRig): readonly Caller[] {
  const bikes = bikesOf(rig);
  if (bikes.complains(complaint, [])) return [];
  const presentOf = (fault: Fault) => ({ fault, severity: severityAt(fault, 0.5) });
  const has = (fault: Fault) => fault.fits(bikes.healthy) && bikes.complains(complaint, [presentOf(fault)]);
  const weighed = FAULTS.flatMap((fault) => {
    const weight = weightOf(fault, complaint);
    return weight && has(fault) ? [{ fault, weight }] : [];
  });
  const total = weighed.reduce((sum, { weight }) => sum + weight, 0);
  const unlisted = total > 0 ? UNLISTED.filter(has) : [];
  return [...weighed, ...unlisted.map((fault) => ({ fault, weight: (UNLISTED_SHARE * total) / unlisted.length }))].map(
    ({ fault, weight }) => ({ fault, weight, bike: bikes.with([presentOf(fault)]) }),
  );
}

/**
 * The rider of a bike: whatever is wrong with it, what chance has a say in comes out alike, for there is one such bike, with
 * its knobs and plugs, and one person. Else the search would know a fault by the luck that its rider had.
 */
export const riderOf =
  ({ batteryAh }: WholeRig): Observe =>
  (step, bike, situation) =>
    observe(step, bike, situation, { meter: EXACT_METER, draw: drawFrom('bench', batteryAh, step.id) });

/** What has to be known before anything else means something: what is fitted, and the meter. */
const isEarly = ({ kind, place }: Step): boolean => kind === 'rig' || place === 'tools';

/** What one caller shows when he is asked everything there is, and when each step makes sense to him. */
export interface Shown {
  outcome(step: Step): string;
  /** Whether it makes sense before anything was looked at. */
  atFirst(step: Step): boolean;
  /** Whether it makes sense when everything else is answered, or everything but one other step. */
  atLast(step: Step, without?: string): boolean;
}

export function shownBy(flow: StagedFlow, rig: WholeRig, { bike }: Caller): Shown {
  const sees = riderOf(rig);
  const steps = [...flow.steps.values()];
  const known = (facts: Facts) => ({ rig: learnedRig(rig, steps, facts), facts });
  const findings = (facts: Facts) => findingsOver(flow.steps)(known(facts));
  let facts: Facts = {};
  const lookAt = (which: readonly Step[]): Facts => {
    for (const step of which) facts = { ...facts, [step.id]: sees(step, bike, known(facts)) };
    return facts;
  };
  lookAt(steps.filter(isEarly));
  const told = lookAt(flow.inOrder.filter((step) => !isEarly(step)));
  lookAt(flow.asked.filter((step) => !isEarly(step)));
  const [all, first] = [known(facts), findings(told)];
  return {
    outcome: (step) => outcomeOf(step, all) ?? 'cannot',
    atFirst: (step) => step.sensible?.(first) ?? true,
    atLast: (step, without = '') => {
      const { [without]: _, ...rest } = facts;
      return step.sensible?.(findings(rest)) ?? true;
    },
  };
}
