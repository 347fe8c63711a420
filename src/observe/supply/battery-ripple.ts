import { rippleHz } from '../../compute/alternator.ts';
import { bandRatio } from '../../world/meter.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { acAt, probesAt } from '../probes.ts';

/** Eight pole pairs at an idle of 950 rpm. From memory: common practice, no published source. */
const AT_IDLE_HZ = rippleHz({ engineRpm: 950, polePairs: 8 });

/** The posts at idle, on AC: above its band a meter reads low. */
export const sayBatteryRipple: Say = ({ bike, observer }) => {
  const probes = probesAt(bike, ['battery-plus', 'battery-minus'], 'front-left');
  if (!probes) return CANNOT;
  const rippleV = acAt(bike, { engine: 'idle', toneHz: null }, probes, observer.meter);
  return { readings: { rippleV: hold(observer).typed('ac', rippleV * bandRatio(observer.meter, AT_IDLE_HZ)) } };
};
