import type { Cause } from '../../src/causes/cause.ts';
import { figureText } from '../../src/causes/figure.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { type Findings, findingsFrom } from '../../src/steps/outcome.ts';
import type { Values } from '../../src/steps/step.ts';

/** Rear speakers of 4 Ω that the head unit drives. */
export const ON_UNIT: Rig = { ...EXAMPLE_RIGS['fork-fairing'], rearFitted: 'yes', rearFedBy: 'unit', rearRatedOhm: 4 };
/** An amplifier of 4 × 90 W into 4 Ω for everything, on speaker wires, by a remote wire. */
export const ON_AMP = EXAMPLE_RIGS['frame-fairing'];

/** A bike with some answers, each with what it came out as, and some readings. */
export const onBike = (
  rig: Rig,
  outcomes: Readonly<Record<string, string>> = {},
  readings: Readonly<Record<string, Values>> = {},
): Findings =>
  findingsFrom(
    { rig, facts: {} },
    (id) => outcomes[id],
    (id) => readings[id] ?? {},
  );

/** The figures of a remedy as they are written, by their ids. */
export const figuresOf = (cause: Cause, findings: Findings): Readonly<Record<string, string>> =>
  Object.fromEntries(cause.remedy(findings).numbers.map((figure) => [figure.id, figureText(figure)]));
