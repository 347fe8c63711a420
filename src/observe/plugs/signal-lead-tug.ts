import { CORNERS } from '../../rig/corner.ts';
import { happens, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** How often a hand finds the place where a wire ends: much of the lead is out of reach. An estimate. */
const FOUND_SHARE = 0.55;
/** How often a pin that is pushed back slides when its wire is pulled. An estimate. */
const SLIDES_SHARE = 0.7;

export const saySignalLeadTug: Say = ofItsAmp((_, { inputs, inputPlug }, { observer }) => {
  const wants = CORNERS.filter((corner) => inputs[corner])
    .flatMap((corner) => Object.values(inputPlug[corner]))
    .map((contact) => contact.wants);
  const found = wants.includes('wire') && happens(observer, FOUND_SHARE);
  const slides = wants.includes('pin') && happens(observer, SLIDES_SHARE);
  return option(found ? 'wire' : slides ? 'pin' : 'holds');
});
