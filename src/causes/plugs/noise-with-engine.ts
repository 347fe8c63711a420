import type { Cause } from '../cause.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

const AT_THE_AMP: readonly string[] = [
  'Key off, signal plug off the amplifier: still there with the engine on? Then it is ground or supply for sure.',
  'Still there, or gone: run the amplifier’s ground straight to the battery negative post, with no other ground at that end. A bad ground sends its ripple through the shield of that plug, and falls silent with it.',
  'Not better, and gone with the plug off: keep the signal leads a hand’s width from charging and positive leads, and cross them at right angles. One thing at a time, and listen after each.',
];
const NO_CABLE: readonly string[] = [
  'Still there with the radio on, and nothing plugged in? Then it is made in the head unit’s own supply: have its ground cleaned and tightened.',
];

export const noiseWithEngine: Cause = {
  id: 'noise-with-engine',
  title: 'A whine or ticking that comes with the engine',
  faults: ['ground-loop-two-points', 'signal-lead-beside-power', 'charge-lead-loop'],
  split: {
    byMeter:
      'A meter won’t find it. Engine idling outdoors, music paused: is it there, and does it rise with the revs?',
    needs: ['engine-running'],
    without: 'Outdoors, idling, music paused: a whine or ticks that rise with the revs?',
    cautions: ['outdoors', 'hot'],
  },
  mends: ['unit-leads', 'amp-supply'],
  article: 'noise-and-ground-loops',
  remedy: (f) => ({
    what: 'The tone has not changed: charging or ignition noise is getting into the sound.',
    background: isWithoutAmp(f)
      ? 'Without an amplifier it mostly gets in over a phone that charges from the bike while it plays by cable.'
      : 'It gets in one of three ways: a phone charging from the bike while playing by cable, a signal lead next to a power lead, or two grounds at different points.',
    numbers: [],
    repair: [
      { do: 'part-from-noise', of: 'phone-lead' },
      ...(isWithoutAmp(f) ? [] : ([{ do: 'part-from-noise', of: 'signal-lead' }, { do: 'own-ground' }] as const)),
    ],
    fix: [
      'Outdoors, idling, music paused. Charging lead off the phone: gone? Then use another charger, or play without the cable.',
      ...(isWithoutAmp(f) ? NO_CABLE : AT_THE_AMP),
    ],
    tools: 'Cable ties, spanner',
    minutes: 60,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: [
      isWithoutAmp(f)
        ? 'A noise filter, before the charging lead has been off.'
        : 'A noise filter, before all three have been tried.',
      'A reflash or speakers.',
    ],
    cautions: isWithoutAmp(f) ? ['outdoors', 'hot'] : ['outdoors'],
    proofOfCure: { byEar: 'Outdoors, idling and at 3000 rpm, music paused: silent with your ear at the cone.' },
  }),
};
