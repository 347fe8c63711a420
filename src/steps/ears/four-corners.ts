import { is } from '../outcome.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';
import { rearComesAndGoes } from '../told/comes-and-goes.ts';

export const fourCorners: ChoiceStep<'all' | 'no-rear' | 'rear-weak' | 'one-corner' | 'one-side' | 'none' | 'other'> =
  choice({
    place: 'ears',
    id: 'four-corners',
    short: 'Which corners play',
    ask: 'Fader fully front, then rear, balance left, then right: which corners play?',
    phone: 'Fully front … now fully rear … now left … now right. Tell me each time which speaker you hear.',
    how: [
      'Case, lids and trunk plugged in. A mono track, low volume.',
      'Move the fader and the balance to each end and put your ear to each speaker.',
      'Put both back in the middle.',
      'An amplifier that takes everything from the front pair does not follow the fader: put your ear to each speaker.',
    ],
    why: 'One silent corner is a speaker, a plug or a wire. A silent pair is more often a setting, a profile or an amplifier.',
    tool: 'ears',
    minutes: 3,
    conditions: ['head-unit-playing'],
    // A rear that comes and goes, and plays just now, plays at every corner: that tells nothing.
    sensible: (f) => !(rearComesAndGoes(f) && is(f, 'fader-centre', 'plays')),
    observes: EVERY_PART,
    options: {
      'no-rear': 'The front plays, the rear never',
      all: 'All four play',
      'one-corner': 'All but one rear corner',
      'one-side': 'One whole side is silent',
      'rear-weak': 'All four play, both rear ones weakly',
      none: 'Nothing plays anywhere',
      other: 'Something else: a front speaker is silent',
    },
    justNow: ['all'],
    outcomes: {
      'no-rear': 'front only',
      all: 'all four play',
      'one-corner': 'one rear corner silent',
      'one-side': 'one side silent',
      'rear-weak': 'the rear plays weakly',
      none: 'nothing plays',
      other: 'a front speaker silent',
    },
    ifCannot: 'No fader here: put your ear to each rear grille instead.',
  });
