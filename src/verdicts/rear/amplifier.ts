import { ampCurrentA, DENSE_MUSIC_AVERAGE_RATIO } from '../../compute/amp-current.ts';
import { GAIN_MARGIN_RATIO, gainTargetV } from '../../compute/gain.ts';
import { formatQuantity } from '../../compute/quantity.ts';
import { copperResistanceOhm, dropV } from '../../compute/wire.ts';
import { ampDriving, ampEstimate, estimate } from '../../rig/rig.ts';
import { expectedGainRatio } from '../../steps/amplifier/expected-gain.ts';
import { fedFromRear } from '../../steps/fitted/fed-from.ts';
import type { Findings } from '../../steps/outcome.ts';
import type { Facts } from '../../steps/step.ts';
import { EFFICIENCY_RATIO } from '../../steps/supply/amp-feed.ts';
import { readsFine } from '../../steps/tools/smallest-digit.ts';
import { rearPairFound } from '../../steps/unit/rear-pair-found.ts';
import { mainFuseNumber } from '../main-fuse.ts';
import type { RemedyNumber, Verdict } from '../verdict.ts';
import { AMP_REPAIRER, FITTER, YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';
import { type Alternative, FADER_OFF } from './alternatives.ts';

/** Faults at the amplifier that drives the rear: its inputs, its knobs, its supply, itself. */

const rearAmp = (f: Findings) => ampDriving(f.rig, 'rear') ?? {};

const ADAPTER_WITHOUT_REAR: Alternative = {
  what: 'The adapter of the replaced head unit has no rear pairs',
  split:
    'Look at both sides of the adapter’s plug: are the four rear pins fitted, each on a rear pair and none on a subwoofer output?',
};

/** What the flow about the amplifier need not ask: which one it is. */
const REAR_AMP: Facts = { 'which-amp': { option: 'rear' } };

function gainNumbers(f: Findings): readonly RemedyNumber[] {
  // Nobody knows its power: the weakest that is usual, so that the figure clips none.
  const [powerW, loadOhm] = [ampEstimate(rearAmp(f), 'powerW').low, ampEstimate(rearAmp(f), 'ratedOhm').low];
  return [
    {
      label: `Output to set, ${formatQuantity(powerW, 'W')} into ${formatQuantity(loadOhm, 'Ω')}`,
      value: formatQuantity(gainTargetV({ powerW, loadOhm }), 'V'),
    },
    {
      label: 'The same with a margin',
      value: formatQuantity(gainTargetV({ powerW, loadOhm, marginRatio: GAIN_MARGIN_RATIO }), 'V'),
    },
    // What a converter makes of the signal is its own affair: only the output counts there.
    ...(rearAmp(f).input === 'line'
      ? []
      : [
          {
            label: 'Volts out over volts in, full level',
            value: `about ${expectedGainRatio(f, 'full').toFixed(1)} times`,
          },
          {
            label: 'The same with an amplified profile',
            value: `about ${expectedGainRatio(f, 'lowered').toFixed(1)} times`,
          },
        ]),
  ];
}

/** With the ground open a lamp would send its current through the shield of a line-level lead and the head unit. */
const lineLevelOut = (f: Findings): readonly string[] =>
  rearAmp(f).input === 'speaker' ? [] : ['Before a lamp goes on: key off, line-level plugs out of the amplifier.'];

function supplyNumbers(f: Findings): readonly RemedyNumber[] {
  const amp = rearAmp(f);
  const supplyV = estimate(f.rig, 'supplyRunningV').value;
  const currentA = ampCurrentA({
    powerW: ampEstimate(amp, 'powerW').value,
    channels: amp.drives === 'both' ? 4 : 2,
    efficiencyRatio: EFFICIENCY_RATIO,
    supplyV,
    averageRatio: DENSE_MUSIC_AVERAGE_RATIO,
  });
  const resistanceOhm = copperResistanceOhm({
    lengthM: ampEstimate(amp, 'plusLeadM').value,
    sectionM2: ampEstimate(amp, 'plusLeadM2').value,
  });
  return [
    { label: 'Current with dense loud music', value: formatQuantity(currentA, 'A', 2) },
    {
      label: 'Lost in the plus lead alone at that current',
      value: formatQuantity(dropV({ currentA, resistanceOhm }), 'V', 2),
    },
    mainFuseNumber(amp),
    {
      label: 'Remote terminal when on',
      value: `above ${formatQuantity(estimate(f.rig, 'supplyOffV').value - 1, 'V', 3)}`,
    },
  ];
}

export const ampInputPlugOff: Verdict = {
  id: 'amp-input-plug-off',
  title: 'The signal plug at the amplifier is not home',
  faults: ['amp-input-plug-off'],
  evidence: ['amp-in', 'rear-pair', 'rear-pair-again', 'half-supply', 'wiggle', 'rear-hiss', 'swap-inputs'],
  mends: ['unit-leads'],
  remedy: (f) => {
    const replaced = f.outcome('unit-kind') === 'replaced';
    const lost = f.outcome('amp-in') === 'none' && readsFine(f);
    // An adapter without rear pairs loses it just as well.
    const proved = (lost && !replaced) || f.outcome('wiggle') === 'amp-input';
    const partly = f.outcome('amp-in') === 'low';
    const others = [
      ...(replaced ? [ADAPTER_WITHOUT_REAR] : []),
      ...(f.outcome('fader-centre') === 'cannot' ? [FADER_OFF] : []),
    ];
    return {
      what: 'The rear signal leaves the head unit and does not arrive at the amplifier: its signal plug is not home, or a joint before it is bad.',
      certainty: proved ? 'proved' : 'likely',
      howSure: proved
        ? 'It was seen to be lost between the two.'
        : partly
          ? 'Part of it is lost between the two.'
          : lost
            ? 'It was seen to be lost between the two. The adapter of the replaced head unit lies there, too.'
            : f.outcome('amp-in') === 'none'
              ? 'Nothing was read at the amplifier. A meter that shows 0.1 V cannot prove it.'
              : 'The rear plays on the front signal, so the fault is before the amplifier.',
      numbers: [
        rearAmp(f).input === 'line'
          ? { label: 'Healthy at the input', value: 'a signal on both sides, within 10 %' }
          : { label: 'Healthy at the input', value: '0.85 to 1.15 of what leaves the head unit' },
      ],
      fix: [
        'Key off. Pull the signal plug, look at its pins, push it home until it locks.',
        'Follow the lead to the head unit: crimps, taps, joints.',
        'Tie the loom so that nothing pulls.',
      ],
      tools: 'None, or a crimp tool',
      minutes: 15,
      who: YOURSELF_OR_FITTER,
      notBuy: ['A reflash or an amplifier: the signal is there and the amplifier was not asked yet.'],
      cautions: ['key-off', 'bridge'],
      proof:
        rearAmp(f).input === 'line'
          ? 'The rear plays. With a meter, 400 Hz tone: both rear inputs carry it, left and right within 10 %.'
          : 'The rear plays. With a meter, same 400 Hz tone: both rear inputs read 0.85 to 1.15 of the pair that feeds them, at the head unit.',
      ...(others.length > 0 && { mayAlsoBe: others }),
    };
  },
};

export const channelModeWrong: Verdict = {
  id: 'channel-mode-wrong',
  title: 'The amplifier’s input selector does not fit its wiring',
  faults: ['channel-mode-wrong'],
  evidence: ['amp-switches', 'rear-hiss', 'amp-light'],
  mends: ['amp'],
  remedy: (f) => ({
    what: 'The amplifier takes its rear channels from inputs that are not wired.',
    certainty: 'likely',
    howSure: 'Its input selector stands on another number of inputs than there are. It is proved when the rear plays.',
    numbers: gainNumbers(f),
    fix: [
      'Key off.',
      'Set the input selector to the number of pairs that are plugged in.',
      'With only the front pair plugged in, the fader has no say afterwards. That is wiring, not a fault.',
    ],
    tools: 'Small screwdriver',
    minutes: 5,
    who: YOURSELF,
    notBuy: ['Speakers, an amplifier or a reflash.'],
    cautions: ['key-off', 'loud-tone'],
    proof: 'The rear plays. With a meter: all outputs carry the 400 Hz tone within 10 % of each other.',
  }),
};

export const ampInputTooLow: Verdict = {
  id: 'amp-input-too-low',
  title: 'The amplifier’s range or gain does not fit what comes in',
  faults: ['amp-input-too-low'],
  evidence: ['amp-switches', 'amp-in', 'amp-out'],
  mends: ['amp'],
  remedy: (f) => ({
    what: 'The signal arrives, and the amplifier makes too little of it: wrong range, or the gain at its lowest.',
    certainty: f.outcome('amp-out') === 'low' ? 'proved' : 'likely',
    howSure:
      f.outcome('amp-out') === 'low'
        ? 'Input healthy, output far under what this amplifier should give.'
        : 'Its range or gain does not fit what is plugged in.',
    numbers: gainNumbers(f),
    fix: [
      'Key off, speakers off the amplifier.',
      'Set the range to what comes in: speaker level or line level.',
      ...(rearAmp(f).input === 'line'
        ? []
        : [
            '400 Hz tone at a low step: turn the gain until volts out over volts in is the figure for your level. Not sure which level? Take the lower figure.',
          ]),
      '80 Hz tone, up to your usual top step: the output must not go above the first figure.',
      'Key off, speakers on.',
    ],
    tools: 'Meter, small screwdriver',
    minutes: 20,
    who: YOURSELF_OR_FITTER,
    notBuy: ['A stronger amplifier: this one was not asked to play.'],
    cautions: ['amp-output', 'key-off', 'loud-tone'],
    proof:
      'The rear plays as loud as the front. With a meter: both rear channels within 10 %, and the 80 Hz tone at your usual top step stays under the output above.',
  }),
};

export const ampChannelDead: Verdict = {
  id: 'amp-channel-dead',
  title: 'The amplifier’s rear channels are dead',
  faults: ['amp-channel-dead'],
  evidence: [
    'amp-light',
    'front-drive',
    'amp-switches',
    'rear-hiss',
    'amp-in',
    'amp-out',
    'swap-outputs',
    'swap-inputs',
  ],
  mends: ['amp'],
  remedy: (f) => {
    const swapped = f.outcome('swap-outputs') === 'plays';
    const read = f.outcome('amp-out') === 'none' && f.outcome('amp-in') === 'ok';
    const selectorsSeen = f.outcome('amp-switches') === 'right';
    const { leftV = 0, rightV = 0, inV = 0 } = f.values('amp-out');
    const oneOnly = f.outcome('amp-out') === 'none' && Math.max(leftV, rightV) > inV / 2;
    return {
      what: oneOnly
        ? 'One rear output of the amplifier gives nothing, and the other one does. That explains one silent corner.'
        : 'The amplifier is on and gets its signal, and its rear outputs give nothing.',
      certainty: (read || swapped) && selectorsSeen ? 'proved' : 'likely',
      howSure: swapped
        ? 'The rear speakers play on another output of the same amplifier.'
        : read
          ? selectorsSeen
            ? 'Signal at the input, none at the output.'
            : 'Signal at the input, none at the output, and nobody could read its selectors.'
          : 'Nothing was read at its outputs.',
      numbers: gainNumbers(f),
      fix: [
        ...(selectorsSeen
          ? []
          : [
              'Read its selectors: inputs as wired, crossover of the rear on full range, gain above its lowest. Listen.',
            ]),
        'Check the run for a short before anything else goes on those outputs: that is what kills them.',
        'Use a spare channel until it is repaired.',
        'Have the amplifier repaired, or replace it.',
      ],
      tools: 'Meter',
      minutes: 30,
      who: AMP_REPAIRER,
      notBuy: [
        'A reflash: the signal is there.',
        oneOnly ? 'Speakers, before the other corner was measured.' : 'Speakers: they were not the trouble.',
      ],
      cautions: ['short-suspected', 'key-off', 'hot'],
      proof: 'The rear plays. With a meter: all outputs within 10 % of each other with the 400 Hz tone.',
      ...(!selectorsSeen && {
        mayAlsoBe: [
          { what: 'Its settings', split: 'Read the selectors and the gain of the rear channels, then listen again.' },
        ],
      }),
    };
  },
};

/** Both wires near the battery: no output rests there. */
function bothHigh(f: Findings): boolean {
  const { plusV = 0, minusV = 0, batteryV = Infinity } = f.values('half-supply');
  return Math.min(plusV, minusV) > 0.8 * batteryV;
}

export const inputLegWrong: Verdict = {
  id: 'one-input-lead-open',
  title: 'One wire of a rear input pair is open or grounded',
  faults: ['one-input-lead-open', 'bridge-output-grounded'],
  evidence: ['amp-in', 'half-supply', 'rear-pair'],
  mends: ['unit-leads'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what: bothHigh(f)
      ? 'Both wires of a rear input pair carry battery voltage: a wire of the pair is joined to plus.'
      : 'The two wires of a rear input pair do not rest at the same DC: one is open, or joined to ground.',
    certainty: 'likely',
    howSure: 'Both wires of a healthy pair rest at half the supply, within 0.5 V of each other.',
    numbers: [
      { label: 'DC on each wire, healthy', value: '0.40 to 0.55 of the supply' },
      { label: 'Between the two, healthy', value: 'at most 0.5 V' },
    ],
    fix: [
      'Key off. Follow the pair from the amplifier to the head unit: crimps, taps, an adapter that joins a minus to ground.',
      'Joined to ground or to plus: undo the joint. It shorts one half of the output.',
      'Open: make the joint anew.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 45,
    who: FITTER,
    notBuy: ['A reflash, an amplifier or a head unit, before both wires rest alike.'],
    cautions: ['bridge', 'key-off', 'hot'],
    proof: 'The rear plays. Both wires within 0.5 V of each other, and the 400 Hz tone on both rear inputs alike.',
    mayAlsoBe: [
      {
        what: 'One half of that output of the head unit is dead',
        split: 'The same DC reading at the head unit’s own plug: still not alike there means the output.',
      },
    ],
  }),
};

/** It has no remote wire: its papers, or its owner, say what it listens for. */
const listens = (f: Findings) => ['signal', 'dc'].includes(f.outcome('rear-amp-turn-on') ?? '');

/** Nobody knows whether the rear channels of the head unit, which feed it, carry anything. */
const nothingRead = (f: Findings) => fedFromRear(f) && rearPairFound(f) === undefined && f.outcome('amp-in') !== 'ok';
const HEAD_UNIT_SILENT: Alternative = {
  what: 'Nothing reaches its inputs: the head unit sends nothing to the rear',
  split:
    'With a meter: 400 Hz across the rear pair at the head unit. Nothing while the front reads: it sleeps rightly.',
};

export const ampOff: Verdict = {
  id: 'amp-off',
  title: 'The amplifier has no power or no turn-on',
  faults: [
    'main-fuse-open',
    'remote-wire-open',
    'remote-source-dead',
    'remote-volts-low',
    'amp-ground-open',
    'amp-ground-resistive',
    'fuse-holder-resistive',
    'battery-lug-loose',
    'wire-chafed',
    'amp-body-fuse-open',
    'amp-dead',
    'turn-on-mode-wrong',
    'sense-starved-by-profile',
    'sense-no-half-supply',
  ],
  evidence: ['amp-light', 'rear-amp-turn-on', 'amp-switches', 'rear-pair', 'amp-in', 'wiggle'],
  mends: ['amp-supply', 'amp'],
  article: 'amplifiers-that-listen',
  handsOver: () => ({
    flow: 'amp-wont-turn-on',
    because: 'Why it stays off is a question of its own. What you have answered goes along.',
    answers: REAR_AMP,
  }),
  remedy: (f) => ({
    what: 'The amplifier that drives the rear stays off: its supply, its ground, its turn-on, or itself.',
    certainty: 'short list',
    howSure:
      f.outcome('amp-light') === 'off'
        ? 'The lamp is off. The readings below tell which of them it is.'
        : f.outcome('wiggle') === 'amp-supply'
          ? 'A power lead, fuse holder or remote wire reacts to a finger. The readings below tell which.'
          : 'Nothing comes out of it, and nobody saw it lit. The readings below tell which of them it is.',
    numbers: supplyNumbers(f),
    fix: [
      'Black probe on the battery minus post for all readings. Amplifier plus: battery voltage? No: main fuse or lead.',
      ...(listens(f)
        ? []
        : [
            'Remote terminal with the head unit on: within 1 V of the battery? No: wire, or the point it was tapped from.',
          ]),
      'Amplifier ground terminal: below 0.15 V? No: ground open.',
      ...lineLevelOut(f),
      'All right and still off: repeat them with a 5 A lamp across its plus and ground (the lamp gets very hot), look at its own fuses and its turn-on selector. Only then the amplifier.',
    ],
    tools: 'Meter, spare fuse of the same rating',
    minutes: 10,
    who: YOURSELF_OR_FITTER,
    notBuy: [
      'An amplifier before these readings.',
      ...(f.outcome('rear-amp-turn-on') === 'wire' || f.outcome('rear-pair') === 'ok' || f.outcome('amp-in') === 'ok'
        ? ['A reflash: it does not switch an amplifier on.']
        : []),
    ],
    cautions: ['minus-first', 'fuse', 'hot'],
    proof: 'The rear plays, and the amplifier starts and stops with the head unit ten times in a row.',
    mayAlsoBe: [
      {
        what: 'Main fuse open',
        split:
          'Each side of the fuse against battery minus: both at battery voltage means whole, only one means open. Find the cause before a new one.',
      },
      ...(listens(f)
        ? []
        : [
            {
              what: 'Remote wire open, or its source dead',
              split: '12 V at its other end: the wire. None there either: the source.',
            },
          ]),
      { what: 'Ground open', split: 'Amplifier ground against battery minus: near battery voltage means open.' },
      ...(f.outcome('rear-amp-turn-on') === 'signal' && nothingRead(f) ? [HEAD_UNIT_SILENT] : []),
      ...(f.outcome('rear-amp-turn-on') === 'dc'
        ? [
            {
              what: 'No DC on its inputs',
              split: 'Music paused, each input wire against battery minus: half the supply. None: it cannot wake.',
            },
          ]
        : []),
      { what: 'Amplifier dead', split: 'Plus, ground and remote all right at its own terminals, and still off.' },
    ],
  }),
};

export const ampProtecting: Verdict = {
  id: 'amp-protecting',
  title: 'The amplifier protects itself',
  faults: [],
  evidence: ['amp-light', 'wire-to-frame', 'lid-check'],
  mends: ['amp', 'run', 'speaker', 'amp-supply'],
  handsOver: () => ({
    flow: 'amp-wont-turn-on',
    because: 'What it protects itself from is a question of its own. What you have answered goes along.',
    answers: REAR_AMP,
  }),
  remedy: (f) => ({
    what: 'The amplifier shows its fault lamp: it has switched itself off to protect itself.',
    certainty: 'short list',
    howSure:
      'The fault lamp says that it gets some supply and is switched on. What it protects itself from is still open.',
    numbers: [
      { label: 'DC across an output, healthy', value: 'below 0.05 V' },
      { label: 'Run, healthy', value: 'coil plus wires, none to the frame' },
    ],
    fix: [
      'Key off, all speakers off the amplifier, key on: lamp normal now? Then it is a run or a coil: plug them in one at a time, key off between.',
      'Lamp still on and the case hot: let it cool for half an hour.',
      ...lineLevelOut(f),
      'Lamp still on and cold: plus to ground at its terminals with a 5 A lamp across them, within 0.5 V of the battery? No: lead, holder or ground. Yes: the amplifier.',
    ],
    tools: 'None to begin with',
    minutes: 15,
    who: YOURSELF_OR_FITTER,
    notBuy: ['An amplifier before the speakers were off it once.', 'A reflash.'],
    cautions: ['hot', 'key-off', 'bridge'],
    proof: 'Lamp normal with all speakers plugged in, and for 30 minutes at the volume that tripped it.',
    mayAlsoBe: [
      { what: 'A rear speaker wire on the frame', split: 'Plug apart, key off: each wire to the frame above 100 kΩ?' },
      { what: 'A shorted run or coil', split: 'Plug apart, key off: the run reads coil plus wires?' },
      { what: 'Heat', split: 'Comes back by itself after minutes.' },
      { what: 'DC at its output', split: 'Speakers off, music paused: below 0.05 V across each output?' },
    ],
  }),
};
