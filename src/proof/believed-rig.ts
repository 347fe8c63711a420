import { symbolOf } from '../compute/units.ts';
import { between, type Draw, happens } from '../observe/draw.ts';
import { AMP_FIELDS, BIKE_FIELDS, type Field, type NumberField } from '../rig/fields.ts';
import type { KnownAmp, Rig } from '../rig/rig.ts';
import type { WholeRig } from '../survey/random-rig.ts';

/** How often an owner says "don't know" to a field. An estimate. */
const NOT_KNOWN = 0.4;
/** How far what an owner says lies off: lengths are guessed, volts are read off another day. Estimates. */
const OFF_RATIO: Readonly<Record<string, number>> = {
  m: 0.2,
  W: 0.15,
  V: 0.015,
  Ah: 0.1,
  A: 0.1,
  dB: 0.1,
};
/** What is printed or counted is known as it is, or not at all. */
const PRINTED = new Set(['Ω', 'speaker', 'mm²']);
/** A fuse has its rating printed on it. */
const EXACT_FIELDS = new Set(['mainFuseA']);

function said(draw: Draw, id: string, field: NumberField, trueValue: number): number {
  if (PRINTED.has(symbolOf(field.unit)) || EXACT_FIELDS.has(id)) return trueValue;
  const off = OFF_RATIO[symbolOf(field.unit)] ?? 0;
  const [low, high] = field.allowed;
  return Math.min(high, Math.max(low, trueValue * between(draw, 1 - off, 1 + off)));
}

const partOf = (draw: Draw, fields: Readonly<Record<string, Field>>, values: object): object =>
  Object.fromEntries(
    Object.entries(values).flatMap(([id, value]) => {
      const field = fields[id];
      if (!field || happens(draw, NOT_KNOWN)) return [];
      return [[id, field.kind === 'number' ? said(draw, id, field, value as number) : value]];
    }),
  );

/** What an owner has put down of a bike: some fields are missing, the numbers are near the truth, no choice is wrong. */
export function believedRig(draw: Draw, { amps, ...bike }: WholeRig): Rig {
  const known = partOf(draw, BIKE_FIELDS, bike) as Rig;
  if (happens(draw, NOT_KNOWN)) return known;
  // Which pair an amplifier drives is the one thing that somebody who has put it on the list does know.
  return {
    ...known,
    amps: amps.map((amp) => ({ ...(partOf(draw, AMP_FIELDS, amp) as KnownAmp), drives: amp.drives })),
  };
}
