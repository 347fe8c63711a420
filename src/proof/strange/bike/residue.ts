import { perCorner } from '../../../rig/corner.ts';
import { hasAmp, withUnit } from '../../../world/faults/kit.ts';
import type { Ridden } from '../../../world/symptoms/index.ts';
import { between, type Draw, type Observe, type Oddity } from '../oddity.ts';
import { cornerOf, type Points, pointsOf, readsTone } from '../person/places.ts';
import { type ReadingGiven, retyped, saying, typed } from '../person/saying.ts';

/*
 * What switching output stages leave on their wires, tone or no tone: some millivolts that a meter adds to the tone, as
 * the root of the sum of squares.
 */

const UNIT_V = [0.03, 0.08] as const;

/** Adds to every reading of a tone what is more there by power. */
const added =
  (moreV: (value: number, points: Points, name: string, given: ReadingGiven) => number) =>
  (observe: Observe): Observe =>
    saying((given) =>
      retyped(given, (name, value, at) => {
        const points = readsTone(at.step) ? pointsOf(at.step, name, at.situation) : null;
        if (!points || name === 'papersV') return undefined;
        const extraV = moreV(value, points, name, at);
        return extraV > 0 ? typed(Math.hypot(value, extraV), 'V', 3) : undefined;
      }),
    )(observe);

/**
 * No two outputs of a head unit leave the same. The bike has that of the cleanest on all of them; at the unit's own plug
 * the others have up to so much more. What reads less than the cleanest has no output that is on behind it.
 */
function unequal(observe: Observe, draw: Draw): Observe {
  const share = perCorner(() => draw());
  return added((value, { red }, name, { bike }) => {
    const cleanestV = bike.world.unit.residueV;
    if (!red.startsWith('unit-') || value < 0.9 * cleanestV) return 0;
    const ownV = cleanestV + share[cornerOf(bike.world, name)] * (UNIT_V[1] - cleanestV);
    return Math.sqrt(ownV ** 2 - cleanestV ** 2);
  })(observe);
}

/** At the outputs of the amplifier that is meant, while it is on. The bike has no such thing: it shows in readings only. */
function ofAmp(observe: Observe, draw: Draw): Observe {
  const residueV = between(draw, 0.1, 0.5);
  const isOn = ({ world, at }: Ridden): boolean => {
    const { now } = at({});
    return now.ok && world.about !== null && now.amps[world.about]?.why === null;
  };
  return added((_, { red }, __, { bike }) => (red.startsWith('amp-out') && isOn(bike) ? residueV : 0))(observe);
}

export const RESIDUE: readonly Oddity[] = [
  {
    id: 'unit-residue',
    says: '30 to 80 mV on the head unit’s outputs with the tone off',
    class: 'residue',
    fits: () => true,
    bike: (world, draw) => withUnit(world, { residueV: between(draw, ...UNIT_V) }),
    person: unequal,
  },
  {
    id: 'amp-residue',
    says: 'some tenths of a volt on the amplifier’s outputs with the tone off',
    class: 'residue',
    fits: hasAmp,
    person: ofAmp,
  },
];
