import { chargeAddedAh, type Stretch } from '../compute/battery-charge.ts';
import { BIKE_FIELDS, number } from '../rig/fields.ts';
import { calculator, known } from './calculator.ts';
import { timeInWords, written } from './in-words.ts';
import { roundUp } from './picture.ts';
import { MINUTE } from './units.ts';

const MINUTE_S = 60;
const signed = (currentA: number) => `${currentA < 0 ? '−' : '+'}${written(Math.abs(currentA), 'A')}`;
const signedAh = (chargeAh: number) => `${chargeAh < 0 ? '−' : '+'}${written(Math.abs(chargeAh), 'Ah')}`;

/** Whether a ride charges the battery or empties it. */
export const charging = calculator({
  id: 'charging-over-a-ride',
  title: 'Charging over a ride',
  asks: 'Does the ride charge the battery, or does the music empty it?',
  inputs: {
    idleA: BIKE_FIELDS.chargingIdleA,
    roadA: BIKE_FIELDS.chargingCruiseA,
    bikeIdleA: number('The bike takes at idle', 'A', 19, [14, 22], [2, 60], 'Ignition, pump, lights, fan.'),
    bikeRoadA: number('The bike takes on the road', 'A', 16, [12, 20], [2, 60], 'The same with the fan off.'),
    musicA: number('Music takes', 'A', 5, [2, 11], [0, 60], '5 for music on one amplifier, 11 dense and loud.'),
    gearA: number('Heated gear and extra lights take', 'A', 0, [0, 10], [0, 60], 'Watts divided by 13.'),
    idleS: number(
      'At idle',
      MINUTE,
      20 * MINUTE_S,
      [5 * MINUTE_S, 60 * MINUTE_S],
      [0, 36000],
      'Jams, lights, parades.',
      MINUTE_S,
    ),
    roadS: number(
      'On the road',
      MINUTE,
      60 * MINUTE_S,
      [10 * MINUTE_S, 300 * MINUTE_S],
      [0, 72000],
      'Moving.',
      MINUTE_S,
    ),
    batteryAh: BIKE_FIELDS.batteryAh,
  },
  fromBike: (rig) => known({ idleA: rig.chargingIdleA, roadA: rig.chargingCruiseA, batteryAh: rig.batteryAh }),
  result: ({ idleA, roadA, bikeIdleA, bikeRoadA, musicA, gearA, idleS, roadS, batteryAh }) => {
    const idle: Stretch = { madeA: idleA, usedA: bikeIdleA + musicA + gearA, timeS: idleS };
    const road: Stretch = { madeA: roadA, usedA: bikeRoadA + musicA + gearA, timeS: roadS };
    const netIdleA = idle.madeA - idle.usedA;
    const netRoadA = road.madeA - road.usedA;
    const addedAh = chargeAddedAh([idle, road]);
    const lowestAh = Math.min(0, chargeAddedAh([idle]), addedAh);
    const emptyS = netIdleA < 0 ? (0.5 * batteryAh * 3600) / -netIdleA : undefined;
    const all = [...[0, chargeAddedAh([idle]), addedAh]].map(Math.abs);
    const high = roundUp(Math.max(1, ...all));
    const minutes = (idleS + roadS) / MINUTE_S;
    return {
      lines: [
        {
          label: 'This ride, idle first',
          text: signedAh(addedAh),
          note:
            addedAh < 0
              ? `The battery pays: ${Math.round((-100 * addedAh) / batteryAh)} % of it is gone at the end.`
              : 'The battery ends fuller than it began, or full.',
          mood: addedAh < 0 ? 'bad' : 'good',
        },
        {
          label: 'At idle',
          text: signed(netIdleA),
          note:
            emptyS === undefined
              ? 'Nothing is taken from the battery.'
              : `Half the battery is gone in ${timeInWords(emptyS)} of idling.`,
        },
        {
          label: 'On the road',
          text: signed(netRoadA),
          note: netRoadA > 0 ? '' : 'It never charges: less load, or look at the charging system.',
        },
        ...(netIdleA < 0 && netRoadA > 0
          ? [
              {
                label: 'For ten minutes at idle, ride',
                text: timeInWords((10 * MINUTE_S * -netIdleA) / (0.85 * netRoadA)),
                note: 'Of what flows in, a lead-acid battery gives about 85 % back.',
              },
            ]
          : []),
      ],
      picture: {
        kind: 'plot',
        x: { label: 'Minutes', low: 0, high: Math.max(1, minutes) },
        y: { label: 'Battery, Ah', low: lowestAh < 0 ? -high : 0, high },
        curves: [
          {
            name: 'charge',
            points: [
              [0, 0],
              [idleS / MINUTE_S, chargeAddedAh([idle])],
              [minutes, addedAh],
            ],
          },
        ],
        limits: [{ name: 'start', y: 0 }],
      },
      says: `After ${timeInWords(idleS)} of idling the battery is at ${signedAh(chargeAddedAh([idle]))}, after ${timeInWords(roadS)} more on the road at ${signedAh(addedAh)}.`,
    };
  },
  cautions: ['outdoors', 'battery-gas'],
  sources: [
    'Charge is current times time. What a bike takes and makes: common practice, no published source; from memory.',
    '85 % of the charge comes back from a lead-acid battery: from memory.',
  ],
  article: 'the-charging-system',
});
