import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { endsCompare } from '../src/steps/ears/ends-compare.ts';
import { howItSounds } from '../src/steps/ears/how-it-sounds.ts';
import { type Findings, is, isKnown } from '../src/steps/outcome.ts';
import type { Facts } from '../src/steps/step.ts';
import { whenWrong } from '../src/steps/told/when-wrong.ts';
import { before, flow } from './kit.ts';
import { opening } from './where-do-i-begin.opening.ts';

const isNothingKnown = (f: Findings): boolean =>
  (['what-plays', 'how-it-sounds', 'when-wrong', 'amp-light'] as const).every((id) => !isKnown(f, id));

const isAtTimes = (f: Findings): boolean => is(f, 'when-wrong', 'loud', 'running', 'times');
/** All of it plays, and it is neither bad at certain times nor called by a name: what is thin or quiet looks like that, too. */
const mayBeNoFault = (f: Findings): boolean =>
  is(f, 'what-plays', 'all') && !isAtTimes(f) && !isKnown(f, 'how-it-sounds');
/** The bass is back at an end of fader or balance: two speakers push against each other. */
const isPolarity = (f: Findings): boolean => is(f, 'ends-compare', 'front', 'rear', 'between');
/** Thin or quiet at all times, and all of it plays: what is stored and what is fitted do that, and no part that broke. */
const isNoFault = (f: Findings): boolean =>
  is(f, 'what-plays', 'all') &&
  !isAtTimes(f) &&
  (is(f, 'how-it-sounds', 'quiet') || (is(f, 'how-it-sounds', 'thin') && is(f, 'ends-compare', 'none', 'cannot')));

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

const ONE_SPEAKER = begin(
  'one speaker, one side or the front is silent or weak beside others that play, always or at times.',
);

/** Something is wrong, and its rider has no name for it: three questions at most, and the flow that is best at it. */
export const whereDoIBegin = flow(opening, {
  look: [howItSounds, endsCompare, whenWrong, ampLight],
  measure: [],
  // Who calls it thin turns the balance before anything else is asked: three questions are all there are.
  safe: [before(whenWrong, endsCompare), before(ampLight, endsCompare)],
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
      ...ONE_SPEAKER,
      because: (f) =>
        isPolarity(f)
          ? 'The bass is back at an end of the fader or the balance: two speakers push against each other. Which ones is looked for in the next part.'
          : ONE_SPEAKER.because(f),
      isIt: { when: (f) => cutsOutWithoutAmp(f) || isPolarity(f), by: [] },
      told: (f) => ({
        ...(cutsOutWithoutAmp(f) && { 'which-corner': { option: 'plays' } }),
        ...(isPolarity(f) && { 'which-corner': { option: 'thin' } }),
        ...askedByAxle(f),
      }),
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
      because:
        'All of it plays, only thin or too quiet. That is seldom a broken part: it is what is stored in the head unit, what it drives, or both. What a reflash would change, and what not, is worked out in the next part.',
      isIt: { when: isNoFault, by: [] },
      causes: [],
    },
  ],
});
