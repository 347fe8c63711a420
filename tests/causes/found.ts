import type { Cause, Remedy } from '../../src/causes/cause.ts';
import { figureText } from '../../src/causes/figure.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import type { KnownOf, StepId } from '../../src/steps/ids.ts';
import { type Findings, findingsFrom } from '../../src/steps/outcome.ts';
import type { Facts, Values } from '../../src/steps/step.ts';

/** One amplifier for everything: 4 × 90 W into 4 Ω, 1.6 m of 8.37 mm², a 40 A fuse, a remote wire. */
export const KNOWN: Rig = EXAMPLE_RIGS['frame-fairing'];
/** Two amplifiers. The rear one: 2 × 150 W into 2 Ω, 2.4 m of 13.3 mm², a 60 A fuse, wakes by sound. */
export const TWO_AMPS: Rig = EXAMPLE_RIGS.trunk;
/** What is known when nobody said anything but that an amplifier drives the rear, or everything. */
export const UNKNOWN: Rig = { rearFedBy: 'amp', amps: [{ drives: 'rear' }] };

type Read = Readonly<Record<string, Values>>;

/** A bike with what was read of it, by step. */
export const found = (rig: Rig, read: Read = {}, facts: Facts = {}): Findings => ({
  rig,
  facts,
  outcome: () => undefined,
  values: (step) => read[step] ?? {},
});

/** Outcomes of steps, by step. */
export type Known = { readonly [Id in StepId]?: KnownOf<Id> };
/** The bike with one known amplifier, with these outcomes. */
export const answered = (known: Known): Findings =>
  findingsFrom(
    { rig: KNOWN, facts: {} },
    (id) => (known as Readonly<Record<string, string>>)[id],
    () => ({}),
  );

/** The figures of a remedy as they are written, by id. */
export const figuresOf = ({ numbers }: Remedy): Readonly<Record<string, string>> =>
  Object.fromEntries(numbers.map((figure) => [figure.id, figureText(figure)]));

export const figuresFor = (cause: Cause, rig: Rig, read: Read = {}): Readonly<Record<string, string>> =>
  figuresOf(cause.remedy(found(rig, read)));

export const labelsFor = (cause: Cause, rig: Rig): Readonly<Record<string, string>> =>
  Object.fromEntries(cause.remedy(found(rig)).numbers.map(({ id, label }) => [id, label]));

/** All that a remedy says, line by line. */
export const linesOf = ({ what, background, fix, parts, notBuy, ifDoneAnyway, proofOfCure, ...rest }: Remedy) => [
  what,
  ...(background === undefined ? [] : [background]),
  ...fix,
  ...parts,
  ...notBuy,
  ...(ifDoneAnyway === undefined ? [] : [ifDoneAnyway]),
  proofOfCure.byEar,
  ...(proofOfCure.byMeter === undefined ? [] : [proofOfCure.byMeter]),
  rest.tools,
];
