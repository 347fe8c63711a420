import type { Cause } from '../cause.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

export const noiseWithEngine: Cause = {
  id: 'noise-with-engine',
  title: 'A whine or ticking that comes with the engine',
  faults: ['ground-loop-two-points', 'signal-lead-beside-power', 'charge-lead-loop'],
  split: {
    byMeter: 'No meter finds it. Engine idling outdoors, music paused: is it there, and does it rise with the revs?',
    needs: ['engine-running'],
    without: 'Outdoors, idling, music paused: a whine or ticks that rise with the revs?',
  },
  mends: ['unit-leads', 'amp-supply'],
  article: 'noise-and-ground-loops',
  remedy: () => ({
    what: 'It is no change of tone: a noise of the charging or the ignition gets into the sound and lies over it.',
    background:
      'It comes in by one of three ways: a phone that is charged from the bike and plays by cable, a signal lead beside a power lead, or two grounds at two points.',
    numbers: [],
    repair: [
      { do: 'part-from-noise', of: 'phone-lead' },
      { do: 'part-from-noise', of: 'signal-lead' },
      { do: 'own-ground' },
    ],
    fix: [
      'Outdoors, idling, music paused. Charging lead off the phone: gone? Then another charger, or play without the cable.',
      'Key off, signal plug off the amplifier: still there with the engine on? Then it is ground or supply.',
      'Gone with the plug off: lay the signal leads a hand’s width from charging and plus leads, crossing at right angles.',
      'Still there: the amplifier’s ground straight to the battery minus post, no other ground at that end. One thing at a time, and listen after each.',
    ],
    tools: 'Cable ties, spanner',
    minutes: 60,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: ['A noise filter, before the three ways were tried.', 'A reflash or speakers.'],
    cautions: ['outdoors'],
    proofOfCure: { byEar: 'Outdoors, idling and at 3000 rpm, music paused: silent with the ear at the cone.' },
  }),
};
