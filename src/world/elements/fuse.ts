import { real } from '../complex.ts';
import type { Element, Pair } from '../network.ts';
import { OPEN_OHM } from './contact.ts';
import { twoTerminal } from './two-terminal.ts';

/**
 * Volts across a blade fuse at its rated current. From memory: about 3 mΩ at 30 to 40 A and 7 to 8 mΩ at 10 A both come
 * to about this.
 */
export const FUSE_DROP_V = 0.1;

/** Cold ohms of a blade fuse: the thinner its element, the more. */
export const fuseOhm = (ratedA: number): number => FUSE_DROP_V / ratedA;

/** A blade fuse carries this much more than its rating for good. Source: ISO 8820-3, 110 % for 100 h, from memory. */
export const FUSE_CARRIES_RATIO = 1.1;

/** A fuse, whole or open. When it opens is the wire's concern and not the solver's: `bike` opens it and solves again. */
export const fuse = (id: string, between: Pair, made: { ratedA: number; open: boolean }): Element =>
  twoTerminal({
    id,
    kind: 'fuse',
    between,
    positive: { ratedA: made.ratedA },
    admittanceS: () => real(1 / (made.open ? OPEN_OHM : fuseOhm(made.ratedA))),
  });
