import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';

export const routedToHeadset: Cause = {
  id: 'routed-to-headset',
  title: 'The sound goes to a headset',
  faults: ['routed-to-headset'],
  split: {
    byMeter: 'No meter needed: every headset off, output set to speakers. Is there sound?',
    without: 'Every headset off, output set to speakers. Is there sound?',
  },
  mends: ['settings'],
  article: 'no-sound-at-all',
  remedy: () => ({
    what: 'The head unit sends the sound to a headset, and the speakers are muted meanwhile.',
    background: 'It remembers a headset that was paired, and goes on sending when that is switched off or at home.',
    numbers: [],
    repair: [{ do: 'play-here' }],
    fix: [
      'Head unit right down first.',
      'Every headset and helmet off at its own switch, the passenger’s too.',
      'Sound output of the head unit, and of the phone: the bike’s speakers. Then turn up slowly.',
      'It comes back with the headset? Look in its menu for “both”, or unpair it.',
    ],
    tools: 'None',
    minutes: 3,
    who: YOURSELF,
    parts: [],
    notBuy: ['Anything: nothing is broken.'],
    proofOfCure: { byEar: 'The speakers play with the headset off, and again after it was on and off once.' },
  }),
};
