import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { supplyMayFail } from './may-fail.ts';

export const copperLook: ChoiceStep<'copper' | 'clad'> = choice({
  place: 'supply',
  id: 'copper-look',
  short: 'What its positive lead is made of',
  ask: 'At a cut end of the amplifier’s positive lead: are the strands copper-red right through, or silvery inside?',
  phone:
    'Scrape a strand of the thick positive lead where it is bare, or look at a cut end. Red right through, or silver inside? Or can’t you get at a bare end?',
  how: [
    'Look where the lead goes into its terminal, or at an offcut from the same roll.',
    'Scrape one strand with a blade. Tinned copper is silver outside and red inside; clad aluminium is red outside and silver inside.',
    'The jacket may say: CCA is copper-clad aluminium, OFC is copper.',
  ],
  why: 'Copper-clad aluminium looks just as thick but carries far less, and it works loose under a screw.',
  tool: 'none',
  minutes: 4,
  conditions: ['minus-off', 'amp-uncovered'],
  sensible: (f) => supplyMayFail(f) && !is(f, 'supply-under-load', 'ok', 'ground-drop', 'ground-worn'),
  observes: ['amp-supply'],
  options: { copper: 'Copper-red right through', clad: 'Silvery inside' },
  outcomes: { copper: 'copper', clad: 'copper-clad aluminium' },
  ifCannot: 'No bare end to see: skip it. Don’t cut anything for this.',
});
