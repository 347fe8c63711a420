import { type Complex, real, scale, ZERO } from '../complex.ts';
import type { Element, Pair } from '../network.ts';

/** What is left between an output that is switched off and ground. From memory, no published source. */
export const OFF_OHM = 10_000;

export interface Bridge {
  readonly plus: string;
  readonly minus: string;
  readonly ground: string;
}
/** What a bridge output is told to do: where both wires rest, and the tone between them. */
export interface Driven {
  readonly restV: number;
  readonly toneV: Complex;
  /** Of each of its two halves. */
  readonly legOhm: number;
  /** DC between the two wires: that of a damaged output. */
  readonly offsetV?: number;
}

/**
 * Two halves of a bridge: each wire rests at `restV` and carries half the tone, the one in phase, the other opposed.
 * What it can give is worked out by whoever drives it (`clip.ts`): an output knows no limit until its load is known.
 */
export const bridgeOutput = (
  id: string,
  { plus, minus, ground }: Bridge,
  { restV, toneV, legOhm, offsetV = 0 }: Driven,
): Element => {
  const legs: readonly { name: string; between: Pair; half: number }[] = [
    { name: `${id} +`, between: [plus, ground], half: 0.5 },
    { name: `${id} −`, between: [minus, ground], half: -0.5 },
  ];
  return {
    id,
    kind: 'bridge-output',
    paths: legs.map(({ between }) => between),
    positive: { legOhm },
    notNegative: { restV },
    stamp: (system) => {
      for (const { name, between, half } of legs) {
        const driveV = system.frequencyHz === 0 ? real(restV + half * offsetV) : scale(toneV, half);
        system.addBranch(name, between, { driveV, seriesOhm: real(legOhm) });
      }
    },
    flows: (at) => legs.map(({ name, between }) => ({ through: between, currentA: at.branchA(name) })),
  };
};

/** An output that is off: two weak paths to ground, and no volts of its own. */
export const bridgeOff = (id: string, { plus, minus, ground }: Bridge): Element =>
  bridgeOutput(id, { plus, minus, ground }, { restV: 0, toneV: ZERO, legOhm: OFF_OHM });
