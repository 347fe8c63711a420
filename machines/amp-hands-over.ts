import { ampLight } from '../src/steps/amplifier/amp-light.ts';
import { gainDown } from '../src/steps/amplifier/gain-down.ts';
import { type Findings, is } from '../src/steps/outcome.ts';
import { ampGoesOff } from '../src/steps/told/amp-goes-off.ts';
import { unitRuns } from '../src/steps/unit/unit-dark.ts';
import { unitScreen } from '../src/steps/unit/unit-screen.ts';
import type { HandsOver } from './machine.ts';
import { REAR_NOT_SENT } from './shared-causes.ts';

/** It has gone off through what it drives, or nobody could turn it down: with less gain it goes off as well. */
const isNoMatterOfGain = (f: Findings): boolean =>
  is(f, 'gain-down', 'goes-off', 'cannot') &&
  is(f, 'speakers-unplugged', 'clears') &&
  is(f, 'amp-wires-to-frame', 'clear');
/**
 * Its supply holds while it is loud, its load is sound, and with less gain it stays on: a worn battery lasts with less, too.
 * Where it does not, and it stays on without its speakers, it is what is sent to it.
 */
const isDrivenTooFar = (f: Findings): boolean =>
  (is(f, 'gain-down', 'stays-on') || isNoMatterOfGain(f)) &&
  is(f, 'supply-under-load', 'ok') &&
  is(f, 'lowest-volts', 'holds') &&
  is(f, 'amp-runs', 'ok');

/** What has to wake it does not run itself, and nobody has looked why: an amplifier that stays off then is right to. */
const isDeadUnit = (f: Findings): boolean =>
  !unitRuns(f) && ['unit-feeds', 'unit-fuses', 'unit-restart'].every((id) => f.facts[id] === undefined);

/** Where it goes on when it is not the amplifier, or when the amplifier is right to stay off. */
export const AMP_HANDS_OVER: readonly HandsOver[] = [
  {
    flow: 'no-rear-sound',
    title: 'The head unit sends it nothing',
    because:
      'The amplifier is on, or sleeps because nothing reaches it. Why the rear is silent is looked for in the next part.',
    // It is on now, and stays on: what is silent is silent for another reason.
    isIt: {
      when: (f) =>
        is(f, 'amp-light', 'normal') &&
        (is(f, 'amp-goes-off', 'stays-on') ||
          (is(f, 'amp-goes-off', 'cannot') && !is(f, 'amp-history', 'comes-and-goes'))),
      by: [ampLight],
      orBack: true,
    },
    causes: REAR_NOT_SENT,
  },
  // Where these sent it here, and it is none of what is looked for here.
  {
    flow: 'no-sound-at-all',
    title: 'No sound at all',
    because: (f) =>
      isDeadUnit(f) ? 'The head unit itself does not run, and wakes no amplifier.' : 'No speaker plays.',
    isIt: { when: isDeadUnit, by: [unitScreen] },
    causes: [],
  },
  {
    flow: 'eq-changes-when-engine-starts',
    title: 'The sound changes with the engine',
    because: 'It changes with the engine.',
    causes: [],
  },
  {
    flow: 'distortion-at-volume',
    title: 'It is driven too far',
    because:
      'Nothing is wrong with its supply or its load. What drives it too far, or sounds bad when loud, is looked for in the next part.',
    isIt: {
      when: (f) => (is(f, 'amp-light', 'normal') && is(f, 'amp-goes-off', 'ugly')) || isDrivenTooFar(f),
      by: [ampGoesOff, gainDown],
    },
    told: (f) => ({ 'lamp-at-volume': { option: is(f, 'amp-goes-off', 'ugly') ? 'steady' : 'goes' } }),
    causes: [],
  },
];
