import type { Moment } from '../../world/moment.ts';
import { lookAt } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { dcAt, probesAt } from '../probes.ts';

/** The posts with the music off, at idle and at speed. */
export const sayChargingVolts: Say = ({ bike, observer }) => {
  const probes = probesAt(bike, ['battery-plus', 'battery-minus'], 'front-left');
  const at = (engine: Moment['engine']) => {
    const look = lookAt(bike, { engine, toneHz: null });
    return look && probes ? dcAt(look, probes) : null;
  };
  const [idleV, fastV] = [at('idle'), at('cruise')];
  if (idleV === null || fastV === null) return CANNOT;
  const hand = hold(observer);
  return { readings: { idleV: hand.typed('dc', idleV), fastV: hand.typed('dc', fastV) } };
};
