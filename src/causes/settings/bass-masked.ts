import { doseRatio, windLevelDba } from '../../compute/hearing.ts';
import type { Cause } from '../cause.ts';
import { engineFigures, RATIO_STAYS, SAME_FIGURE } from '../unit/engine-difference.ts';
import { YOURSELF } from '../who.ts';

/** Forty and sixty-five miles an hour, in metres a second. */
const SPEEDS = [
  { id: '40', label: '40 mph', speedMS: 40 * 0.44704 },
  { id: '65', label: '65 mph', speedMS: 65 * 0.44704 },
] as const;
const HOUR_S = 3600;

export const bassMasked: Cause = {
  id: 'bass-masked',
  title: 'Engine and wind drown the bass',
  faults: ['bass-masked-by-noise'],
  split: {
    byMeter: 'Two tones at one low step, engine off and idling outdoors: are the two ratios of 80 to 400 Hz the same?',
    needs: ['tone-400', 'engine-running'],
    touches: ['unit-front-plus'],
    without: 'Outdoors at idle, ear at a speaker: is the bass there that close up?',
  },
  mends: ['settings'],
  article: 'wind-level-and-hearing',
  remedy: (f) => ({
    what: 'The bike plays the same. Engine and wind noise sits where the bass is, and drowns it.',
    background:
      'A low sound masks what is at its pitch and above. Nothing in the circuit changes, so no part can mend it.',
    numbers: [
      ...engineFigures(f),
      SAME_FIGURE,
      ...SPEEDS.map(({ id, label, speedMS }) => ({
        id: `wind-${id}`,
        label: `Wind at the ear under a helmet, ${label}, in dBA`,
        value: windLevelDba({ speedMS }),
        unit: 'dB' as const,
      })),
      {
        id: 'dose-65',
        label: 'An hour of that without earplugs uses up, of a day’s allowance',
        value: 100 * doseRatio({ levelDba: windLevelDba({ speedMS: SPEEDS[1].speedMS }), timeS: HOUR_S }),
        unit: '%' as const,
      },
    ],
    repair: [{ do: 'tune-for-riding' }],
    fix: [
      'Earplugs first. They cut the wind, and the music that is left is easier to follow.',
      'Point the speakers at your ears with nothing in front of them. Set the screen so that the helmet is out of the turbulence.',
      'High-pass at 80 to 100 Hz, and a little at 100 to 120 Hz: bass below that is lost at speed and only eats headroom.',
      'Set the tone for the road, with the engine running. It will then be too much when parked, and that is fine.',
    ],
    tools: 'Earplugs',
    minutes: 15,
    who: YOURSELF,
    parts: ['Earplugs'],
    notBuy: [
      'A reflash or a battery: the bike plays the same.',
      'An amplifier to play over the wind: that alone uses up what your ears can take in a day.',
    ],
    proofOfCure: {
      byEar: 'At your usual speed, earplugs in, you can follow voices and bass guitar without turning it up.',
      ...RATIO_STAYS,
    },
  }),
};
