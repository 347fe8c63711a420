import type { Findings } from '../../steps/outcome.ts';
import type { Cause, CheckNeeds } from '../cause.ts';
import { CUT_OUT, healthyFigure, LAMP_NEEDS, LAMP_ON, readFigures } from '../supply-ways.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';

/** Some amperes have to flow. Without an amplifier’s terminals to clip a lamp to, the bike itself draws them. */
const load = (f: Findings): string => (isWithoutAmp(f) ? 'Key on, engine off, lights on, music playing' : LAMP_ON);
const loadNeeds = (f: Findings): CheckNeeds =>
  isWithoutAmp(f) ? { needs: ['head-unit-playing'], touches: ['battery-plus'] } : LAMP_NEEDS;

export const batteryLugLoose: Cause = {
  id: 'battery-lug-loose',
  title: 'A ring on the battery posts is loose',
  faults: ['battery-lug-loose'],
  split: (f) => ({
    byMeter: `${load(f)}: more than 10 mV from a battery post itself to one of the rings on it?`,
    ...loadNeeds(f),
    without: 'Key off: does any ring on a battery post turn by hand?',
    asStep: { without: 'rings-look' },
  }),
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: `A ring on a battery post makes contact only part of the time${isWithoutAmp(f) ? '' : ': the amplifier’s positive, its ground, or the bike’s own'}.`,
    background:
      'Usually several rings are stacked on one short screw, or the screw was not tightened after work on the battery.',
    numbers: isWithoutAmp(f)
      ? []
      : [...readFigures(f, 'plus'), ...readFigures(f, 'ground'), healthyFigure(f, 'plus'), CUT_OUT],
    repair: [
      { do: 'tighten-joint', at: 'battery-plus' },
      { do: 'tighten-joint', at: 'battery-minus' },
      { do: 'tighten-joint', at: 'bike-ring' },
    ],
    fix: [
      'Key off. All negative rings off together, then positive.',
      'Tug each lead: if one slips in its crimp, it needs a new ring.',
      'Clean rings and posts bright. Largest ring at the bottom, thin ones on top, and a screw long enough for all of them.',
      'Positive tight, then negative. No ring may turn by hand.',
      isWithoutAmp(f)
        ? 'Don’t crank before both are tight.'
        : 'Don’t crank before both are tight: with the bike’s negative loose, the starter current goes through the amplifier’s ground.',
      'Tighten again after the first ride.',
    ],
    tools: 'Spanner, wire brush',
    minutes: 15,
    who: YOURSELF,
    parts: [],
    notBuy: ['A battery or a fuse: all it takes is a tight screw.'],
    proofOfCure: {
      byEar: 'Press every ring with one finger, music on: nothing flickers. After a ride the clock still runs.',
      byMeter: `${load(f)}: each ring against its own post below 10 mV, and steady when you press.`,
      ...loadNeeds(f),
    },
  }),
};
