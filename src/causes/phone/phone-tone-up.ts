import { is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { liftFigures } from '../settings/tone-controls-up.ts';
import { YOURSELF } from '../who.ts';

export const phoneToneUp: Cause = {
  id: 'phone-tone-up',
  title: 'Equaliser or bass boost of the phone on',
  faults: ['phone-tone-changed@bass-up'],
  split: (f) => ({
    byMeter: 'The test tones from a memory stick and from the phone, same volume: does 80 Hz read more from the phone?',
    needs: ['tone-80'],
    touches: ['unit-front-plus'],
    without: is(f, 'clean-source', 'good')
      ? 'Equaliser, bass boost and level matching off, in the phone and in each app, just as loud: clean now?'
      : 'Radio or a memory stick just as loud: clean there?',
  }),
  mends: ['settings'],
  article: 'the-boost-and-small-speakers',
  remedy: () => ({
    what: 'The phone, or an app on it, boosts the bass: the wave clips in the phone, or in whatever comes after it.',
    background: 'Music apps keep a preset for headphones. Whatever does not fit is clipped before it leaves the phone.',
    numbers: liftFigures,
    repair: [{ do: 'flatten-tone', of: 'phone' }],
    fix: [
      'In the phone’s settings: equaliser, bass boost, loudness or level matching off.',
      'The same in each app that plays. Each has its own.',
      'Phone volume full, or two steps below if full is harsh. The head unit does the rest.',
      'Thin at any volume, like a phone call? A headset or an intercom has the link in voice mode. End the call, switch them off, connect the phone again.',
      'Check again after the app updates.',
    ],
    tools: 'None',
    minutes: 3,
    who: YOURSELF,
    parts: [],
    notBuy: ['Speakers, an amplifier or a reflash: nothing on the bike is broken.'],
    proofOfCure: { byEar: 'Phone and radio sound the same at the same loudness, both clean.' },
  }),
};
