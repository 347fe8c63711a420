import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { howItSounds } from '../src/steps/ears/how-it-sounds.ts';
import { type Findings, is, isKnown } from '../src/steps/outcome.ts';
import type { Facts } from '../src/steps/step.ts';
import { whenWrong } from '../src/steps/told/when-wrong.ts';
import { flow } from './kit.ts';
import { opening } from './where-do-i-begin.opening.ts';

const isNothingKnown = (f: Findings): boolean =>
  (['what-plays', 'how-it-sounds', 'when-wrong', 'amp-light'] as const).every((id) => !isKnown(f, id));

const isAtTimes = (f: Findings): boolean => is(f, 'when-wrong', 'loud', 'running', 'times');
/** All of it plays, and it is neither bad at certain times nor called by a name: what is thin or quiet looks like that, too. */
const mayBeNoFault = (f: Findings): boolean =>
  is(f, 'what-plays', 'all') && !isAtTimes(f) && !isKnown(f, 'how-it-sounds');
/** Thin or quiet at all times, and all of it plays: what is stored and what is fitted do that, and no part that broke. */
const isNoFault = (f: Findings): boolean =>
  is(f, 'what-plays', 'all') && !isAtTimes(f) && is(f, 'how-it-sounds', 'thin', 'quiet');

/** Nothing is concluded here, and it is said so. */
const begin = (it: string) => ({
  because: (f: Findings): string =>
    [
      isNothingKnown(f)
        ? `Nothing is known yet. By how often it happens, begin with this: ${it}`
        : isNoFault(f)
          ? `Thin or too quiet at all times is none of these by itself. The nearest is this: ${it}`
          : mayBeNoFault(f)
            ? `What you say points to no one thing. Begin with this: ${it}`
            : `From what you say it is most like this: ${it}`,
      ...(mayBeNoFault(f)
        ? ['Thin, dull or too quiet at any volume? That may be no fault: begin with “Does it need a reflash at all?”']
        : []),
    ].join(' '),
  mayBeNoFault,
  causes: [],
});

const noAmp = (f: Findings): boolean => is(f, 'amp-light', 'no-amp');
/** Whoever has no amplifier is not asked for one again. */
const askedInAll = (f: Findings): Facts => (noAmp(f) ? { 'amps-drive': { option: 'none' } } : {});
const askedByAxle = (f: Findings): Facts =>
  noAmp(f) ? { 'rear-drive': { option: 'unit' }, 'front-fed': { option: 'unit' } } : {};
const silentRear = (f: Findings): Facts =>
  is(f, 'what-plays', 'no-rear')
    ? { 'which-silent': { option: 'both' } }
    : is(f, 'what-plays', 'rear-weak')
      ? { 'which-silent': { option: 'weak' } }
      : {};

/** All of it plays just now, it comes and goes, and there is no amplifier that could: a joint on the way to a speaker. */
const cutsOutWithoutAmp = (f: Findings): boolean =>
  is(f, 'what-plays', 'all') && is(f, 'when-wrong', 'times') && noAmp(f);

/** Two speakers that work against each other take the bass away where they play together, and give it back alone. */
const BALANCE_FIRST =
  'First a test of one minute: turn the balance fully left, then fully right, and the fader to either end. Is the bass back at an end? Then one speaker or one pair is wired the wrong way round: swap its two wires, key off, and you need nothing else. As thin at every end?';

/** Something is wrong, and its rider has no name for it: three questions at most, and the flow that is best at it. */
export const whereDoIBegin = flow(opening, {
  look: [howItSounds, whenWrong, ampLight],
  measure: [],
  safe: [],
  causes: [],
  handsOver: [
    {
      flow: 'no-rear-sound',
      title: 'The rear is silent or weak',
      ...begin('the front plays, and the rear does not, or only weakly.'),
      told: (f) => ({ ...silentRear(f), ...askedByAxle(f) }),
    },
    {
      flow: 'amp-wont-turn-on',
      title: 'The amplifier stays off, or cuts out',
      ...begin('an amplifier is off, or cuts out now and then.'),
      sensible: (f) => !noAmp(f),
    },
    {
      flow: 'no-sound-at-all',
      title: 'No sound at all',
      ...begin('nothing plays anywhere.'),
      told: askedInAll,
    },
    {
      flow: 'one-speaker-or-side-dead',
      title: 'One speaker or one side is dead',
      ...begin('one speaker, one side or the front is silent or weak beside others that play, always or at times.'),
      isIt: { when: cutsOutWithoutAmp, by: [] },
      told: (f) => ({ ...(cutsOutWithoutAmp(f) && { 'which-corner': { option: 'plays' } }), ...askedByAxle(f) }),
    },
    {
      flow: 'distortion-at-volume',
      title: 'It distorts when it is loud',
      ...begin('it plays, and sounds bad when it is loud.'),
      told: askedInAll,
    },
    {
      flow: 'eq-changes-when-engine-starts',
      title: 'The tone changes with the engine',
      ...begin('it plays, and sounds different with the engine running.'),
      told: askedInAll,
    },
    {
      flow: 'is-a-reflash-needed',
      title: 'Does it need a reflash at all?',
      because: (f) =>
        `${is(f, 'how-it-sounds', 'thin') ? `${BALANCE_FIRST} ` : ''}All of it plays, only thin or too quiet. That is seldom a broken part: it is what is stored in the head unit, what it drives, or both. What a reflash would change, and what not, is worked out in the next part.`,
      isIt: { when: isNoFault, by: [] },
      causes: [],
    },
  ],
});
