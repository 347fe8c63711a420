import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { RepairAction } from '../repair-action.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

const AT_THE_PHONE =
  'Outdoors, idling, music paused. Charging lead off the phone: gone? Then use another charger, or play without the cable.';
const AT_THE_AMP: readonly string[] = [
  'Key off, signal plug off the amplifier: still there with the engine on? Then it is ground or supply for sure.',
  'Still there, or gone: run the amplifier’s ground straight to the battery negative post, with no other ground at that end. A bad ground sends its ripple through the shield of that plug, and falls silent with it.',
  'Not better, and gone with the plug off: keep the signal leads a hand’s width from charging and positive leads, and cross them at right angles. One thing at a time, and listen after each.',
];
const NO_CABLE =
  'Still there with the radio on, and nothing plugged in? Then it is made in the head unit’s own supply: have its ground cleaned and tightened.';
/** What no lead and no ground cures came with the supply: that is no fault of the sound. */
const THE_BATTERY =
  'None of it helps, and it stays with the plug off: the battery. Worn, it smooths nothing, and no ground cures that. Charge it overnight: does the starter still turn slowly? Battery first, then the regulator.';
/** A box that has its own ground beside that of the amplifier closes a loop, whatever the leads do. */
const THE_CONVERTER =
  'The converter: its ground to the amplifier’s ground terminal and nowhere else, then listen. Not gone: one that isolates with a transformer, both wires of each pair into it, none to ground.';
const IS_THERE_ONE =
  'A small box on the way from the head unit, with round plugs out? That is a converter, and the first suspect. Its ground to the amplifier’s ground terminal and nowhere else, then listen.';

/** A box was seen, or nobody has looked and one may be there. */
const hasConverter = (f: Findings): boolean => is(f, 'line-converter', 'box');
const mayHaveConverter = (f: Findings): boolean =>
  !isWithoutAmp(f) &&
  !is(f, 'line-converter', 'line', 'direct') &&
  (f.rig.amps === undefined || f.rig.amps.some(({ input }) => input !== 'speaker'));

const PART_CONVERTER: RepairAction = { do: 'part-from-noise', of: 'converter' };

function waysIn(f: Findings): string {
  if (isWithoutAmp(f))
    return 'Without an amplifier it mostly gets in over a phone that charges from the bike while it plays by cable.';
  if (hasConverter(f))
    return 'With a converter on the way it mostly gets in there: the box and the amplifier have two grounds at different points. Else by a phone that charges while it plays by cable, or a signal lead next to a power lead.';
  return 'It gets in one of three ways: a phone charging from the bike while playing by cable, a signal lead next to a power lead, or two grounds at different points.';
}

function fixOf(f: Findings): readonly string[] {
  if (isWithoutAmp(f)) return [AT_THE_PHONE, NO_CABLE];
  const [plugOff, ...rest] = AT_THE_AMP as readonly [string, ...string[]];
  return [
    AT_THE_PHONE,
    plugOff,
    ...(hasConverter(f) ? [THE_CONVERTER] : mayHaveConverter(f) ? [IS_THERE_ONE] : []),
    ...rest,
    THE_BATTERY,
  ];
}

export const noiseWithEngine: Cause = {
  id: 'noise-with-engine',
  title: (f) =>
    hasConverter(f)
      ? 'A whine or ticking that comes in at the converter'
      : 'A whine or ticking that comes with the engine',
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
    background: waysIn(f),
    numbers: [],
    repair: [
      { do: 'part-from-noise', of: 'phone-lead' },
      ...(mayHaveConverter(f) ? [PART_CONVERTER] : []),
      ...(isWithoutAmp(f) ? [] : ([{ do: 'part-from-noise', of: 'signal-lead' }, { do: 'own-ground' }] as const)),
    ],
    fix: fixOf(f),
    tools: 'Cable ties, spanner',
    minutes: 60,
    who: YOURSELF_OR_FITTER,
    parts: [],
    notBuy: [
      isWithoutAmp(f)
        ? 'A noise filter, before the charging lead has been off.'
        : 'A noise filter, before all of these have been tried.',
      ...(hasConverter(f) ? ['Another converter, before this one’s ground has been moved.'] : []),
      'A reflash or speakers.',
    ],
    cautions: isWithoutAmp(f) ? ['outdoors', 'hot'] : ['outdoors', 'own-charger'],
    proofOfCure: { byEar: 'Outdoors, idling and at 3000 rpm, music paused: silent with your ear at the cone.' },
  }),
};
