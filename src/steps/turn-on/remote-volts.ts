import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { mayHaveRemote } from '../fitted/switched-by.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { labelIn, measurement, type ReadingStep } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { supplyMayFail } from '../supply/may-fail.ts';
import { dcReading } from '../tools/dc-volts.ts';
import { remoteBands, remoteHealthy } from './remote-bands.ts';

export const remoteVolts: OfEach<ReadingStep<'ok' | 'low' | 'none' | 'unclear'>, 'meant', AmpPair> = ofEachAmp(
  measurement({
    place: 'turn-on',
    id: 'remote-volts',
    short: atAmp('Remote terminal'),
    ask: (s) => `Head unit on: what DC voltage is on the remote terminal of ${ampName(s)}, against battery minus?`,
    phone: (s) =>
      `Red on the thin terminal of ${ampName(s)}, the one marked remote, touching nothing beside it: number?`,
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
    formula: 'remote terminal = battery − what the thin wire loses, at a few milliamperes',
    healthy: remoteHealthy,
    outcomes: { ok: 'switched on', low: 'too few volts', none: 'nothing', unclear: 'enough for most amplifiers' },
    ifCannot: 'We try a jumper lead from its own plus instead.',
  }),
);
