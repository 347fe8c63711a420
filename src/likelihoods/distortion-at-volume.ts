import { ampInputTooLow } from '../causes/amp-input/amp-input-too-low.ts';
import { rangeTooSensitive } from '../causes/amp-input/range-too-sensitive.ts';
import { ampChannelRough } from '../causes/amplifier/amp-channel-rough.ts';
import { gainTooHigh } from '../causes/amplifier/gain-too-high.ts';
import { highpassOff } from '../causes/amplifier/highpass-off.ts';
import { batteryUndercharged } from '../causes/battery/battery-undercharged.ts';
import { chargingTooLow } from '../causes/battery/charging-too-low.ts';
import { phoneToneUp } from '../causes/phone/phone-tone-up.ts';
import { speedVolume } from '../causes/settings/speed-volume.ts';
import { toneControlsUp } from '../causes/settings/tone-controls-up.ts';
import { coilRubbing } from '../causes/speakers/coil-rubbing.ts';
import { mountLoose } from '../causes/speakers/mount-loose.ts';
import { speakerUnderrated } from '../causes/speakers/speaker-underrated.ts';
import { trimRattles } from '../causes/speakers/trim-rattles.ts';
import { unalteredWithAmp } from '../causes/unit/unaltered-with-amp.ts';
import { unitDrivenTooFar } from '../causes/unit/unit-driven-too-far.ts';
import table from './distortion-at-volume.json' with { type: 'json' };
import { lateOf } from './late.ts';

/** Made by `npm run likelihoods`. Do not edit: change the model, the steps or the flow, and make it anew. */
export const late = lateOf(table, [
  ampInputTooLow,
  rangeTooSensitive,
  ampChannelRough,
  gainTooHigh,
  highpassOff,
  batteryUndercharged,
  chargingTooLow,
  phoneToneUp,
  speedVolume,
  toneControlsUp,
  coilRubbing,
  mountLoose,
  speakerUnderrated,
  trimRattles,
  unalteredWithAmp,
  unitDrivenTooFar,
]);
