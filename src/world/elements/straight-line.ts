import { real } from '../complex.ts';
import type { Element, Pair } from '../network.ts';

interface Line {
  /** Amperes gained for each volt more, and what flows at 0 V. */
  readonly conductanceS: number;
  readonly atZeroA: number;
}

/** The straight line that stands for a nonlinear part around some volts: I = G V + I0, at 0 Hz. To a tone it is absent. */
export const straightLine = (
  rest: Pick<Element, 'id' | 'kind' | 'positive' | 'notNegative'>,
  between: Pair,
  { conductanceS, atZeroA }: Line,
): Element => ({
  ...rest,
  paths: [between],
  stamp: (system) => {
    if (system.frequencyHz !== 0) return;
    system.addAdmittance(between, real(conductanceS));
    system.addCurrent(between, real(atZeroA));
  },
  flows: ({ frequencyHz, voltageV }) => {
    const acrossV = voltageV(between[0]).re - voltageV(between[1]).re;
    return [{ through: between, currentA: real(frequencyHz === 0 ? conductanceS * acrossV + atZeroA : 0) }];
  },
});
