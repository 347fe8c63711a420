import type { Cause } from '../cause.ts';
import { readsForGain } from '../read-first.ts';
import { ampName } from '../the-amp.ts';
import { ampChannels } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';
import { CHANNELS_ALIKE, GAIN_TOOLS, gainSteps, setGain, settingFigures } from './gain.ts';

export const ampInputTooLow: Cause = {
  id: 'amp-input-too-low',
  title: (f) => `Range or gain of ${ampName(f)} too low`,
  faults: ['amp-input-too-low'],
  split: {
    byMeter:
      'Speakers off, 400 Hz tone: volts at an input, volts at its output. Far less out than this amplifier should give?',
    needs: ['tone-400'],
    touches: ['amp-out-plus'],
    without: 'Read range and gain: does the range not suit what is plugged in, or is the gain at its lowest?',
  },
  mends: ['amp'],
  article: 'gain-structure',
  remedy: (f) => ({
    what: 'The amplifier does not amplify enough: wrong range, or the gain near its lowest.',
    background:
      'Gain matches what comes in to what should go out. It is no volume control, and “all the way down” is not the safe place.',
    numbers: settingFigures(f),
    readFirst: readsForGain(f),
    repair: [{ do: 'set-selector', selector: 'range', to: 'as-fed' }, setGain(f, ampChannels(f))],
    fix: gainSteps(f),
    tools: GAIN_TOOLS,
    minutes: 20,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['A stronger amplifier: this one is just set too low.'],
    ifDoneAnyway: 'Turning the head unit up instead makes it clip, and a clipped signal kills speakers.',
    proofOfCure: { byEar: 'The rear plays as loud as the front, and clean.', ...CHANNELS_ALIKE },
  }),
};
