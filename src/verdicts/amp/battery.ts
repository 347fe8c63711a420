import {
  CHARGING_HEALTHY_HIGHEST_V,
  CHARGING_HEALTHY_LOWEST_V,
  CHARGING_MOST_V,
  KEY_ON_FLAT_V,
  KEY_ON_HEALTHY_V,
  OVERVOLTAGE_CUT_HIGHEST_V,
  OVERVOLTAGE_CUT_LOWEST_V,
  sagV,
  UNDERVOLTAGE_CUT_HIGHEST_V,
} from '../../compute/amp-supply.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { theAmp } from '../../steps/fitted/the-amp.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { BATTERY_OHM, batteryV, LAMP_A } from '../../steps/supply/amp-feed.ts';
import { lostInBatteryV } from '../../steps/supply/weakest-part.ts';
import type { RemedyNumber, Verdict } from '../verdict.ts';
import { YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';
import { cutOut, denseDrawA, fullDrawA } from './numbers.ts';

/** A battery with too little or a charging system with too much: the amplifier only obeys. */

const CHARGING = formatRange(CHARGING_HEALTHY_LOWEST_V, CHARGING_HEALTHY_HIGHEST_V, 'V');

const lowestReadV = (f: Findings): number =>
  Math.min(batteryV(f), f.values('supply-under-load')['batteryV'] ?? Infinity);

/** What reads well without the lamp was not emptied over night. */
const mayNeverGoOff = (f: Findings): boolean =>
  theAmp(f).turnOn === 'wire' && !is(f, 'remote-key-off', 'dead') && !is(f, 'amp-terminals', 'ok', 'unclear');

const volts = (label: string, value: number): RemedyNumber => ({ label, value: formatQuantity(value, 'V', 3) });

/** Where a current pulls a battery of so many ohms. */
const pulledTo = (f: Findings, openV: number, internalOhm: number, currentA: number): readonly RemedyNumber[] => [
  cutOut,
  {
    label: currentA === fullDrawA(f) ? 'Full bass takes' : 'Dense loud music takes',
    value: formatQuantity(currentA, 'A', 2),
  },
  volts('And pulls it down to about', sagV({ openV, internalOhm, currentA })),
];

const wasRead = (f: Findings): boolean =>
  f.values('amp-terminals')['batteryV'] !== undefined || f.values('supply-under-load')['batteryV'] !== undefined;

const emptyNumbers = (f: Findings): readonly RemedyNumber[] => [
  ...(wasRead(f) ? [volts('Battery, as read', lowestReadV(f))] : []),
  { label: 'Key on, engine off, healthy', value: `${formatQuantity(KEY_ON_HEALTHY_V, 'V')} or more` },
  { label: 'Nearly empty', value: `below ${formatQuantity(KEY_ON_FLAT_V, 'V')}` },
  ...(wasRead(f) ? pulledTo(f, lowestReadV(f), BATTERY_OHM, denseDrawA(f)) : [cutOut]),
];

/** What it lost to the lamp is its resistance, and tells what full bass does to it. */
function givesWayNumbers(f: Findings): readonly RemedyNumber[] {
  const lostV = lostInBatteryV(f) ?? 0;
  return [
    volts('Battery without the lamp, as read', batteryV(f)),
    volts('With the lamp, as read', lowestReadV(f)),
    { label: 'Lost in the battery', value: formatQuantity(lostV, 'V', 2) },
    { label: 'A sound one loses', value: `about ${formatQuantity(LAMP_A * BATTERY_OHM, 'V', 1)}` },
    ...pulledTo(f, batteryV(f), lostV / LAMP_A, fullDrawA(f)),
  ];
}

export const batteryLow: Verdict = {
  id: 'battery-low',
  title: 'The battery is too low for the amplifier',
  faults: ['battery-undercharged', 'battery-worn'],
  evidence: ['amp-terminals', 'supply-under-load', 'what-else', 'remote-key-off', 'last-change'],
  mends: ['amp-supply'],
  remedy: (f) => {
    const belowCut = wasRead(f) && lowestReadV(f) < UNDERVOLTAGE_CUT_HIGHEST_V;
    const full = lostInBatteryV(f) !== undefined && lowestReadV(f) >= KEY_ON_FLAT_V;
    const neverOff = mayNeverGoOff(f);
    return {
      what: full
        ? 'The battery gives way when something draws from it. The amplifier switches itself off below its least volts.'
        : `The battery is ${wasRead(f) ? '' : 'most likely '}nearly empty. The amplifier switches itself off below its least volts.`,
      certainty: neverOff ? 'short list' : belowCut ? 'proved' : 'likely',
      howSure: !wasRead(f)
        ? 'The whole bike is short of volts, and nobody has read them yet: read the posts first.'
        : belowCut
          ? 'The battery itself lies where amplifiers cut out.'
          : full
            ? 'With the lamp on, the battery itself loses more over a sound one than its leads do.'
            : 'The battery is so low that loud music pulls it under the cut-out. Nothing else can be judged before it is full.',
      numbers: full ? givesWayNumbers(f) : emptyNumbers(f),
      fix: [
        'Charge it fully, with a charger made for its chemistry. Then four hours’ rest.',
        'Lead-acid, rested and full: 12.7 V or more. Less, or it falls again within days: the battery is worn.',
        `Outdoors, engine at about 3000 rpm, lamps on: ${CHARGING}? Less: the charging system.`,
        'Then look at the amplifier again.',
      ],
      tools: 'Charger, meter',
      minutes: 30,
      who: YOURSELF,
      notBuy: ['An amplifier, before the battery is full.', 'A battery, before this one was charged and rested.'],
      cautions: ['battery-gas', 'outdoors'],
      proof: full
        ? 'Ten minutes at the volume that failed, engine off: the amplifier stays on.'
        : `Key on, music playing: ${formatQuantity(KEY_ON_HEALTHY_V, 'V')} or more at the posts, and the amplifier stays on for ten minutes.`,
      mayAlsoBe: [
        ...(neverOff
          ? [
              {
                what: 'The amplifier never goes off and empties it',
                split:
                  'Battery charged, key off for ten minutes: is its lamp still on, or 12 V on its remote terminal?',
              },
            ]
          : []),
        { what: 'The battery is only empty', split: 'It takes a full charge and still reads 12.7 V the next day.' },
        {
          what: 'The battery is worn',
          split: 'Full and rested, it falls below 11.8 V within fifteen minutes of key on.',
        },
        {
          what: 'The charging system does not keep up',
          split: 'Outdoors, about 3000 rpm with lamps on: below 13.5 V at the posts?',
        },
      ],
    };
  },
};

export const regulatorHigh: Verdict = {
  id: 'regulator-out-of-range',
  title: 'The charging voltage is too high',
  faults: ['regulator-out-of-range'],
  evidence: ['amp-terminals', 'what-else'],
  mends: ['amp-supply'],
  remedy: (f) => ({
    what: is(f, 'amp-terminals', 'battery-high')
      ? 'The battery reads above what a healthy charging system gives. An amplifier switches off there to save itself.'
      : 'It goes off with the engine running, loud or not. Most likely it gets too many volts there, and saves itself.',
    certainty: 'likely',
    howSure: !is(f, 'amp-terminals', 'battery-high')
      ? 'Charging is what changes when the engine starts, and it shakes every contact. Nobody has read it yet: do that first.'
      : `It lies ${batteryV(f) >= OVERVOLTAGE_CUT_LOWEST_V ? 'where amplifiers switch off' : 'above every healthy regulator'}. With the engine off no regulator does that: read it again, running.`,
    numbers: [
      ...(is(f, 'amp-terminals', 'battery-high')
        ? [{ label: 'Battery, as read', value: formatQuantity(batteryV(f), 'V', 3) }]
        : []),
      { label: 'Healthy at 3000 rpm', value: CHARGING },
      { label: 'Too high', value: `above ${formatQuantity(CHARGING_MOST_V, 'V')}` },
      {
        label: 'Amplifiers switch off above',
        value: formatRange(OVERVOLTAGE_CUT_LOWEST_V, OVERVOLTAGE_CUT_HIGHEST_V, 'V'),
      },
    ],
    fix: [
      ...(is(f, 'amp-terminals', 'battery-high')
        ? ['A charger on it? Off. A weak battery in the meter reads high: put a fresh one in. Read again.']
        : []),
      'Outdoors, about 3000 rpm: volts at the posts, above what stands here? Leave the sound off until it is right.',
      'Above 15 V: engine off, and do not ride on. A lithium battery that is warm or swollen: hands off, and no charger.',
      'Key off. Regulator’s plug and ground: a bad ground makes it read low and charge high. Clean both.',
      'Still too high at 3000 rpm: replace the regulator. Then look at the battery: it may have boiled.',
    ],
    tools: 'Meter, contact cleaner',
    minutes: 40,
    who: YOURSELF_OR_FITTER,
    notBuy: [
      'An amplifier: it does right to switch off there.',
      'A regulator, before it was read with the engine running.',
    ],
    cautions: ['outdoors', 'hot', 'battery-gas'],
    proof: `Outdoors, about 3000 rpm, lamps on: ${CHARGING} at the posts, and the amplifier stays on.`,
    ...(!is(f, 'amp-terminals', 'battery-high') && {
      mayAlsoBe: [
        {
          what: 'The charging system does not keep up',
          split: 'Outdoors, about 3000 rpm with lamps on: below 13.5 V at the posts?',
        },
        {
          what: 'A contact that opens with movement or heat',
          split: 'Engine off: press its rings, its fuse and its plugs with one finger. Does its lamp flicker?',
        },
      ],
    }),
  }),
};
