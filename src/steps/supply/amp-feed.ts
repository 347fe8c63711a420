import { ampCurrentA } from '../../compute/amp-current.ts';
import { cutOutOhm, UNDERVOLTAGE_CUT_HIGHEST_V } from '../../compute/amp-supply.ts';
import { copperResistanceOhm } from '../../compute/wire.ts';
import { ampEstimate, estimate } from '../../rig/rig.ts';
import { theAmp } from '../fitted/the-amp.ts';
import { numberIn } from '../outcome.ts';
import type { Situation } from '../step.ts';

/** What the leads of the amplifier may lose, and what it draws: the numbers behind its supply steps and verdicts. */

/** A head lamp bulb of 60 W at 12 V, or of 55 W at 12 V and a little less, as a load. Source: UN R37, H4, from memory. */
export const LAMP_A = 5;
/** A switching amplifier turns about this share of its supply into output. From memory, no published source. */
export const EFFICIENCY_RATIO = 0.72;
/** Fine strands are longer and thinner than the copper they are sold as. Source: the limits of IEC 60228, class 5. */
const STRANDED_RATIO = 1.16;
/** Fuse, holder and lugs of a healthy positive path, and the lugs of a ground. Common practice, no published source. */
const PLUS_JOINTS_OHM = 0.006;
const GROUND_JOINTS_OHM = 0.0025;
/** A ground lead that nobody measured. Common practice, no published source. */
const GROUND_LEAD_M = 0.9;

/** Inner resistance of a battery of this size that is not worn. From memory, no published source. */
export const BATTERY_OHM = 0.02;

/** One that drives front and rear has four at least; of others two are taken, and that is said. */
export function channelsOf(situation: Situation): number {
  const amp = theAmp(situation);
  if (amp.drives === 'both' && !('channels' in amp)) return 4;
  return Math.round(ampEstimate(amp, 'channels').value);
}

/** The current the amplifier draws, averaged over a share of its full sine power. */
export const drawA = (situation: Situation, averageRatio: number, supplyV: number): number =>
  ampCurrentA({
    powerW: ampEstimate(theAmp(situation), 'powerW').value,
    channels: channelsOf(situation),
    efficiencyRatio: EFFICIENCY_RATIO,
    supplyV,
    averageRatio,
  });

/** The most that a healthy positive path has, and a healthy ground: the longest and thinnest lead that it may be. */
export function healthyPathOhm(situation: Situation): { readonly plusOhm: number; readonly groundOhm: number } {
  const amp = theAmp(situation);
  const sectionM2 = ampEstimate(amp, 'plusLeadM2').low;
  const stranded = (lengthM: number) => STRANDED_RATIO * copperResistanceOhm({ lengthM, sectionM2 });
  return {
    plusOhm: stranded(ampEstimate(amp, 'plusLeadM').high) + PLUS_JOINTS_OHM,
    groundOhm: stranded(GROUND_LEAD_M) + GROUND_JOINTS_OHM,
  };
}

/** A post that shows nothing at all is taken at the least that a meter shows: bands over nothing are none. */
const LEAST_SHOWN_V = 0.001;
/** The battery, as read at the amplifier's terminals step, else as the bike has it with the engine off. */
export function batteryV(situation: Situation): number {
  const readV = numberIn(situation.facts['amp-terminals'], 'batteryV', 'V');
  return readV === undefined ? estimate(situation.rig, 'supplyOffV').value : Math.max(LEAST_SHOWN_V, readV);
}

/** The path at which full bass pulls the amplifier down to its cut-out. A battery at the cut-out itself has none. */
export function cuttingOutOhm(situation: Situation, supplyV: number): number {
  const cutV = UNDERVOLTAGE_CUT_HIGHEST_V;
  const enoughV = Math.max(supplyV, cutV + 0.5);
  return cutOutOhm({ supplyV: enoughV, cutV, currentA: drawA(situation, 1, enoughV) });
}
