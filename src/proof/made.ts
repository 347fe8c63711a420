import { makeSigns, type Survey, soundOutcomes } from '../diagnosis/make-signs.ts';
import { drawFrom, pick } from '../observe/draw.ts';
import { observe } from '../observe/index.ts';
import type { MadeTable } from '../verdicts/made-table.ts';
import type { Verdict } from '../verdicts/verdict.ts';
import { FAULTS, type Fault, keyOf } from '../world/faults/index.ts';
import { BASIC_METER, GOOD_METER } from '../world/meter.ts';
import { BUILD_KINDS, fixedRigs } from './fixed-rigs.ts';
import type { ProvedFlow } from './flows.ts';
import { hasFault } from './stands-for.ts';

/** Steps that split bikes into kinds of build. */
const KIND_STEPS = ['unit-kind', 'rear-drive', 'rear-amp-turn-on', 'front-amp-turn-on'];
/** Past work and what was heard before: they move the odds, and rule nothing out. */
export const HISTORY_STEPS = ['rear-history', 'last-change', 'amp-history'];
/** What says nothing about a fault: what is in the tool bag, what is printed on a speaker, what feeds what. */
export const SAY_NOTHING = [
  'tools-at-hand',
  'meter-digit',
  'which-amp',
  'rear-rating',
  'delivered-with',
  'front-drive',
  'rear-inputs',
  'rear-amp-input',
  'front-amp-input',
];
/** They ask whether the sound comes back: a second fault keeps it away, so nothing coming back is no sign of health. */
const NO_SIGN_OF_HEALTH = ['lid-check', 'wiggle'];
const RIGS_PER_KIND = 20;

/** The verdict that names a fault: one of the same name before one that names others as well. */
export function verdictOf({ flow, texts }: ProvedFlow, fault: Fault): Verdict | undefined {
  const verdicts = Object.values(flow.states).flatMap((state) => ('verdict' in state ? [state.verdict] : []));
  const meant = verdicts.find(({ id }) => hasFault(texts[id]?.means ?? [], fault));
  if (meant) return meant;
  const naming = verdicts.filter(({ faults }) => faults.includes(fault.id));
  return naming.find(({ id }) => id === keyOf(fault)) ?? naming[0];
}

export function surveyOf(proved: ProvedFlow, rigsPerKind = RIGS_PER_KIND): Survey {
  const { id, flow } = proved;
  const steps = [...flow.steps.values()];
  return {
    complaint: id,
    steps,
    kindSteps: KIND_STEPS,
    historySteps: HISTORY_STEPS,
    faults: FAULTS,
    rigs: BUILD_KINDS.flatMap((kind) => fixedRigs(kind, rigsPerKind)),
    makesSense: ({ id: step }, outcome) =>
      !SAY_NOTHING.includes(step) &&
      // On a line-level lead no DC is healthy and says nothing.
      (step !== 'half-supply' || outcome('rear-amp-input') === 'speaker'),
    nameOf: (fault) => verdictOf(proved, fault)?.id,
    observe: (step, bike, situation, time) => {
      const draw = drawFrom('look', time, step.id, bike.world.rig.batteryAh);
      const meter = pick(drawFrom('meter', bike.world.rig.batteryAh), [GOOD_METER, BASIC_METER]);
      return observe(step, bike, situation, { meter, draw });
    },
  };
}

/** Shares are kept to a hundredth: a table for a page, not for a laboratory. */
const rounded = (share: number): number => Math.round(share * 100) / 100;
/** What happens less often than this is a slip, not a sign. */
const LEAST_SHARE = 0.005;

/** The table of a flow, made anew from the circuit: what each suspect shows, named by the verdict that stands for it. */
export function madeTable(proved: ProvedFlow, rigsPerKind?: number): MadeTable {
  const survey = surveyOf(proved, rigsPerKind);
  const suspects = makeSigns(survey).map(({ suspect, weight, shows }) => {
    const kept = Object.entries(shows).flatMap(([step, chances]) => {
      const often = Object.entries(chances).filter(([, share]) => share >= LEAST_SHARE);
      return [[step, Object.fromEntries(often.map(([outcome, share]) => [outcome, rounded(share)]))] as const];
    });
    return { verdict: suspect, weight: rounded(weight), shows: Object.fromEntries(kept) };
  });
  const silent = [...HISTORY_STEPS, ...NO_SIGN_OF_HEALTH];
  const sound = Object.entries(soundOutcomes(survey)).filter(([step]) => !silent.includes(step));
  return { suspects, sound: Object.fromEntries(sound) };
}
