import { SENSE_HIGHEST_V, SENSE_LOWEST_V } from '../../compute/amp-supply.ts';
import { voltageRatio } from '../../compute/decibel.ts';
import { levelV } from '../../compute/level.ts';
import { formatQuantity, formatRange } from '../../compute/quantity.ts';
import { estimate } from '../../rig/rig.ts';
import { ampHearsRear } from '../../steps/fitted/fed-from.ts';
import { theAmp } from '../../steps/fitted/the-amp.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { batteryV } from '../../steps/supply/amp-feed.ts';
import type { RemedyNumber, Verdict } from '../verdict.ts';
import { FITTER, YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';
import { heatLeft, type Left, MOST_BESIDES, SETTINGS_LEFT, selectorLeft } from './left.ts';

/** An amplifier that wakes by what it hears, and does not. */

export const WAKES = 'It wakes within 3 seconds at your usual volume and stays awake for 10 minutes.';
export const STARTS_WITH_KEY = 'The amplifier starts and stops with the key, twice in a row.';
export const THRESHOLDS: RemedyNumber = {
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
        ? `It ${is(f, 'amp-goes-off', 'quiet') ? 'goes off in quiet passages' : 'stays off'}, and its turn-on selector stands on the other kind.`
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

/** Nobody knows that it is sound it waits for. */
const listensForUnknown = (f: Findings) => theAmp(f).turnOn !== 'signal' || is(f, 'which-amp', 'cannot');
const NO_DC: Left[number] = {
  what: 'No DC on its inputs',
  split: 'Its papers: does it wake by DC? Then music paused, each input wire against battery minus: half the supply?',
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
            ? 'It wakes only when turned up, so its supply is good enough to start it.'
            : 'It wakes by the jumper, and what it hears lies where some amplifiers sleep on.',
      ...(wayBack && {
        background:
          'A profile for amplifiers lowers the output and takes the bass boost out. An amplifier made for the unaltered output may then sleep on.',
      }),
      numbers: starvedNumbers(f),
      fix: [
        ...(is(f, 'wakes-when-loud', 'wakes-silent')
          ? [
              'It wakes and stays silent: a second thing is wrong. Its input selector and its speaker plugs first, then the rest of this list.',
            ]
          : []),
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
    mayAlsoBe: [
      {
        what: 'A level that was turned down: a call that still holds it, bass at its lowest, another profile',
        split: 'Phone disconnected and back, tone controls in the middle: does it stay awake at the same volume?',
      },
    ],
  }),
};
