import { mayBeOff } from '../amplifier/seen-on.ts';
import { mayHaveRemote } from '../fitted/switched-by.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const adapterLook: ChoiceStep<'gap' | 'through' | 'no-adapter'> = choice({
  place: 'unit',
  id: 'adapter-look',
  short: 'The adapter’s remote pin',
  ask: 'At the replaced head unit’s adapter: is the remote wire there on both sides of its plug?',
  phone:
    'Key off, unplug the adapter behind the radio. Does the remote wire on the radio side have a partner pin, is its place empty, or is there no adapter?',
  how: [
    'Unplug the adapter.',
    'Find the replaced unit’s remote output, usually blue with a white stripe. Its papers say.',
    'Is there a pin and a wire in the same place on the other half?',
  ],
  why: 'An adapter made for another bike often leaves the remote wire out. At the amplifier that looks like a broken wire.',
  tool: 'none',
  minutes: 5,
  conditions: ['key-off', 'panel-off'],
  sensible: (f) => is(f, 'unit-kind', 'replaced') && mayHaveRemote(f) && mayBeOff(f),
  observes: ['unit-leads'],
  options: {
    gap: 'No, the place is empty',
    through: 'Yes, it goes through',
    'no-adapter': 'There is no adapter, the wires are joined',
  },
  outcomes: { gap: 'the place is empty', through: 'it goes through', 'no-adapter': 'no adapter' },
  givenUnder: ['unit-kind'],
});
