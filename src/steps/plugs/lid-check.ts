import { ampDriving } from '../../rig/rig.ts';
import { rearHiss } from '../ears/rear-hiss.ts';
import { type ChoiceStep, choice, EVERY_PART } from '../step.ts';
import { concernsAxle } from '../told/silent-side.ts';

export const lidCheck: ChoiceStep<'cured' | 'reacts' | 'plays' | 'weak' | 'no-effect' | 'hiss-now' | 'no-plug'> =
  choice({
    place: 'plugs',
    id: 'lid-check',
    short: 'Lid and case plugs',
    ask: 'Push every lid, bag and case plug fully home, then move the lid slowly. Does the sound come back?',
    phone:
      'With the key off, push every lid and case plug till it clicks. Then key on, music low, open and close the lid slowly: does the back play, come and go, play weakly, or stay dead? Or is there no plug?',
    how: [
      'Pull each plug, look at it, push it home until it locks.',
      'Key on, play music.',
      'Move each lid through its whole travel and listen. With an amplifier: pause the music and listen for its hiss again.',
    ],
    why: 'Lid and case plugs get opened more than any other joint, and they sit in road spray.',
    tool: 'ears',
    minutes: 3,
    conditions: ['key-off'],
    sensible: (f) => concernsAxle(f, 'rear'),
    observes: EVERY_PART,
    cautions: ['key-off'],
    options: {
      'no-effect': 'No, nothing changes',
      cured: 'Yes, after pushing the plug home',
      reacts: 'It comes and goes as the lid moves',
      'hiss-now': 'No music, but a hiss that was not there before',
      plays: 'It plays right now, whatever I move',
      weak: 'It plays weakly, whatever I move',
      'no-plug': 'The rear speakers have no such plug',
    },
    // Only an amplifier that was not heard can be heard now.
    leftOut: (s) => (ampDriving(s.rig, 'rear') && s.facts[rearHiss.id] ? [] : ['hiss-now']),
    justNow: ['plays'],
    outcomes: {
      'no-effect': 'no effect',
      cured: 'plays after pushing home',
      reacts: 'comes and goes',
      'hiss-now': 'hisses now, no music',
      plays: 'plays right now anyway',
      weak: 'plays weakly',
      'no-plug': 'no such plug',
    },
    ifCannot: 'Case not here? Refit it before anything else: speakers left in the garage stay silent.',
  });
