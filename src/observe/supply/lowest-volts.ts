import { ampNodes } from '../../world/bike/nodes.ts';
import { AMP_LEAST_V } from '../../world/bike/operate.ts';
import { solvePower } from '../../world/bike/power.ts';
import type { Moment } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { hold } from '../hand.ts';
import { whenToLook, whileOff } from '../left.ts';
import { CANNOT, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

/** A MIN reading is sampled a few times a second: it catches about so much of a dip. An estimate. */
const CAUGHT_RATIO = 0.5;

/** The least at its terminals while it does what it can at this moment. */
function lowestV(bike: Ridden, i: number, moment: Partial<Moment>): number {
  const seen = bike.at(moment);
  if (!seen.now.ok) return 0;
  const { amps, state } = seen.now;
  const it = amps[i];
  if (it?.why !== 'undervoltage') return it?.supplyV ?? 0;
  // It pulls its own supply down, lets go, and is back: the meter sees part of the way to where it would be.
  const sound = bike.healthy().at(moment).now;
  const wanted = (sound.ok && sound.state.amps[i]) || 'off';
  const on = wanted === 'off' ? { outputW: 0 } : wanted;
  const loaded = solvePower(bike.world, seen.moment, { ...state, amps: state.amps.with(i, on) });
  const { plus, ground } = ampNodes(i);
  const downToV = loaded.ok ? Math.max(0, loaded.acrossV([plus, ground]).re) : 0;
  return AMP_LEAST_V - CAUGHT_RATIO * Math.max(0, AMP_LEAST_V - downToV);
}

export const sayLowestVolts: Say = ofItsAmp((i, _, { bike, situation, observer }) => {
  if (!bike.at({}).now.ok) return CANNOT;
  const volts = lowestV(bike, i, { ...whenToLook(bike), ...whileOff(bike, situation) });
  return { readings: { lowestV: hold(observer).typed('dc', volts) } };
});
