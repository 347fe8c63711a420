import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { is } from '../src/steps/outcome.ts';
import { whenWrong } from '../src/steps/told/when-wrong.ts';
import { flow } from './kit.ts';
import { opening } from './where-do-i-begin.opening.ts';

/** Nothing is concluded here, and it is said so. */
const mostLike = (it: string): string => `From what you say it is most like ${it}`;

/** Something is wrong, and its rider has no name for it: three questions at most, and the flow that is best at it. */
export const whereDoIBegin = flow(opening, {
  look: [whenWrong, ampLight],
  measure: [],
  safe: [],
  causes: [],
  handsOver: [
    {
      flow: 'no-rear-sound',
      title: 'The rear is silent or weak',
      because: mostLike('this: the front plays, and the rear does not, or only weakly.'),
      told: (f) =>
        is(f, 'what-plays', 'no-rear')
          ? { 'which-silent': { option: 'both' } }
          : is(f, 'what-plays', 'rear-weak')
            ? { 'which-silent': { option: 'weak' } }
            : {},
      causes: [],
    },
    {
      flow: 'amp-wont-turn-on',
      title: 'The amplifier stays off, or cuts out',
      because: mostLike('an amplifier that is off, or cuts out now and then.'),
      causes: [],
    },
    {
      flow: 'no-sound-at-all',
      title: 'No sound at all',
      because: mostLike('this: nothing plays anywhere.'),
      causes: [],
    },
    {
      flow: 'one-speaker-or-side-dead',
      title: 'One speaker or one side is dead',
      because: mostLike('this: one speaker, one side or the front is silent or weak beside others that play.'),
      causes: [],
    },
    {
      flow: 'distortion-at-volume',
      title: 'It distorts when it is loud',
      because: mostLike('this: it plays, and sounds bad when it is loud.'),
      causes: [],
    },
    {
      flow: 'eq-changes-when-engine-starts',
      title: 'The tone changes with the engine',
      because: mostLike('this: it plays, and sounds different with the engine running.'),
      causes: [],
    },
  ],
});
