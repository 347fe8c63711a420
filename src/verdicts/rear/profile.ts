import { formatQuantity } from '../../compute/quantity.ts';
import { ampDriving } from '../../rig/rig.ts';
import { readsFine } from '../../steps/meter.ts';
import type { Findings } from '../../steps/outcome.ts';
import { rearPairFound } from '../../steps/rear-volts.ts';
import { amplifiedInstead, fullLevel, unloadedFullV, written } from '../levels.ts';
import type { Remedy, RemedyNumber, Verdict } from '../verdict.ts';
import { DEALER_OR_SPECIALIST, FITTER, YOURSELF } from '../who.ts';

/** Faults in what the head unit lets out, whatever hangs on it. */

const silent = (f: Findings) => rearPairFound(f) === 'none';
/** Whether the rear outputs are used at all: an amplifier that takes everything from the front pair leaves them alone. */
const outputsUsed = (f: Findings) => !ampDriving(f.rig, 'rear') || f.outcome('rear-inputs') === 'own';
const sureness = (f: Findings, history: boolean) =>
  silent(f) && readsFine(f) && history && outputsUsed(f) && f.outcome('unit-kind') === 'factory'
    ? ('proved' as const)
    : ('likely' as const);
const FED_FROM_FRONT = {
  what: 'The amplifier takes everything from the front pair',
  split: 'Count the pairs of signal wires into it. Two for all four channels: silent rear outputs are normal then.',
};
/** Steps that clear everything after the head unit. */
const runCleared = (f: Findings) => f.outcome('run-ohms') === 'ok' || f.outcome('pop-run') === 'moves';

const PROOF =
  'The rear plays as loud as the front. With a meter, 400 Hz tone, fader in the middle: the rear pair reads 0.7 to 1.4 of the front pair.';

const whySure = (f: Findings, because: string) =>
  silent(f)
    ? `The rear pairs carry nothing while the front pair plays. ${because}`
    : f.outcome('swap-inputs') === 'plays'
      ? `The rear plays on the front signal, so everything after the amplifier’s inputs is healthy. ${because}`
      : runCleared(f)
        ? `The rear run and its coils are healthy. ${because}`
        : because;

/** The rows of an enabled rear pair: on the unit it plays at full level, on an amplifier it only carries the signal. */
const rearOnNumbers = (f: Findings): readonly RemedyNumber[] => {
  const { rig } = f;
  // Into an amplifier an output drives no load: volts only, and a little more of them.
  const front =
    rig.frontFedBy === 'amp'
      ? { label: 'Front output, clean, into an amplifier', value: formatQuantity(unloadedFullV(rig), 'V') }
      : { label: 'Front output, clean, per channel', value: written(fullLevel(rig, 'front')) };
  if (ampDriving(rig, 'rear')) return [front];
  const after = { label: 'Rear output after the change', value: written(fullLevel(rig, 'rear')) };
  return [front, after, ...amplifiedInstead(rig, 'rear')];
};

