import { gainFromPowerRatioDb, gainFromVoltageRatioDb, levelDbu, levelDbv } from '../compute/decibel.ts';
import { levelV as levelFrom, powerW } from '../compute/level.ts';
import { number } from '../rig/fields.ts';
import { calculator } from './calculator.ts';
import { changeInWords, written } from './in-words.ts';
import { type Axis, roundUp, traced } from './picture.ts';

const plain = (value: number) => `${value < 0 ? '−' : ''}${Number(Math.abs(value).toPrecision(3))}`;

/** Volts, watts and decibels, one into the others. */
export const levels = calculator({
  id: 'volts-watts-decibels',
  title: 'Volts, watts and decibels',
  asks: 'What does this reading mean in watts, and by how many decibels do two differ?',
  inputs: {
    levelV: number('Reading', 'V', 4, [0.5, 12], [0.0001, 200], 'AC, with a steady tone.'),
    loadOhm: number('Across', 'Ω', 4, [2, 8], [0.1, 100_000], 'The rated ohms of the speaker, or of the load.'),
    otherV: number('Against', 'V', 2, [0.5, 12], [0.0001, 200], 'Another reading of the same tone.'),
  },
  result: ({ levelV, loadOhm, otherV }) => {
    const watts = powerW({ levelV, loadOhm });
    const gainDb = gainFromVoltageRatioDb({ voltageRatio: levelV / otherV });
    const x: Axis = { label: 'V', low: 0, high: roundUp(Math.max(levelV, otherV) * 1.2) };
    const power = (volts: number) => powerW({ levelV: volts, loadOhm });
    return {
      lines: [
        {
          label: 'Watts',
          text: written(watts, 'W'),
          note: 'U² / R. Into a speaker, about: its ohms move with the tone.',
        },
        {
          label: 'Against the other reading',
          text: changeInWords(gainDb),
          note: `${plain(levelV / otherV)} times the volts, ${plain((levelV / otherV) ** 2)} times the watts (${changeInWords(gainFromPowerRatioDb({ powerRatio: power(levelV) / power(otherV) }))} too).`,
        },
        {
          label: 'Level',
          text: `${plain(levelDbv({ levelV }))}\u00a0dBV`,
          note: `Against 1 V. ${plain(levelDbu({ levelV }))} dBu against 0.775 V.`,
        },
        {
          label: 'Twice the watts need',
          text: written(levelFrom({ powerW: 2 * watts, loadOhm }), 'V'),
          note: '3 dB: heard as a little louder. Ten times the watts are about twice as loud.',
        },
      ],
      picture: {
        kind: 'plot',
        x,
        y: { label: 'W', low: 0, high: roundUp(power(x.high)) },
        curves: [{ name: `into ${written(loadOhm, 'Ω')}`, points: traced(x, power) }],
        marks: [
          { name: 'reading', x: levelV, y: watts },
          { name: 'other', x: otherV, y: power(otherV) },
        ],
      },
      says: `${written(levelV, 'V')} across ${written(loadOhm, 'Ω')} are ${written(watts, 'W')}. Twice the volts are four times the watts.`,
    };
  },
  sources: [
    'P = U² / R: Lessons In Electric Circuits, DC vol., “Calculating electric power”; decibels, dBV and dBu: Semiconductors vol., “Decibels”.',
    'Ten times the power sounds about twice as loud: a rule of thumb of psychoacoustics (sone scale, ISO 532), from memory.',
  ],
  article: 'read-a-meter',
});
