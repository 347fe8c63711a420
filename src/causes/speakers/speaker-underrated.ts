import { gainFigures, gainTargets } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { coneFigures } from '../cone-way.ts';
import { readsForGain } from '../read-first.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { ampChannels } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const speakerUnderrated: Cause = {
  id: 'speaker-underrated',
  title: (f) => `Speakers that take less than ${ampName(f)} gives`,
  faults: ['speaker-underrated'],
  split: {
    byMeter:
      'Speakers off, 80 Hz tone at your usual top step: more volts than the root of the speaker’s watts × its ohms?',
    needs: ['tone-80'],
    touches: ['amp-out-plus'],
    without:
      'Papers: continuous watts of the speaker, and sine watts of a channel at its ohms. Is the speaker’s number the smaller one?',
  },
  mends: ['amp', 'speaker'],
  article: 'high-pass-filters',
  remedy: (f) => ({
    what: `${AmpName(f)} puts more watts into the speakers than they take for good: on bass they are at the end of their way.`,
    background: 'Peak numbers on a speaker’s box are several times what it takes continuously.',
    numbers: [...gainFigures(f), ...coneFigures(f)],
    readFirst: readsForGain(f),
    repair: [{ do: 'set-gain', axle: ampChannels(f), outputV: gainTargets(f).outputV, noMoreThanSpeakers: true }],
    fix: [
      'Read the continuous watts and the ohms off the speaker. The root of watts × ohms is the most volts that it may get.',
      'Key off, speakers off the amplifier. High-pass on at 80 to 100 Hz, bass knob at zero. Key on, volume at zero.',
      '80 Hz tone up to your usual top step: turn the gain so that no output reads more than that, at 400 Hz either.',
      'Volume at zero, key off, speakers on. Too quiet now? Then better speakers, not more gain.',
    ],
    tools: 'Meter, small screwdriver, the test tones',
    minutes: 25,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: [
      'A stronger amplifier.',
      'Speakers for the sake of a few watts: half the power is 3 dB, and hardly heard.',
    ],
    ifDoneAnyway: 'Played on like this, the glue of the coil goes, then the coil.',
    proofOfCure: {
      byEar: 'Bass notes clean at your usual top step, and after half an hour no smell of hot varnish.',
      byMeter:
        'Speakers off, both tones at your usual top step: no output above the root of the speaker’s watts × its ohms.',
      needs: ['tone-80'],
    },
  }),
};
