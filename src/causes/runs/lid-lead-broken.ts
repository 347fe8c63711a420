import type { Cause } from '../cause.ts';
import { Placed, runThatIsOpen } from '../where.ts';
import { FITTER } from '../who.ts';
import { runFigures, runWhole } from './run-figures.ts';

export const lidLeadBroken: Cause = {
  id: 'lid-lead-broken',
  title: (f) => Placed(runThatIsOpen(f), 'lead into the lid broken inside'),
  faults: ['lid-lead-broken'],
  split: {
    byMeter: 'Key off, plug apart, meter on ohms on the lid’s half: do the ohms jump while the lid moves?',
    needs: ['meter-on-ohms'],
    without: 'Move the lid slowly through its whole travel while music plays: does it come and go?',
    asStep: { without: 'lid-check' },
  },
  mends: ['run'],
  article: 'read-a-coil-in-ohms',
  remedy: (f) => ({
    what: 'Strands of the rear speaker lead are broken inside the insulation, where it goes into the lid.',
    background: 'It bends every time the lid opens. A broken strand can also pierce the insulation and touch the lid.',
    numbers: runFigures(f),
    repair: [{ do: 'renew-wire', wire: 'lid-lead', where: runThatIsOpen(f) }],
    fix: [
      'Key off, plug apart. Bend the lead between two fingers along the hinge: where it goes limp, the copper is broken.',
      'Fit a new flexible lead through the hinge, with some slack and strain relief on both sides.',
      'Meter on ohms, lid moving: no wire of it touches the lid’s metal.',
    ],
    tools: 'Crimp tool, meter, cable ties',
    minutes: 45,
    who: FITTER,
    parts: ['Flexible two-wire speaker lead, as thick as the old one'],
    notBuy: ['Speakers: a lead is broken, not a coil.', 'A reflash.'],
    cautions: ['ohms-dead'],
    proofOfCure: runWhole(f),
  }),
};
