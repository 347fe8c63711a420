import { CHARGING_MOST_V, OVERVOLTAGE_CUT_HIGHEST_V, OVERVOLTAGE_CUT_LOWEST_V } from '../../compute/amp-supply.ts';
import { batteryRead, CHARGING_BAND, CHARGING_FIGURE, chargingRead, RUNNING, staysOn } from '../battery-state.ts';
import type { Cause } from '../cause.ts';
import type { Figure } from '../figure.ts';
import { isWithoutAmp } from '../the-amp.ts';
import { YOURSELF_OR_FITTER } from '../who.ts';

const SWITCHES_OFF_ABOVE: Figure = {
  id: 'overvoltage-cut',
  label: 'Amplifiers switch off above',
  value: [OVERVOLTAGE_CUT_LOWEST_V, OVERVOLTAGE_CUT_HIGHEST_V],
  unit: 'V',
};

export const chargingTooHigh: Cause = {
  id: 'charging-too-high',
  title: 'The charging voltage is too high',
  faults: ['regulator-out-of-range@high'],
  split: {
    byMeter: `${RUNNING}: above 15 V at the battery posts?`,
    touches: ['battery-plus'],
    needs: ['engine-running'],
    without:
      'Outdoors, from idle to about 3000 rpm: do the lights get glaringly bright, or does the battery smell or feel warm?',
    cautions: ['outdoors', 'hot'],
    asStep: { byMeter: 'charging-volts' },
  },
  mends: ['amp-supply'],
  article: 'the-charging-system',
  remedy: (f) => ({
    what: isWithoutAmp(f)
      ? 'The regulator is not limiting: with the engine running everything on the bike gets too many volts.'
      : 'The regulator is not limiting: with the engine running an amplifier gets too many volts and shuts down to save itself.',
    background:
      'A bad regulator ground makes it sense low and charge high. With the engine off nothing shows, and on the road it may go higher than at 3000 rpm on the stand.',
    numbers: [
      ...batteryRead(f),
      ...chargingRead(f),
      CHARGING_FIGURE,
      { id: 'charging-too-high', label: 'Too high', value: CHARGING_MOST_V, unit: 'V', limit: 'above' },
      ...(isWithoutAmp(f) ? [] : [SWITCHES_OFF_ABOVE]),
    ],
    repair: [{ do: 'repair-charging' }],
    fix: [
      'Charger on? Take it off. A weak battery in the meter makes it read high: fit a fresh one. Read again.',
      `Sound off until it is right. ${RUNNING}: above 15 V? Engine off, and do not ride on.`,
      'Key off, regulator cool. Make its plug and ground bright and tight. Read again.',
      'Still too high: a new regulator. Then check the battery: it may have boiled.',
    ],
    tools: 'Meter, contact cleaner, spanner',
    minutes: 40,
    who: YOURSELF_OR_FITTER,
    parts: ['Regulator, if a clean plug and ground do not cure it'],
    notBuy: [
      isWithoutAmp(f)
        ? 'A head unit, before the voltage is right: the next one would get as much.'
        : 'An amplifier: it is right to switch off when the volts get too high for it.',
      'A regulator, before it has been measured with the engine running and a clean ground.',
    ],
    cautions: ['own-charger', 'acid'],
    proofOfCure: {
      byEar: `Half an hour on the road, music on: ${staysOn(f)}, and the lights are as bright as usual.`,
      byMeter: `${RUNNING}: ${CHARGING_BAND} at the posts.`,
      touches: ['battery-plus'],
    },
  }),
};
