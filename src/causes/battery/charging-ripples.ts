import { RIPPLE_BAD_V } from '../../compute/alternator.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { FULL_AND_RESTED, RIPPLE_FIGURES, rippleRead, STATOR_CHECK } from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

const TOO_MUCH = formatQuantity(RIPPLE_BAD_V, 'V');

export const chargingRipples: Cause = {
  id: 'charging-ripples',
  title: 'The charging sends ripple',
  faults: ['regulator-ripple'],
  split: {
    byMeter: `Idling, lights on, meter on AC volts: above ${TOO_MUCH} at the battery posts?`,
    touches: ['battery-plus'],
    needs: ['engine-running'],
    without:
      'Outdoors, idling: a growl below the whine, there with the signal plug off as well, and a starter as brisk as ever?',
    cautions: ['outdoors', 'hot'],
    asStep: { byMeter: 'battery-ripple' },
  },
  mends: ['amp-supply'],
  article: 'noise-and-ground-loops',
  remedy: (f) => ({
    what: 'The regulator lets ripple through: it comes in over the supply, whatever else is unplugged.',
    background: 'A diode that is open or shorted leaves a gap in every turn, and the battery can’t fill it.',
    numbers: [...rippleRead(f), ...RIPPLE_FIGURES],
    repair: [{ do: 'repair-charging' }],
    fix: [
      `Battery first: charge it fully. ${FULL_AND_RESTED} Less: a worn one smooths nothing, and a good regulator looks bad.`,
      'Key off, regulator cool. Its plug and ground: green, brown, melted? Clean both bright. Read again.',
      ...STATOR_CHECK,
    ],
    tools: 'Meter, contact cleaner',
    minutes: 60,
    who: YOURSELF_OR_FITTER,
    parts: ['Regulator or stator, only the one that measured bad'],
    notBuy: ['A noise filter: the next thing to fail is the battery.', 'An amplifier or a head unit.'],
    cautions: ['ohms-dead', 'own-charger'],
    proofOfCure: {
      byEar: 'Outdoors, idling and at 3000 rpm, music paused: silent with your ear at the cone.',
      byMeter: 'Idling, lights on, AC volts at the posts: at most 0.2 V.',
      touches: ['battery-plus'],
    },
  }),
};
