import { ampPair } from '../../steps/fitted/the-amp.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { EVERY_PART } from '../../steps/step.ts';
import { oneEach, rank, shareInWords, stillPossible } from '../suspects.ts';
import type { Remedy, Verdict } from '../verdict.ts';
import { YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';
import { HEAVY_LOAD } from './left.ts';
import { ampName, drawNumbers, remoteNumbers } from './numbers.ts';

/** Ends that name no single fault: another complaint, or a short list. */

export const headUnitDark: Verdict = {
  id: 'head-unit-dark',
  title: 'The head unit is off, so the amplifier is, too',
  faults: ['unit-feed-missing'],
  evidence: ['what-else', 'amp-light'],
  mends: EVERY_PART,
  remedy: (f) => ({
    what: is(f, 'amp-light', 'normal')
      ? 'The amplifier follows the head unit, and the head unit itself goes dark.'
      : 'The amplifier follows the head unit, and the head unit itself is dark.',
    certainty: 'short list',
    howSure: 'An amplifier that nobody switches on stays off, and that is right.',
    numbers: remoteNumbers(f),
    fix: [
      'Key off for five minutes, key on: does the screen come back?',
      ...(is(f, 'amp-goes-off', 'bumps')
        ? ['Key off. Its plugs and its fuses: push each home. Do it again: still dark on bumps?']
        : []),
      'The head unit’s fuses: one feed is always on, one comes with the key. Look at both.',
      'Battery posts tight? A clock set back says that the bike lost its volts.',
      'The screen is back and the amplifier still off: start here again.',
    ],
    tools: 'None to begin with',
    minutes: 10,
    who: YOURSELF,
    notBuy: ['An amplifier.', 'A head unit, before its two feeds were looked at.'],
    cautions: ['data', 'key-off', 'fuse'],
    proof: 'The screen lights up and answers a button within a minute of key on. Then the amplifier’s lamp.',
    mayAlsoBe: [
      { what: 'Head unit hung', split: 'Key off for five minutes.' },
      { what: 'A feed of the head unit missing', split: 'Its fuses, then its plug.' },
      { what: 'A loose battery post', split: 'Was the clock set back?' },
      ...(is(f, 'amp-goes-off', 'cannot')
        ? [{ what: 'The battery is worn', split: 'Engine off, music loud: does the screen go dark with it?' }]
        : []),
    ],
  }),
};

/** It is on now, it is said to come and go, and nobody was asked when. */
const comesAndGoes = (f: Findings) => is(f, 'amp-history', 'comes-and-goes') && f.outcome('amp-goes-off') === undefined;

/** Nothing is wrong with its turn-on. For the rear, the other flow takes over with everything that is known. */
export const ampIsOn: Verdict = {
  id: 'amp-is-on',
  title: 'The amplifier is on: the silence comes from somewhere else',
  faults: [],
  evidence: ['amp-light', 'amp-signs', 'amp-goes-off'],
  mends: EVERY_PART,
  handsOver: (f) =>
    ampPair(f) === 'front' || comesAndGoes(f)
      ? undefined
      : {
          flow: 'no-rear-sound',
          because: 'An amplifier that is on and silent: the other flow follows the sound to where it is lost.',
          answers: {
            'rear-drive': { option: 'amp' },
            ...((is(f, 'wakes-when-loud', 'awake') || is(f, 'amp-signs', 'alive')) && {
              'amp-light': { option: 'normal' },
            }),
          },
        },
  remedy: (f) => ({
    what: comesAndGoes(f)
      ? `${ampName(f)} is on now, and you said that it comes and goes: what matters is when it goes off.`
      : `${ampName(f)} is on. If no sound comes out, the fault is before it, after it, or in its settings.`,
    certainty: 'short list',
    howSure: comesAndGoes(f)
      ? 'Its lamp or its other signs say that it is on.'
      : 'Its lamp or its other signs say so, and it does not go off.',
    numbers: drawNumbers(f),
    fix: [
      ...(comesAndGoes(f)
        ? ['Change the answer “Amplifier lamp” to lit as usual: the next question asks when it goes off.']
        : []),
      'Fader and balance in the middle, nothing muted, volume at a usual level.',
      ...(ampPair(f) === 'front'
        ? [
            'Its signal plug: push it home, key off.',
            'Its input selector and range: do they fit what is plugged in?',
            '400 Hz tone: AC volts across its front input pair, then across its output, speakers unplugged.',
          ]
        : comesAndGoes(f)
          ? []
          : ['Go on with “No sound from the rear”: it knows what you have answered.']),
    ],
    tools: 'None to begin with',
    minutes: 10,
    who: YOURSELF_OR_FITTER,
    notBuy: ['An amplifier, a fuse or a remote wire: it is on.'],
    cautions: ['bridge', 'loud-tone', 'amp-output'],
    proof: 'The speakers that hang on it play.',
    mayAlsoBe: [
      { what: 'Nothing reaches its inputs', split: '400 Hz tone: AC volts across an input pair?' },
      { what: 'Its settings', split: 'Read its selectors: do they fit what is plugged in?' },
      { what: 'A speaker run or a coil is open', split: 'Plug off, meter on ohms: does each run read its coil?' },
    ],
  }),
};

const MOST_IN_A_LIST = 4;

/** It is on at the stand, or was once everything was plugged in again: what fails now and then may leave no sign. */
const failsNowAndThen = (f: Findings) =>
  is(f, 'amp-light', 'normal') ||
  is(f, 'amp-signs', 'alive') ||
  is(f, 'amp-goes-off', 'loud', 'bumps', 'quiet') ||
  is(f, 'recover', 'at-once') ||
  is(f, 'speakers-unplugged', 'clears', 'dark');

/** What a list says in which nobody is left. */
type NoneLeft = Pick<Remedy, 'what' | 'howSure' | 'fix'>;
const HELD_WHILE_TESTED: NoneLeft = {
  what: 'It held while you tested. What fails now and then shows only while it fails.',
  howSure: 'What could be read or pressed on the stand was healthy. What was not read is not cleared.',
  fix: [
    'Ride until it fails. Then stop, bike on its stand, key left on: read its plus, its ground and, if a wire switches it, its remote terminal while it is off.',
    'Press its rings, its fuse holder, its ground and its remote wire once more, warm from the ride.',
  ],
};
const doubtful = (ranked: boolean): NoneLeft => ({
  what: ranked
    ? 'Every known cause has an answer that speaks against it, so one of the answers cannot be right.'
    : 'What was answered proves no single cause.',
  howSure: 'Go over the answers above, starting with the one you are least sure of.',
  fix: [
    'Change the answer that you are least sure of. What depends on it is asked again, the rest is kept. All of them sure? Then two things are wrong at once: start with plus and ground at the amplifier.',
  ],
});

export const shortList: Verdict = {
  id: 'amp-short-list',
  title: 'A short list, likeliest first',
  faults: [],
  evidence: [
    'amp-history',
    'last-change',
    'amp-light',
    'amp-goes-off',
    'what-else',
    'supply-wiggle',
    'recover',
    'amp-wires-to-frame',
    'speakers-unplugged',
    'amp-runs',
    'amp-terminals',
    'remote-volts',
    'remote-jumper',
    'fuse-look',
    'supply-under-load',
  ],
  mends: EVERY_PART,
  remedy: (f, suspects) => {
    const possible = oneEach(stillPossible(rank(suspects ?? [], f)));
    const listed = possible.slice(0, MOST_IN_A_LIST);
    const [first] = listed;
    const none = failsNowAndThen(f) ? HELD_WHILE_TESTED : doubtful(suspects !== undefined);
    return {
      what: first
        ? `Likeliest: ${first.suspect.title.charAt(0).toLowerCase()}${first.suspect.title.slice(1)}.`
        : none.what,
      certainty: 'short list',
      howSure:
        first && possible.length === 1
          ? 'Every other known cause has an answer that speaks against it. Nobody has seen this one yet.'
          : first
            ? `What was answered leaves ${possible.length}${possible.length > MOST_IN_A_LIST ? `, of which the ${MOST_IN_A_LIST} likeliest stand below` : ''}. A check that could not be done would tell them apart.`
            : none.howSure,
      numbers: listed.map(({ suspect, shareRatio }) => ({ label: suspect.title, value: shareInWords(shareRatio) })),
      fix: [
        ...(possible.length === 1
          ? ['Do the check below before anything else. It is harmless.']
          : first
            ? ['Go through the checks below in their order. Each is harmless and separates one of them.']
            : []),
        ...(is(f, 'one-by-one', 'none')
          ? ['Plugging the speakers in again may have cured it: ride it before you do more.']
          : []),
        ...(first ? [] : none.fix),
        ...(is(f, 'tools-at-hand', 'meter')
          ? []
          : [
              failsNowAndThen(f)
                ? 'A meter and a 55 W lamp tell most of them apart in a quarter of an hour: change the answer “Meter at hand” above.'
                : 'With a meter three readings at the amplifier tell most of them apart in three minutes: change the answer “Meter at hand” above.',
            ]),
      ],
      tools: 'As each check says',
      minutes: 15,
      who: YOURSELF_OR_FITTER,
      notBuy: ['Anything, until one of them is proved.'],
      cautions: ['minus-first', 'fuse', 'key-off', 'hot'],
      proof: failsNowAndThen(f)
        ? 'Half an hour of what made it go off before: it stays on.'
        : 'The amplifier starts and stops with the head unit ten times in a row.',
      mayAlsoBe:
        // The ohms of its load were weighed against what "my bike" says of the amplifier, which may be a guess.
        first || !is(f, 'amp-goes-off', 'loud')
          ? listed.map(({ suspect }) => ({ what: suspect.title, split: suspect.split }))
          : [HEAVY_LOAD],
    };
  },
};
