import { axleOf } from '../../../rig/corner.ts';
import { stepName } from '../../../steps/subject.ts';
import { heardCorners, type Ridden, ridden } from '../../../world/symptoms/symptom.ts';
import { soundOf } from '../bike/harmless.ts';
import type { Oddity } from '../oddity.ts';
import { type Given, instead, nothingHeard, optionIn, saying } from './saying.ts';

/* Ears that miss something, or hear what comes from elsewhere. */

const rearFitted = ({ rig }: Ridden['world']): boolean => rig.rearFitted === 'yes';

const deaf = ({ answer }: Given): boolean => optionIn(answer)?.startsWith('hiss') ?? false;

/** A rear that plays less than this share of the front's sound power adds less than 6 dB to what is heard of the front. */
const NOTICED_RATIO = 0.25;
function drownedWhenSound(bike: Ridden): boolean {
  const { heard } = bike.healthy().at({});
  if (!heard) return false;
  const loudest = (axle: 'front' | 'rear') =>
    Math.max(...bike.fitted.filter((corner) => axleOf(corner) === axle).map((corner) => heard[corner].powerW));
  return loudest('rear') < NOTICED_RATIO * loudest('front');
}
/** What is said when the rear comes back, or goes. */
const BACK = ['cured', 'plays', 'reacts', 'rear-run', 'amp-input', 'amp-supply'];

const frontPlays = (bike: Ridden): boolean =>
  heardCorners(bike, bike.at({})).some((corner) => axleOf(corner) === 'front');
/** What the steps call a rear that plays, but not as it should. */
const WEAK = ['weak', 'quiet', 'quieter', 'faint', 'low', 'plays'];

export const EARS: readonly Oddity[] = [
  {
    id: 'deaf-to-hiss',
    says: 'somebody who never hears a hiss',
    class: 'ears',
    fits: rearFitted,
    person: saying((given) => (deaf(given) ? nothingHeard(given) : given.answer)),
  },
  {
    id: 'deaf-under-six-decibels',
    says: 'somebody who hears no difference below 6 dB, and a rear that adds less than that to the front',
    class: 'ears',
    fits: (world) => rearFitted(world) && drownedWhenSound(ridden(soundOf(world))),
    person: saying((given) => {
      const { step, bike, answer } = given;
      const listens = step.tool === 'ears' && BACK.includes(optionIn(answer) ?? '');
      return listens && drownedWhenSound(bike) ? nothingHeard(given) : answer;
    }),
  },
  {
    id: 'front-heard-at-the-rear',
    says: 'somebody who says “it plays weakly” of silence, because the front is heard there',
    class: 'ears',
    fits: rearFitted,
    person: (observe, draw) => {
      const listensCloser = draw() < 0.5;
      return saying((given) => {
        const { step, bike, answer, before } = given;
        const silent = stepName(step) === 'fader-centre' ? 'no-change' : 'silent';
        const asked = stepName(step) === 'fader-centre' || stepName(step) === 'which-silent';
        if (!asked || optionIn(answer) !== silent || !frontPlays(bike)) return answer;
        return before > 0 && listensCloser ? answer : instead(given, ...WEAK);
      })(observe);
    },
  },
];
