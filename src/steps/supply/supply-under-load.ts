import { KEY_ON_FLAT_V, KEY_ON_HEALTHY_V } from '../../compute/amp-supply.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { ampName, atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { is } from '../outcome.ts';
import { labelIn, measurement, type ReadingStep, type Situation, type Values } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { dcReading } from '../tools/dc-volts.ts';
import { healthyPathOhm, LAMP_A } from './amp-feed.ts';
import { BATTERY, BATTERY_BANDS } from './battery.ts';
import { bandsOfDrop, cuttingOutV, type Drop, isDrop } from './drops.ts';
import { fuseStaysOut, supplyMayFail } from './may-fail.ts';
import { DRIFT_V } from './terminal-bands.ts';

function togetherCutsOut(values: Values, situation: Situation): boolean {
  const { batteryV: supplyV = KEY_ON_HEALTHY_V, plusDropV = 0, groundDropV = 0 } = values;
  return plusDropV + groundDropV > cuttingOutV(supplyV, situation);
}

/** What adds up must add up: the battery is what is left at the amplifier and what is lost on both ways. */
function notAdding({ batteryV: wholeV, ampV, plusDropV, groundDropV }: Values) {
  if (wholeV === undefined || ampV === undefined || plusDropV === undefined || groundDropV === undefined) return null;
  const offV = Math.abs(wholeV - ampV - plusDropV - groundDropV);
  if (offV <= DRIFT_V) return null;
  return {
    reading: 'ampV',
    message: `Amplifier, positive path and ground path must add up to the battery; they are ${formatQuantity(offV, 'V', 2)} off. Leave the lamp on for all four, and take them again.`,
  };
}

/** Battery, amplifier, positive path and ground path with a known current through both. */
export const supplyUnderLoad: OfEach<
  ReadingStep<'ok' | 'unclear' | 'plus-worn' | 'ground-worn' | 'plus-drop' | 'ground-drop' | 'battery-sags'>,
  'meant',
  AmpPair
> = ofEachAmp(
  measurement({
    place: 'supply',
    id: 'supply-under-load',
    short: atAmp('Supply with a 55 W lamp on it'),
    ask: (s) => `With a 55 W lamp on positive and ground of ${ampName(s)}: how many volts are lost there and back?`,
    phone:
      'The lamp is very hot: hold it by its leads, away from seat and plastic. Four numbers, the probe on a positive never touching the frame. Battery post to post. Amplifier positive to its ground. Battery positive to amplifier positive. Amplifier ground to battery negative.',
    how: [
      'Battery: positive post to negative post. Amplifier: positive to ground terminal.',
      'Lost on positive: battery positive post to amplifier positive. Lost on ground: amplifier ground to battery negative post.',
    ],
    why: 'An open lead shows at once. A bad contact shows only when current flows, and a lamp is a known load.',
    tool: 'meter',
    minutes: 10,
    conditions: ['amp-uncovered', 'line-leads-out', 'lamp-on', 'meter-on-dc'],
    sensible: (f) => supplyMayFail(f) && !fuseStaysOut(f) && is(f, 'amp-terminals', 'ok', 'unclear', 'sags'),
    observes: ['amp-supply'],
    probes: { red: 'battery-plus', black: 'amp-plus' },
    readings: {
      batteryV: BATTERY,
      ampV: { ...dcReading('Amplifier positive to its ground'), probes: { red: 'amp-plus', black: 'amp-ground' } },
      plusDropV: dcReading('Lost on the positive path'),
      groundDropV: { ...dcReading('Lost on the ground path'), probes: { red: 'amp-ground', black: 'battery-minus' } },
    },
    unusable: notAdding,
    bands: (reading, values, s) => {
      if (reading === 'batteryV') return BATTERY_BANDS;
      return isDrop(reading) ? bandsOfDrop(reading, values, s) : null;
    },
    judge: (values, s) => {
      if ((values['batteryV'] ?? 0) < KEY_ON_FLAT_V) return 'battery-sags';
      const label = (drop: Drop) => labelIn(bandsOfDrop(drop, values, s), values[drop] ?? 0);
      const [plus, ground] = [label('plusDropV'), label('groundDropV')];
      const cuts = 'cuts the amplifier off';
      if (plus === cuts && (ground !== cuts || (values['plusDropV'] ?? 0) >= (values['groundDropV'] ?? 0)))
        return 'plus-drop';
      if (ground === cuts) return 'ground-drop';
      // Two ways that are half bad cut it off together. The one that is worse for its size is mended first.
      if (plus !== 'healthy' && ground !== 'healthy' && togetherCutsOut(values, s)) {
        const { plusOhm, groundOhm } = healthyPathOhm(s);
        return (values['plusDropV'] ?? 0) / plusOhm >= (values['groundDropV'] ?? 0) / groundOhm
          ? 'plus-drop'
          : 'ground-drop';
      }
      if (plus === 'healthy') return ground === 'healthy' ? 'ok' : 'ground-worn';
      return ground === 'healthy' ? 'plus-worn' : 'unclear';
    },
    formula: 'lost on a path = I · R, with the lamp’s 5 A and R = ρ · l ÷ A + joints',
    healthy: (values, s) => {
      const most = (drop: Drop) => formatQuantity(bandsOfDrop(drop, values, s)[0]?.high ?? 0, 'V', 2);
      return `At the lamp’s ${LAMP_A} A, healthy leads of this size lose at most ${most('plusDropV')} on positive and ${most('groundDropV')} on ground.`;
    },
    outcomes: {
      ok: 'both paths are good',
      unclear: 'more than healthy on both paths',
      'plus-worn': 'more than healthy on the positive path',
      'ground-worn': 'more than healthy on the ground path',
      'plus-drop': 'lost on the positive path',
      'ground-drop': 'lost on the ground path',
      'battery-sags': 'the battery sags',
    },
    article: 'voltage-drop-under-load',
    ifCannot: 'Without it we lead temporary wires past the old ones.',
  }),
);
