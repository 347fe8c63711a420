import { stepName } from '../../../steps/subject.ts';
import type { Oddity } from '../oddity.ts';
import { instead, nothingHeard, optionIn, saying } from './saying.ts';

/* Plugs that are not found, and plugs that are not pushed. */

/** Asked for at these steps: a plug, a terminal, a control, a fuse that somebody has to find first. */
const HAS_TO_FIND = ['lid-check', 'run-split', 'remote-jumper', 'rear-control', 'body-fuse', 'second-plug'];
const NOT_THERE = ['no-plug', 'no-terminal', 'none'];

/** Steps at which a plug or a lead is pressed. */
const PRESSES = ['lid-check', 'input-plug', 'wiggle', 'supply-wiggle', 'second-plug'];
/** What is said when nothing had to be pressed. */
const WITHOUT_PRESSING = ['reacts', 'no-plug'];

export const PLUGS: readonly Oddity[] = [
  {
    id: 'no-such-plug',
    says: 'somebody who says “there is no such plug” when he does not find it',
    class: 'plugs',
    fits: () => true,
    person: saying((given) =>
      HAS_TO_FIND.includes(stepName(given.step)) ? instead(given, ...NOT_THERE) : given.answer,
    ),
  },
  {
    id: 'presses-softly',
    says: 'somebody who touches plugs and presses none',
    class: 'plugs',
    fits: () => true,
    person: saying((given) =>
      PRESSES.includes(stepName(given.step)) && !WITHOUT_PRESSING.includes(optionIn(given.answer) ?? '')
        ? nothingHeard(given)
        : given.answer,
    ),
  },
];
