import type { RepairAction } from '../causes/repair-action.ts';
import { answered, repaired } from './change.ts';
import type { Case } from './events.ts';

/** What a new fuse says that opened as well, by the fuse: the answer that somebody gives who looks at it. */
const SAYS = {
  main: { step: 'spare-fuse', option: 'opens' },
  'amp-body': { step: 'body-fuse', option: 'blown' },
} as const;

const sayingFuse = (actions: readonly RepairAction[]) =>
  actions.flatMap((action) => (action.do === 'renew-fuse' && action.fuse !== 'unit' ? [SAYS[action.fuse]] : []))[0];

/** Whether a fix renews a fuse whose opening tells something. */
export const renewsFuse = (actions: readonly RepairAction[]): boolean => sayingFuse(actions) !== undefined;

/** The fix was done, and it opened the new fuse: it did not cure, and something behind the fuse is shorted. */
export function openedTheFuse(it: Case, verdict: string, actions: readonly RepairAction[]): Case {
  const done = repaired(it, verdict);
  const says = sayingFuse(actions);
  return says ? answered(done, says.step, { option: says.option }) : done;
}
