import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';

export const routedToHeadset: Cause = {
  id: 'routed-to-headset',
  title: 'The sound goes to a headset',
  faults: ['routed-to-headset'],
  split: {
    byMeter: 'No meter needed: every headset off, output set to speakers. Is there sound?',
    without: 'Every headset off, output set to speakers. Is there sound?',
    asStep: { byMeter: 'audio-target', without: 'audio-target' },
  },
  mends: ['settings'],
  article: 'no-sound-at-all',
  remedy: () => ({
    what: 'The head unit sends the sound to a headset, and the speakers are muted meanwhile.',
    background: 'It remembers a paired headset and goes on sending to it when it is switched off or left at home.',
    numbers: [],
    repair: [{ do: 'play-here' }],
    fix: [
      'Head unit right down first.',
      'Every headset and helmet off at its own switch, the passenger’s too.',
      'Sound output of the head unit, and of the phone: the bike’s speakers. Then turn up slowly.',
      'Does it come back with the headset? Look in the menu for “both”, or unpair it.',
    ],
    tools: 'None',
    minutes: 3,
    who: YOURSELF,
    parts: [],
    notBuy: ['Anything: nothing is broken.'],
    proofOfCure: { byEar: 'The speakers play with the headset off, and again after switching it on and off once.' },
  }),
};
