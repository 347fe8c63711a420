import { estimate } from '../../rig/rig.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { drawFigures } from '../amp-load.ts';
import {
  batteryRead,
  CHARGING_BAND,
  CHARGING_FIGURE,
  chargingRead,
  FULL_AND_RESTED,
  RUNNING,
  STATOR_CHECK,
  staysOn,
} from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

/** What it makes is enough as soon as the gear is off: nothing is broken. */
const rightAtIdleWithoutGear = (f: Findings): boolean => is(f, 'revs-compare', 'gear');

/** How the whole of it is heard to be right again. */
const RIGHT_AT_IDLE =
  'Outdoors, idling, as loud as it failed, gear as you will have it from now on: clean for a minute, and the same at 2500 rpm.';

export const chargingTooLow: Cause = {
  id: 'charging-too-low',
  title: 'The charging does not keep up',
  faults: ['regulator-out-of-range@low', 'stator-phase-lost', 'load-above-idle-output'],
  split: {
    byMeter: `${RUNNING}: below 13.5 V at the battery posts?`,
    touches: ['battery-plus'],
    needs: ['engine-running'],
    without: 'Outdoors, lights on, from idle to about 3000 rpm: do the lights stay as dim as with the engine off?',
    cautions: ['outdoors', 'hot'],
    asStep: { byMeter: 'charging-volts' },
  },
  mends: ['amp-supply'],
  article: 'the-charging-system',
  remedy: (f) => ({
    what: rightAtIdleWithoutGear(f)
      ? 'At idle the battery pays for the music: bike, heated gear and music together take more than the alternator makes there.'
      : 'The battery is paying for the music: the charging system gives less than the bike and its gear use.',
    background: 'A weak regulator, a lost stator phase, or more load than the stator can supply at idle.',
    numbers: [
      ...batteryRead(f),
      ...chargingRead(f),
      CHARGING_FIGURE,
      {
        id: 'made-at-idle',
        label: 'The stator makes at idle',
        value: estimate(f.rig, 'chargingIdleA').value,
        unit: 'A',
      },
      {
        id: 'made-at-cruise',
        label: 'And at 3000 rpm',
        value: estimate(f.rig, 'chargingCruiseA').value,
        unit: 'A',
      },
      ...drawFigures(f),
    ],
    repair: [{ do: 'take-off-load' }, { do: 'repair-charging' }, { do: 'charge-battery' }],
    fix: [
      `Heated gear, extra lights and chargers off. ${RUNNING}: ${CHARGING_BAND} at the posts now? Then it is the load: at idle leave them off and turn the music down.`,
      'Still low: key off, regulator cool. Its plug and ground: green, brown, melted? Clean both bright.',
      ...STATOR_CHECK,
      `Then charge the battery fully. ${FULL_AND_RESTED}`,
    ],
    tools: 'Meter, contact cleaner, charger',
    minutes: 60,
    who: YOURSELF_OR_FITTER,
    parts: ['Regulator or stator, only the one that measured bad'],
    notBuy: [
      `${isWithoutAmp(f) ? 'A' : 'An amplifier, or a'} battery: the new one would go flat just the same.`,
      'A stator or a regulator, before it has measured bad.',
    ],
    cautions: ['ohms-dead'],
    proofOfCure: {
      byEar: is(f, 'revs-compare', 'gear', 'revs')
        ? RIGHT_AT_IDLE
        : `An hour on the road with music as usual, then ten loud minutes with the engine off: ${staysOn(f)}.`,
      byMeter: `${RUNNING}, music as usual: ${CHARGING_BAND} at the posts.`,
      touches: ['battery-plus'],
    },
  }),
};
