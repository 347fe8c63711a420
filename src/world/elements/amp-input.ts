import { real, subtract } from '../complex.ts';
import type { Element } from '../network.ts';

/** Ohms of each input wire of a speaker-level input to the amplifier's ground. From memory, no published source. */
export const SPEAKER_INPUT_OHM = 10_000;
/** The same of a line-level input. From memory, no published source. */
export const LINE_INPUT_OHM = 20_000;

type Terminals = { plus: string; minus: string; ground: string };

/**
 * A differential input: it takes the difference of two wires, each tied to the amplifier's ground by `legOhm`. When one
 * wire is open the other still gives half the signal, since the open one rests at ground.
 */
export const ampInput = (id: string, { plus, minus, ground }: Terminals, legOhm: number): Element => {
  const legs = [
    [plus, ground],
    [minus, ground],
  ] as const;
  return {
    id,
    kind: 'amp-input',
    paths: legs,
    positive: { legOhm },
    stamp: (system) => {
      for (const leg of legs) system.addAdmittance(leg, real(1 / legOhm));
    },
    flows: (at) =>
      legs.map((through) => {
        const { re, im } = subtract(at.voltageV(through[0]), at.voltageV(through[1]));
        return { through, currentA: { re: re / legOhm, im: im / legOhm } };
      }),
  };
};
