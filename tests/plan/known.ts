import type { AmpNeed } from '../../src/plan/amp-need.ts';
import type { KnownAmp, Rig } from '../../src/rig/rig.ts';
import { type Findings, findingsFrom } from '../../src/steps/outcome.ts';

/** A case in which these steps have these outcomes. */
export const known = (outcomes: Readonly<Record<string, string | undefined>>, rig: Rig = {}): Findings =>
  findingsFrom(
    { rig, facts: {} },
    (id) => outcomes[id],
    () => ({}),
  );

/** An amplifier for each thing that one can need. */
export const AMP_OF: Readonly<Record<AmpNeed, readonly KnownAmp[]>> = {
  none: [],
  factory: [{ kind: 'factory' }],
  wire: [{ kind: 'add-on', turnOn: 'wire', needs: 'any' }],
  flexible: [{ kind: 'add-on', turnOn: 'signal', needs: 'any' }],
  unknown: [{ kind: 'add-on' }],
  unaltered: [{ kind: 'add-on', turnOn: 'signal', needs: 'unaltered' }],
};
