import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { cornerAsked, dead, ohmsOf, oneSpeaker } from '../ohms.ts';
import { probesAt } from '../probes.ts';

const TABS = ['speaker-plus', 'speaker-minus'] as const;

export const sayCoilOhms: Say = (asked) => {
  const { bike, observer } = asked;
  const corner = cornerAsked(asked);
  const alone = oneSpeaker(bike, corner);
  const ohm = ohmsOf(alone, dead(['tabs']), probesAt(alone, TABS, corner));
  if (ohm === null) return CANNOT;
  const hand = hold(observer);
  const { leadsOhm } = observer.meter;
  return { readings: { leadsOhm: hand.typed('ohm', leadsOhm), coilOhm: hand.typed('ohm', ohm + leadsOhm) } };
};
