import { mayHaveRemote } from '../fitted/switched-by.ts';
import { labelIn, measurement, type ReadingStep } from '../step.ts';
import { supplyMayFail } from '../supply/may-fail.ts';
import { dcReading } from '../tools/dc-volts.ts';
import { remoteBands, remoteHealthy } from './remote-bands.ts';

export const remoteVolts: ReadingStep<'ok' | 'low' | 'none' | 'unclear'> = measurement({
  place: 'turn-on',
  id: 'remote-volts',
  short: 'Remote terminal',
  ask: 'Head unit on: what DC voltage is on the amplifier’s remote terminal, against battery minus?',
  phone: 'Red on the thin terminal marked remote: number?',
  how: [
    'Black stays on the battery minus post, not on the amplifier’s ground.',
    'Red probe on the remote terminal, the wire in it. It hangs out? Read the terminal as it is: that is the answer.',
    'A test lamp with a bulb in the meter’s place would load the wire: use the meter.',
  ],
  why: 'The remote wire is the amplifier’s switch. Without its volts the best supply does nothing.',
  tool: 'meter',
  minutes: 2,
  conditions: ['amp-uncovered', 'head-unit-playing', 'black-on-minus', 'meter-on-dc'],
  sensible: (f) => mayHaveRemote(f) && supplyMayFail(f),
  observes: ['unit', 'unit-leads', 'amp-supply'],
  probes: { red: 'amp-remote', black: 'battery-minus' },
  readings: { remoteV: dcReading('Remote terminal') },
  bands: (_, __, s) => remoteBands(s),
  judge: (values, s) => {
    const label = labelIn(remoteBands(s), values['remoteV'] ?? 0);
    return label === 'healthy' ? 'ok' : label === 'nothing' ? 'none' : label === 'too little' ? 'low' : 'unclear';
  },
  healthy: remoteHealthy,
  outcomes: { ok: 'switched on', low: 'too few volts', none: 'nothing', unclear: 'enough for most amplifiers' },
  ifCannot: 'We try a jumper lead from its own plus instead.',
});
