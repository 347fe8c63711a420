import { DENSE_MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import { axleOf, CORNERS, type Corner } from '../../rig/corner.ts';
import type { Operating } from '../bike/operate.ts';
import { LOUD_VOLUME, type Moment, type Place, QUIET_VOLUME } from '../moment.ts';
import { oncePer } from '../remembered.ts';
import { AS_EVER_RATIO, type Complaint, heardCorners, type Ridden, type Seen, yesIf } from './symptom.ts';

/** The front plays and no rear speaker does, at an ordinary level, as the bike was found. */
export function noRearSound(bike: Ridden): Complaint {
  const plays = heardCorners(bike, bike.at({}));
  const rearFitted = bike.fitted.some((corner) => axleOf(corner) === 'rear');
  const front = plays.some((corner) => axleOf(corner) === 'front');
  return yesIf(rearFitted && front && !plays.some((corner) => axleOf(corner) === 'rear'));
}

/** The front plays as ever, and both sides of the rear are heard beside it, each much quieter than on a sound bike. */
export function rearWeak(bike: Ridden): Complaint {
  const seen = bike.at({});
  const plays = heardCorners(bike, seen);
  const heard = seen.heard;
  const sound = bike.healthy().at(seen.moment).heard;
  if (!heard || !sound || !bike.fitted.some((corner) => axleOf(corner) === 'rear')) return 'no';
  const isWeak = (corner: Corner) => heard[corner].powerW < AS_EVER_RATIO * sound[corner].powerW;
  return yesIf(bike.fitted.every((corner) => plays.includes(corner) && isWeak(corner) === (axleOf(corner) === 'rear')));
}

/** Whether the unit sends anything at all: a muted one leaves a listening amplifier asleep, as it should. */
const sends = ({ unit }: Operating) =>
  CORNERS.some((corner) => unit.waves[corner].cleanV > 0 || unit.protects.length > 0);

/**
 * The unit plays, and the lamp of the amplifier that is meant is off or shows a fault: at an ordinary level, or when it is
 * hot, and with dense music as well as with a steady tone. One that only a tone pulls down is on for its rider.
 */
export function ampWontTurnOn(bike: Ridden): Complaint {
  const { about } = bike.world;
  if (about === null) return 'no';
  const dark = ({ now }: Seen) => !now.ok || (sends(now) && now.amps[about]?.lamp !== 'normal');
  const stays = (hot: boolean) =>
    dark(bike.at({ hot })) && dark(bike.at({ hot, averageRatio: DENSE_MUSIC_AVERAGE_RATIO }));
  return yesIf(stays(false) || stays(true));
}

/** Nothing plays anywhere. */
export const noSoundAtAll = (bike: Ridden): Complaint => yesIf(heardCorners(bike, bike.at({})).length === 0);

/** A speaker is silent beside another of the same axle that plays. */
export function oneSpeakerOrSideDead(bike: Ridden): Complaint {
  const plays = heardCorners(bike, bike.at({}));
  const dead = bike.fitted.filter((corner) => !plays.includes(corner));
  return yesIf(dead.some((corner) => plays.some((other) => axleOf(other) === axleOf(corner))));
}

/** One side of an axle plays as ever, and the other is heard beside it, much quieter than on a sound bike. */
export function oneSideWeak(bike: Ridden): Complaint {
  const seen = bike.at({});
  const plays = heardCorners(bike, seen);
  const heard = seen.heard;
  const sound = bike.healthy().at(seen.moment).heard;
  if (!heard || !sound || bike.fitted.some((corner) => !plays.includes(corner))) return 'no';
  const isWeak = (corner: Corner) => heard[corner].powerW < AS_EVER_RATIO * sound[corner].powerW;
  const weak = bike.fitted.filter(isWeak);
  return yesIf(weak.some((corner) => bike.fitted.some((other) => axleOf(other) === axleOf(corner) && !isWeak(other))));
}

const EVERYWHERE: readonly Place[] = [
  'battery',
  'amp-supply',
  'amp-inputs',
  'rear-run',
  'lid',
  'fairing',
  'unit-plug',
  'usb',
  'steering',
];
/** A bass beat draws what a full sine draws, for as long as it lasts. */
const LOUD = { volumeRatio: LOUD_VOLUME, averageRatio: 1 };
/** What the rider was doing when it failed: on a hot day, over a bump, engine running, a loud song with and without, a quiet one. */
const TRIALS = {
  hot: [{ hot: true }],
  bumps: EVERYWHERE.map((place) => ({ moves: [place] })),
  running: [{ engine: 'cruise' }],
  loud: [{ ...LOUD }, { ...LOUD, engine: 'idle' }, { ...LOUD, engine: 'cruise' }],
  quiet: [{ volumeRatio: QUIET_VOLUME }],
} as const satisfies Record<string, readonly Partial<Moment>[]>;
export type WhenOff = keyof typeof TRIALS;
export interface Failing {
  readonly when: WhenOff;
  readonly moment: Partial<Moment>;
}

/** The lamp of the amplifier that is meant: what is off or shows a fault plays nothing. */
const ampIsOn = ({ world: { about } }: Ridden, { now }: Seen) =>
  now.ok && about !== null && now.amps[about]?.lamp === 'normal';

/** When an amplifier that is on goes off or shows its fault, and a sound one would not; nothing for one that is off. */
export const whenAmpGoesOff = oncePer((bike: Ridden): readonly Failing[] => {
  if (!ampIsOn(bike, bike.at({}))) return [];
  const healthy = bike.healthy();
  const fails = (one: Partial<Moment>) => ampIsOn(healthy, healthy.at(one)) && !ampIsOn(bike, bike.at(one));
  return (Object.keys(TRIALS) as WhenOff[]).flatMap((when) => {
    const moment = TRIALS[when].find(
      // What fails with the engine running, loud or not, is not put down to the music.
      (one: Partial<Moment>) => fails(one) && !(when === 'loud' && one.engine && fails({ engine: one.engine })),
    );
    return moment ? [{ when, moment }] : [];
  });
});

/** Its amplifier is on at the stand, and goes off at times. */
export const ampGoesOff = (bike: Ridden): Complaint => yesIf(whenAmpGoesOff(bike).length > 0);

/** It plays, and falls silent somewhere when the bike is moved, hot, loud or quiet; a sound one would not. */
export function cutsOut(bike: Ridden): Complaint {
  const plays = heardCorners(bike, bike.at({}));
  const lost = (moment: Partial<Moment>) => {
    const rest = heardCorners(bike, bike.at(moment));
    const sound = heardCorners(bike.healthy(), bike.healthy().at(moment));
    return plays.some((corner) => !rest.includes(corner) && sound.includes(corner));
  };
  const portOpens = bike.world.phone.port.movedOhm === Infinity;
  return yesIf(portOpens || Object.values(TRIALS).flat().some(lost));
}
