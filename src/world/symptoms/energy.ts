import { DENSE_MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import { coldRatio } from '../bike/battery-now.ts';
import { BATTERY_PLUS } from '../bike/nodes.ts';
import { powerV } from '../bike/operate.ts';
import { mirroring } from '../sights.ts';
import type { World } from '../state.ts';
import { type Complaint, type Ridden, yesIf } from './symptom.ts';

/* Limits are common practice of the trade, no published source. */

const STANDS_DAYS = 21;
const STARTER_A = 150;
const CRANK_LEAST_V = 9.6;
const REST_LEAST_V = 12.2;
const CRUISE_V = [13.2, 15] as const;
/** More than this out of the battery at idle, above what a sound bike of the build takes, is noticed within an hour. */
const IDLE_LOSS_A = 5;
const BLOWS_AT_RATIO = 1.25;
const CLIPPED_HARD_DB = 3;
const COIL_DC_V = 1;

/** What the starter leaves, through the ring that it hangs on. */
const crankingV = ({ supply }: World) =>
  supply.openV - STARTER_A * (coldRatio(supply) * supply.internalOhm + supply.bikeRing.ohm);

/** Whether the starter turns slower than on a sound bike of the build, or hardly at all. */
export function cranksBadly(bike: Ridden): boolean {
  const crankV = crankingV(bike.world);
  return crankV < CRANK_LEAST_V && crankV < crankingV(bike.healthy().world) - 0.5;
}

/** The battery does not last or is not filled: standing, resting, cranking, at idle, on the road. */
export function batteryFlatOrLow(bike: Ridden): Complaint {
  const { supply, rig } = bike.world;
  const asleep = bike.at({ key: 'off', toneHz: null }).now;
  const limitA = (supply.capacityRatio * rig.batteryAh * 0.5) / (24 * STANDS_DAYS);
  const drawsA = asleep.ok ? -asleep.power.currentA('battery').re : Infinity;

  const cruise = bike.at({ engine: 'cruise' }).now;
  const batteryV = cruise.ok ? powerV(cruise, BATTERY_PLUS) : 0;
  const soundCruise = bike.healthy().at({ engine: 'cruise' }).now;
  const soundV = soundCruise.ok ? powerV(soundCruise, BATTERY_PLUS) : 0;
  const outAtIdle = (it: Ridden) => {
    const { now } = it.at({ engine: 'idle' });
    return now.ok ? -now.power.currentA('battery').re : Infinity;
  };
  const loses = outAtIdle(bike) > Math.max(0, outAtIdle(bike.healthy())) + IDLE_LOSS_A;
  const outOfRange = batteryV > CRUISE_V[1] || (batteryV < CRUISE_V[0] && batteryV < soundV - 0.2);
  const lowAtRest = supply.openV < REST_LEAST_V;
  return yesIf(drawsA > limitA || cranksBadly(bike) || lowAtRest || loses || outOfRange);
}

/** What its rider plays is more than the speakers take: too much power, hard clipping, DC, a bare tweeter. */
export function speakersBlowAgain(bike: Ridden): Complaint {
  const volumeRatio = bike.world.settings.topVolumeRatio;
  const tooMuch = ([80, 400] as const).some((toneHz) => {
    const { heard } = bike.at({ toneHz, volumeRatio, engine: 'cruise', averageRatio: DENSE_MUSIC_AVERAGE_RATIO });
    return bike.fitted.some((corner) => {
      if (!heard) return false;
      const { powerW, overdriveDb } = heard[corner];
      return (
        powerW > BLOWS_AT_RATIO * bike.world.speakers[corner].ratedW * DENSE_MUSIC_AVERAGE_RATIO ||
        overdriveDb > CLIPPED_HARD_DB
      );
    });
  });
  const dc = bike.world.amps.some(({ outputDcV }) => Math.abs(outputDcV) > COIL_DC_V);
  const bare = bike.fitted.some((corner) => bike.world.speakers[corner].bareTweeter);
  return yesIf(tooMuch || dc || bare);
}

/** Mirroring does not start without a headset, standing or over bumps. */
export function mirroringWontStart(bike: Ridden): Complaint {
  const starts = (moves: readonly 'usb'[]) => {
    const { moment, now } = bike.at({ moves });
    return now.ok && mirroring(bike.world, moment, now, false) === 'starts';
  };
  return yesIf(!starts([]) || !starts(['usb']));
}
