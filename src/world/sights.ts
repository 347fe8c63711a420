import { gainTargetV } from '../compute/gain.ts';
import { CORNERS, type Corner, type PerCorner, perCorner } from '../rig/corner.ts';
import type { Operating } from './bike/operate.ts';
import { loudestInputV } from './healthy.ts';
import type { Moment } from './moment.ts';
import type { World } from './state.ts';
import { isFitted } from './valued-rig.ts';

/* What eyes and papers find. None of it needs a probe, and none of it knows a fault: it is read off the bike. */

/** More than this at a contact is a film that can be seen. An estimate. */
const FILM_OHM = 0.5;
/** A highpass above this is no highpass for speakers of a motorcycle: they are set to 60 to 120 Hz. From memory. */
const HIGHPASS_TOO_HIGH_HZ = 150;
/** How far a gain knob may lie off before it is seen to be wrong. An estimate. */
const GAIN_OFF_RATIO = 2;

/** A gain of a quarter of what is wanted, 12 dB, is a knob at its lower end. An estimate. */
const GAIN_LOWEST_RATIO = 1 / 4;

export type Screen = 'normal' | 'dark' | 'hung';
export const screen = ({ unit }: World, { unitOn }: Pick<Operating, 'unitOn'>): Screen =>
  unit.hung ? 'hung' : unitOn ? 'normal' : 'dark';

export type Selector = 'turn-on' | 'mode' | 'range' | 'filter' | 'boost' | 'gain';

/** The gains of an amplifier over the one that makes full power of the loudest clean input. */
function gainsOverWanted({ rig, amps, unit }: World, i: number): readonly number[] {
  const [amp, made] = [amps[i], rig.amps[i]];
  if (!amp || !made) return [];
  const { powerW, ratedOhm: loadOhm } = made;
  const wanted = gainTargetV({ powerW, loadOhm }) / loudestInputV(rig, unit.profile);
  return Object.values(amp.gainRatio).map((gain) => gain / wanted);
}

/** Whether a gain knob stands at its lower end. */
export const gainIsLowest = (world: World, i: number): boolean =>
  gainsOverWanted(world, i).some((ratio) => ratio < GAIN_LOWEST_RATIO);

/** The selectors of an amplifier that do not fit what is wired to it. */
export function wrongSelectors(world: World, i: number): readonly Selector[] {
  const { rig, amps, unit } = world;
  const [amp, made] = [amps[i], rig.amps[i]];
  if (!amp || !made) return [];
  const twoInputsWired = made.drives === 'both' && made.fedFrom === 'front';
  const wrong: Readonly<Record<Selector, boolean>> = {
    'turn-on': amp.turnOn !== made.turnOn,
    mode: (amp.inputMode === 'two') !== twoInputsWired,
    range: amp.inputLimitV < loudestInputV(rig, unit.profile),
    filter: amp.highpassHz === null || amp.highpassHz > HIGHPASS_TOO_HIGH_HZ,
    boost: amp.bassBoostDb > 0,
    gain: gainsOverWanted(world, i).some((ratio) => ratio > GAIN_OFF_RATIO || ratio < 1 / GAIN_OFF_RATIO),
  };
  return (Object.keys(wrong) as Selector[]).filter((selector) => wrong[selector]);
}

/** How the docking contacts of a corner look. */
export const contactsLook = ({ runs }: World, corner: Corner): 'clean' | 'film' | 'apart' => {
  const { ohm } = runs[corner].dock;
  return ohm === Infinity ? 'apart' : ohm > FILM_OHM ? 'film' : 'clean';
};

/** Paper against paper: what an amplifier can give a speaker, and what that speaker takes. */
export function paper(world: World): PerCorner<{ overRated: boolean; bareTweeter: boolean } | null> {
  return perCorner((corner) => {
    if (!isFitted(world.rig, corner)) return null;
    const { ratedW, bareTweeter } = world.speakers[corner];
    const mostW = Math.max(0, ...world.rig.amps.map(({ powerW }) => powerW));
    return { overRated: mostW > ratedW, bareTweeter };
  });
}

export type Mirroring = 'starts' | 'charges-only' | 'listed' | 'greyed' | 'absent' | 'nothing';
const PORT_GOOD_OHM = 1;
/** What the unit makes of a phone that is plugged in. */
export function mirroring({ phone, unit }: World, moment: Moment, now: Operating, headset: boolean): Mirroring {
  if (!now.unitOn || unit.hung) return 'nothing';
  const portOhm = moment.moves.includes('usb') ? (phone.port.movedOhm ?? phone.port.ohm) : phone.port.ohm;
  if (portOhm > PORT_GOOD_OHM) return portOhm === Infinity ? 'nothing' : 'charges-only';
  if (!phone.cableHasData) return 'charges-only';
  if (!phone.offersMirroring) return 'absent';
  if (!phone.permitted || !phone.softwareAgrees) return 'listed';
  return phone.needsHeadset && !headset ? 'greyed' : 'starts';
}

/** Corners that are there to be heard. */
export const fittedCorners = ({ rig }: World): readonly Corner[] => CORNERS.filter((corner) => isFitted(rig, corner));
