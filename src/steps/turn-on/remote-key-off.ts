import { REMOTE_NOTHING_BELOW_V } from '../../compute/amp-supply.ts';
import { mayHaveRemote } from '../fitted/switched-by.ts';
import { is } from '../outcome.ts';
import { measurement, type ReadingStep } from '../step.ts';
import { dcReading } from '../tools/dc-volts.ts';

export const remoteKeyOff: ReadingStep<'dead' | 'live'> = measurement({
  place: 'turn-on',
  id: 'remote-key-off',
  short: 'Remote terminal, key off',
  ask: 'After ten minutes with the key off: what DC voltage is on the remote terminal?',
  phone:
    'Take the key out and wait ten minutes. Red on the amplifier’s thin remote terminal, touching nothing next to it: what number?',
  how: ['Key out. Wait ten minutes: some modules keep power for a while.', 'Red probe on the remote terminal.'],
  why: 'A remote wire on a feed that never switches off keeps the amplifier awake day and night, and that flattens the battery.',
  tool: 'meter',
  minutes: 12,
  conditions: ['amp-uncovered', 'key-off', 'black-on-minus', 'meter-on-dc'],
  sensible: (f) =>
    mayHaveRemote(f) &&
    (is(f, 'amp-terminals', 'battery-low') || is(f, 'supply-under-load', 'battery-sags') || is(f, 'what-else', 'bike')),
  observes: ['unit-leads', 'amp-supply'],
  probes: { red: 'amp-remote', black: 'battery-minus' },
  readings: { remoteV: dcReading('Remote terminal, key off') },
  bands: () => [
    { label: 'off', low: -0.5, high: 0.5, mood: 'good' },
    { label: 'not quite off', low: 0.5, high: REMOTE_NOTHING_BELOW_V, mood: 'unsure' },
    { label: 'still on', low: REMOTE_NOTHING_BELOW_V, high: 15, mood: 'bad' },
  ],
  judge: (values) => ((values['remoteV'] ?? 0) < REMOTE_NOTHING_BELOW_V ? 'dead' : 'live'),
  formula: 'remote terminal = 0 V with the key off',
  healthy: () => 'Healthy is below 0.5 V.',
  outcomes: { dead: 'off', live: 'still on with the key off' },
});
