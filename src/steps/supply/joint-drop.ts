import { formatQuantity } from '../../compute/quantity.ts';
import { dropV } from '../../compute/wire.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { is } from '../outcome.ts';
import { type Band, labelIn, measurement, type Reading, type ReadingStep } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { MOST_V } from '../tools/dc-volts.ts';
import { LAMP_A } from './amp-feed.ts';
import { LAST_DIGIT_V } from './drops.ts';
import { fuseStaysOut, supplyMayFail } from './may-fail.ts';

/** A terminal that holds its copper has less than this. Common practice, no published source. */
const TERMINAL_OHM = 0.001;

/** From three times a healthy reading on, the copper is hardly held. Common practice, no published source. */
const BAD_TIMES = 3;

const HEALTHY_V = dropV({ currentA: LAMP_A, resistanceOhm: TERMINAL_OHM }) + LAST_DIGIT_V;

const JOINT_BANDS: readonly Band[] = [
  { label: 'healthy', low: 0, high: HEALTHY_V, mood: 'good' },
  { label: 'not clean', low: HEALTHY_V, high: BAD_TIMES * HEALTHY_V, mood: 'unsure' },
  { label: 'bad joint', low: BAD_TIMES * HEALTHY_V, high: 4 * BAD_TIMES * HEALTHY_V, mood: 'bad' },
];

const jointReading = (label: string): Reading => ({
  label,
  unit: 'V',
  possible: [0, MOST_V],
  impossible: 'Type it without its sign: from copper to terminal a 12 V bike has 0 to 20 V.',
});

/** The joint of copper and terminal at the amplifier: the part of both ways that looks like the amplifier itself. */
export const jointDrop: OfEach<ReadingStep<'ok' | 'unclear' | 'plus' | 'ground'>, 'meant', AmpPair> = ofEachAmp(
  measurement({
    place: 'supply',
    id: 'joint-drop',
    short: (s) => `Joints at the terminals of ${ampName(s)}`,
    ask: (s) =>
      `Lamp on: how much is lost between the copper of each lead and the metal of its terminal at ${ampName(s)}?`,
    phone:
      'The lamp is very hot: hold it by its leads, away from seat and plastic. One probe on the bare copper of the thick positive lead, the other on its screw at the amplifier, touching no other metal: what number? Then the same at the ground?',
    how: [
      'Needle tips, on the strands where they leave the insulation, not on the sleeve crimped round them.',
      'Positive: copper of the lead to the metal of the terminal block. Ground: terminal block to copper of the lead.',
      'Use millivolts, if the meter has them. Type it without its sign.',
    ],
    why: 'A sleeve or screw that does not grip loses volts between copper and terminal, where nobody measures.',
    tool: 'meter',
    minutes: 5,
    conditions: ['amp-uncovered', 'line-leads-out', 'lamp-on', 'meter-on-dc'],
    sensible: (f) =>
      supplyMayFail(f) &&
      !fuseStaysOut(f) &&
      is(f, 'supply-under-load', 'unclear', 'plus-worn', 'ground-worn', 'plus-drop', 'ground-drop'),
    observes: ['amp-supply'],
    probes: { red: 'plus-copper', black: 'amp-plus' },
    readings: {
      plusJointV: jointReading('Positive: copper to terminal'),
      groundJointV: {
        ...jointReading('Ground: terminal to copper'),
        probes: { red: 'amp-ground', black: 'ground-copper' },
      },
    },
    bands: () => JOINT_BANDS,
    judge: ({ plusJointV = 0, groundJointV = 0 }) => {
      const [plus, ground] = [plusJointV, groundJointV].map((volts) => labelIn(JOINT_BANDS, volts));
      if (plus === 'bad joint' && plusJointV >= groundJointV) return 'plus';
      if (ground === 'bad joint') return 'ground';
      return plus === 'healthy' && ground === 'healthy' ? 'ok' : 'unclear';
    },
    formula: 'lost at a joint = I · R of the joint, with the 5 A of the lamp',
    healthy: () => `At the lamp’s ${LAMP_A} A a tight joint loses less than ${formatQuantity(HEALTHY_V, 'V', 2)}.`,
    outcomes: {
      ok: 'both joints are good',
      unclear: 'a joint is not clean',
      plus: 'lost at the positive terminal',
      ground: 'lost at the ground terminal',
    },
    article: 'voltage-drop-under-load',
    givenUnder: ['supply-under-load'],
  }),
);
