import { CONDITIONS, type ConditionId, conditionOf } from '../steps/conditions.ts';
import type { StepId } from '../steps/ids.ts';
import type { Step } from '../steps/step.ts';

/** A condition that takes a while and then stands ready for other steps as well. */
export interface Setup {
  readonly id: ConditionId;
  readonly minutes: number;
}

const setupOf = (id: ConditionId): readonly Setup[] => {
  const { minutes } = conditionOf(id);
  return minutes > 0 ? [{ id, minutes }] : [];
};
export const SETUPS: readonly Setup[] = (Object.keys(CONDITIONS) as ConditionId[]).flatMap(setupOf);

export const setupsOf = ({ conditions = [] }: Step): readonly Setup[] => conditions.flatMap(setupOf);

/** What is told of the past: asked first in every flow. */
export const HISTORY: readonly string[] = ['rear-history', 'last-change', 'amp-history'];
const AC = ['rear-pair', 'amp-in', 'amp-out'];

/**
 * What has to be done before a step, for safety or because it makes no sense without: history first; settings before
 * readings that they change; no output is exchanged before the amplifier was heard and the run was measured, since a short
 * may be there; the chain is followed from where the sound begins; nothing is taken apart further than the reading before
 * it asks for. What is given under another answer comes after that one, too.
 */
const FIRST: Readonly<Record<string, readonly StepId[]>> = {
  'rear-pair': ['fader-centre', 'meter-digit'],
  'rear-pair-again': ['rear-pair'],
  'rear-pair-place': ['rear-pair'],
  'amp-in': ['fader-centre', 'meter-digit', 'rear-pair'],
  'amp-out': ['fader-centre', 'meter-digit', 'amp-in'],
  'four-corners': ['fader-centre'],
  'contacts-look': ['lid-check'],
  'wakes-when-loud': ['amp-light'],
  'swap-outputs': ['rear-hiss', 'run-ohms', 'wire-to-frame'],
  'coil-ohms': ['run-ohms'],
  'run-split': ['run-ohms'],
  'pop-speaker': ['pop-run'],
  // A lamp in the place of the fuse comes before any new fuse.
  'spare-fuse': ['fuse-lamp'],
  // With an open ground the current of a jumper or of a lamp goes through the shield of a line-level lead.
  'remote-jumper': ['amp-terminals'],
  'supply-under-load': ['amp-terminals'],
  recover: ['amp-light'],
  'speakers-unplugged': ['amp-light'],
  // Whoever starts into a short may lose the output: where it can be measured, it is.
  'one-by-one': ['speakers-unplugged', 'amp-wires-to-frame', 'amp-runs'],
} satisfies Partial<Record<StepId, readonly StepId[]>>;

/** The steps of a flow that have to come before this one. What is fitted can be asked at any time. */
export function comesAfter(step: Step, steps: ReadonlyMap<string, Step>): readonly string[] {
  if (step.kind === 'rig' || HISTORY.includes(step.id)) return [];
  const tools = step.tool === 'meter' || AC.includes(step.id) ? ['tools-at-hand'] : [];
  const first = [...HISTORY, ...tools, ...(FIRST[step.id] ?? []), ...(step.givenUnder ?? [])];
  return [...new Set(first)].filter((id) => id !== step.id && (steps.get(id)?.kind ?? 'rig') !== 'rig');
}

/** The minutes of steps done in this order, each set-up paid once. */
export function minutesOf(steps: readonly Step[]): number {
  const paid = new Set<string>();
  let minutes = 0;
  for (const step of steps) {
    minutes += step.minutes;
    for (const setup of setupsOf(step)) {
      if (paid.has(setup.id)) minutes -= setup.minutes;
      paid.add(setup.id);
    }
  }
  return minutes;
}
