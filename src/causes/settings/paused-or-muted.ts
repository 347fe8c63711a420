import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';

export const pausedOrMuted: Cause = {
  id: 'paused-or-muted',
  title: 'Paused, muted, or turned down at the source',
  faults: ['paused-or-muted'],
  split: {
    byMeter:
      'No meter needed: does it play once the song’s seconds count up, with phone and head unit unmuted and turned up?',
    without: 'Does it play once the song’s seconds count up, with phone and head unit unmuted and turned up?',
    asStep: { byMeter: 'source-plays', without: 'source-plays' },
  },
  mends: ['settings'],
  article: 'no-sound-at-all',
  remedy: () => ({
    what: 'No sound was being sent: the source was paused, muted, holding a call, or turned right down.',
    background:
      'A glove or a headset button does it. The phone remembers a separate volume for each device it plays on.',
    numbers: [],
    repair: [{ do: 'play-here' }],
    fix: [
      'Head unit right down first.',
      'End any call. Press play: the song’s seconds must count up.',
      'Phone’s media volume up, mute off on phone and head unit. Then turn up slowly.',
    ],
    tools: 'None',
    minutes: 1,
    who: YOURSELF,
    parts: [],
    notBuy: ['Anything: nothing is broken.'],
    proofOfCure: { byEar: 'It plays, from the phone and from a radio station, and again after key off and on.' },
  }),
};
