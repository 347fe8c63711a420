import { coneLevelDb, levelAtPowerDb, lowestFrequencyHz } from '../compute/sound-level.ts';
import { number } from '../rig/fields.ts';
import { calculator } from './calculator.ts';
import { written } from './in-words.ts';
import { type Axis, traced } from './picture.ts';
import { MILLIMETRE } from './units.ts';

/** Where a high-pass filter belongs, so that a small cone is not driven beyond its way. */
export const highPass = calculator({
  id: 'high-pass',
  title: 'High-pass for a small speaker',
  asks: 'Below which tone does the speaker run out of travel?',
  inputs: {
    coneM: number(
      'Moving cone, across',
      MILLIMETRE,
      0.105,
      [0.08, 0.14],
      [0.02, 0.4],
      'Cone and half the surround. About 105 for a 130 mm speaker.',
      0.001,
    ),
    excursionM: number(
      'Travel, one way',
      MILLIMETRE,
      0.003,
      [0.002, 0.006],
      [0.0005, 0.03],
      '“Xmax” in its papers.',
      0.001,
    ),
    sensitivityDb: number(
      'Sensitivity',
      'dB',
      90,
      [86, 93],
      [75, 105],
      'From 1 W at 1 m. From 2.83 V into 4 Ω it is printed 3 dB higher.',
    ),
    powerW: number('Power that reaches it', 'W', 40, [15, 100], [0.5, 1000], 'Of the channel that drives it.'),
  },
  result: ({ coneM, excursionM, sensitivityDb, powerW }) => {
    const coneM2 = Math.PI * (coneM / 2) ** 2;
    const levelDb = levelAtPowerDb({ sensitivityDb, powerW });
    const cornerHz = lowestFrequencyHz({ coneM2, excursionM, levelDb });
    const x: Axis = { label: 'Hz', low: 30, high: 500, log: true };
    const cone = (frequencyHz: number) => coneLevelDb({ coneM2, excursionM, frequencyHz });
    const [low, high] = [Math.floor((cone(x.low) - 3) / 10) * 10, Math.ceil((levelDb + 6) / 10) * 10];
    return {
      lines: [
        {
          label: 'High-pass at',
          text: written(cornerHz, 'Hz'),
          note: 'Or above. Steeper is safer: 24 dB an octave rather than 12.',
        },
        {
          label: 'Full power makes at 1 m',
          text: written(levelDb, 'dB', 3),
          note: 'Below the corner the cone cannot follow that, boost or not.',
        },
        {
          label: 'At 80 Hz the cone manages',
          text: written(cone(80), 'dB', 3),
          note: `That is ${written(Math.max(0, levelDb - cone(80)), 'dB')} less. Power beyond it only bends the sound and wears the cone.`,
        },
      ],
      picture: {
        kind: 'plot',
        x,
        y: { label: 'dB at 1 m', low, high },
        curves: [{ name: 'what the cone can', points: traced(x, cone) }],
        limits: [{ name: 'what the power asks', y: levelDb }],
        marks: [{ name: 'corner', x: cornerHz, y: levelDb }],
      },
      says: `What the cone can falls by 12 dB for each octave down. It meets the ${written(levelDb, 'dB', 3)} that the power asks for at ${written(cornerHz, 'Hz')}.`,
    };
  },
  cautions: ['full-tone'],
  sources: [
    'A small source in a baffle, p = ρ f U / r: Kinsler et al., Fundamentals of Acoustics, from memory. It holds for a closed lid; a vented box does better near its tuning and worse below.',
    'Sensitivity: IEC 60268-5.',
  ],
  article: 'high-pass-filters',
});
