import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { mayHaveRemote } from '../fitted/switched-by.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { labelIn, measurement, type ReadingStep } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { supplyMayFail } from '../supply/may-fail.ts';
import { dcReading } from '../tools/dc-volts.ts';
import { unitIsDark } from '../unit/unit-dark.ts';
import { remoteBands, remoteHealthy } from './remote-bands.ts';

export const remoteVolts: OfEach<ReadingStep<'ok' | 'low' | 'none' | 'unclear'>, 'meant', AmpPair> = ofEachAmp(
  measurement({
    place: 'turn-on',
    id: 'remote-volts',
    short: atAmp('Remote terminal'),
    ask: (s) => `Head unit on: what DC voltage is on the remote terminal of ${ampName(s)}, against battery negative?`,
    phone: (s) =>
      `Red on the thin terminal of ${ampName(s)}, the one marked remote, touching nothing next to it: what number?`,
    how: [
      'Black stays on the battery negative post, not on the amplifier’s ground.',
      'Red probe on the remote terminal, wire in it. Has the wire come out? Read the terminal as it is: that is the answer.',
      'Don’t use a test lamp with a bulb instead: it would load the wire.',
    ],
    why: 'The remote wire is the amplifier’s switch. Without its volts the best supply does nothing.',
    tool: 'meter',
    minutes: 2,
    conditions: ['amp-uncovered', 'head-unit-playing', 'black-on-minus', 'meter-on-dc'],
    // A dark head unit gives no volts on it: that is told already.
    sensible: (f) => mayHaveRemote(f) && supplyMayFail(f) && !unitIsDark(f),
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
    ifCannot: 'Without it we try a jumper lead from its own positive.',
  }),
);
