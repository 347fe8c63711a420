import { phaseHz, rippleEngineRpm, rippleHz, sparkHz } from '../compute/alternator.ts';
import { choice, count, number } from '../rig/fields.ts';
import { calculator } from './calculator.ts';
import { written } from './in-words.ts';
import { type Axis, roundUp, traced } from './picture.ts';
import { PLAIN, RPM } from './units.ts';

/** Which pitch comes from the charging system and which from the sparks. */
export const whine = calculator({
  id: 'whine',
  title: 'Whine and ticking',
  asks: 'Which pitch does the charging system make at this engine speed?',
  inputs: {
    engineRpm: number('Engine speed', RPM, 3000, [950, 5000], [300, 15000], 'At which you hear it.'),
    polePairs: count(
      'Pole pairs of the alternator',
      PLAIN,
      8,
      [6, 9],
      [1, 24],
      'Half the number of its magnets. 8 or 9 is usual.',
    ),
    driveRatio: number(
      'Its turns for one of the engine',
      PLAIN,
      1,
      [1, 2.5],
      [0.5, 4],
      '1 on the crankshaft. Geared or on a belt: more.',
    ),
    cylinders: count('Cylinders', PLAIN, 2, [2, 6], [1, 6], 'Four-stroke.'),
    sparks: choice(
      'Sparks',
      { power: 'Only when the cylinder works', turn: 'At every turn' },
      'power',
      'Many fire at every turn: half of them go to waste.',
    ),
  },
  result: ({ engineRpm, polePairs, driveRatio, cylinders, sparks }) => {
    const turning = { polePairs, driveRatio };
    const everyTurn = sparks === 'turn';
    const sparked = (rpm: number) => sparkHz({ engineRpm: rpm, cylinders, everyTurn });
    const ripple = rippleHz({ engineRpm, ...turning });
    const x: Axis = { label: 'rpm', low: 500, high: roundUp(Math.max(4000, engineRpm * 1.2)) };
    const high = roundUp(rippleHz({ engineRpm: x.high, ...turning }));
    return {
      lines: [
        {
          label: 'Whine of the charging system',
          text: written(ripple, 'Hz'),
          note: 'Six pulses a cycle behind a sound rectifier. It climbs with the revs, and with the load.',
        },
        {
          label: 'With a phase or a diode lost',
          text: `${written(phaseHz({ engineRpm, ...turning }), 'Hz')} and ${written(2 * phaseHz({ engineRpm, ...turning }), 'Hz')}`,
          note: 'A lower growl beside the whine: have the charging system looked at.',
        },
        {
          label: 'Ticking of the sparks',
          text: written(sparked(engineRpm), 'Hz'),
          note: 'A buzz at idle, a rasp on the road.',
        },
        {
          label: 'A tone that stays while the revs change',
          text: 'Not the engine',
          note: `A pump, a lamp driver or a phone charger. Heard ${written(ripple, 'Hz')}? It would be ${written(rippleEngineRpm({ rippleHz: ripple / 2, ...turning }), RPM)} an octave lower.`,
        },
      ],
      picture: {
        kind: 'plot',
        x,
        y: { label: 'Hz', low: 10, high, log: true },
        curves: [
          { name: 'whine', points: traced(x, (rpm) => rippleHz({ engineRpm: rpm, ...turning })) },
          { name: 'phase lost', dashed: true, points: traced(x, (rpm) => phaseHz({ engineRpm: rpm, ...turning })) },
          { name: 'sparks', points: traced(x, sparked) },
        ],
        marks: [{ name: 'you', x: engineRpm, y: ripple }],
      },
      says: `At ${written(engineRpm, RPM, 3)} the whine is at ${written(ripple, 'Hz')} and the sparks at ${written(sparked(engineRpm), 'Hz')}. All of them rise in step with the revs.`,
    };
  },
  cautions: ['outdoors'],
  sources: [
    'Frequency of an alternator: Lessons In Electric Circuits, AC vol.; six pulses a cycle: Semiconductors vol., “Rectifier circuits”.',
    'Pole pairs of motorcycle alternators: from memory.',
  ],
  article: 'noise-and-ground-loops',
});
