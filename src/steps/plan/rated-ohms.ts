import type { Axle } from '../../rig/corner.ts';
import { withKnown } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export type Ohms = '2' | '4' | '8';
const FIELD = { front: 'frontRatedOhm', rear: 'rearRatedOhm' } as const;

/** The ohms of speakers that hang on the head unit, or will: its outputs are made for 4 Ω and more. */
export const ratedOhms = (axle: Axle): RigStep<Ohms> =>
  rigQuestion<Ohms>({
    place: 'plan',
    id: `${axle}-ohms`,
    short: `${axle === 'front' ? 'Front' : 'Rear'} speakers, ohms`,
    ask: `How many ohms is one new ${axle} speaker rated at?`,
    phone: `What is printed on the new ${axle} speaker or its box: 2, 4 or 8 ohm?`,
    how: ['On the magnet, on the box, or in the papers. “4 Ω” and “4 ohm” are the same.'],
    why: 'A head unit output is made for 4 Ω or more. Below that it runs hot and shuts down.',
    tool: 'none',
    minutes: 0.5,
    observes: [],
    options: { '2': '2 Ω', '4': '4 Ω', '8': '8 Ω' },
    outcomes: { '2': '2 Ω', '4': '4 Ω', '8': '8 Ω' },
    ifCannot: 'Not bought yet? The verdict says which to ask for.',
    known: (rig) => {
      const ohms = rig[FIELD[axle]];
      return ohms === undefined ? undefined : ohms < 3 ? '2' : ohms < 6 ? '4' : '8';
    },
    learn: (ohms, rig) => withKnown(rig, { [FIELD[axle]]: Number(ohms) }),
  });
