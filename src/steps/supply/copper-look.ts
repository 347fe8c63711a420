import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { supplyMayFail } from './may-fail.ts';

export const copperLook: ChoiceStep<'copper' | 'clad'> = choice({
  place: 'supply',
  id: 'copper-look',
  short: 'What its plus lead is made of',
  ask: 'At a cut end of the amplifier’s plus lead: are the strands red copper all through, or silvery inside?',
  phone:
    'Scrape a strand of the thick plus lead where it is bare, or look at a cut end. Red all through, or silver inside? Or can you not get at a bare end?',
  how: [
    'Where the lead goes into its terminal, or at an offcut from the same roll.',
    'Scrape one strand with a blade. Tinned copper is silver outside and red inside; clad aluminium is red outside and silver inside.',
    'The lead itself may say it: CCA is copper-clad aluminium, OFC is copper.',
  ],
  why: 'Copper-clad aluminium looks as thick and carries far less, and it creeps loose under a screw.',
  tool: 'none',
  minutes: 4,
  conditions: ['minus-off', 'amp-uncovered'],
  sensible: (f) => supplyMayFail(f) && !is(f, 'supply-under-load', 'ok', 'ground-drop'),
  observes: ['amp-supply'],
  options: { copper: 'Red copper all through', clad: 'Silvery inside' },
  outcomes: { copper: 'copper', clad: 'copper-clad aluminium' },
  ifCannot: 'No bare end to see: go on without. Cut nothing for it.',
});
