import { stepName } from '../../../steps/subject.ts';
import { ridden, whenAmpGoesOff } from '../../../world/symptoms/index.ts';
import type { Oddity } from '../oddity.ts';
import { comesAndGoes, isOneSided, isQuiet } from './hearing.ts';
import { type Given, instead, optionIn, saying } from './saying.ts';

/* What is complained of, told as something plainer than it is. */

/** What the steps call a rear of which nothing is heard. */
const SILENT = ['both', 'no-rear', 'no-change', 'no-effect', 'silent'];
/** At this step each axle is heard by itself: a rear that only the fader makes quiet is loud there. */
const AT_THE_ENDS = 'four-corners';

function quietIsSilent(given: Given) {
  const { step, bike, answer } = given;
  const told = optionIn(answer) ?? '';
  const plays = stepName(step) === AT_THE_ENDS && told === 'all' && isQuiet(bike, { fader: 1 });
  const isWeak = (told === 'weak' || told === 'rear-weak') && isQuiet(bike);
  return plays || isWeak ? instead(given, ...SILENT) : answer;
}

const ONE_SIDE = ['left', 'right', 'one-corner', 'one-side'];
const TIMES = ['comes-and-goes', 'bumps', 'wet', 'running', 'loud', 'hot', 'quiet', 'steering', 'unknown'];
const WHEN = ['rear-history', 'amp-history', 'amp-goes-off', 'when-silent'];

export const COMPLAINT: readonly Oddity[] = [
  {
    id: 'quiet-told-as-silent',
    says: 'somebody who says “nothing comes out” of a rear that plays far too quietly',
    class: 'complaint',
    fits: (world) => isQuiet(ridden(world)),
    person: saying(quietIsSilent),
  },
  {
    id: 'one-side-told-as-both',
    says: 'somebody who says “the rear” of one side of it',
    class: 'complaint',
    fits: (world) => isOneSided(ridden(world)),
    person: saying((given) =>
      ONE_SIDE.includes(optionIn(given.answer) ?? '') && isOneSided(given.bike)
        ? instead(given, 'both', 'no-rear')
        : given.answer,
    ),
  },
  {
    id: 'comes-and-goes-told-as-steady',
    says: 'somebody who says “it stopped” of what comes and goes',
    class: 'complaint',
    fits: (world) => comesAndGoes(ridden(world)) || whenAmpGoesOff(ridden(world)).length > 0,
    person: saying((given) =>
      WHEN.includes(stepName(given.step)) && TIMES.includes(optionIn(given.answer) ?? '')
        ? instead(given, 'stopped', 'always')
        : given.answer,
    ),
  },
];
