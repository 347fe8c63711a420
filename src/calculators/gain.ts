import { gainFromVoltageRatioDb, voltageRatio } from '../compute/decibel.ts';
import { GAIN_MARGIN_RATIO, gainRatio, gainTargetV } from '../compute/gain.ts';
import { boostClipsAtV } from '../compute/headroom.ts';
import { BRIDGE_LOSS_UNLOADED_V, cleanOutputV, levelV } from '../compute/level.ts';
import { AMP_FIELDS, BIKE_FIELDS, choice, number } from '../rig/fields.ts';
import { calculator, known } from './calculator.ts';
import { changeInWords, written } from './in-words.ts';
import { roundUp } from './picture.ts';

/** Where the gain of an amplifier belongs, and what clips first. */
export const gain = calculator({
  id: 'set-the-gain',
  title: 'Set the gain',
  asks: 'How far up does the amplifier’s gain go, and what clips first?',
  inputs: {
    supplyV: number(
      'Supply while you set it',
      'V',
      12.6,
      [12.2, 14.6],
      [11, 15.5],
      'At the battery. With a charger on it, what the charger holds.',
    ),
    loweredByDb: number(
      'The head unit plays lower by',
      'dB',
      BIKE_FIELDS.loweredByDb.typical,
      [6, 8],
      [0, 15],
      '0 with the unaltered profile, about 7 with one for an amplifier.',
    ),
    boostDb: number('Bass boost that is left', 'dB', 0, [0, 14], [0, 18], '0 with a flat profile, 12 to 14 unaltered.'),
    powerW: AMP_FIELDS.powerW,
    ratedOhm: AMP_FIELDS.ratedOhm,
    margin: choice(
      'How near to its rated power',
      { cautious: '75 of 90 W: the cautious setting', full: 'All of it' },
      'cautious',
      'A little margin keeps a loud song clean.',
    ),
  },
  fromBike: (rig) =>
    known({
      supplyV: rig.supplyOffV,
      loweredByDb: rig.loweredByDb,
      powerW: rig.amps?.[0]?.powerW,
      ratedOhm: rig.amps?.[0]?.ratedOhm,
    }),
  result: ({ supplyV, loweredByDb, boostDb, powerW, ratedOhm, margin }) => {
    const unloweredV = cleanOutputV({ supplyV, lossV: BRIDGE_LOSS_UNLOADED_V });
    const topV = unloweredV * voltageRatio({ gainDb: -loweredByDb });
    // Boosted bass is the first to reach the rails of the head unit, if the level leaves it that far.
    const cleanV = Math.min(topV, boostClipsAtV({ cleanV: unloweredV, boostDb }));
    const marginRatio = margin === 'cautious' ? GAIN_MARGIN_RATIO : 1;
    const targetV = gainTargetV({ powerW, loadOhm: ratedOhm, marginRatio });
    const ratedV = levelV({ powerW, loadOhm: ratedOhm });
    const ratio = gainRatio({ outputV: targetV, inputV: cleanV });
    const leftDb = gainFromVoltageRatioDb({ voltageRatio: ratedV / targetV });
    const bassClips = cleanV < topV;
    return {
      lines: [
        {
          label: 'Turn the gain up until its output shows',
          text: written(targetV, 'V'),
          note: `400 Hz tone, loudest clean step, speakers off. √(watts × ohms)${marginRatio < 1 ? ', with the margin' : ''}.`,
        },
        {
          label: 'The head unit gives it at most',
          text: written(cleanV, 'V'),
          note: bassClips ? 'Beyond that the boosted bass clips in the head unit, whatever the amplifier does.' : '',
        },
        {
          label: 'That is a gain of',
          text: `${written(ratio, 'V').replace(/\sV$/, '')}×, ${changeInWords(gainFromVoltageRatioDb({ voltageRatio: ratio }))}`,
        },
        {
          label: 'Sensitivity on the dial, about',
          text: written(cleanV * (ratedV / targetV), 'V'),
          note: 'The input that drives it to its rated power. Dials are coarse: go by the output.',
        },
        {
          label: 'What clips first',
          text: 'The head unit',
          note:
            leftDb < 0.05
              ? 'Both reach their end together: any more gain and the amplifier is first.'
              : `The amplifier has ${changeInWords(leftDb)} left then. Turn the gain up further than that and it is first.`,
        },
      ],
      picture: {
        kind: 'plot',
        x: { label: 'Head unit, V', low: 0, high: roundUp(topV) },
        y: { label: 'Amplifier, V', low: 0, high: roundUp(ratedV * 1.2) },
        curves: [
          {
            name: 'set right',
            points: [
              [0, 0],
              [cleanV, targetV],
              ...(topV > cleanV ? [[topV, Math.min(ratedV, topV * ratio)] as const] : []),
            ],
          },
          {
            name: 'gain 6 dB too high',
            dashed: true,
            points: [
              [0, 0],
              [ratedV / (2 * ratio), ratedV],
              [Math.max(topV, ratedV / (2 * ratio)), ratedV],
            ],
          },
        ],
        limits: [{ name: 'clips', y: ratedV }],
        marks: [{ name: 'the mark', x: cleanV, y: targetV }],
      },
      says: `Set right, the amplifier gives ${written(targetV, 'V')} when the head unit gives its ${written(cleanV, 'V')}. With 6 dB too much it clips from ${written(ratedV / (2 * ratio), 'V')} on, and the rest of the volume knob adds only distortion.`,
    };
  },
  cautions: ['amp-output', 'loud-tone'],
  sources: [
    'U = √(P Z): Joule’s law; Lessons In Electric Circuits, DC vol., “Calculating electric power”.',
    'To set the gain by it, the margin of 75 to 90 W and the 0.8 V that a head unit loses: common practice, no published source.',
  ],
  article: 'gain-structure',
});
