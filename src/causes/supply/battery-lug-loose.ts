import type { Cause } from '../cause.ts';
import { CUT_OUT, healthyFigure, LAMP_NEEDS, LAMP_ON, readFigures } from '../supply-ways.ts';
import { YOURSELF } from '../who.ts';

export const batteryLugLoose: Cause = {
  id: 'battery-lug-loose',
  title: 'A ring on the battery posts is loose',
  faults: ['battery-lug-loose'],
  split: {
    byMeter: `${LAMP_ON}: more than 10 mV from a battery post itself to one of the rings on it?`,
    ...LAMP_NEEDS,
    without: 'Key off: does any ring on a battery post turn by hand?',
  },
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: 'A ring on a battery post makes contact only part of the time: the amplifier’s plus, its ground, or the bike’s own.',
    background:
      'Several rings under one short screw, or a screw not tightened after work at the battery, are the usual reasons.',
    numbers: [...readFigures(f, 'plus'), ...readFigures(f, 'ground'), healthyFigure(f, 'plus'), CUT_OUT],
    repair: [
      { do: 'tighten-joint', at: 'battery-plus' },
      { do: 'tighten-joint', at: 'battery-minus' },
      { do: 'tighten-joint', at: 'bike-ring' },
    ],
    fix: [
      'Key off. All minus rings off together, then plus.',
      'Pull at each lead: one that slips in its crimp wants a new ring.',
      'Clean rings and posts bright. The largest ring lowest, the thin ones on top, the screw long enough for all.',
      'Plus tight, then minus. No ring may turn by hand.',
      'No starter before both are tight: with the bike’s minus loose its current looks for a way through the amplifier’s ground.',
      'Tighten again after the first ride.',
    ],
    tools: 'Spanner, wire brush',
    minutes: 15,
    who: YOURSELF,
    parts: [],
    notBuy: ['A battery, a fuse or an amplifier: a screw was loose.'],
    proofOfCure: {
      byEar: 'Press every ring with one finger, music on: nothing flickers. After a ride the clock still runs.',
      byMeter: `${LAMP_ON}: each ring against its own post below 10 mV, and steady when you press.`,
      ...LAMP_NEEDS,
    },
  }),
};
