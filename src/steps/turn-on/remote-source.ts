import { mayHaveRemote } from '../fitted/switched-by.ts';
import { is } from '../outcome.ts';
import { labelIn, measurement, type ReadingStep } from '../step.ts';
import { dcReading } from '../tools/dc-volts.ts';
import { remoteBands, remoteHealthy } from './remote-bands.ts';

export const remoteSource: ReadingStep<'live' | 'low' | 'dead'> = measurement({
  place: 'turn-on',
  id: 'remote-source',
  short: 'Where the remote wire begins',
  ask: 'What DC voltage is at the other end of the remote wire, where it is tapped off?',
  phone:
    'Follow the thin remote wire to its start, at the radio or at a fuse. Red there, well away from the data wires: what number?',
  how: [
    'Red probe where the remote wire starts: the head unit’s remote output, or the feed it is tapped off.',
    'Look at the tap: a connector that never bit through the insulation is the usual culprit.',
  ],
  why: 'Volts here but none at the amplifier: the wire. None here: the feed it is tapped off.',
  tool: 'meter',
  minutes: 6,
  conditions: ['head-unit-playing', 'black-on-minus', 'meter-on-dc'],
  sensible: (f) => mayHaveRemote(f) && is(f, 'remote-volts', 'none', 'low', 'unclear'),
  // What is low or gone at one end says nothing of the wire before the other end was read.
  completes: (f) => is(f, 'remote-volts', 'none', 'low'),
  observes: ['unit', 'unit-leads', 'amp-supply'],
  cautions: ['data'],
  probes: { red: 'remote-start', black: 'battery-minus' },
  readings: { startV: dcReading('Start of the remote wire') },
  bands: (_, __, s) => remoteBands(s),
  judge: (values, s) => {
    const label = labelIn(remoteBands(s), values['startV'] ?? 0);
    return label === 'nothing' ? 'dead' : label === 'too little' ? 'low' : 'live';
  },
  formula: 'start of the wire = battery − what its feed loses',
  healthy: remoteHealthy,
  outcomes: { live: 'volts at its start', low: 'too few volts at its start', dead: 'none at its start either' },
  givenUnder: ['remote-volts'],
  ifCannot: 'Does it start behind the fairing? We name both, likeliest first.',
});
