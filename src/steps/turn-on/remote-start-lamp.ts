import { mayHaveRemote } from '../fitted/switched-by.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

export const remoteStartLamp: ChoiceStep<'lit' | 'dark'> = choice({
  place: 'turn-on',
  id: 'remote-start-lamp',
  short: 'LED lamp where the wire starts',
  ask: 'The same lamp where the remote wire starts: does it light there?',
  phone:
    'Put the LED test lamp’s clip on battery negative and its tip on the start of the thin remote wire, at the radio or the tap. Keep it away from the data wires. Does it light there?',
  how: ['Clip on the battery negative post.', 'Tip where the remote wire starts.'],
  why: 'Light here but none at the amplifier: the wire. None here: the feed it is tapped off.',
  tool: 'test-lamp',
  minutes: 5,
  conditions: ['head-unit-playing'],
  sensible: (f) => mayHaveRemote(f) && is(f, 'remote-lamp', 'dark'),
  observes: ['unit', 'unit-leads', 'amp-supply'],
  cautions: ['data'],
  options: { lit: 'It lights', dark: 'It stays dark' },
  outcomes: { lit: 'lights at its start', dark: 'dark at its start' },
  givenUnder: ['remote-lamp'],
});
