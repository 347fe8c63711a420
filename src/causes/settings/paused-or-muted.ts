import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';

export const pausedOrMuted: Cause = {
  id: 'paused-or-muted',
  title: 'Paused, muted, or turned down at the source',
  faults: ['paused-or-muted'],
  split: {
    byMeter: 'No meter needed: do the seconds of the song count, with phone and head unit off mute and turned up?',
    without: 'Do the seconds of the song count, with phone and head unit off mute and turned up?',
  },
  mends: ['settings'],
  article: 'no-sound-at-all',
  remedy: () => ({
    what: 'Nothing was sent: the source was paused, muted, on a held call, or turned right down.',
    background: 'A glove or a headset button does it. The phone keeps a volume of its own for each device it plays on.',
    numbers: [],
    repair: [{ do: 'play-here' }],
    fix: [
      'Head unit right down first.',
      'End any call. Press play: the seconds of the song count.',
      'Media volume of the phone up, mute off on phone and head unit. Then turn up slowly.',
    ],
    tools: 'None',
    minutes: 1,
    who: YOURSELF,
    parts: [],
    notBuy: ['Anything: nothing is broken.'],
    proofOfCure: { byEar: 'It plays, from the phone and from a radio station, and again after key off and on.' },
  }),
};
