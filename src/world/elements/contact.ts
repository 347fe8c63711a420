import { real } from '../complex.ts';
import type { Element, Pair } from '../network.ts';
import { twoTerminal } from './two-terminal.ts';

/** What insulation and damp leave of an open contact. From memory; any meter reads it as open, and it lets no sound by. */
export const OPEN_OHM = 1e8;
/** A sound plug, ring or crimp. Common practice, no published source: from memory. */
export const SOUND_CONTACT_OHM = 1e-3;

/** A place where two metals touch. Open is `Infinity`, and lets by what insulation does. */
export const contact = (id: string, between: Pair, resistanceOhm: number): Element => {
  const passesOhm = resistanceOhm === Infinity ? OPEN_OHM : resistanceOhm;
  return twoTerminal({
    id,
    kind: 'contact',
    between,
    positive: { resistanceOhm: passesOhm },
    admittanceS: () => real(1 / passesOhm),
  });
};
