import { type Complex, multiply, subtract } from '../complex.ts';
import type { Element, Pair } from '../network.ts';

type TwoTerminal = Pick<Element, 'id' | 'kind' | 'positive' | 'notNegative'> & {
  between: Pair;
  admittanceS: (frequencyHz: number) => Complex;
};

/** An element whose current is proportional to the volts across it. The admittance appears once and serves both. */
export const twoTerminal = ({ between, admittanceS, ...rest }: TwoTerminal): Element => ({
  ...rest,
  paths: [between],
  stamp: (system) => system.addAdmittance(between, admittanceS(system.frequencyHz)),
  flows: (at) => {
    const acrossV = subtract(at.voltageV(between[0]), at.voltageV(between[1]));
    return [{ through: between, currentA: multiply(admittanceS(at.frequencyHz), acrossV) }];
  },
});
