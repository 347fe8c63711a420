import { drawAllowedA, timeToUseS } from '../compute/battery-charge.ts';
import { BIKE_FIELDS, number } from '../rig/fields.ts';
import { calculator, known } from './calculator.ts';
import { timeInWords, written } from './in-words.ts';
import { roundUp, traced } from './picture.ts';
import { DAY, MILLIAMPERE } from './units.ts';

const DAY_S = 86_400;

/** How long a parked bike starts. */
export const parked = calculator({
  id: 'parked-draw',
  title: 'Parked draw',
  asks: 'For how many days does it still start?',
  inputs: {
    drawA: number(
      'Draw with everything off',
      MILLIAMPERE,
      0.015,
      [0.005, 0.03],
      [0.001, 5],
      'In the negative lead, ten minutes after key off. 5 to 15 is healthy.',
      0.001,
    ),
    batteryAh: BIKE_FIELDS.batteryAh,
    healthRatio: number(
      'What is left of its capacity',
      '%',
      1,
      [0.6, 1],
      [0.2, 1],
      'A new battery has 100. Five years old, often 60.',
      0.01,
    ),
    startRatio: number(
      'It starts down to',
      '%',
      0.5,
      [0.4, 0.6],
      [0.1, 0.9],
      'Of a full charge. Cold mornings need more.',
      0.01,
    ),
    timeS: number(
      'Days that it stands',
      DAY,
      21 * DAY_S,
      [7 * DAY_S, 120 * DAY_S],
      [DAY_S, 400 * DAY_S],
      'Between two rides.',
      DAY_S,
    ),
  },
  fromBike: (rig) => known({ batteryAh: rig.batteryAh }),
  result: ({ drawA, batteryAh, healthRatio, startRatio, timeS }) => {
    const capacityAh = batteryAh * healthRatio;
    const shareRatio = 1 - startRatio;
    const lastsS = timeToUseS({ capacityAh, shareRatio, drawA });
    const allowedA = drawAllowedA({ capacityAh, shareRatio, timeS });
    const enough = lastsS >= timeS;
    const daysHigh = roundUp((1.3 * Math.max(timeS, Math.min(lastsS, 400 * DAY_S))) / DAY_S);
    const left = (days: number) => Math.max(0, 100 * (1 - (drawA * days * 24) / capacityAh));
    return {
      lines: [
        {
          label: 'It still starts for',
          text: timeInWords(lastsS),
          note: enough ? 'Longer than it stands.' : 'Shorter than it stands: put a charger on it, or find the draw.',
          mood: enough ? 'good' : 'bad',
        },
        {
          label: `For ${timeInWords(timeS)} the draw may be`,
          text: written(allowedA * 1000, MILLIAMPERE),
          note: 'One fuse out at a time tells who draws. Wait ten minutes first: some modules go to sleep late.',
        },
        {
          label: 'Ampere-hours it can spare',
          text: written(capacityAh * shareRatio, 'Ah'),
          note: 'A lead-acid battery also loses some per cent a month by itself.',
        },
      ],
      picture: {
        kind: 'plot',
        x: { label: 'Days', low: 0, high: daysHigh },
        y: { label: 'Charge, %', low: 0, high: 100 },
        curves: [{ name: 'charge', points: traced({ label: '', low: 0, high: daysHigh }, left) }],
        limits: [{ name: 'starts', y: 100 * startRatio }],
        marks: [{ name: 'next ride', x: timeS / DAY_S, y: left(timeS / DAY_S) }],
      },
      says: `With ${written(drawA * 1000, MILLIAMPERE)} the charge falls to the least that starts it after ${timeInWords(lastsS)}.`,
    };
  },
  cautions: ['battery-gas'],
  sources: [
    'Charge is current times time. 5 to 15 mA of parked draw and a start from half a charge: common practice, no published source.',
  ],
  article: 'the-charging-system',
});
