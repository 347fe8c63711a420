import { engineCompare } from '../src/steps/ears/engine-compare.ts';
import { loudCompare } from '../src/steps/ears/loud-compare.ts';
import { noiseWhere } from '../src/steps/ears/noise-where.ts';
import { revsCompare } from '../src/steps/ears/revs-compare.ts';
import { whereChanges } from '../src/steps/ears/where-changes.ts';
import { ampMayBeFitted } from '../src/steps/fitted/amp-there.ts';
import { lineConverter } from '../src/steps/fitted/line-converter.ts';
import { onlyAmp } from '../src/steps/fitted/which-amp.ts';
import { type Findings, is } from '../src/steps/outcome.ts';
import { tonesOff } from '../src/steps/profile/tones-off.ts';
import { tonesRunning } from '../src/steps/profile/tones-running.ts';
import { topStep } from '../src/steps/profile/top-step.ts';
import { speedOff } from '../src/steps/settings/speed-off.ts';
import { batteryRipple } from '../src/steps/supply/battery-ripple.ts';
import { chargingVolts } from '../src/steps/supply/charging-volts.ts';
import { starterTurns } from '../src/steps/told/starter-turns.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { opening } from './eq-changes-when-engine-starts.opening.ts';
import { before, flow } from './kit.ts';

/** It is not the tone that changes: speakers fall silent. */
const fallsSilent = (f: Findings): boolean => is(f, 'where-changes', 'silent');

/** A noise is heard with the music paused: no amplifier that gives way makes one. */
const whines = (f: Findings): boolean => is(f, 'engine-compare', 'noise');

/** With the engine running it sounds otherwise: another tone, another level, a noise, or less bass. */
export const eqChangesWhenEngineStarts = flow(opening, {
  look: [
    whereChanges,
    engineCompare,
    noiseWhere,
    lineConverter,
    speedOff,
    loudCompare,
    revsCompare,
    starterTurns,
    toolsAtHand,
  ],
  measure: [metersDigit, chargingVolts, batteryRipple, tonesOff, tonesRunning, topStep],
  safe: [
    before(loudCompare, engineCompare),
    before(noiseWhere, engineCompare),
    before(lineConverter, noiseWhere),
    before(revsCompare, loudCompare),
    before(tonesOff, metersDigit),
    before(topStep, metersDigit, tonesOff),
  ],
  causes: [
    'eq-by-design',
    'unaltered-with-amp',
    'amplified-wrong-one',
    'speed-volume',
    'replaced-compensation',
    'bass-masked',
    'noise-with-engine',
    'charging-ripples',
    'amp-ground-resistive',
    'battery-worn',
    'charging-too-low',
    'battery-undercharged',
  ],
  handsOver: [
    {
      flow: 'one-speaker-or-side-dead',
      title: 'Speakers fall silent with the engine running',
      because:
        'It is not the tone: speakers fall silent while the engine runs, and play again without it. That is looked for in the next part.',
      isIt: { when: (f) => fallsSilent(f) && !ampMayBeFitted(f), by: [whereChanges] },
      told: {
        'which-corner': { option: 'plays' },
        'rear-history': { option: 'comes-and-goes' },
        'when-silent': { option: 'running' },
      },
      causes: [],
    },
    {
      flow: 'distortion-at-volume',
      title: 'The head unit is driven too far',
      because:
        'Loud, it is cleaner with the engine running: the head unit runs out of volts without it, and no amplifier is there that could. What drives it that far is looked for in the next part.',
      isIt: { when: (f) => is(f, 'loud-compare', 'cleaner') && !ampMayBeFitted(f), by: [loudCompare] },
      causes: [],
    },
    {
      flow: 'amp-wont-turn-on',
      title: 'The amplifier gives way',
      because: (f) =>
        fallsSilent(f)
          ? 'It is not the tone: speakers fall silent while the engine runs, and an amplifier may drive them. Whether that stays on is looked for in the next part.'
          : is(f, 'revs-compare', 'revs', 'gear')
            ? 'At idle the supply of the amplifier gives way when it is loud; with the revs up it holds. What does that is looked for in the next part.'
            : 'With the engine off the supply of the amplifier gives way when it is loud; with it on it is clean. What does that is looked for in the next part.',
      // A whine is heard on an amplifier that is on: there is nothing to look for where one goes off.
      sensible: (f) => ampMayBeFitted(f) && !whines(f),
      isIt: { when: (f) => fallsSilent(f) && ampMayBeFitted(f), by: [whereChanges] },
      told: (f) => ({
        ...onlyAmp(f),
        // Without the engine it gives way, with it it plays.
        'amp-history': { option: 'comes-and-goes' },
        ...(fallsSilent(f) && { 'amp-goes-off': { option: 'running' } }),
      }),
      causes: [
        'fuse-holder-bad',
        'plus-lead-too-thin',
        'battery-lug-loose',
        'amp-terminal-loose',
        'ground-lead-too-thin',
        'shared-ground-screw',
        'both-leads-bad',
        'remote-on-permanent',
        'battery-cuts-off',
      ],
    },
  ],
});
