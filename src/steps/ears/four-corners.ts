import type { Axle } from '../../rig/corner.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';
import { type OfEach, ofEach } from '../subject.ts';
import { rearComesAndGoes } from '../told/comes-and-goes.ts';
import { concernsAxle } from '../told/silent-side.ts';

type Anywhere = 'all' | 'one-corner' | 'one-side' | 'none' | 'other';

/** The corners at the ends of fader and balance, for an axle that is silent. */
function corners<const Never extends string, const Weak extends string>(
  axle: Axle,
  other: Axle,
  [never, weak]: readonly [Never, Weak],
): ChoiceStep<Anywhere | Never | Weak> {
  type Outcome = Anywhere | Never | Weak;
  return choice<Outcome>({
    place: 'ears',
    id: 'four-corners',
    short: axle === 'rear' ? 'Which corners play' : 'Which corners play, front',
    ask: 'Fader fully front, then rear; balance fully left, then right: which corners play?',
    phone:
      'In the sound menu note how fader and balance are set. Move the fader fully to the front, then fully to the rear, then the balance fully left, then fully right. Each time tell me which speakers you hear. Then put both back to the middle.',
    how: [
      'Case, lids and trunk plugged in. A mono track, low volume.',
      'Note how fader and balance are set. Move them to each end and put your ear to each speaker.',
      'Then put both back in the middle.',
      'An amplifier fed only from the front pair does not follow the fader: put your ear to each speaker.',
    ],
    why: 'One silent corner is a speaker, a plug or a wire. A silent pair is more often a setting, a profile or an amplifier.',
    tool: 'ears',
    minutes: 3,
    conditions: ['head-unit-playing'],
    // A rear that comes and goes, and plays just now, plays at every corner: that tells nothing.
    // Of a silent front speaker it is asked about the front, and of every other about the rear.
    sensible: (f) =>
      concernsAxle(f, 'rear') === (axle === 'rear') && !(rearComesAndGoes(f) && is(f, 'fader-centre', 'plays')),
    observes: EVERY_PART,
    options: {
      [never]: `The ${other} plays, the ${axle} never`,
      all: 'All four play',
      'one-corner': `All but one ${axle} corner`,
      'one-side': 'One whole side is silent',
      [weak]: `All four play, both ${axle} ones weakly`,
      none: 'Nothing plays anywhere',
      other: `Something else: a ${other} speaker is silent`,
    } as Record<Outcome, string>,
    justNow: ['all'],
    outcomes: {
      [never]: `${other} only`,
      all: 'all four play',
      'one-corner': `one ${axle} corner silent`,
      'one-side': 'one side silent',
      [weak]: `the ${axle} plays weakly`,
      none: 'nothing plays',
      other: `a ${other} speaker silent`,
    } as Record<Outcome, string>,
    ifCannot: `No fader here: put your ear to each ${axle} grille instead.`,
  });
}

export const fourCorners: OfEach<
  ChoiceStep<Anywhere | 'no-rear' | 'rear-weak'> | ChoiceStep<Anywhere | 'no-front' | 'front-weak'>,
  'rear',
  'front'
> = ofEach(['rear', 'front'], (axle) =>
  axle === 'rear'
    ? corners('rear', 'front', ['no-rear', 'rear-weak'])
    : corners('front', 'rear', ['no-front', 'front-weak']),
);
