import { gainFigures, gainTargets, HIGHPASS_BACK_ON, HIGHPASS_OFF } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { coneFigures } from '../cone-way.ts';
import { ratingAssumed, readsForGain } from '../read-first.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { ampChannels } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const speakerUnderrated: Cause = {
  id: 'speaker-underrated',
  title: (f) => `Speakers rated for less than ${ampName(f)} gives`,
  faults: ['speaker-underrated'],
  split: {
    byMeter: `Speakers off, ${HIGHPASS_OFF}. 80 Hz tone at your usual top step: more volts than the square root of the speaker’s watts × its ohms?`,
    needs: ['tone-80'],
    touches: ['amp-out-plus'],
    without:
      'Compare on paper: the speaker’s continuous watts, and the amplifier’s sine watts per channel at its ohms. Is the speaker’s number smaller?',
    asStep: { without: 'speaker-papers' },
  },
  mends: ['amp', 'speaker'],
  article: 'high-pass-filters',
  remedy: (f) => ({
    what: `${AmpName(f)} puts more watts into the speakers than they can take continuously: on bass they run out of travel.`,
    background: 'Peak watts on a speaker’s box are several times what it can take continuously.',
    // Nobody knows its watts: the gain counts with the least, and a cone that is let down by more would contradict it.
    numbers: [...gainFigures(f), ...(ratingAssumed(f) ? [] : coneFigures(f))],
    readFirst: readsForGain(f),
    repair: [{ do: 'set-gain', axle: ampChannels(f), outputV: gainTargets(f).outputV, noMoreThanSpeakers: true }],
    fix: [
      'Read the continuous watts and the ohms off the speaker. The square root of watts × ohms is the most volts it may get.',
      `Key off, speakers off the amplifier. Bass knob at zero, ${HIGHPASS_OFF}. Key on, volume at zero.`,
      '80 Hz tone up to your usual top step: turn the gain so that no output reads more than that, and not at 400 Hz either.',
      'Volume at zero, key off, high-pass on at 80 to 100 Hz, speakers on. Too quiet now? Then better speakers, not more gain.',
    ],
    tools: 'Meter, small screwdriver, the test tones',
    minutes: 25,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: [
      'A stronger amplifier.',
      'New speakers just for a few watts more: turning down to half the power costs 3 dB, which you hardly hear.',
    ],
    ifDoneAnyway: 'If you go on like this, the coil’s glue goes first, then the coil.',
    proofOfCure: {
      byEar: 'Bass notes clean at your usual top step, and after half an hour no smell of hot varnish.',
      byMeter: `Speakers and high-pass off, both tones at your usual top step: no output above the square root of the speaker’s watts × its ohms. Then ${HIGHPASS_BACK_ON}.`,
      needs: ['tone-80'],
    },
  }),
};