function enableRear(
  f: Findings,
): Pick<Remedy, 'numbers' | 'fix' | 'tools' | 'minutes' | 'who' | 'notBuy' | 'ifDoneAnyway' | 'cautions' | 'proof'> {
  const amp = ampDriving(f.rig, 'rear');
  return {
    numbers: rearOnNumbers(f),
    fix: [
      ...(amp && f.rig.frontFedBy === 'amp'
        ? [
            'Every speaker hangs on an amplifier: first go through the plan “Does it need a reflash at all?”. One visit can enable the rear and settle the level.',
          ]
        : []),
      ...(amp
        ? [
            'Before the visit: amplifier gain to minimum, speaker-level range, high-pass on at 80 to 100 Hz, bass control at zero. Full level and bass will reach it. Set the gain after the visit.',
          ]
        : []),
      amp
        ? 'Ask for the rear channels to be enabled. Whether the level should be lowered for the amplifier too is a question of its own: the plan “Does it need a reflash at all?” answers it.'
        : 'Ask for the rear channels to be enabled, and for nothing else to be changed.',
      ...(amp
        ? []
        : [
            'Before the visit, key off and plug apart: no rear wire may touch the frame, and each run must read its coil. A short would silence an enabled channel again.',
          ]),
      'Bring the bike with the rear speakers plugged in.',
      'Have the work order say what the setting does: rear on, level full, bass as before.',
    ],
    tools: 'A dealer’s or a specialist’s tool',
    minutes: 30,
    who: DEALER_OR_SPECIALIST,
    notBuy: [
      ...(silent(f)
        ? []
        : [
            'A visit before the reading that proves it: 400 Hz across the rear pair, next to the front pair. Ten minutes with a meter.',
          ]),
      ...(amp
        ? ['A new amplifier or new speakers: nothing reaches them yet.']
        : [
            'An amplified profile: without an amplifier it only makes the bike quieter.',
            'An amplifier just to get the rear to play: the head unit drives it.',
          ]),
    ],
    ...(amp
      ? {}
      : {
          ifDoneAnyway:
            'With an amplified profile and no amplifier the rear plays, but everything has about one fifth of the power and the bass boost is gone.',
        }),
    cautions: ['warranty', 'bridge'],
    proof: PROOF,
  };
}

export const rearChannelsDisabled: Verdict = {
  id: 'rear-channels-disabled',
  title: 'The rear channels are switched off in the head unit',
  faults: ['rear-channels-disabled'],
  evidence: [
    'rear-pair',
    'rear-history',
    'delivered-with',
    'unit-kind',
    'swap-inputs',
    'pop-run',
    'run-ohms',
    'fader-centre',
  ],
  mends: ['profile'],
  article: 'what-a-reflash-is',
  remedy: (f) => {
    const delivered = f.outcome('delivered-with');
    const enable = enableRear(f);
    const mayAlsoBe = [
      ...(outputsUsed(f) ? [] : [FED_FROM_FRONT]),
      ...(delivered === 'two'
        ? []
        : [
            {
              what: 'Both rear outputs of the head unit are dead',
              split: 'Rear channels enabled, and still nothing across the rear pairs.',
            },
          ]),
    ];
    return {
      ...enable,
      what:
        delivered === 'four'
          ? 'The rear outputs of this head unit are silent: another profile is stored than the bike was built with, or the outputs are dead.'
          : 'The rear channels are switched off in the head unit.',
      certainty: sureness(f, f.outcome('rear-history') === 'never' && delivered === 'two'),
      howSure: whySure(
        f,
        delivered === 'two'
          ? 'A bike built with front speakers only is delivered like this.'
          : delivered === 'four'
            ? 'This bike was built with rear speakers, so its own profile lets them play.'
            : 'A bike built with front speakers only is delivered like this. Find out what yours was built with.',
      ),
      background:
        'Nothing needs to be broken for this: stored settings can keep good outputs silent. Half the supply as DC on the rear wires proves nothing about it.',
      fix:
        delivered === 'four'
          ? [
              'Read the stored profile before you pay: “What is in this head unit now?” takes half an hour.',
              ...enable.fix,
            ]
          : enable.fix,
      ...(mayAlsoBe.length > 0 && { mayAlsoBe }),
    };
  },
};

export const profileReverted: Verdict = {
  id: 'profile-reverted',
  title: 'The head unit is back on a profile without rear channels',
  faults: ['profile-reverted'],
  evidence: [
    'rear-pair',
    'rear-history',
    'last-change',
    'delivered-with',
    'unit-kind',
    'wire-to-frame',
    'swap-inputs',
    'pop-run',
  ],
  mends: ['profile'],
  article: 'what-a-reflash-is',
  remedy: (f) => {
    const work = ['workshop', 'reflash', 'unit', 'battery'].includes(f.outcome('last-change') ?? '');
    return {
      what: 'The rear channels were on before and are off now: the head unit is back on another stored profile.',
      certainty: sureness(f, work && f.outcome('rear-history') === 'stopped'),
      howSure: whySure(f, work ? 'They played before, and somebody worked on the bike since.' : 'They played before.'),
      background:
        'The head unit remembers its profile, not the bike. A unit swapped in service, or a tool run as routine, comes back as delivered.',
      ...enableRear(f),
      ...((!work || !outputsUsed(f)) && {
        mayAlsoBe: [
          ...(outputsUsed(f) ? [] : [FED_FROM_FRONT]),
          ...(work
            ? []
            : [
                {
                  what: 'Both rear outputs of the head unit are dead',
                  split: 'Rear channels enabled, and still nothing across the rear pairs.',
                },
              ]),
        ],
      }),
    };
  },
};

