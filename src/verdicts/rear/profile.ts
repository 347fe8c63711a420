import { formatQuantity } from '../../compute/quantity.ts';
import { fullLevel, type Level, lowered, rearLoadOhm, unloadedFullV } from '../../rig/levels.ts';
import { ampDriving, estimate, type Rig } from '../../rig/rig.ts';
import { readsFine } from '../../steps/meter.ts';
import type { Findings } from '../../steps/outcome.ts';
import { rearPairFound, rearPairSilent } from '../../steps/rear-volts.ts';
import type { Remedy, RemedyNumber, Verdict } from '../verdict.ts';
import { DEALER_OR_SPECIALIST, FITTER, YOURSELF } from '../who.ts';
import {
  type Alternative,
  FADER_OFF,
  ON_THE_FRAME,
  REAR_CONTROL_OFF,
  RUN_SHORTED,
  SIGNAL_PLUG_OFF,
  WIRES_TOGETHER,
} from './alternatives.ts';

/** Faults in what the head unit lets out, whatever hangs on it. */

const silent = rearPairSilent;
/** Whether somebody said what hangs on a rear channel, so that a warning about it is no guess. */
const rearLoadKnown = (rig: Rig): boolean => rig.rearRatedOhm !== undefined;
const written = ({ levelV, powerW }: Level): string =>
  `${formatQuantity(levelV, 'V')} · ${formatQuantity(powerW, 'W', 2)}`;
/** What an amplified profile would do to a rear that the head unit drives itself. */
const amplifiedInstead = (rig: Rig): readonly RemedyNumber[] => [
  { label: 'With an amplified profile instead', value: written(lowered(rig, fullLevel(rig, 'rear'))) },
  { label: 'That would be', value: `${formatQuantity(estimate(rig, 'loweredByDb').value, 'dB', 2)} quieter` },
];
/** Whether the rear outputs are used at all: an amplifier that takes everything from the front pair leaves them alone. */
const outputsUsed = (f: Findings) => !ampDriving(f.rig, 'rear') || f.outcome('rear-inputs') === 'own';
/** Only the head unit's own plug shows what the head unit sends. */
const atTheUnit = (f: Findings) => f.outcome('rear-pair-place') === 'unit';
const sureness = (f: Findings, history: boolean) =>
  silent(f) && readsFine(f) && history && outputsUsed(f) && atTheUnit(f) && f.outcome('unit-kind') === 'factory'
    ? ('proved' as const)
    : ('likely' as const);

/** Work that can leave another profile behind. A stored profile survives a battery change. */
export const headUnitWorkedOn = (f: Findings): boolean =>
  ['workshop', 'reflash', 'unit'].includes(f.outcome('last-change') ?? '');
const DEAD_OUTPUTS: Alternative = {
  what: 'Both rear outputs of the head unit are dead, or protect themselves',
  split: 'Rear channels enabled, no short on the run, and still nothing across the rear pairs.',
};
const AS_DELIVERED: Alternative = {
  what: 'Rear channels switched off as delivered',
  split: 'Did the rear itself ever play, heard at its grille? If not, nobody ever switched it on.',
};
/** What else is possible as long as nobody looked. */
function notSeen(f: Findings): readonly Alternative[] {
  return [
    ...(silent(f) && !atTheUnit(f)
      ? [
          {
            what: 'A plug or joint before the place where you measured',
            split: 'Measure at the head unit’s own plug: a signal there means that it is lost on the way.',
          },
        ]
      : []),
    ...(outputsUsed(f) ? [] : [FED_FROM_FRONT]),
    ...(f.outcome('swap-inputs') === 'plays' && !silent(f) ? [SIGNAL_PLUG_OFF] : []),
    ...(!silent(f) && !ampDriving(f.rig, 'rear') && f.outcome('wire-to-frame') !== 'clear' ? [RUN_SHORTED] : []),
    ...(f.outcome('fader-centre') === 'cannot' ? [FADER_OFF] : []),
    ...(f.outcome('rear-control') === 'cannot' ? [REAR_CONTROL_OFF] : []),
    ...(f.outcome('unit-kind') === 'cannot'
      ? [
          {
            what: 'The head unit is a replaced one, with the rear off in its own menu',
            split: 'Look through its menu for rear outputs. Only a factory head unit has stored profiles.',
          },
        ]
      : []),
  ];
}

