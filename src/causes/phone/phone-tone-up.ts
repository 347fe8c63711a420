import type { Cause } from '../cause.ts';
import { liftFigures } from '../settings/tone-controls-up.ts';
import { YOURSELF } from '../who.ts';

export const phoneToneUp: Cause = {
  id: 'phone-tone-up',
  title: 'Equaliser or bass boost of the phone on',
  faults: ['phone-tone-changed@bass-up'],
  split: {
    byMeter: 'The test tones from a stick and from the phone at one step: does 80 Hz read more from the phone?',
    needs: ['tone-80'],
    touches: ['unit-front-plus'],
    without: 'Radio or a memory stick just as loud: clean there?',
  },
  mends: ['settings'],
  article: 'the-boost-and-small-speakers',
  remedy: () => ({
    what: 'The phone, or an app on it, lifts the bass: the wave is cut off in the phone, or by what comes after it.',
    background:
      'Music apps keep a preset for headphones. What a file has no room for is cut off before it leaves the phone.',
    numbers: liftFigures,
    repair: [{ do: 'flatten-tone', of: 'phone' }],
    fix: [
      'In the settings of the phone: equaliser, bass boost, sound check, loudness or level matching off.',
      'The same in each app that plays. Each has its own.',
      'Phone volume full, or two steps under it where full is harsh. The head unit does the rest.',
      'Look again after an update of the app.',
    ],
    tools: 'None',
    minutes: 3,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: nothing on the bike is broken.'],
    proofOfCure: { byEar: 'Phone and radio sound alike at the same loudness, both clean.' },
  }),
};
