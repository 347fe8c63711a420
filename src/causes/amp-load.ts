import { ampCurrentA, DENSE_MUSIC_AVERAGE_RATIO } from '../compute/amp-current.ts';
import { GAIN_MARGIN_RATIO, gainTargetV } from '../compute/gain.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { ampDriving, ampEstimate, estimate } from '../rig/rig.ts';
import type { Findings } from '../steps/outcome.ts';
import { EFFICIENCY_RATIO } from '../steps/supply/amp-feed.ts';
import type { Figure } from './figure.ts';
import { ratingAssumed } from './read-first.ts';
import { ampOf, pairOf } from './the-amp.ts';

/** What the amplifier of a case gives and draws, and whether anybody said so. */
export interface AmpLoad {
  readonly channels: number;
  readonly powerW: number;
  /** Its channels or their watts are not known. */
  readonly assumed: boolean;
}

const FOR_A_PAIR = 2;
const FOR_BOTH_PAIRS = 4;

/** Who drives the other pair is somebody else: the head unit, or an amplifier of its own. */
function otherPairElsewhere(f: Findings): boolean {
  const other = pairOf(f) === 'rear' ? 'front' : 'rear';
  const fedBy = other === 'front' ? f.rig.frontFedBy : f.rig.rearFedBy;
  const driver = ampDriving(f.rig, other);
  const notFitted = other === 'rear' && f.rig.rearFitted === 'no';
  return notFitted || fedBy === 'unit' || (driver !== undefined && driver !== ampOf(f));
}

/**
 * One that drives a pair may drive the other as well: "the one for the rear, or for everything". Until somebody counted
 * its channels, or said what drives the other pair, an amplifier for the rear counts with four, so that no lead comes out
 * too thin.
 */
export function ampLoad(f: Findings): AmpLoad {
  const amp = ampOf(f);
  // Not looked at where nobody counted them: what stands in is not the usual number, and is said with the watts.
  const known = 'channels' in amp ? amp.channels : undefined;
  // Of more than four channels no more than four have a speaker each.
  const counted = known === undefined ? undefined : Math.min(FOR_BOTH_PAIRS, Math.max(FOR_A_PAIR, Math.round(known)));
  const both = amp.drives === 'both';
  const twoOnly = otherPairElsewhere(f) || amp.drives === 'front';
  return {
    channels: both ? FOR_BOTH_PAIRS : (counted ?? (twoOnly ? FOR_A_PAIR : FOR_BOTH_PAIRS)),
    powerW: ampEstimate(amp, 'powerW').value,
    assumed: !(both || twoOnly || counted !== undefined) || amp.powerW === undefined,
  };
}

const drawA = (f: Findings, averageRatio: number): number => {
  const { channels, powerW } = ampLoad(f);
  const supplyV = estimate(f.rig, 'supplyRunningV').value;
  return ampCurrentA({ powerW, channels, efficiencyRatio: EFFICIENCY_RATIO, supplyV, averageRatio });
};
/** The current of the bass peaks: all channels at full sine power, engine running. */
export const fullBassA = (f: Findings): number => drawA(f, 1);
export const denseMusicA = (f: Findings): number => drawA(f, DENSE_MUSIC_AVERAGE_RATIO);

const ASSUMED = ' (assumed)';

/** “4 channels of 90 W (assumed)” */
export const channelsInWords = (f: Findings): string => {
  const { channels, powerW, assumed } = ampLoad(f);
  return `${channels} channels of ${formatQuantity(powerW, 'W')}${assumed ? ASSUMED : ''}`;
};

/** Nothing where there is no amplifier: a battery can be low without one. */
export function drawFigures(f: Findings): readonly Figure[] {
  if (f.rig.amps?.length === 0) return [];
  return [
    { id: 'dense-music-current', label: 'Dense loud music takes', value: denseMusicA(f), unit: 'A' },
    { id: 'full-bass-current', label: `Full bass takes, ${channelsInWords(f)}`, value: fullBassA(f), unit: 'A' },
  ];
}

/**
 * What is not known is taken at its least for a gain: an amplifier that is weaker than thought would clip. It is said with
 * the figure, so the usual number, which is not looked at, is not listed as assumed beside it.
 */
const leastLoad = (f: Findings) => {
  const amp = ampOf(f);
  const least = (field: 'powerW' | 'ratedOhm') => ampEstimate(field in amp ? amp : {}, field).low;
  return { powerW: least('powerW'), ratedOhm: least('ratedOhm') };
};

/** The output that the gain is set to: with a margin, and what the amplifier clips at. */
export function gainTargets(f: Findings): { readonly outputV: number; readonly clipsV: number } {
  const { powerW, ratedOhm } = leastLoad(f);
  return {
    outputV: gainTargetV({ powerW, loadOhm: ratedOhm, marginRatio: GAIN_MARGIN_RATIO }),
    clipsV: gainTargetV({ powerW, loadOhm: ratedOhm }),
  };
}

/** “17.3 V”; where nobody knows its rating, what that output is worked out from: another amplifier’s volts are no help. */
export const outputInWords = (f: Findings): string =>
  ratingAssumed(f) ? 'the square root of 5/6 × watts × ohms' : formatQuantity(gainTargets(f).outputV, 'V', 3);

/** At its corner a high-pass takes 3 dB off what the meter reads, and a gain set by that ends 3 dB too high. */
export const HIGHPASS_OFF = 'its high-pass off, if it has one, or 80 Hz reads low';
export const HIGHPASS_BACK_ON = 'high-pass back on';

const ratingInWords = (f: Findings): string => {
  const { powerW, ratedOhm } = leastLoad(f);
  return `${formatQuantity(powerW, 'W')} into ${formatQuantity(ratedOhm, 'Ω')}`;
};

export function gainFigures(f: Findings): readonly Figure[] {
  const { outputV, clipsV } = gainTargets(f);
  const assumed = ratingAssumed(f) ? ASSUMED : '';
  return [
    { id: 'gain-output', label: `Output to set, ${ratingInWords(f)}${assumed}`, value: outputV, unit: 'V', digits: 3 },
    { id: 'clips-at', label: 'It clips at', value: clipsV, unit: 'V', digits: 3 },
  ];
}

/** The last line of a repair of the amplifier. */
export const gainWhenBack = (f: Findings): string =>
  `Set the gain again when it is back: speakers off, ${HIGHPASS_OFF}. 80 Hz tone, up from zero to your usual top step, ${outputInWords(f)} across each output. Then ${HIGHPASS_BACK_ON}, speakers on.`;
