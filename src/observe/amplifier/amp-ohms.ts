import { AMP_OFF_OHM } from '../../world/bike/power.ts';
import { hold } from '../hand.ts';
import type { Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** Side by side: what is inside, and a positive lead that lies on the frame, with the way back through the ground lead. */
export const sayAmpOhms: Say = ofItsAmp((_, amp, { observer }) => {
  const { shortInside, leadToFrame, groundRing, minusRing } = amp;
  const roundOhm = leadToFrame.ohm + groundRing.ohm + minusRing.ohm;
  const insideOhm = 1 / (1 / AMP_OFF_OHM + 1 / shortInside.ohm + 1 / roundOhm);
  return { readings: { insideOhm: hold(observer).typed('ohm', insideOhm + observer.meter.leadsOhm) } };
});
