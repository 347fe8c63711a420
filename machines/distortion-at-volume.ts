import { ampAtTop } from '../src/steps/amplifier/amp-at-top.ts';
import { ampSwitches } from '../src/steps/amplifier/amp-switches.ts';
import { gainForVolume } from '../src/steps/amplifier/gain-for-volume.ts';
import { gainLowest } from '../src/steps/amplifier/gain-lowest.ts';
import { highpassTry } from '../src/steps/amplifier/highpass-try.ts';
import { lampAtVolume } from '../src/steps/amplifier/lamp-at-volume.ts';
import { speakerPapers } from '../src/steps/amplifier/speaker-papers.ts';
import { bassOrAll } from '../src/steps/ears/bass-or-all.ts';
import { cleanEnough } from '../src/steps/ears/clean-enough.ts';
import { cleanSource } from '../src/steps/ears/clean-source.ts';
import { conePress } from '../src/steps/ears/cone-press.ts';
import { engineCompare } from '../src/steps/ears/engine-compare.ts';
import { panelPress } from '../src/steps/ears/panel-press.ts';
import { sidesSwapped } from '../src/steps/ears/sides-swapped.ts';
import { steppedTone } from '../src/steps/ears/stepped-tone.ts';
import { volumeOnset } from '../src/steps/ears/volume-onset.ts';
import { whereHarsh } from '../src/steps/ears/where-harsh.ts';
import { ampMayBeFitted } from '../src/steps/fitted/amp-there.ts';
import { ampPair } from '../src/steps/fitted/the-amp.ts';
import { onlyAmp } from '../src/steps/fitted/which-amp.ts';
import { type Findings, is } from '../src/steps/outcome.ts';
import { tonesOff } from '../src/steps/profile/tones-off.ts';
import { phoneFlat } from '../src/steps/settings/phone-flat.ts';
import { unitFlat } from '../src/steps/settings/unit-flat.ts';
import type { Facts } from '../src/steps/step.ts';
import { chargingVolts } from '../src/steps/supply/charging-volts.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { unitAtTop } from '../src/steps/unit/unit-at-top.ts';
import { opening } from './distortion-at-volume.opening.ts';
import { before, flow } from './kit.ts';
import { SUPPLY_CAUSES } from './shared-causes.ts';

/** Of two amplifiers it is the one whose speakers distort. */
function meantOf(f: Findings): Facts {
  const isSaid = f.outcome('where-harsh') !== undefined && !is(f, 'where-harsh', 'all', 'cannot');
  return isSaid && (f.rig.amps?.length ?? 0) > 1 ? { 'which-amp': { option: ampPair(f) } } : {};
}

/** It plays, and distorts when it is loud: rough, rattling, or chopped. */
export const distortionAtVolume = flow(opening, {
  look: [
    whereHarsh,
    volumeOnset,
    bassOrAll,
    cleanEnough,
    cleanSource,
    phoneFlat,
    unitFlat,
    lampAtVolume,
    gainLowest,
    gainForVolume,
    ampSwitches,
    highpassTry,
    speakerPapers,
    panelPress,
    conePress,
    sidesSwapped,
    steppedTone,
    engineCompare,
    toolsAtHand,
  ],
  measure: [metersDigit, chargingVolts, tonesOff, unitAtTop, ampAtTop],
  safe: [
    // Where it distorts is heard before anything is opened, and settings are flat before readings that they change.
    before(panelPress, whereHarsh),
    before(conePress, whereHarsh),
    before(sidesSwapped, whereHarsh, conePress),
    before(gainLowest, whereHarsh),
    // What rises from the middle on is seldom the supply: that is known before anybody looks at a lamp.
    // And whether it is loud enough where it is still clean: a lamp that goes may only say that it is turned up too far.
    before(lampAtVolume, whereHarsh, volumeOnset, cleanEnough),
    before(gainForVolume, lampAtVolume, gainLowest),
    before(tonesOff, metersDigit),
    // A wave that is cut off burns coils: no tone goes to the top while a lamp already says that something gives way.
    before(steppedTone, lampAtVolume, whereHarsh),
    // Whatever lifts the bass is found before volts are read that it lifts as well.
    before(ampAtTop, metersDigit, lampAtVolume, cleanSource, unitFlat),
    before(unitAtTop, metersDigit, cleanSource, unitFlat),
  ],
  causes: [
    'unit-driven-too-far',
    'unaltered-with-amp',
    'range-too-sensitive',
    'amp-input-too-low',
    'gain-too-high',
    'highpass-off',
    'phone-tone-up',
    'tone-controls-up',
    'speed-volume',
    'speaker-underrated',
    'coil-rubbing',
    'mount-loose',
    'trim-rattles',
    'amp-channel-rough',
    // Without an amplifier; else it is what the next flow looks for.
    'battery-undercharged',
    'charging-too-low',
  ],
  handsOver: [
    {
      flow: 'amp-wont-turn-on',
      title: 'The amplifier gives way: supply, load or protection',
      because:
        'The amplifier cuts out when it is loud: its supply gives way, or it protects itself. What does that is looked for in the next part.',
      told: (f) => ({
        ...(is(f, 'lamp-at-volume', 'goes') && { 'amp-goes-off': { option: 'loud' } }),
        ...onlyAmp(f),
        ...meantOf(f),
      }),
      sensible: ampMayBeFitted,
      causes: [
        ...SUPPLY_CAUSES,
        'remote-on-permanent',
        'amp-too-hot',
        'water-inside',
        'load-too-low',
        'battery-undercharged',
        'battery-worn',
        'battery-cuts-off',
        'charging-too-low',
      ],
    },
    {
      flow: 'eq-changes-when-engine-starts',
      title: 'The head unit lifts the bass with the engine',
      because:
        'With the engine running the head unit itself lifts the bass, and what plays it runs out of reach. That is looked for in the next part.',
      causes: ['amplified-wrong-one'],
    },
  ],
});
