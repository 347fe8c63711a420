import { mayBeOff } from '../amplifier/seen-on.ts';
import { mayHaveRemote } from '../fitted/switched-by.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';

export const keyPositions: ChoiceStep<'none' | 'some'> = choice({
  place: 'turn-on',
  id: 'key-positions',
  short: 'Other key positions',
  ask: 'Does the amplifier come on in any other key position, or with another switch of the bike?',
  phone:
    'Never start the engine for this. Turn the key through its positions, ten seconds in each, with the bike’s lights on and off. Does the amplifier come on in any of them?',
  how: [
    'Accessory, ignition, lights on and off, heated grips on and off. Ten seconds each.',
    'Head unit on wherever the position allows it.',
  ],
  why: 'A remote wire tapped off the wrong feed is live in some other position. That gives the mistake away at once.',
  tool: 'none',
  minutes: 2,
  sensible: (f) => mayHaveRemote(f) && !fuseStaysOut(f) && mayBeOff(f) && !is(f, 'remote-volts', 'ok'),
  observes: ['unit', 'unit-leads', 'amp-supply', 'amp'],
  options: { none: 'No, it stays off in all of them', some: 'Yes, in one of them' },
  outcomes: { none: 'off in all of them', some: 'comes on in another position' },
});
