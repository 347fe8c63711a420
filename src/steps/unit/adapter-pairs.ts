import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { silentOnes } from '../told/silent-side.ts';

export const adapterPairs: ChoiceStep<'gap' | 'through' | 'no-adapter'> = choice({
  place: 'unit',
  id: 'adapter-pairs',
  short: 'Speaker wires through the adapter',
  ask: (s) =>
    `At the replaced head unit’s adapter: do both wires of ${silentOnes(s, 'the silent speaker')} go through its plug?`,
  phone:
    'Key off, unplug the adapter behind the radio. Do both wires of that speaker have a pin on both sides, is a place empty, or is there no adapter?',
  how: [
    'Unplug the adapter.',
    'Find that speaker’s two wires on the head unit’s side. Its papers say which.',
    'Does each have a pin and a wire on the other half too?',
  ],
  why: 'An adapter made for another bike leaves out whatever that bike did not have.',
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
  ifCannot: 'The panel stays on: skip it.',
});
