import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { silentOnes } from '../told/silent-side.ts';

export const adapterPairs: ChoiceStep<'gap' | 'through' | 'no-adapter'> = choice({
  place: 'unit',
  id: 'adapter-pairs',
  short: 'Speaker wires through the adapter',
  ask: (s) =>
    `At the adapter of the replaced head unit: do both wires of ${silentOnes(s, 'the silent speaker')} go through its plug?`,
  phone:
    'Key off, pull the adapter plug behind the radio apart. Have both wires of that speaker a pin on both sides, is a place empty, or is there no adapter?',
  how: [
    'The adapter’s plug apart.',
    'Find that speaker’s two wires on the head unit’s side. Its papers say which.',
    'Has each of them a pin and a wire on the other half, too?',
  ],
  why: 'An adapter made for another bike leaves out what that bike had not.',
  tool: 'none',
  minutes: 5,
  conditions: ['key-off', 'panel-off'],
  sensible: (f) => is(f, 'unit-kind', 'replaced'),
  observes: ['unit-leads'],
  options: {
    gap: 'No, a place is empty',
    through: 'Yes, both go through',
    'no-adapter': 'There is no adapter, the wires are joined',
  },
  outcomes: { gap: 'a place is empty', through: 'both go through', 'no-adapter': 'no adapter' },
  givenUnder: ['unit-kind', 'which-corner'],
  ifCannot: 'The panel stays on: go on without.',
});
