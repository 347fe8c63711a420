import fc from 'fast-check';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { AMP_FIELDS, BIKE_FIELDS, type Field } from '../../src/rig/fields.ts';
import { type KnownAmp, NOTHING_KNOWN, type Rig } from '../../src/rig/rig.ts';
import { MOST_AMPS } from '../../src/rig/validate.ts';
import { evenly } from '../compute/evenly.ts';

const allowedBy = (field: Field): fc.Arbitrary<unknown> =>
  field.kind === 'choice' ? fc.constantFrom(...Object.keys(field.options)) : evenly(...field.allowed);

/** Any part of the fields, each with any value that it allows. */
const someOf = (fields: Readonly<Record<string, Field>>) =>
  fc.record(Object.fromEntries(Object.entries(fields).map(([id, field]) => [id, allowedBy(field)])), {
    requiredKeys: [],
    noNullPrototype: true,
  });

export const anyAmp = someOf(AMP_FIELDS) as fc.Arbitrary<KnownAmp>;

/** A bike of which anything may be known: nothing at all, an example, a part of one, or values up to their limits. */
export const anyRig: fc.Arbitrary<Rig> = fc.oneof(
  fc.constant(NOTHING_KNOWN),
  fc.constantFrom<Rig>(...Object.values(EXAMPLE_RIGS)),
  fc
    .constantFrom<Rig>(...Object.values(EXAMPLE_RIGS))
    .chain((rig) => fc.subarray(Object.entries(rig)).map((kept) => Object.fromEntries(kept) as Rig)),
  fc
    .tuple(someOf(BIKE_FIELDS), fc.option(fc.array(anyAmp, { maxLength: MOST_AMPS }), { nil: undefined }))
    .map(([bike, amps]) => (amps ? { ...bike, amps } : bike) as Rig),
);
