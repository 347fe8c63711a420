import { MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import { axleOf, type Corner, sideOf } from '../../rig/corner.ts';
import { faderCentre, fourCorners, lidCheck, rearControl, rearHiss, wakesWhenLoud } from '../../steps/by-ear.ts';
import { offered } from '../../steps/outcome.ts';
import { LOUD_VOLUME, type Moment, ORDINARY_VOLUME } from '../../world/moment.ts';
import { contactsLook } from '../../world/sights.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { DROWNED_RATIO } from '../../world/symptoms/symptom.ts';
import { ampOf, lampOf, REAR, rearAmp, rearPlays } from './bike.ts';
import { centred, pushedHome, turnedUp, whenToLook } from './left.ts';
import { CANNOT, happens, option, type Says } from './observer.ts';

/* What ears tell, without a tool. */

const curedBy = (cured: boolean) => option(cured ? 'cured' : 'no-change');

/** Where the fader and the balance are moved to, to hear each corner by itself. */
const ENDS: readonly Partial<Moment>[] = [
  { fader: -1, balance: 0 },
  { fader: 1, balance: 0 },
  { fader: 0, balance: -1 },
  { fader: 0, balance: 1 },
];

/** The corners that are heard at one end or another. What is far under the loudest is silent to whoever compares. */
function heardAtEnds(bike: Ridden): readonly Corner[] {
  const watts = (corner: Corner) => Math.max(...ENDS.map((end) => bike.at(end).heard?.[corner].powerW ?? 0));
  const plays = (corner: Corner) => ENDS.some((end) => bike.at(end).heard?.[corner].plays);
  const loudestW = Math.max(...bike.fitted.map(watts));
  return bike.fitted.filter((corner) => plays(corner) && watts(corner) > DROWNED_RATIO * loudestW);
}

function cornersSay(bike: Ridden) {
  const silent = bike.fitted.filter((corner) => !heardAtEnds(bike).includes(corner));
  const rear = silent.filter((corner) => axleOf(corner) === 'rear');
  const [first] = silent;
  if (silent.length === 0) return option('all');
  if (silent.length === bike.fitted.length) return option('none');
  if (rear.length === 2 && silent.length === 2) return option('no-rear');
  if (silent.length === 1 && rear.length === 1) return option('one-corner');
  if (silent.length === 2 && first && silent.every((corner) => sideOf(corner) === sideOf(first))) {
    return option('one-side');
  }
  return CANNOT;
}

/** A film is wiped by pushing the plug home, and comes back as the lid moves: which of the two is told is chance. */
const WIPED_SHARE = 0.5;
/** How many bikes have a control for the passenger. An estimate. */
const HAS_REAR_CONTROL_SHARE = 0.5;

const rearHisses = (bike: Ridden): boolean => REAR.some((corner) => bike.at({}).heard?.[corner].hisses);

export const BY_EAR: Says = {
  [faderCentre.id]: ({ bike }) => curedBy(rearPlays(centred(bike))),
  [rearControl.id]: ({ bike, observer }) => {
    const up = turnedUp(bike);
    if (up === bike && !happens(observer, HAS_REAR_CONTROL_SHARE)) return option('none');
    return curedBy(rearPlays(up));
  },
  [fourCorners.id]: ({ bike }) => (bike.world.rig.rearFitted === 'yes' ? cornersSay(bike) : CANNOT),
  [lidCheck.id]: ({ bike, step, situation, observer }) => {
    const home = pushedHome(bike);
    const filmed = REAR.some((corner) => contactsLook(home.world, corner) === 'film');
    const moved = rearPlays(home, { moves: ['lid'] });
    if (rearPlays(bike)) return option(moved ? 'no-effect' : 'reacts');
    if (rearPlays(home)) return option('cured');
    if (!moved) {
      const canTell = offered(step, situation).some(([name]) => name === 'hiss-now');
      return option(canTell && !rearHisses(bike) && rearHisses(home) ? 'hiss-now' : 'no-effect');
    }
    return option(filmed && happens(observer, WIPED_SHARE) ? 'cured' : 'reacts');
  },
  [rearHiss.id]: ({ bike }) => {
    if (rearAmp(bike) === null) return CANNOT;
    // An amplifier that listens stays awake for a while after the music: what was on while it played still hisses.
    return option(rearHisses(bike) ? 'hiss' : 'silent');
  },
  [wakesWhenLoud.id]: ({ bike }) => {
    if (ampOf(bike) === null) return CANNOT;
    const when = whenToLook(bike);
    const usual = lampOf(bike, when);
    // One that shows its fault all the time does not wake: nothing comes on.
    if (usual !== 'off') return option(usual === 'normal' ? 'awake' : 'stays-off');
    const withMusic = (volumeRatio: number) =>
      lampOf(bike, { ...when, volumeRatio, averageRatio: MUSIC_AVERAGE_RATIO });
    // One that music at the usual volume lets be, and a steady tone does not, is not woken by more of it: it dips.
    if (withMusic(ORDINARY_VOLUME) === 'normal') return option('stays-off');
    // Whoever comes up step by step stops at the first one that lights its lamp.
    const lamp = [1 / 4, 1 / 2, 1].map((share) => withMusic(share * LOUD_VOLUME)).find((one) => one !== 'off');
    return option(lamp === 'normal' ? 'wakes' : lamp === 'fault' ? 'fault' : 'stays-off');
  },
};
