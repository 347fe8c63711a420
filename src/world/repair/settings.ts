import { gainFromVoltageRatioDb, voltageRatio } from '../../compute/decibel.ts';
import { levelV } from '../../compute/level.ts';
import { cornersOnAmp } from '../bike/amp-side.ts';
import { withAmp, withPhone, withSettings, withUnit } from '../change.ts';
import { loudestInputV } from '../healthy.ts';
import { coilsOhm } from '../hear.ts';
import type { World } from '../state.ts';
import type { Repairs } from './repairs.ts';
import { sound, soundAmp } from './sound.ts';

/** A range switch stands above the loudest step by so much. */
const RANGE_ABOVE_RATIO = 1.1;

/** Settings of the head unit, the profile that is stored in it, and the knobs of the amplifier. */
export const SETTINGS: Repairs<
  | 'centre-fader'
  | 'turn-up-rear-control'
  | 'set-unit-menu'
  | 'restart-unit'
  | 'play-here'
  | 'flatten-tone'
  | 'tune-for-riding'
  | 'turn-down'
  | 'select-profile'
  | 'set-selector'
  | 'set-gain'
  | 'set-filter'
> = {
  'centre-fader': (world) => withSettings(world, { fader: 0, balance: 0 }),
  'turn-up-rear-control': (world) => withSettings(world, { rearControlRatio: 1 }),
  // A factory head unit has no such entry in its menu.
  'set-unit-menu': (world, { rear, bass, compensation, mirroring }) => {
    if (world.rig.unitKind !== 'replaced') return world;
    const unit = withUnit(world, ({ rearOn, profile }) => ({
      rearOn: rear === 'on' || rearOn,
      profile: compensation ? { ...profile, engineDifference: null } : profile,
    }));
    const set = bass ? withSettings(unit, { bassDb: 0 }) : unit;
    return mirroring ? withPhone(set, { offersMirroring: true }) : set;
  },
  'restart-unit': (world) => withUnit(world, { hung: false }),
  'play-here': (world) => withSettings(world, { paused: false, muted: false, target: 'speakers' }),
  'flatten-tone': (world, { of }) =>
    of === 'unit' ? withSettings(world, { bassDb: 0, speedVolumeDb: 0 }) : withPhone(world, { bassDb: 0 }),
  // Wind and engine stay as loud. Who has set the tone for them, and knows it, misses nothing any more. What the profile adds
  // with the engine running is taken back.
  'tune-for-riding': (world) => {
    const { engineDifference } = world.unit.profile;
    const set = engineDifference ? withSettings(world, { bassDb: -engineDifference.gainDb }) : world;
    return { ...set, maskedBassDb: 0 };
  },
  'turn-down': (world) =>
    withSettings(world, ({ topVolumeRatio }) => ({
      topVolumeRatio: Math.min(topVolumeRatio, sound(world).settings.topVolumeRatio),
    })),
  'set-filter': (world, { highpassHz, bassBoostDb }) => withAmp(world, { highpassHz, bassBoostDb }),
  'select-profile': (world, { rear, level, boost, eq }) => {
    // And one of another maker has no stored profiles.
    if (world.rig.unitKind === 'replaced') return world;
    const { loweredByDb, boostDb } = world.rig;
    return withUnit(world, ({ rearOn, profile }) => ({
      rearOn: rear === 'on' || rearOn,
      profile: {
        ...profile,
        ...(level && { levelDb: level === 'full' ? 0 : -loweredByDb }),
        ...(boost && { boostDb: boost === 'none' ? 0 : boostDb }),
        ...(eq && { engineDifference: null }),
      },
    }));
  },
  'set-selector': (world, action) => {
    const amp = soundAmp(world);
    if (!amp) return world;
    switch (action.selector) {
      case 'turn-on':
        return withAmp(world, { turnOn: action.to });
      case 'input-mode':
        return withAmp(world, { inputMode: amp.inputMode });
      case 'range': {
        const fedV = RANGE_ABOVE_RATIO * loudestInputV(world.rig, world.unit.profile);
        return withAmp(world, { inputLimitV: Math.max(amp.inputLimitV, fedV) });
      }
    }
  },
  'set-gain': (world, { axle, outputV: wantedV, noMoreThanSpeakers }) => {
    const outputV = noMoreThanSpeakers ? Math.min(wantedV, speakersTakeV(world)) : wantedV;
    const gain = outputV / loudestInputV(world.rig, world.unit.profile);
    const set = withAmp(world, ({ gainRatio }) => ({
      gainRatio: {
        front: axle === 'rear' ? gainRatio.front : gain,
        rear: axle === 'front' ? gainRatio.rear : gain,
      },
    }));
    return withLessVolume(world, set);
  },
};

/** The volts at which the weakest speaker of the amplifier gets the watts that are printed on it. */
const speakersTakeV = (world: World): number =>
  Math.min(
    ...cornersOnAmp(world, world.about ?? -1).map((corner) =>
      levelV({ powerW: world.speakers[corner].ratedW, loadOhm: coilsOhm(world, corner) }),
    ),
  );

const gainOf = ({ amps, about }: World): number => Math.max(0, ...Object.values(amps[about ?? -1]?.gainRatio ?? {}));

/** A step of the volume. From memory: two decibels. */
const VOLUME_STEP_DB = 2;
/** Whoever made up for a low gain with the head unit turns it down by as much as the gain has gone up, in whole steps. */
function withLessVolume(before: World, after: World): World {
  const louderRatio = gainOf(after) / gainOf(before);
  const most = Math.min(sound(before).settings.topVolumeRatio, before.settings.topVolumeRatio);
  if (!(louderRatio > 1)) return after;
  const steps = Math.ceil(gainFromVoltageRatioDb({ voltageRatio: louderRatio }) / VOLUME_STEP_DB);
  const downRatio = voltageRatio({ gainDb: -steps * VOLUME_STEP_DB });
  return withSettings(after, ({ topVolumeRatio }) => ({ topVolumeRatio: Math.max(most, topVolumeRatio * downRatio) }));
}