const FED_FROM_FRONT: Alternative = {
  what: 'The amplifier takes everything from the front pair',
  split: 'Count the pairs of signal wires into it. Two for all four channels: silent rear outputs are normal then.',
};
/** Steps that clear everything after the head unit. */
const runCleared = (f: Findings) => f.outcome('run-ohms') === 'ok' || f.outcome('pop-run') === 'moves';

const PROOF =
  'The rear plays as loud as the front. With a meter, 400 Hz tone, fader in the middle: the rear pair reads 0.7 to 1.4 of the front pair.';

const whySure = (f: Findings, because: string) =>
  silent(f)
    ? `The rear pairs carry ${rearPairFound(f) === 'none' ? 'nothing' : 'next to nothing'} while the front pair plays. ${because}`
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
      : { label: 'Front output, clean, engine running', value: written(fullLevel(rig, 'front')) };
  if (ampDriving(rig, 'rear')) return [front];
  const after = { label: 'Rear output after the change', value: written(fullLevel(rig, 'rear')) };
  return [front, after, ...amplifiedInstead(rig)];
};

/** Ohms under which a head unit's output runs hot or protects itself. Common practice, no published source. */
const LEAST_UNIT_LOAD_OHM = 3.5;

/** What to do about a load that an enabled output would not bear. */
function loadFirst(f: Findings): readonly string[] {
  return !ampDriving(f.rig, 'rear') && rearLoadKnown(f.rig) && rearLoadOhm(f.rig) < LEAST_UNIT_LOAD_OHM
    ? [
        `The rear load is ${formatQuantity(rearLoadOhm(f.rig), 'Ω', 2)}. That is too little for a head unit: it runs hot or protects itself. Speakers of 4 Ω, or an amplifier, first.`,
      ]
    : [];
}

/** What to prepare on an amplifier that has never got the full signal on its rear inputs. */
function protectAmp(f: Findings): string {
  const range = ampDriving(f.rig, 'rear')?.input === 'line' ? '' : 'speaker-level range, ';
  return `Before the visit: amplifier gain to minimum, ${range}high-pass on at 80 to 100 Hz, bass control at zero. Full level and bass may reach it. Set the gain after the visit.`;
}

