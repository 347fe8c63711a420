import { separates } from '../../inference/why.ts';
import type { Step } from '../../steps/step.ts';
import type { FaultView } from './view.ts';

const MOST_IN_A_GROUP = 2;
const MOST_GROUPS = 3;

const either = (names: readonly string[]): string => names.map((name) => `“${name}”`).join(' or ');

/**
 * What a question can tell apart now, in one sentence: “Tells a lost ground from an open fuse.” Undefined where all that
 * is likely now would give the same answer: then it only opens the way to the next one.
 */
export function whyNow({ model, believed, nameOf }: FaultView, step: Step): string | undefined {
  const [first, ...others] = separates(model, believed, step.id)
    .slice(0, MOST_GROUPS)
    .map(({ causes }) => either(causes.slice(0, MOST_IN_A_GROUP).map(nameOf)));
  if (first === undefined || others.length === 0) return undefined;
  return `Now it tells ${first} from ${others.join(', and from ')}.`;
}
