import { perCorner } from '../../../rig/corner.ts';
import { withSettings, withUnit } from '../../../world/faults/kit.ts';
import { oncePer } from '../../../world/remembered.ts';
import type { World } from '../../../world/state.ts';
import { type Ridden, ridden } from '../../../world/symptoms/index.ts';
import { spotOf } from '../../../world/test-points.ts';
import { between, type Draw, type Observe, type Oddity } from '../oddity.ts';
import { cornerOf, type Points, pointsOf, readsTone, toneAcross } from '../person/places.ts';
import { retyped, saying, typed } from '../person/saying.ts';

/*
 * What switching output stages leave on their wires, tone or no tone: some millivolts that a meter adds to the tone, as
 * the root of the sum of squares. It is a thing of the bike that shows in readings only.
 */

/** The same bike with every channel of the head unit playing: what reaches a place then has a wire to the output. */
const playingAll = oncePer((bike: Ridden): Ridden => {
  const { world } = bike;
  const settings = { fader: 0, balance: 0, rearControlRatio: 1, muted: false, paused: false };
  return ridden(withUnit(withSettings(world, settings), { rearOn: true, deadChannels: [] }));
});

/** The share of an output's own volts that reaches a place; nothing where a plug or a wire is open. */
function reaches(bike: Ridden, { red, black }: Points, name: string): number {
  const { world } = bike;
  const corner = cornerOf(world, name);
  const [plus, minus] = [spotOf(red, world, corner), spotOf(black, world, corner)];
  const from = plus?.corner;
  if (!from) return 0;
  const axle = from.startsWith('front') ? 'front' : 'rear';
  const full = playingAll(bike);
  const [outPlus, outMinus] = [`unit-${axle}-plus`, `unit-${axle}-minus`] as const;
  const sentV = toneAcross(full, {}, spotOf(outPlus, world, from), spotOf(outMinus, world, from));
  return sentV > 0 ? Math.min(1, toneAcross(full, {}, plus, minus) / sentV) : 0;
}

/** Residue of the head unit, in volts, at a reading. A converter or a line output filters it. */
function ofUnitV(bike: Ridden, points: Points, name: string, residueV: number): number {
  const { now } = bike.at({});
  if (!now.ok || !now.unitOn) return 0;
  if (points.red.startsWith('unit-')) return residueV;
  if (!points.red.startsWith('amp-in')) return 0;
  const line = bike.world.about !== null && bike.world.amps[bike.world.about]?.level === 'line';
  return line ? 0 : residueV * reaches(bike, points, name);
}

/** Residue of the amplifier, at its own outputs while it is on. */
function ofAmpV({ world, at }: Ridden, { red }: Points, residueV: number): number {
  const { now } = at({});
  const isOn = now.ok && world.about !== null && now.amps[world.about]?.why === null;
  return isOn && red.startsWith('amp-out') ? residueV : 0;
}

const added =
  (residueV: (bike: Ridden, points: Points, name: string) => number) =>
  (observe: Observe): Observe =>
    saying((given) =>
      retyped(given, (name, value, { step, situation, bike }) => {
        const points = readsTone(step) ? pointsOf(step, name, situation) : null;
        if (!points || name === 'papersV') return undefined;
        const extraV = residueV(bike, points, name);
        return extraV > 0 ? typed(Math.hypot(value, extraV), 'V', 3) : undefined;
      }),
    )(observe);

const hasAmplifier = ({ about }: World): boolean => about !== null;

export const RESIDUE: readonly Oddity[] = [
  {
    id: 'unit-residue',
    says: '30 to 80 mV on the head unit’s outputs with the tone off',
    class: 'residue',
    fits: () => true,
    person: (observe: Observe, draw: Draw) => {
      const ofEachV = perCorner(() => between(draw, 0.03, 0.08));
      return added((bike, points, name) => ofUnitV(bike, points, name, ofEachV[cornerOf(bike.world, name)]))(observe);
    },
  },
  {
    id: 'amp-residue',
    says: 'some tenths of a volt on the amplifier’s outputs with the tone off',
    class: 'residue',
    fits: hasAmplifier,
    person: (observe: Observe, draw: Draw) => {
      const residueV = between(draw, 0.1, 0.5);
      return added((bike, points) => ofAmpV(bike, points, residueV))(observe);
    },
  },
];
