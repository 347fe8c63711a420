import { SENSE_DC_HIGHEST_V, SENSE_DC_LOWEST_V } from '../../compute/amp-supply.ts';
import { halfSupplyBandV } from '../../compute/half-supply.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { ampHearsRear } from '../../steps/fitted/fed-from.ts';
import { theAmp } from '../../steps/fitted/the-amp.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { batteryV } from '../../steps/supply/amp-feed.ts';
import type { Verdict } from '../verdict.ts';
import { FITTER, YOURSELF_OR_FITTER } from '../who.ts';
import { type Left, SETTINGS_LEFT } from './left.ts';
import { STARTS_WITH_KEY, THRESHOLDS, WAKES } from './listening.ts';

/** An amplifier that waits for something on its inputs, where nothing arrives: no DC, no sound, or no wire. */

const PAIR_NOT_IN_ADAPTER: Left[number] = {
  what: 'The adapter of the replaced head unit leaves the pair out',
  split: 'Look at both sides of the adapter’s plug: are the pins of the pair fitted?',
};
export const senseNoHalfSupply: Verdict = {
  id: 'sense-no-half-supply',
  title: 'The amplifier waits for DC that does not come',
  faults: ['sense-no-half-supply'],
  evidence: ['sense-dc', 'between-look', 'remote-jumper', 'last-change'],
  mends: ['unit-leads', 'amp-supply'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => {
    const { lowV, highV } = halfSupplyBandV({ supplyV: batteryV(f) });
    const seen = f.outcome('between-look') === 'box' || theAmp(f).input === 'line';
    return {
      what: 'This amplifier wakes on the DC of a speaker wire. What feeds it carries sound, and no DC.',
      certainty: seen && f.outcome('sense-dc') === 'zero' ? 'proved' : 'likely',
      howSure: is(f, 'sense-dc', 'unclear')
        ? 'There is some DC on its input wires, and too little for some amplifiers.'
        : is(f, 'sense-dc', 'zero')
          ? `There is no DC on its input wires${seen ? ', and something in between keeps it back' : ''}.`
          : 'A box or a line-level lead is in between, and such things keep DC back.',
      numbers: [
        { label: 'On each wire of a live speaker pair', value: formatRange(lowV, highV, 'V') },
        { label: 'It wakes above', value: formatRange(SENSE_DC_LOWEST_V, SENSE_DC_HIGHEST_V, 'V') },
      ],
      fix: [
        'It has a remote terminal: a wire from a feed that follows the ignition, 1 A fuse, selector to wire. That is the whole cure.',
        'No remote terminal: take the converter out and feed it from true speaker wires, input range at speaker level.',
        'Or set its selector to signal, if it has that: it then wakes by the sound.',
      ],
      tools: 'Crimp tool, 1 A fuse',
      minutes: 45,
      who: FITTER,
      notBuy: ['An amplifier: this one was never woken.', 'A reflash: the level is not what it waits for.'],
      ifDoneAnyway: 'DC fed into an input to “wake” it ends as DC in the head unit or in a coil.',
      cautions: ['bridge', 'key-off', 'minus-first'],
      proof: STARTS_WITH_KEY,
      ...(seen
        ? {}
        : {
            mayAlsoBe: [
              ampHearsRear(f)
                ? {
                    what: 'The head unit’s rear outputs are switched off, and rest at zero',
                    split: '400 Hz across a rear pair at the head unit: nothing, while the front pair reads?',
                  }
                : { what: 'The head unit sends nothing', split: silentPairSplit('front') },
              ...(is(f, 'unit-kind', 'replaced') ? [PAIR_NOT_IN_ADAPTER] : []),
            ],
          }),
    };
  },
};

/** Nobody measured what it hears: that the rear pairs are silent is the likeliest of a short list. */
const unmeasured = (f: Findings) =>
  !is(f, 'rear-pair', 'none') && !is(f, 'sense-level', 'none') && !is(f, 'sense-dc', 'zero');

const WIRE_OPEN: Left[number] = {
  what: 'A wire of its signal plug open',
  split: 'With a meter: the same 400 Hz across its inputs as across the rear pair at the head unit?',
};
/** What else keeps an amplifier asleep that a jumper wakes, and no music on the rear pairs. */
function leftUnmeasured(f: Findings): Left {
  return [
    SETTINGS_LEFT,
    ...(is(f, 'unit-kind', 'replaced') ? [PAIR_NOT_IN_ADAPTER] : []),
    WIRE_OPEN,
    {
      what: 'The part of it that listens is dead',
      split: 'With a meter: 400 Hz at its inputs above what its papers say, and it sleeps on.',
    },
  ];
}

const silentPairSplit = (pair: 'rear' | 'front') =>
  `400 Hz across the ${pair} pair at the head unit: volts? None, and some with its plug off: a wire of the pair touches metal.`;

/** The head unit sends nothing, so a listening amplifier rightly sleeps. Why it sends nothing is another question. */
export const nothingToHear: Verdict = {
  id: 'nothing-to-hear',
  title: 'The amplifier sleeps because the rear pairs carry nothing',
  faults: ['rear-channels-disabled', 'profile-reverted', 'replaced-unit-setting'],
  evidence: [
    'rear-pair',
    'sense-level',
    'sense-dc',
    'remote-jumper',
    'wakes-when-loud',
    'input-plug',
    'amp-switches',
    'unit-kind',
    'last-change',
  ],
  mends: ['settings', 'profile', 'unit'],
  article: 'what-a-reflash-is',
  // Without a reading the other flow would send it back: it has no more to ask.
  handsOver: (f) =>
    unmeasured(f)
      ? undefined
      : {
          flow: 'no-rear-sound',
          because: 'The amplifier is not at fault. The other flow finds out why the rear pairs are silent.',
          answers: { 'rear-drive': { option: 'amp' } },
        },
  remedy: (f) => {
    const { frontV, leftV, rightV } = f.values('rear-pair');
    const readToBeSilent = is(f, 'rear-pair', 'none');
    const replaced = f.outcome('unit-kind') === 'replaced';
    return {
      what: readToBeSilent
        ? 'The amplifier is not at fault: it listens to the rear pairs, and the head unit sends nothing on them.'
        : unmeasured(f)
          ? 'Likeliest: the rear pairs carry nothing, and the amplifier that listens to them rightly sleeps.'
          : 'The amplifier is not at fault: it listens to the rear pairs, and hears nothing on them.',
      certainty: readToBeSilent ? 'proved' : unmeasured(f) ? 'short list' : 'likely',
      howSure: readToBeSilent
        ? 'With the same tone the front pair plays and the rear pairs carry nothing.'
        : !is(f, 'remote-jumper', 'wakes')
          ? 'Nothing was read at its inputs, its plug is home and its selectors fit.'
          : theAmp(f).turnOn === 'dc'
            ? 'A jumper wakes it, its plug is home, and nothing in between keeps the DC of a speaker wire back.'
            : 'A jumper wakes it, the highest volume does not, and its plug is home.',
      numbers: [
        ...(frontV === undefined ? [] : [{ label: 'Front pair, as read', value: formatQuantity(frontV, 'V', 2) }]),
        ...(leftV === undefined || rightV === undefined
          ? []
          : [
              {
                label: 'Rear pairs, as read',
                value: `${formatQuantity(leftV, 'V', 2)} and ${formatQuantity(rightV, 'V', 2)}`,
              },
            ]),
      ],
      fix: [
        'Fader in the middle, rear control up, and try again: both silence the rear completely.',
        replaced
          ? 'The replaced unit’s own menu: are its rear outputs on?'
          : 'Rear channels that were never on, or went off at a workshop: a dealer or a specialist enables them in the head unit.',
        unmeasured(f)
          ? 'Before anybody is paid: a meter and the 400 Hz tone, or a fitter who has both. The checks below tell the rest apart.'
          : 'Go on with “No sound from the rear”: it knows what you have answered and tells them apart.',
      ],
      tools: 'None to begin with',
      minutes: 15,
      who: YOURSELF_OR_FITTER,
      notBuy: [
        unmeasured(f)
          ? 'An amplifier, before its inputs were measured.'
          : 'An amplifier: it does what it was made for.',
        'A remote wire: it would wake, and still have nothing to play.',
      ],
      cautions: ['back-to-full', 'bridge'],
      proof: unmeasured(f)
        ? WAKES
        : 'Same 400 Hz tone: the rear pairs read 0.7 to 1.4 of the front pair, and the amplifier wakes.',
      mayAlsoBe: unmeasured(f)
        ? leftUnmeasured(f)
        : [
            ...(replaced
              ? [{ what: 'Rear outputs off in the replaced head unit', split: 'Look through its own menu.' }]
              : [
                  {
                    what: 'Rear channels switched off as delivered',
                    split: 'Has the rear ever played? Never, on a bike built with front speakers only.',
                  },
                  {
                    what: 'Back on a profile without rear channels',
                    split: 'It played before, and a workshop had the bike since: ask what was done to the head unit.',
                  },
                ]),
            { what: 'The fader', split: 'Put it in the middle.' },
          ],
    };
  },
};

/** What may be wrong at the head unit already, as long as its pair was not read to play. */
function silentAtTheUnit(f: Findings): Left {
  // Half the supply on one wire of a pair is a head unit that is awake, and a wire that is not there.
  if (f.outcome('sense-dc') === 'one-odd') return [];
  const pair = ampHearsRear(f) ? 'rear' : 'front';
  const noDc = f.outcome('sense-dc') === 'zero';
  const plays = pair === 'rear' && ['ok', 'uneven', 'one-only'].includes(f.outcome('rear-pair') ?? '');
  const tone = silentPairSplit(pair);
  const paused = 'music paused: half the supply on each speaker wire?';
  if (noDc && plays) return [{ what: 'Outputs that carry no DC by design', split: `At the head unit, ${paused}` }];
  if (plays) return [];
  return noDc
    ? [{ what: 'The head unit sends nothing, or carries no DC by design', split: `${tone} Then, ${paused}` }]
    : [{ what: 'The head unit sends nothing', split: tone }];
}

export const inputPlugOff: Verdict = {
  id: 'amp-input-plug-off',
  title: 'The amplifier’s signal plug is off, or a wire of it',
  faults: ['amp-input-plug-off'],
  evidence: ['input-plug', 'supply-wiggle', 'sense-level', 'sense-dc', 'rear-pair', 'unit-kind'],
  mends: ['unit-leads'],
  remedy: (f) => {
    const seen = f.outcome('input-plug') === 'cured' || f.outcome('supply-wiggle') === 'input';
    const lost = f.outcome('sense-level') === 'none' && f.outcome('rear-pair') === 'ok';
    const { lowV, highV } = halfSupplyBandV({ supplyV: batteryV(f) });
    return {
      what: 'What the amplifier listens to does not arrive: its signal plug is not home, or a joint before it is open.',
      certainty: seen || lost ? 'proved' : 'likely',
      howSure: seen
        ? 'It wakes when the plug is pushed home.'
        : lost
          ? 'The head unit sends the tone, and nothing of it arrives at the amplifier.'
          : 'Nothing that it could listen to arrives at its inputs.',
      numbers: [THRESHOLDS, { label: 'DC on each wire of a live speaker pair', value: formatRange(lowV, highV, 'V') }],
      fix: [
        ...(is(f, 'sense-dc', 'one-odd')
          ? [
              'First, key off, plugs apart at both ends, meter on ohms: each wire of that pair to the frame, above 100 kΩ? One that touches metal kills an output of the head unit.',
            ]
          : []),
        'Key off. Pull the signal plug, straighten or push out its pins, push it home until it locks.',
        'Follow the lead toward the head unit: crimps, taps, an adapter.',
        'Tie the loom so that nothing pulls.',
      ],
      tools: 'None, or a crimp tool',
      minutes: 15,
      who: YOURSELF_OR_FITTER,
      notBuy: ['A reflash or an amplifier.'],
      cautions: ['key-off', 'bridge'],
      proof: WAKES,
      ...(seen
        ? {}
        : {
            mayAlsoBe: [...(is(f, 'unit-kind', 'replaced') ? [PAIR_NOT_IN_ADAPTER] : []), ...silentAtTheUnit(f)],
          }),
    };
  },
};
