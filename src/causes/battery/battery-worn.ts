import { formatQuantity } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import {
  batteryRead,
  CHARGING_BAND,
  FULL_AND_RESTED,
  givesWay,
  KEY_ON_FIGURES,
  KEY_ON_OR_MORE,
  NEARLY_EMPTY,
  RIPPLE_FIGURES,
  RUNNING,
  rippleRead,
  staysOn,
  whatItFeeds,
} from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import { CUT_OUT } from '../supply-ways.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';

/** It came because of a noise, not because something gives way. */
const whines = (f: Findings): boolean => is(f, 'engine-compare', 'noise');

export const batteryWorn: Cause = {
  id: 'battery-worn',
  title: 'The battery is worn out',
  faults: ['battery-worn'],
  split: {
    byMeter: `Full and rested, key on for fifteen minutes, music off: does it fall ${NEARLY_EMPTY}?`,
    touches: ['battery-plus'],
    needs: ['key-on'],
    without: 'Charge it overnight: is the starter still slow next morning, or do the lights dim as it cranks?',
    cautions: ['battery-gas', 'own-charger'],
  },
  mends: ['amp-supply'],
  article: 'the-charging-system',
  remedy: (f) => ({
    what: 'The battery sags under load: its internal resistance is up and its capacity is gone.',
    background: whines(f)
      ? 'It also smooths the ripple of the charging no more, and the amplifier makes a whine of that. Three to five years, or one deep discharge, will do it.'
      : 'Three to five years, or one deep discharge, will do it. With no load it may read fine. A new one that was never charged full, or a loose ring on it, gives way just like that.',
    numbers: [
      ...batteryRead(f),
      ...givesWay(f),
      ...(whines(f) ? [...rippleRead(f), ...RIPPLE_FIGURES] : []),
      ...KEY_ON_FIGURES,
      ...(isWithoutAmp(f) ? [] : [CUT_OUT]),
    ],
    repair: [{ do: 'replace-battery' }],
    fix: [
      'Key off. Does any ring on the posts turn by hand? Then that comes first: see to it and try again.',
      `Charge the old one fully first, then four hours’ rest. ${FULL_AND_RESTED} Key on for fifteen minutes: ${NEARLY_EMPTY}, it is worn.`,
      'It holds, or it is not two years old? A shop tests it under load in minutes. Only if it fails there, go on.',
      'Key off. All negative rings off together, then positive.',
      'Fit the size and chemistry the bike calls for, fully charged before it goes in.',
      'Rings bright, positive tight, then negative. No ring may turn by hand.',
      `${RUNNING}: ${CHARGING_BAND} at the posts? If not, the charging will ruin the next one too.`,
    ],
    tools: 'Charger, meter, spanner',
    minutes: 40,
    who: YOURSELF,
    parts: [
      `Battery, ${formatQuantity(estimate(f.rig, 'batteryAh').value, 'Ah')} or what is printed on the old one, same chemistry`,
    ],
    notBuy: [
      'A battery, before this one has been charged and rested, its rings are tight and a test under load has failed it.',
      `${whatItFeeds(f)} or a capacitor: it is the battery that gives way.`,
    ],
    cautions: ['outdoors', 'hot'],
    proofOfCure: {
      byEar: whines(f)
        ? 'Outdoors, idling and at 3000 rpm, music paused: the whine is gone. Still there: it is not the battery alone.'
        : `Ten minutes at the volume where it failed, engine off: ${staysOn(f)}, and the bike starts.`,
      byMeter: `Key on, music playing: ${KEY_ON_OR_MORE} at the posts after ten minutes.`,
      touches: ['battery-plus'],
      needs: ['head-unit-playing'],
    },
  }),
};
