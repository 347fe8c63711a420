import { upperFirst } from '../compute/first-letter.ts';
import type { Axle } from '../rig/corner.ts';
import { frontDrive } from '../steps/fitted/front-drive.ts';
import { type Findings, is } from '../steps/outcome.ts';
import { silentSpeaker } from '../steps/runs/silent-speaker.ts';
import { toldSilentSide } from '../steps/told/silent-side.ts';
import type { Where } from './repair-action.ts';
import { ampOf, isWithoutAmp, pairOf } from './the-amp.ts';

/** Which speakers and which side a remedy is about, as far as the answers tell. */

/** The channels of the amplifier that a case is about. */
export const ampChannels = (f: Findings): Axle | 'both' => (ampOf(f).drives === 'both' ? 'both' : pairOf(f));

/**
 * All speakers of the amplifier that stays off, where a case is about one; the rear where it is silent. Whoever calls it
 * the rear’s may have one that drives everything: until somebody says what drives the front, any of them.
 */
export function speakersInQuestion(f: Findings): Where {
  if (f.outcome('which-amp') === undefined) return 'rear';
  if (pairOf(f) === 'front') return ampOf(f).drives === 'both' ? 'all' : 'front';
  const front = frontDrive.known(f.rig);
  return front === undefined || front === 'same' ? 'all' : 'rear';
}

/** The speakers whose wires may touch the frame: the rear where it was a rear wire that read so. */
export const placeToFrame = (f: Findings): Where =>
  isOfOneSpeaker(f) ? silentOne(f) : is(f, 'wire-to-frame', 'shorted') ? 'rear' : speakersInQuestion(f);

/** The speakers that sound ugly: the one, the pair, or any of them. */
export function uglySpeakers(f: Findings): Where {
  const where = f.outcome('where-harsh');
  return where === undefined || where === 'cannot' ? 'all' : where;
}

/** What drives the speakers is not bought anew because of a short behind it. */
export const notForAShort = (f: Findings): string =>
  isWithoutAmp(f)
    ? 'A head unit, before the short is gone and this one has been tried again.'
    : 'An amplifier or a head unit, before the short is gone and they have been tried again.';

/** The first step of a fix where nobody knows yet which run it is. */
export const findTheRun = (f: Findings, where: Where): readonly string[] =>
  where === 'all'
    ? [
        `Find out which run it is, front ones too: with a meter, run by run. No meter? Key off, unplug one run, key on for a moment, volume low: ${isWithoutAmp(f) ? 'do the rest play' : 'is the light clear'}? Key off, plug it back in, try the next.`,
      ]
    : [];

type Side = 'left' | 'right';

/** Two of a kind read alike. One that reads twice the other stands out. An estimate. */
const APART_RATIO = 2;

function sideThatIsHigher(left: number | undefined, right: number | undefined): Side | undefined {
  if (left === undefined || right === undefined) return undefined;
  if (left > APART_RATIO * right) return 'left';
  return right > APART_RATIO * left ? 'right' : undefined;
}

const OTHER: Readonly<Record<Side, Side>> = { left: 'right', right: 'left' };
const onSide = (side: Side | undefined): Where => (side ? `rear-${side}` : 'rear');

/** Whether a case began with one speaker, or one side, whichever it is. */
export const isOfOneSpeaker = (f: Findings): boolean => f.facts['which-corner'] !== undefined;

/** The silent speaker of such a case; any, where a whole side is silent and nothing was read. */
export const silentOne = (f: Findings): Where => silentSpeaker(f) ?? 'all';

/** What a case is about: its silent speaker, or the rear. */
export const silentOrRear = (f: Findings): Where => (isOfOneSpeaker(f) ? silentOne(f) : 'rear');
export const isFront = (where: Where): boolean => where.startsWith('front');

/** The side that stands out where both were read; where neither was, the one that is silent alone. */
function sideOf(f: Findings, left: number | undefined, right: number | undefined, which: 'higher' | 'lower'): Where {
  if (left === undefined && right === undefined) return onSide(toldSilentSide(f.facts));
  const higher = sideThatIsHigher(left, right);
  return onSide(higher && which === 'lower' ? OTHER[higher] : higher);
}

/** The run that reads far more ohms than the other, or both of the rear. */
export function runThatIsOpen(f: Findings): Where {
  if (isOfOneSpeaker(f)) return silentOne(f);
  const { leftOhm, rightOhm } = f.values('run-ohms');
  return sideOf(f, leftOhm, rightOhm, 'higher');
}

/** The run that reads far fewer ohms than the other, or both of the rear. */
export function runThatIsShorted(f: Findings): Where {
  if (isOfOneSpeaker(f)) return silentOne(f);
  const { leftOhm, rightOhm } = f.values('run-ohms');
  return sideOf(f, leftOhm, rightOhm, 'lower');
}

/** Where left and right of the silent axle were read, the first of them tells the side. */
const SIDES_READ = ['output-sides', 'input-sides', 'unit-sides'] as const;
function silentChannel(f: Findings): Where {
  const where = silentOne(f);
  const axle = isFront(where) ? 'front' : 'rear';
  for (const step of SIDES_READ) {
    const { leftV, rightV } = f.values(axle === 'front' ? `${step}@front` : step);
    const higher = sideThatIsHigher(leftV, rightV);
    if (higher) return `${axle}-${OTHER[higher]}`;
  }
  return where;
}

/** The channel that reads far fewer volts than the other at a step that reads both, or both of the rear. */
export function channelThatIsSilent(f: Findings, step: 'rear-pair' | 'amp-in' | 'amp-out'): Where {
  if (isOfOneSpeaker(f)) return silentChannel(f);
  const { leftV, rightV } = f.values(step);
  return sideOf(f, leftV, rightV, 'lower');
}

/** The input that a case is about, where one speaker is silent; any of them elsewhere. */
export const inputInQuestion = (f: Findings): Where => (isOfOneSpeaker(f) ? silentChannel(f) : 'all');

const IN_WORDS: Readonly<Record<Where, string>> = {
  all: '',
  front: 'front ',
  rear: 'rear ',
  'front-left': 'front left ',
  'front-right': 'front right ',
  'rear-left': 'rear left ',
  'rear-right': 'rear right ',
};

/** “rear left coil”, or only “coil” where it may be any. */
export const placed = (where: Where, noun: string): string => `${IN_WORDS[where]}${noun}`;

/** The same at the start of a sentence. */
export const Placed = (where: Where, noun: string): string => upperFirst(placed(where, noun));

/** Of a corner there is one, but for its wires, of which there are two. */
const isTheOnly = (where: Where, noun: string): boolean => where.includes('-') && noun !== 'speaker wire';
/** The same with its article, at the start of a sentence: “The rear left speaker”, “A rear speaker”. */
export const onePlaced = (where: Where, noun: string): string =>
  `${isTheOnly(where, noun) ? 'The' : 'A'} ${placed(where, noun)}`;
