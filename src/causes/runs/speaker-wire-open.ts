import type { Cause } from '../cause.ts';
import { isFront, Placed, runThatIsOpen } from '../where.ts';
import { FITTER } from '../who.ts';
import { runFigures, runWhole } from './run-figures.ts';

export const speakerWireOpen: Cause = {
  id: 'speaker-wire-open',
  title: (f) => Placed(runThatIsOpen(f), 'speaker wire open'),
  faults: ['speaker-wire-open', 'wire-chafed@speaker-run'],
  split: (f) => ({
    byMeter: isFront(runThatIsOpen(f))
      ? 'Key off, meter on ohms: does the coil read at the speaker’s own plug, but not from the end that feeds the run?'
      : 'Key off, meter on ohms: does the coil read through the lid’s plug, but not from the end that feeds the run?',
    needs: ['meter-on-ohms'],
    without:
      'A 1.5 V cell for half a second on the run, plug apart, then on the speaker: a click only at the speaker itself?',
    cautions: ['cell'],
  }),
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'A wire between the speaker and whatever feeds it is open.',
    background: 'A terminal pulled off, a failed crimp, or a place where the loom rubs on frame, seat pan or steering.',
    numbers: runFigures(f),
    repair: [{ do: 'renew-wire', wire: 'speaker-run', where: runThatIsOpen(f) }],
    fix: [
      'Key off. Push every plug of the run home. Key on, music low: does it play? No? Key off, plug apart.',
      'Follow the run back from the speaker: terminals, crimps, wherever it passes seat, frame and steering.',
      'Remake the joint, with a sealed crimp or solder and sleeve. A worn length: new wire.',
      'Sleeve it where it rubs, with slack at the steering.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 45,
    who: FITTER,
    parts: ['Sealed crimps, sleeve, a length of speaker wire as thick as the old one'],
    notBuy: ['Speakers, before the run is whole.', 'A reflash: it joins no wire.'],
    proofOfCure: {
      ...runWhole(f),
      byEar: 'It plays, even with the bars at full lock either way and somebody on the seat.',
    },
  }),
};