function enableRear(
  f: Findings,
  ask: { readonly amp: string; readonly unit: string },
): Pick<Remedy, 'numbers' | 'fix' | 'tools' | 'minutes' | 'who' | 'notBuy' | 'ifDoneAnyway' | 'cautions' | 'proof'> {
  const amp = ampDriving(f.rig, 'rear');
  return {
    numbers: rearOnNumbers(f),
    fix: [
      ...loadFirst(f),
      ...(amp && f.rig.frontFedBy === 'amp'
        ? [
            'Every speaker hangs on an amplifier: first go through the plan “Does it need a reflash at all?”. One visit can enable the rear and settle the level.',
          ]
        : []),
      ...(amp
        ? [protectAmp(f), ask.amp]
        : [
            ask.unit,
            'Before the visit, key off and plug apart: no rear wire may touch the frame, and each run must read its coil. A short would silence an enabled channel again.',
          ]),
      'Bring the bike with the rear speakers plugged in.',
      amp
        ? 'Have the work order say what the setting does: rear on, and which level and bass you keep.'
        : 'Have the work order say what the setting does: rear on, level full, bass as before.',
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

const ENABLE = {
  amp: 'Ask for the rear channels to be enabled. Whether the level should be lowered for the amplifier too is a question of its own: the plan “Does it need a reflash at all?” answers it.',
  unit: 'Ask for the rear channels to be enabled, and for nothing else to be changed.',
};
const PUT_BACK = {
  amp: 'Ask for what was stored before to be put back. The old work order says what it was: rear on, and perhaps a lowered level that the gain is set for.',
  unit: 'Ask for what was stored before to be put back: the rear channels on. The old work order says what it was.',
};

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
    const reflashed = f.outcome('last-change') === 'reflash';
    const enable = enableRear(f, ENABLE);
    const unseen = notSeen(f);
    const mayAlsoBe = [
      ...unseen,
      ...(reflashed
        ? [
            {
              what: 'The reflash did not enable the rear',
              split:
                'Ask what was selected, in words: rear on or off, level, bass. The name of a profile proves nothing.',
            },
          ]
        : []),
      ...(f.outcome('rear-history') === 'cannot' && !reflashed
        ? [
            {
              what: 'Back on a profile without rear channels',
              split: 'Did the rear ever play? Then ask who had the bike since.',
            },
          ]
        : []),
      ...((delivered === 'two' && !reflashed) || unseen.length > 0 ? [] : [DEAD_OUTPUTS]),
    ];
    return {
      ...enable,
      what:
        delivered === 'four'
          ? 'The rear outputs of this head unit are silent: another profile is stored than the bike was built with, or the outputs are dead.'
          : 'The rear channels are switched off in the head unit.',
      certainty: sureness(f, f.outcome('rear-history') === 'never' && delivered === 'two' && !reflashed),
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
        delivered === 'four' || reflashed
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
    const work = headUnitWorkedOn(f);
    const back = enableRear(f, PUT_BACK);
    const unseen = notSeen(f);
    // A run without a short leaves little for the outputs to protect themselves from, and an amplifier's input nothing.
    const noShort = ampDriving(f.rig, 'rear') || (runCleared(f) && f.outcome('wire-to-frame') === 'clear');
    const dead = work || unseen.includes(RUN_SHORTED) ? [] : [DEAD_OUTPUTS];
    const others = noShort ? [AS_DELIVERED, ...dead] : [...dead, AS_DELIVERED];
    const mayAlsoBe = [...unseen, ...others.slice(0, Math.max(0, 2 - unseen.length))];
    return {
      ...back,
      what: work
        ? 'The rear channels were on before and are off now: the head unit is back on another stored profile.'
        : 'The rear outputs of the head unit are silent, and they played before: dead, protecting themselves, or back on another profile.',
      certainty: sureness(f, work && f.outcome('rear-history') === 'stopped'),
      howSure: whySure(
        f,
        work
          ? 'They played before, and somebody worked on the bike since.'
          : 'They played before. A stored profile does not change by itself, so find out who had the bike.',
      ),
      background:
        'The head unit remembers its profile, not the bike. A unit swapped in service, or a tool run as routine, comes back as delivered.',
      fix: work
        ? back.fix
        : [
            'Key off. Head unit’s own plug and the rear loom: pushed home, no wire pinched or on metal.',
            'Read the stored profile before you pay: “What is in this head unit now?” takes half an hour.',
            ...back.fix,
          ],
      ...(mayAlsoBe.length > 0 && { mayAlsoBe }),
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
      ...notSeen(f),
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
  evidence: ['unit-kind', 'rear-pair', 'run-ohms'],
  mends: ['unit-leads'],
  article: 'half-the-supply-on-a-speaker-wire',
  remedy: (f) => {
    const others = [
      ...(f.outcome('wire-to-frame') === 'cannot' ? [ON_THE_FRAME] : []),
      ...(f.outcome('run-ohms') === 'cannot' ? [WIRES_TOGETHER] : []),
      ...(f.outcome('fader-centre') === 'cannot' ? [FADER_OFF] : []),
    ];
    return {
      what: 'The adapter loom of the replaced head unit does not pass the rear pairs on.',
      certainty: 'likely',
      howSure:
        'The head unit sends a rear signal, the speaker run is good, and it is silent all the same: the joint between the two is left.',
      numbers: [{ label: 'DC on a wire that arrives', value: '0.40 to 0.55 of the supply' }],
      fix: [
        'Key off, push every plug on the way home until it locks, listen.',
        'Find the rear pairs at the head unit’s plug.',
        'Add the missing wires, or fit the adapter for a four-speaker bike.',
        'Keep each pair a pair. No common minus.',
      ],
      tools: 'Meter, crimp tool',
      minutes: 60,
      who: FITTER,
      notBuy: ['A reflash, an amplifier, or another head unit: wires are missing.'],
      ...(others.length > 0 && { mayAlsoBe: others }),
      cautions: ['bridge', 'key-off', 'data'],
      proof: 'The rear plays. Each wire is continuous from the head unit’s pin to the speaker run.',
    };
  },
};
