import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { unitRuns } from '../unit/unit-dark.ts';

/** For whoever cannot get it to play on: what the screens say is read without touching anything. */
export const playSigns: ChoiceStep<'paused' | 'muted' | 'clear'> = choice({
  place: 'settings',
  id: 'play-signs',
  short: 'What the screens say',
  ask: 'Look at both screens, phone and head unit: do the song’s seconds count, and is there a mute sign or a call?',
  phone:
    'Touch nothing, only look at both screens. Do the seconds of the song count up, and is the phone’s volume bar up? Is there a mute sign, or a call? Or do they count with no sign?',
  how: ['The seconds of the song, the phone’s own volume bar, a crossed-out speaker, a call.'],
  why: 'What is paused or muted mostly says so on a screen.',
  tool: 'none',
  minutes: 0.5,
  conditions: ['key-on'],
  sensible: (f) => is(f, 'source-plays', 'cannot') && unitRuns(f),
  observes: ['settings', 'unit'],
  options: {
    paused: 'The seconds stand still, or the phone is right down',
    muted: 'There is a mute sign or a call',
    clear: 'They count up, and there is no sign',
  },
  outcomes: { paused: 'the song stands still', muted: 'a mute sign or a call', clear: 'it counts, with no mute sign' },
});
