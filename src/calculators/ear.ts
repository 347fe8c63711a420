import {
  allowedTimeS,
  doseRatio,
  summedLevelDb,
  WIND_FROM_M_S,
  WIND_SPREAD_DB,
  windLevelDba,
} from '../compute/hearing.ts';
import { number } from '../rig/fields.ts';
import { CannotWork, calculator } from './calculator.ts';
import { timeInWords, written } from './in-words.ts';
import { type Axis, traced } from './picture.ts';
import { KM_PER_HOUR, MINUTE } from './units.ts';

const KM_H = 1 / 3.6;
const HOUR_S = 3600;

/** How long the wind and the music may be heard. */
export const ear = calculator({
  id: 'level-at-the-ear',
  title: 'Level at the ear',
  asks: 'How loud is it under the helmet, and for how long is that safe?',
  inputs: {
    speedMS: number(
      'Speed',
      KM_PER_HOUR,
      100 * KM_H,
      [80 * KM_H, 130 * KM_H],
      [40 * KM_H, 200 * KM_H],
      'mph is read as well: type “60 mph”.',
      KM_H,
    ),
    overDb: number(
      'The music is louder than the wind by',
      'dB',
      3,
      [0, 6],
      [-20, 20],
      '0: just as loud. Most riders turn it a little above.',
    ),
    plugsDb: number('Earplugs take away', 'dB', 0, [0, 25], [0, 40], '15 to 25 for foam that sits right.'),
    timeS: number(
      'Hours like that in a day',
      MINUTE,
      2 * HOUR_S,
      [0.5 * HOUR_S, 8 * HOUR_S],
      [60, 24 * HOUR_S],
      'Hours are read as well: type “2 h”.',
      60,
    ),
  },
  result: ({ speedMS, overDb, plugsDb, timeS }) => {
    if (speedMS < WIND_FROM_M_S * (1 - 1e-9))
      throw new CannotWork(
        'Below 64 km/h (40 mph) the wind is not the loudest, and nobody published a level for it. Type a higher speed.',
      );
    const level = (speed: number, protectionDb: number) => {
      const windDba = windLevelDba({ speedMS: speed });
      return summedLevelDb([windDba, windDba + overDb]) - protectionDb;
    };
    const levelDba = level(speedMS, plugsDb);
    const safeS = allowedTimeS({ levelDba });
    const dose = doseRatio({ levelDba, timeS });
    const withPlugs = level(speedMS, Math.max(plugsDb, 20));
    const x: Axis = { label: 'km/h', low: 64, high: 160 };
    const minutes = (protectionDb: number) => (kmH: number) =>
      allowedTimeS({ levelDba: level(kmH * KM_H, protectionDb) }) / 60;
    return {
      lines: [
        {
          label: 'Safe for',
          text: timeInWords(Math.min(safeS, 24 * HOUR_S)),
          note: `A day, all of it counted. You plan ${timeInWords(timeS)}: ${Number((100 * dose).toPrecision(2))} % of what a day allows.`,
          mood: dose <= 1 ? 'good' : 'bad',
        },
        {
          label: 'Wind alone',
          text: written(windLevelDba({ speedMS }) - plugsDb, 'dB'),
          note: `A-weighted, ± ${WIND_SPREAD_DB} dB from helmet to helmet and screen to screen.`,
        },
        { label: 'Wind and music together', text: written(levelDba, 'dB'), note: 'At the ear, A-weighted.' },
        ...(plugsDb < 20
          ? [
              {
                label: 'With plugs that take 20 dB',
                text: timeInWords(Math.min(24 * HOUR_S, allowedTimeS({ levelDba: withPlugs }))),
                note: 'Wind and music fall together, so the words stay as clear.',
              },
            ]
          : []),
      ],
      picture: {
        kind: 'plot',
        x,
        y: { label: 'Minutes a day', low: 0.5, high: 600, log: true },
        curves: [
          { name: plugsDb > 0 ? 'as you ride' : 'no plugs', points: traced(x, minutes(plugsDb)) },
          ...(plugsDb < 20 ? [{ name: 'plugs, 20 dB', dashed: true as const, points: traced(x, minutes(20)) }] : []),
        ],
        marks: [
          {
            name: 'you',
            x: speedMS / KM_H,
            y: safeS / 60,
          },
        ],
      },
      says: `At ${written(speedMS / KM_H, KM_PER_HOUR, 3)} and ${written(levelDba, 'dB')} a day allows ${timeInWords(Math.min(safeS, 24 * HOUR_S))}. Every 3 dB more halves it.`,
    };
  },
  cautions: ['local-rules', 'riding'],
  sources: [
    'Wind under a helmet: Binnington, McCombe, Harris, Br. J. Audiol. 27(6), 1993: 90 dBA at 40 mph, 112 at 100.',
    'Allowed time: NIOSH 98-126, 85 dBA for 8 h, half for each 3 dB. A limit of risk at work, not a promise for your ears.',
    'Plugs: what is printed on the pack is seldom reached; common practice, no published source. Some places forbid plugs or earphones on the road.',
  ],
  article: 'wind-level-and-hearing',
});
