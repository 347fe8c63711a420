import fc from 'fast-check';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { AMP_FIELDS, BIKE_FIELDS, type Field } from '../../src/rig/fields.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { type Operating, operate } from '../../src/world/bike/operate.ts';
import type { Moment } from '../../src/world/moment.ts';
import { ORDINARY } from '../../src/world/moment.ts';
import type { Look } from '../../src/world/probe.ts';
import type { World } from '../../src/world/state.ts';
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
