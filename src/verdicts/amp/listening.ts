import { SENSE_DC_HIGHEST_V, SENSE_DC_LOWEST_V, SENSE_HIGHEST_V, SENSE_LOWEST_V } from '../../compute/amp-supply.ts';
import { voltageRatio } from '../../compute/decibel.ts';
import { halfSupplyBandV } from '../../compute/half-supply.ts';
import { levelV } from '../../compute/level.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import { batteryV } from '../../steps/amp-feed.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { ampHearsRear } from '../../steps/rear-volts.ts';
import { theAmp } from '../../steps/which-amp.ts';
import type { RemedyNumber, Verdict } from '../verdict.ts';
import { FITTER, YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';
import { heatLeft, type Left, MOST_BESIDES, selectorLeft } from './left.ts';

/** An amplifier that wakes by what it hears, and does not. */

const WAKES = 'It wakes within 3 seconds at your usual volume and stays awake for 10 minutes.';
const STARTS_WITH_KEY = 'The amplifier starts and stops with the key, twice in a row.';
const THRESHOLDS: RemedyNumber = {
  label: 'Amplifiers that hear wake above',
  value: formatRange(SENSE_LOWEST_V, SENSE_HIGHEST_V, 'V'),
};

export const turnOnModeWrong: Verdict = {
  id: 'turn-on-mode-wrong',
  title: 'The amplifier’s turn-on selector does not fit its wiring',
  faults: ['turn-on-mode-wrong'],
  evidence: ['amp-switches', 'remote-volts', 'wakes-when-loud', 'remote-jumper', 'last-change'],
  mends: ['amp'],
  article: 'amplifiers-that-listen',
  remedy: (f) => {
    const byWire = theAmp(f).turnOn === 'wire';
    const seen = is(f, 'amp-switches', 'turn-on');
    return {
      what: 'The amplifier waits for a turn-on of a kind that is not wired to it.',
      certainty: seen ? 'proved' : 'likely',
      howSure: seen
        ? 'It stays off, and its turn-on selector stands on the other kind.'
        : 'Its remote terminal carries enough, and it wakes by sound instead: that is what a selector on sensing does.',
      numbers: byWire
        ? [
            {
              label: 'The remote wire that it does not look at carries',
              value: formatQuantity(f.values('remote-volts')['remoteV'] ?? batteryV(f), 'V', 3),
            },
          ]
        : [THRESHOLDS],
      fix: [
        'Key off. The selector may hide under a cover or behind a rubber plug.',
        byWire
          ? 'Set it to wire, remote or 12 V: a remote wire is fitted.'
          : 'Set it to signal, auto or DC, as its papers name what comes in: no remote wire is fitted.',
        'Gain down, key on.',
      ],
      tools: 'Small screwdriver',
      minutes: 5,
      who: YOURSELF,
      notBuy: ['An amplifier, a fuse or a reflash.'],
      cautions: ['key-off', 'wakes-loud'],
      proof: STARTS_WITH_KEY,
    };
  },
};

/** What a watt at the head unit is in volts, and what a lowered profile leaves of it. */
function starvedNumbers(f: Findings): readonly RemedyNumber[] {
  const oneWattV = levelV({ powerW: 1, loadOhm: estimate(f.rig, 'frontRatedOhm').value });
  const gainDb = -estimate(f.rig, 'loweredByDb').value;
  const { usualV, papersV } = f.values('sense-level');
  return [
    ...(usualV === undefined
      ? []
      : [{ label: 'It hears at your usual volume', value: formatQuantity(usualV, 'V', 2) }]),
    papersV === undefined ? THRESHOLDS : { label: 'It wakes above', value: formatQuantity(papersV, 'V', 2) },
    { label: 'One watt at the head unit, unaltered', value: formatQuantity(oneWattV, 'V', 2) },
    {
      label: 'The same volume step with an amplified profile',
      value: formatQuantity(oneWattV * voltageRatio({ gainDb }), 'V', 2),
    },
  ];
}

export const senseStarved: Verdict = {
  id: 'sense-starved-by-profile',
  title: 'The amplifier listens, and too little reaches it',
  faults: ['sense-starved-by-profile'],
  evidence: ['wakes-when-loud', 'sense-level', 'remote-jumper', 'last-change', 'unit-kind'],
  mends: ['profile', 'amp-supply', 'settings'],
  article: 'amplifiers-that-listen',
  remedy: (f) => {
    const replaced = f.outcome('unit-kind') === 'replaced';
    const reflashed = f.outcome('last-change') === 'reflash' && !replaced;
    const readLow = f.outcome('sense-level') === 'low';
    const woken = f.outcome('wakes-when-loud')?.startsWith('wakes') === true;
    const hearsRear = ampHearsRear(f);
    // What was read to be too low, or wakes since more comes in, is starved: the question left is by what.
    const starved = readLow || (reflashed && woken);
    const left: Left = [
      ...(starved
        ? []
        : [
            {
              what: 'A weak contact in its power or ground',
              split: 'A 55 W lamp across its plus and ground: what is lost on the way there and back?',
            },
          ]),
      // Nobody moved them here, and a listening amplifier behind a fader at its end wakes when all is turned up.
      ...(hearsRear ? [SETTINGS_LEFT] : []),
      ...(woken || starved ? [] : [...selectorLeft(f), ...(listensForUnknown(f) ? [NO_DC] : heatLeft(f))]),
    ];
    // Whoever was never reflashed has nothing to go back to, unless the level itself was read to be low.
    const wayBack = !replaced && (reflashed || readLow);
    return {
      what: 'This amplifier wakes by the sound on its inputs, and at your volume too little reaches it.',
      certainty: readLow && !hearsRear ? 'proved' : left.length > MOST_BESIDES ? 'short list' : 'likely',
      howSure: readLow
        ? 'What arrives at your usual volume was read, and it is under what wakes it.'
        : reflashed && woken
          ? 'A reflash was the last change, and it wakes when more comes in: supply and wiring are good.'
          : woken
            ? 'It wakes only when turned up, so its supply and wiring are good.'
            : 'It wakes by the jumper, and what it hears lies where some amplifiers sleep on.',
      ...(wayBack && {
        background:
          'A profile for amplifiers lowers the output and takes the bass boost out. An amplifier made for the unaltered output may then sleep on.',
      }),
      numbers: starvedNumbers(f),
      fix: [
        ...(hearsRear
          ? [
              'Fader and balance in the middle, rear control up: it hears the rear outputs, and wakes at your volume then?',
            ]
          : []),
        'Phone at full media volume, its equaliser off. Then the bike’s volume does the work.',
        'It has a remote terminal: a wire from a feed that follows the ignition, 1 A fuse, selector to wire.',
        'The wire wakes it; it does not bring back the level. Listen: loud enough, and bass as it was? Else set gain and range again.',
        ...(wayBack
          ? [
              'No remote terminal, or made for the unaltered output: have the full level and the bass boost put back, rear channels kept on.',
            ]
          : []),
        ...(replaced ? ['The replaced unit’s own menu: is its output level turned down?'] : []),
      ],
      tools: wayBack ? 'Crimp tool, 1 A fuse, or a dealer’s or specialist’s tool' : 'Crimp tool, 1 A fuse',
      minutes: 60,
      who: wayBack
        ? 'The wire: a fitter, or you if you crimp and solder well. The level: a dealer or a specialist, with their tool.'
        : FITTER,
      notBuy: [
        'A new amplifier: this one works.',
        ...(replaced ? [] : ['Another reflash “for amplifiers”: it lowers the level, it never raises it.']),
      ],
      cautions: [...(wayBack ? (['back-to-full'] as const) : []), 'minus-first', 'wakes-loud'],
      proof: WAKES,
      ...(left.length > 0 && { mayAlsoBe: left }),
    };
  },
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
      howSure: seen
        ? 'There is no DC on its input wires, and something in between keeps it back.'
        : 'There is no DC on its input wires.',
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

/** Nobody knows that it is sound it waits for. */
const listensForUnknown = (f: Findings) => theAmp(f).turnOn !== 'signal' || is(f, 'which-amp', 'cannot');
const NO_DC: Left[number] = {
  what: 'No DC on its inputs',
  split: 'Its papers: does it wake by DC? Then music paused, each input wire against battery minus: half the supply?',
};
const PAIR_NOT_IN_ADAPTER: Left[number] = {
  what: 'The adapter of the replaced head unit leaves the pair out',
  split: 'Look at both sides of the adapter’s plug: are the pins of the pair fitted?',
};
const SETTINGS_LEFT: Left[number] = {
  what: 'The fader or a rear control turned down',
  split: 'Fader and balance in the middle, rear control up: does it wake?',
};
/** What else keeps an amplifier asleep that a jumper wakes, and no music on the rear pairs. */
function leftUnmeasured(f: Findings): Left {
  return [
    SETTINGS_LEFT,
    ...(is(f, 'unit-kind', 'replaced') ? [PAIR_NOT_IN_ADAPTER] : []),
    {
      what: 'A wire of its signal plug open',
      split: 'With a meter: the same 400 Hz across its inputs as across the rear pair at the head unit?',
    },
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

export const sleepsInQuiet: Verdict = {
  id: 'sense-sleeps-in-quiet',
  title: 'The amplifier falls asleep in quiet passages',
  faults: ['sense-sleeps-in-quiet'],
  evidence: ['amp-goes-off', 'last-change'],
  mends: ['settings', 'amp-supply'],
  article: 'amplifiers-that-listen',
  remedy: (f) => ({
    what: 'The amplifier wakes by sound and falls asleep when there is too little of it.',
    certainty: 'likely',
    howSure: 'It goes off in quiet passages and comes back with the next louder sound.',
    numbers: starvedNumbers(f),
    fix: [
      'Phone at full media volume, then set the bike’s volume. Quiet passages then reach it, too.',
      'It stays a nuisance: switch it by a remote wire, 1 A fuse, selector to wire.',
    ],
    tools: 'None, or a crimp tool',
    minutes: 10,
    who: YOURSELF_OR_FITTER,
    notBuy: ['An amplifier or a reflash: a click at each wake-up is how such amplifiers are.'],
    cautions: ['wakes-loud', 'key-off'],
    proof: 'Fifteen minutes at low volume without a gap.',
  }),
};
