import { FULL_STEP_V } from '../../compute/level.ts';
import { loweredV, unloadedFullV } from '../../rig/levels.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { readsForGain } from '../read-first.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { ampChannels } from '../where.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';
import { GAIN_TOOLS, gainSteps, setGain, settingFigures } from './gain.ts';

/** What the range has to hold: the loudest step, full or behind an amplified profile. */
const rangeFigures = (f: Findings): readonly Figure[] => [
  {
    id: 'comes-in-full',
    label: 'Comes in at most, full level',
    value: Math.max(FULL_STEP_V, unloadedFullV(f.rig)),
    unit: 'V',
  },
  { id: 'comes-in-lowered', label: 'Behind an amplified profile', value: loweredV(f.rig).value, unit: 'V' },
];

export const rangeTooSensitive: Cause = {
  id: 'range-too-sensitive',
  title: (f) => `Input range of ${ampName(f)} too sensitive`,
  faults: ['range-too-sensitive'],
  split: {
    byMeter:
      'Speakers off, 80 Hz tone at your usual top step: are there more volts at the input than the range is marked for?',
    needs: ['tone-80'],
    touches: ['amp-in-plus'],
    without:
      'Gain at its lowest and still distorted, just quieter? Then read what is printed next to the range switch.',
  },
  mends: ['amp'],
  article: 'gain-structure',
  remedy: (f) => ({
    what: `More volts come in than the input of ${ampName(f)} is set for: it clips before the gain knob has any say.`,
    background:
      'A 0.2 to 4 V range fed from a head unit’s speaker wires clips from half volume up. The gain knob comes after it and cannot help.',
    numbers: [...rangeFigures(f), ...settingFigures(f)],
    readFirst: readsForGain(f),
    repair: [{ do: 'set-selector', selector: 'range', to: 'as-fed' }, setGain(f, ampChannels(f))],
    fix: [
      'Volume at zero, key off. Range switch, or the plug for it, to speaker level: it must cover the highest volts that come in.',
      `${AmpName(f)} is quieter then. The gain makes up for it:`,
      ...gainSteps(f),
    ],
    tools: GAIN_TOOLS,
    minutes: 25,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['A line-level converter, before the range switch has been read.', 'Speakers or a stronger amplifier.'],
    proofOfCure: {
      byEar: 'Clean from low to your usual top step.',
      byMeter:
        'Speakers off, 80 Hz tone, step by step: the output grows by the same share with each step up to the top.',
      needs: ['tone-80'],
    },
  }),
};
