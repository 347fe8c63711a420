import { mayBeOff } from '../amplifier/seen-on.ts';
import { mayHaveRemote } from '../fitted/switched-by.ts';
import { isKnown } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { unitIsDark } from '../unit/unit-dark.ts';

export const remoteLamp: ChoiceStep<'lit' | 'dark' | 'out'> = choice({
  place: 'turn-on',
  id: 'remote-lamp',
  short: 'LED lamp on the remote terminal',
  ask: 'An LED test lamp between the remote terminal and battery negative, head unit on: does it light?',
  phone:
    'Put the LED test lamp’s clip on battery negative and its tip on the amplifier’s thin remote terminal, touching nothing next to it: does it light? Or is there no wire in that terminal?',
  how: [
    'Use an LED test lamp. One with a bulb loads the thin wire and tells you nothing.',
    'Look at the terminal first: the thin wire must be in it and held tight.',
    'Clip on the battery negative post, tip on the remote terminal.',
  ],
  why: 'Without a meter this shows whether any volts arrive. It cannot tell eight from twelve.',
  tool: 'test-lamp',
  minutes: 2,
  conditions: ['amp-uncovered', 'head-unit-playing'],
  sensible: (f) => mayHaveRemote(f) && mayBeOff(f) && !isKnown(f, 'remote-volts') && !unitIsDark(f),
  observes: ['unit', 'unit-leads', 'amp-supply'],
  options: { lit: 'It lights', dark: 'It stays dark', out: 'There is no wire in it: it has come out' },
  outcomes: { lit: 'lights', dark: 'dark', out: 'the wire has come out' },
});
