import { elsewhere } from '../../machines/elsewhere.ts';
import { findingsIn, type StagedFlow } from '../../machines/machine.ts';
import { FAULT_FLOWS, type FaultFlow, type Intake } from '../case/flows.ts';
import type { Cause } from '../causes/cause.ts';
import { UNTHOUGHT_SOUND } from '../inference/table.ts';
import type { Rig } from '../rig/rig.ts';
import { FAULTS, type Fault, onTheLeft } from '../world/faults/index.ts';
import type { ComplaintId } from '../world/symptoms/index.ts';
import { BUILD_KINDS, fixedRigs, rigsWithoutRear } from './fixed-rigs.ts';
import type { Survey } from './survey.ts';
import { UNLISTED } from './unlisted.ts';

/**
 * Whether a cause stands for a fault: for all variants of its id, for one of them on whichever side, or for the one without
 * a variant.
 */
export const standsFor = ({ faults }: Cause, { id, variant = '' }: Pick<Fault, 'id' | 'variant'>): boolean =>
  [id, `${id}@${variant}`, `${id}@${onTheLeft(variant)}`].some((fault) => faults.includes(fault));

export const causeOfFault = (causes: readonly Cause[], fault: Pick<Fault, 'id' | 'variant'>): Cause | undefined =>
  causes.find((cause) => standsFor(cause, fault));

const RIGS_PER_KIND = 20;

/** What splits bikes into kinds of build. */
export const buildSteps = (flow: StagedFlow): readonly string[] =>
  [...flow.steps.values()].flatMap(({ kind, id }) => (kind === 'rig' ? [id] : []));

/** The flow that takes a complaint on. */
const flowFor = (complaint: ComplaintId): string | undefined =>
  FAULT_FLOWS.find(([, { complaints }]) => complaint in complaints)?.[0];

/**
 * What to look at for the table of a flow. A cause that another flow looks for goes under the name of that flow. Where no
 * complaint is known yet, whatever causes one goes under the flow that takes it on.
 */
export function surveyOf(
  { kind, complaints, withoutRear, bikesAKind = RIGS_PER_KIND }: FaultFlow | Intake,
  flow: StagedFlow,
  causes: readonly Cause[],
  rigsPerKind = bikesAKind,
): Survey {
  // Where the other flow has nothing to look for on a bike, a cause goes by its own name.
  const nameOf = (id: string, rig: Rig): string | undefined => {
    const findings = findingsIn(flow, { rig, facts: {} });
    const to = flow.handsOver.find((other) => other.causes.includes(id) && (other.sensible?.(findings) ?? true));
    return to ? elsewhere(to.flow) : flow.causes.includes(id) ? id : undefined;
  };
  return {
    steps: [...flow.steps.values()],
    complaints: complaints as Partial<Record<ComplaintId, number>>,
    faults: [...FAULTS, ...UNLISTED],
    rigs: [
      ...BUILD_KINDS.flatMap((kind) => fixedRigs(kind, rigsPerKind)),
      ...(withoutRear ? rigsWithoutRear(rigsPerKind) : []),
    ],
    kindSteps: buildSteps(flow),
    causeOf: (fault, complaint, rig) => {
      if (UNLISTED.some(({ id }) => id === fault.id)) return UNTHOUGHT_SOUND;
      const cause = causeOfFault(causes, fault);
      if (kind === 'fault') return cause && nameOf(cause.id, rig);
      const to = cause && flowFor(complaint);
      return to && elsewhere(to);
    },
  };
}
