import { formatQuantity } from '../../compute/quantity.ts';
import { ofEachAmp } from '../fitted/of-each-amp.ts';
import { atAmp } from '../fitted/the-amp.ts';
import type { AmpPair } from '../fitted/which-amp.ts';
import { is, numberIn } from '../outcome.ts';
import { measurement, type ReadingStep, type Situation } from '../step.ts';
import type { OfEach } from '../subject.ts';
import { dcReading } from '../tools/dc-volts.ts';
import { fuseStaysOut } from './may-fail.ts';
import { supplyUnderLoad } from './supply-under-load.ts';
import { weakestPart } from './weakest-part.ts';

const lostOnPlusV = ({ facts }: Situation): number => numberIn(facts[supplyUnderLoad.id], 'plusDropV', 'V') ?? 0;

/** Which part of the positive path loses the volts. */
export const plusPath: OfEach<ReadingStep<'ring' | 'holder' | 'lead'>, 'meant', AmpPair> = ofEachAmp(
  measurement({
    place: 'supply',
    id: 'plus-path',
    short: atAmp('Where the positive path loses volts'),
    ask: 'Lamp on again: how many volts are lost at the battery ring, and how many across the fuse holder?',
    phone:
      'The lamp is very hot: hold it by its leads, away from seat and plastic. Red on the battery positive post itself, black on the battery side of the fuse holder, touching nothing else: what number? Then across the holder?',
    how: [
      'Ring: battery positive post itself to the metal of the holder on the battery side.',
      'Holder: one side of the fuse holder to the other, fuse in.',
    ],
    why: 'A bad contact loses its volts within a hand’s width. What neither ring nor holder accounts for is lost in the lead.',
    tool: 'meter',
    minutes: 4,
    conditions: ['amp-uncovered', 'line-leads-out', 'lamp-on', 'meter-on-dc'],
    // Worn on its own is no reason, but with one more thing beside it the weakest part is looked into.
    sensible: (f) => !fuseStaysOut(f) && (is(f, 'supply-under-load', 'plus-drop') || weakestPart(f) === 'plus'),
    observes: ['amp-supply'],
    probes: { red: 'battery-plus', black: 'fuse-in' },
    readings: {
      ringV: dcReading('Post to holder'),
      holderV: { ...dcReading('Across the holder'), probes: { red: 'fuse-in', black: 'fuse-out' } },
    },
    bands: () => null,
    judge: (values, s) => {
      const { ringV = 0, holderV = 0 } = values;
      const leadV = lostOnPlusV(s) - ringV - holderV;
      if (leadV > ringV && leadV > holderV) return 'lead';
      return ringV > holderV ? 'ring' : 'holder';
    },
    formula:
      'lost on the positive path = ring + holder + lead: what the first two do not account for is lost in the lead',
    healthy: (_, s) =>
      `The whole positive path lost ${formatQuantity(lostOnPlusV(s), 'V', 2)}. The part that loses most of it is the bad one.`,
    outcomes: { ring: 'at the battery ring', holder: 'in the fuse holder', lead: 'in the lead itself' },
    givenUnder: ['supply-under-load'],
  }),
);
