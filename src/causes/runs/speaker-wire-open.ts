import type { Cause } from '../cause.ts';
import { capital } from '../the-amp.ts';
import { isFront, placed, runThatIsOpen } from '../where.ts';
import { FITTER } from '../who.ts';
import { runFigures, runWhole } from './run-figures.ts';

export const speakerWireOpen: Cause = {
  id: 'speaker-wire-open',
  title: (f) => capital(placed(runThatIsOpen(f), 'speaker wire open')),
  faults: ['speaker-wire-open', 'wire-chafed@speaker-run'],
  split: (f) => ({
    byMeter: isFront(runThatIsOpen(f))
      ? 'Key off, meter on ohms: the coil at the speaker’s own plug, and not from the end that feeds the run?'
      : 'Key off, meter on ohms: the coil through the lid’s plug, and not from the end that feeds the run?',
    needs: ['meter-on-ohms'],
    without: 'A 1.5 V cell for half a second on the run, plug apart, then on the speaker: a click on the speaker only?',
    cautions: ['cell'],
  }),
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'One wire between the speaker and what feeds it is open.',
    background:
      'A terminal that pulled off, a crimp that failed, or a place where the loom rubs on frame, seat pan or steering.',
    numbers: runFigures(f),
    repair: [{ do: 'renew-wire', wire: 'speaker-run', where: runThatIsOpen(f) }],
    fix: [
      'Key off. Push every plug of the run home. Key on, music low: does it play? No? Key off, plug apart.',
      'Follow the run from the speaker back: terminals, crimps, where it passes seat, frame and steering.',
      'Make the joint anew, with a sealed crimp or solder and sleeve. A worn stretch: new wire.',
      'Sleeve it where it rubs, with slack at the steering.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 45,
    who: FITTER,
    parts: ['Sealed crimps, sleeve, a length of speaker wire as thick as the old one'],
    notBuy: ['Speakers, before the run is whole.', 'A reflash: it joins no wire.'],
    proofOfCure: {
      ...runWhole(f),
      byEar: 'It plays, also with the bars at full lock to both sides and somebody on the seat.',
    },
  }),
};
