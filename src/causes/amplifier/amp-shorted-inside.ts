import type { Cause } from '../cause.ts';
import { FUSE_READS, fuseFigures, fuseLast, fuseParts, renewMainFuse } from '../main-fuse.ts';
import { AmpName } from '../the-amp.ts';
import { AMP_REPAIRER } from '../who.ts';

export const ampShortedInside: Cause = {
  id: 'amp-shorted-inside',
  title: (f) => `${AmpName(f)} is shorted inside and blows its main fuse`,
  faults: ['amp-dead@internal-short'],
  provedBy: ['lead-off-amp'],
  split: {
    byMeter:
      'Key off, main fuse out, battery negative off, positive lead off the amplifier, meter on ohms from its positive to its ground terminal: below 1 Ω, and it stays there?',
    needs: ['minus-off', 'meter-on-ohms'],
    without:
      'Remote wire and speakers off, a 21 to 55 W lamp in the fuse’s place: bright with the amplifier on the lead, dark with the lead off it and taped?',
    asStep: { without: 'lead-off-amp' },
    cautions: ['fuse', 'lamp-hot', 'minus-first'],
  },
  mends: ['amp', 'amp-supply'],
  article: 'wire-fuse-and-ground',
  remedy: (f) => ({
    what: `${AmpName(f)} is shorted at its supply input, and that blows the main fuse.`,
    background:
      'A battery fitted the wrong way round does this, and so can a shorted speaker run that was tried over and over.',
    numbers: fuseFigures(f),
    readFirst: FUSE_READS,
    repair: [{ do: 'repair-amp' }, renewMainFuse(f)],
    fix: [
      'Main fuse out, battery negative off, and leave it like that. Positive lead off the amplifier, its end taped.',
      'Ask a workshop what a repair costs. Tell them: supply input shorted, main fuse blows with remote wire and speakers off.',
      'Before the amplifier goes back in: each speaker run in ohms and to the frame. A short there may have caused it.',
      ...fuseLast(f),
    ],
    tools: 'Meter, spanners, a 21 to 55 W lamp on two leads',
    minutes: 60,
    who: AMP_REPAIRER,
    parts: fuseParts(f),
    notBuy: [
      'A bigger fuse.',
      'Another amplifier, before a workshop has quoted for the repair and the speaker runs have been measured.',
    ],
    ifDoneAnyway: 'A bigger fuse feeds the short: the lead burns, or the amplifier does.',
    cautions: ['ohms-dead'],
    proofOfCure: {
      byEar:
        'A 21 to 55 W lamp in the fuse’s place glows briefly and goes dark. With the fuse in, it comes on, and the fuse is whole after ten loud minutes.',
      byMeter:
        'Key off, main fuse out, battery negative off, positive lead off it: its positive to its ground climbs above 100 Ω within a minute, as its capacitors fill.',
    },
  }),
};
