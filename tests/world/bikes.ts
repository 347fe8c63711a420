import fc from 'fast-check';
import type { Corner } from '../../src/rig/corner.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { AMP_FIELDS, BIKE_FIELDS, type Field } from '../../src/rig/fields.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { type Operating, operate } from '../../src/world/bike/operate.ts';
import type { Moment } from '../../src/world/moment.ts';
import { ORDINARY } from '../../src/world/moment.ts';
import { acV, type Look, type Read } from '../../src/world/probe.ts';
import type { World } from '../../src/world/state.ts';
import { type Spot, spotOf } from '../../src/world/test-points.ts';
import { evenly } from '../compute/evenly.ts';

/** Any bike that a workshop sees: every value there, each within what builds are found to have. */
const usual = (fields: Readonly<Record<string, Field>>, fixed: object = {}) =>
  fc
    .record(
      Object.fromEntries(
        Object.entries(fields).map(([id, field]) => [
          id,
          field.kind === 'number' ? evenly(...field.usual) : fc.constantFrom(...Object.keys(field.options)),
        ]),
      ),
    )
    .map((values) => ({ ...values, ...fixed }));

/** One coil to a channel: two of 2 Ω side by side are no healthy build for every amplifier. */
const ONE_COIL = { rearPerChannel: 1, rearWiring: 'single' };
const LOAD_FITS = { ratedOhm: 2 };

export const usualRig: fc.Arbitrary<Rig> = fc
  .tuple(usual(BIKE_FIELDS, ONE_COIL), fc.array(usual(AMP_FIELDS, LOAD_FITS), { maxLength: 2 }))
  .map(([bike, amps]) => ({ ...bike, amps }) as unknown as Rig);
export const exampleRig = fc.constantFrom<Rig>(...Object.values(EXAMPLE_RIGS));

/** The bike at a moment; one that has to have a supply. */
export function at(world: World, moment: Partial<Moment> = {}): Operating {
  const now = operate(world, { ...ORDINARY, ...moment });
  if (!now.ok) throw new Error(JSON.stringify(now.refusal));
  return now;
}
export const look = (world: World, moment: Partial<Moment> = {}): Look => ({
  world,
  moment: { ...ORDINARY, ...moment },
  now: at(world, moment),
});

const ON_CONVERTER = { ...EXAMPLE_RIGS['frame-fairing'].amps[0], input: 'line' } as const;
/** Two builds with a converter between the speaker wires of a factory unit and a line-level input. */
export const CONVERTER_RIGS: Readonly<Record<string, Rig>> = {
  'rear on a converter, switched by wire': {
    ...EXAMPLE_RIGS['frame-fairing'],
    frontFedBy: 'unit',
    amps: [{ ...ON_CONVERTER, drives: 'rear' }],
  },
  'front and rear on a converter, one that listens': {
    ...EXAMPLE_RIGS['frame-fairing'],
    amps: [{ ...ON_CONVERTER, turnOn: 'signal' }],
  },
};

/** Lead-acid is what a build has unless somebody says otherwise; here is one with a battery that guards itself. */
export const LITHIUM_RIGS: Readonly<Record<string, Rig>> = {
  'front and rear on one amplifier, lithium battery': { ...EXAMPLE_RIGS['frame-fairing'], batteryKind: 'lithium' },
};

export const anyBike: fc.Arbitrary<Rig> = fc.oneof(exampleRig, usualRig);

/** A place that the bike has to have. */
export const there = (spot: Spot | null): Spot => {
  if (!spot) throw new Error('no such place on this bike');
  return spot;
};
/** A reading that has to be possible. */
export const value = (read: Read): number => {
  if (!read.ok) throw new Error(read.reason);
  return read.value;
};
type Point = Parameters<typeof spotOf>[0];
/** AC volts across a pair of the bike. */
export const pairV = (seen: Look, plus: Point, minus: Point, corner: Corner = 'rear-left'): number =>
  value(acV(seen, there(spotOf(plus, seen.world, corner)), there(spotOf(minus, seen.world, corner))));
