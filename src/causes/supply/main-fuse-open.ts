import { drawFigures } from '../amp-load.ts';
import type { Cause } from '../cause.ts';
import { fuseFigures, fuseInWords, fusePart, renewMainFuse } from '../main-fuse.ts';
import { tooThinForFullBass } from '../new-leads.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';

export const mainFuseOpen: Cause = {
  id: 'main-fuse-open',
  title: (f) => `The main fuse of ${ampName(f)} is open`,
  faults: ['main-fuse-open'],
  split: {
    byMeter: 'Fuse in, both ends of it in turn against the battery minus post: volts on one end, none on the other?',
    without: 'Key off, pull the main fuse near the battery: is its strip burnt through?',
  },
  mends: ['amp-supply'],
  remedy: (f) => {
    const tooThin = tooThinForFullBass(f);
    return {
      what: `${AmpName(f)} gets no plus: the main fuse in its plus lead is open.`,
      background: [
        'A fuse opens for a reason: too small for the bass, a short while something was fitted, or a lead that chafes now and then.',
        ...(tooThin === undefined ? [] : [tooThin]),
      ].join(' '),
      numbers: [...fuseFigures(f), ...drawFigures(f)],
      repair: [renewMainFuse(f)],
      fix: [
        'Key off, fuse out. Look along the whole plus lead for a worn place: at the seat, the frame, the steering.',
        'Remote wire and speaker plugs off the amplifier, bare ends taped. A 21 to 55 W lamp in the fuse’s place: a short glow, then dark? Bright: stop, something is shorted.',
        `Lamp out. One new fuse: ${fuseInWords(f)}.`,
        'Remote wire and speakers back, key off for each. Key on at low volume, then ten loud minutes.',
        'It opens again: stop. A second one tells you nothing new.',
      ],
      tools: 'A 21 to 55 W lamp on two leads',
      minutes: 15,
      who: YOURSELF,
      parts: [fusePart(f)],
      notBuy: [
        'A bigger fuse: it protects the lead, not the amplifier, and the lead would burn.',
        'An amplifier or a reflash: neither was without power by itself.',
      ],
      ifDoneAnyway: 'With a bigger fuse the lead itself becomes the fuse, beside a fuel tank.',
      cautions: ['fuse', 'key-off', 'lamp-hot', 'minus-first', 'hot'],
      proofOfCure: {
        byEar:
          'The amplifier comes on, and the same fuse is still whole after ten minutes of loud music, its holder only hand-warm.',
        byMeter: 'Both ends of the fuse within 0.5 V of the battery posts, and still after ten minutes of loud music.',
      },
    };
  },
};
