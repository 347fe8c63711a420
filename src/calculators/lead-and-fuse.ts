import { ampCurrentA, DENSE_MUSIC_AVERAGE_RATIO, MUSIC_AVERAGE_RATIO } from '../compute/amp-current.ts';
import { largestFuseA } from '../compute/fuse.ts';
import { PLUS_LEAD_MOST_V, plusLeadFor, SECTIONS_SOLD_M2 } from '../compute/lead-choice.ts';
import { copperResistanceOhm, dropV } from '../compute/wire.ts';
import { AMP_FIELDS, number } from '../rig/fields.ts';
import { CannotWork, calculator, known } from './calculator.ts';
import { sectionInWords, written } from './in-words.ts';
import { type Axis, roundUp } from './picture.ts';

const MM2 = 1e-6;
/** Where the tables of fuses and leads end. */
const LARGEST_A = 300;

/** The positive lead of an amplifier and the fuse that goes with it. */
export const leadAndFuse = calculator({
  id: 'lead-and-fuse',
  title: 'Power lead and fuse',
  asks: 'How thick a lead, and which fuse goes with it?',
  inputs: {
    powerW: AMP_FIELDS.powerW,
    channels: AMP_FIELDS.channels,
    efficiencyRatio: number(
      'Efficiency',
      '%',
      0.75,
      [0.65, 0.8],
      [0.2, 0.95],
      'A switching amplifier has 65 to 80, one with large fins about 50.',
      0.01,
    ),
    supplyV: number('Volts at the amplifier', 'V', 13.5, [12, 14.4], [10, 15.5], 'With the engine running.'),
    lengthM: AMP_FIELDS.plusLeadM,
    fittedM2: AMP_FIELDS.plusLeadM2,
    fittedFuseA: AMP_FIELDS.mainFuseA,
  },
  fromBike: (rig) => {
    const amp = rig.amps?.[0];
    return known({
      powerW: amp?.powerW,
      channels: amp?.channels,
      lengthM: amp?.plusLeadM,
      fittedM2: amp?.plusLeadM2,
      fittedFuseA: amp?.mainFuseA,
    });
  },
  result: ({ powerW, channels, efficiencyRatio, supplyV, lengthM, fittedM2, fittedFuseA }) => {
    const draw = (averageRatio: number) => ampCurrentA({ powerW, channels, efficiencyRatio, supplyV, averageRatio });
    const peakA = draw(1);
    if (peakA > LARGEST_A)
      throw new CannotWork(
        `That is ${written(peakA, 'A')} at full bass, more than one lead and fuse carry (${written(LARGEST_A, 'A', 3)}). Look at the watts and the efficiency again.`,
      );
    const lossOf = (sectionM2: number) =>
      dropV({ currentA: peakA, resistanceOhm: copperResistanceOhm({ lengthM, sectionM2 }) });
    const { sectionM2, fuseA } = plusLeadFor({ lengthM, fullBassA: peakA, fittedM2, fittedFuseA });
    const carriesA = fittedM2 >= 0.82 * MM2 ? largestFuseA({ sectionM2: fittedM2 }) : 0;
    const fuseFits = fittedFuseA <= carriesA;
    const enough = fittedM2 >= sectionM2 * (1 - 1e-9);
    const x: Axis = { label: 'Copper, mm²', low: 1, high: roundUp(Math.max(20, (2 * sectionM2) / MM2)), log: true };
    const most = roundUp(Math.max(1, Math.min(6, lossOf(1.5 * MM2))));
    return {
      lines: [
        {
          label: 'The lead for it, with its fuse',
          text: `${sectionInWords(sectionM2)}, ${written(fuseA, 'A')}`,
          note: 'Always the two together: the fuse protects the lead. Close to the battery, and nothing but copper.',
        },
        {
          label: 'The lead that is there',
          text: enough ? 'Thick enough' : 'Too thin for full bass',
          note: `It loses ${written(lossOf(fittedM2), 'V')} at full bass; ${written(PLUS_LEAD_MOST_V, 'V')} on the copper is the aim.`,
          mood: enough ? 'good' : 'bad',
        },
        {
          label: 'The fuse that is there',
          text: fuseFits ? 'Within its lead' : 'Too large for its lead',
          note:
            carriesA > 0
              ? `The largest for ${sectionInWords(fittedM2)} is ${written(carriesA, 'A')}.`
              : 'No main fuse belongs on a lead as thin as that.',
          mood: fuseFits ? 'good' : 'bad',
        },
        {
          label: 'It draws at full bass',
          text: written(peakA, 'A'),
          note: `Music takes ${written(draw(MUSIC_AVERAGE_RATIO), 'A')} on average, dense and loud ${written(draw(DENSE_MUSIC_AVERAGE_RATIO), 'A')}.`,
        },
      ],
      picture: {
        kind: 'plot',
        x,
        y: { label: 'Lost at full bass, V', low: 0, high: most },
        curves: [
          {
            name: 'copper lead',
            points: SECTIONS_SOLD_M2.filter((sold) => sold / MM2 >= x.low && sold / MM2 <= x.high).map(
              (sold) => [sold / MM2, lossOf(sold)] as const,
            ),
          },
        ],
        limits: [{ name: 'aim', y: PLUS_LEAD_MOST_V }],
        marks: [
          { name: 'now', x: fittedM2 / MM2, y: lossOf(fittedM2) },
          ...(enough ? [] : [{ name: 'right', x: sectionM2 / MM2, y: lossOf(sectionM2) }]),
        ],
      },
      says: `At ${written(peakA, 'A')} over ${written(lengthM, 'm')} the lead that is there loses ${written(lossOf(fittedM2), 'V')}${enough ? '' : `, one of ${sectionInWords(sectionM2)} ${written(lossOf(sectionM2), 'V')}`}.`,
    };
  },
  cautions: ['minus-first', 'fuse'],
  sources: [
    'Copper: ASTM B258 and IEC 60228; the drop is Ohm’s law.',
    'A fuse protects the conductor first: 46 CFR 183.380. Largest fuse by gauge: common practice to 4 AWG, 33 CFR 183.425 above.',
    'One eighth of full power for music: 16 CFR 432.3(c). 0.25 V on the lead: common practice, no published source.',
  ],
  article: 'wire-fuse-and-ground',
});
