import { CORNERS } from '../../rig/corner.ts';
import { hold } from '../hand.ts';
import type { Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** Thin copper, some metres out and back. Common practice, no published source. */
const LOOP_OHM = 0.4;

/** Both plugs are apart, so what is left between them is wire. */
export const saySignalLeadOhms: Say = ofItsAmp((_, { inputs, inputPlug }, { observer }) => {
  const isOpen = CORNERS.filter((corner) => inputs[corner]).some((corner) =>
    Object.values(inputPlug[corner]).some(({ wants }) => wants === 'wire'),
  );
  const ohm = isOpen ? Infinity : LOOP_OHM + observer.meter.leadsOhm;
  return { readings: { loopOhm: hold(observer).typed('ohm', ohm) } };
});