export const replacedUnitSetting: Verdict = {
  id: 'replaced-unit-setting',
  title: 'A setting of the replaced head unit keeps the rear silent',
  faults: ['replaced-unit-setting'],
  evidence: ['unit-kind', 'rear-pair', 'swap-inputs', 'pop-run', 'fader-centre'],
  mends: ['profile', 'settings'],
  article: 'what-a-reflash-is',
  remedy: (f) => ({
    what: 'The replaced head unit has its rear outputs switched off in its own menu, or its adapter leaves them out.',
    certainty: 'likely',
    howSure: whySure(f, 'A replaced head unit has no stored factory profile that could do this.'),
    numbers: [{ label: 'Rear over front, healthy', value: '0.7 to 1.4' }],
    fix: [
      'Open the replaced unit’s own menu: rear outputs on, not set to “subwoofer”.',
      'Still nothing: look at the adapter. Every rear pair must go through it as a pair.',
    ],
    tools: 'None',
    minutes: 10,
    who: YOURSELF,
    notBuy: ['A reflash: this head unit has no factory profile to select.'],
    cautions: ['bridge'],
    proof: PROOF,
    mayAlsoBe: [
      {
        what: 'The adapter has no rear pairs',
        split: 'Look at both sides of the adapter’s plug: are the four rear pins fitted?',
      },
    ],
  }),
};

export const adapterGap: Verdict = {
  id: 'replaced-unit-adapter-gap',
  title: 'The adapter of the replaced head unit leaves out the rear pairs',
  faults: ['replaced-unit-adapter-gap'],
  evidence: ['unit-kind', 'rear-pair', 'amp-in', 'half-supply', 'run-ohms'],
  mends: ['unit-leads'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => ({
    what:
      f.outcome('half-supply') === 'half'
        ? 'The adapter loom of the replaced head unit joins the rear wires to other pins: crossed, or on a subwoofer output.'
        : 'The adapter loom of the replaced head unit does not pass the rear pairs on.',
    certainty: f.outcome('half-supply') === 'zero' && readsFine(f) ? 'proved' : 'likely',
    howSure:
      f.outcome('half-supply') === 'zero'
        ? 'The head unit sends a rear signal, and the wires at the amplifier carry neither signal nor DC.'
        : f.outcome('half-supply') === 'half'
          ? 'The wires at the amplifier come from a live output of the head unit, but not from the rear pair that sends.'
          : 'The head unit sends a rear signal, the speaker run is good, and it is silent all the same: the joint between the two is left.',
    numbers: [{ label: 'DC on a wire that arrives', value: '0.40 to 0.55 of the supply' }],
    fix: [
      ...(f.outcome('half-supply') === 'zero' ? [] : ['Key off, push the signal plug home until it locks, listen.']),
      'Find the rear pairs at the head unit’s plug.',
      ...(f.outcome('half-supply') === 'half'
        ? ['Follow each wire from the amplifier back to its pin: is it a rear pair, and no subwoofer output?']
        : []),
      'Add the missing wires, or fit the adapter for a four-speaker bike.',
      'Keep each pair a pair. No common minus.',
    ],
    tools: 'Meter, crimp tool',
    minutes: 60,
    who: FITTER,
    notBuy: ['A reflash, an amplifier, or another head unit: wires are missing.'],
    cautions: ['bridge', 'key-off', 'data'],
    proof:
      'Each wire is continuous from the head unit’s pin to the amplifier’s input, and the 400 Hz tone arrives within 15 %.',
  }),
};
