import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { NOTHING_KNOWN, type Rig } from '../../src/rig/rig.ts';
import type { Certainty } from '../../src/verdicts/verdict.ts';
import { type Answers, ride } from '../case/ride.ts';
import type { Short } from '../journey.ts';

/*
 * What each rider saw, and the verdict that follows: common practice of the trade, no published source. The numbers are
 * worked by hand from the rig: a bridge output gives (14.2 V − 2.2 V) / √2 = 8.49 V into a speaker, 7 dB less is 3.79 V.
 */

/** The head unit drives the rear. The example has no rear speakers; these were added. */
const ON_UNIT: Rig = { ...EXAMPLE_RIGS['fork-fairing'], rearFitted: 'yes', rearFedBy: 'unit', rearRatedOhm: 4 };
const ON_REPLACED_UNIT: Rig = { ...ON_UNIT, unitKind: 'replaced' };
/** One amplifier of 90 W into 4 Ω for all, fed from the head unit's speaker wires, switched by a remote wire. */
const ON_SHARED_AMP: Rig = EXAMPLE_RIGS['frame-fairing'];
/** The same for the rear only. */
const [SHARED_AMP] = EXAMPLE_RIGS['frame-fairing'].amps;
const AMP = { ...SHARED_AMP, drives: 'rear' } as const;
const ON_AMP: Rig = { ...ON_SHARED_AMP, frontFedBy: 'unit', amps: [AMP] };
const ON_LINE_AMP: Rig = { ...ON_AMP, amps: [{ ...AMP, input: 'line' }] };
/** One whose rear inputs are joined to the front ones: the rear channels of the head unit have no say. */
const ON_AMP_FED_FROM_FRONT: Rig = { ...ON_AMP, amps: [{ ...AMP, fedFrom: 'front' }] };
const ON_AMP_BEHIND_REPLACED_UNIT: Rig = { ...ON_AMP, unitKind: 'replaced' };
/** An amplifier for the rear that wakes when it hears a signal; the bike was built with four speakers. */
const ON_LISTENER: Rig = EXAMPLE_RIGS.trunk;
const [FRONT_AMP, REAR_AMP] = EXAMPLE_RIGS.trunk.amps;
const ON_DC_LISTENER: Rig = { ...ON_LISTENER, amps: [FRONT_AMP, { ...REAR_AMP, turnOn: 'dc' }] };

const past = (history: Short, change: Short): Answers => ({ 'rear-history': history, 'last-change': change });
/** Nothing that ears can set right: the front plays, the rear does not, whatever is moved. */
const SILENT: Answers = { 'fader-centre': 'no-change', 'rear-control': 'none' };
const STILL_SILENT: Answers = { ...SILENT, 'lid-check': 'no-effect' };
const METER: Answers = { 'tools-at-hand': 'meter', 'meter-digit': '0.01' };
const NO_METER: Answers = { 'tools-at-hand': 'none' };
/** The front plays through the same amplifier, so nobody asks for its lamp. */
const UNHEARD: Answers = { 'rear-hiss': 'silent' };
const LAMP_LIT: Answers = { 'rear-hiss': 'silent', 'amp-light': 'normal' };

const rearPair = (leftV: string, rightV: string): Answers => ({ 'rear-pair': { frontV: '2.00', leftV, rightV } });
const again = (leftV: string, rightV: string): Answers => ({ 'rear-pair-again': { frontV: '2.00', leftV, rightV } });
const UNIT_SENDS = rearPair('2.00', '1.90');
const UNIT_SILENT: Answers = { ...rearPair('0.00', '0.01'), 'rear-pair-place': 'unit' };
/** The same with the speakers still on the pair: a short may hide behind it. */
const LOADED: Answers = { ...UNIT_SILENT, 'rear-pair-place': 'loaded' };
const ampIn = (leftV: string, rightV: string): Answers => ({ 'amp-in': { sentV: '2.00', leftV, rightV } });
const SIGNAL_ARRIVES = ampIn('2.00', '1.98');
const ampOut = (leftV: string, rightV: string): Answers => ({
  'amp-out': { residueV: '0.05', inV: '2.00', leftV, rightV },
});
const run = (leftOhm: string, rightOhm: string): Answers => ({
  'run-ohms': { leadsOhm: '0.2', leftOhm, rightOhm },
});
const RUN_GOOD = run('3.6', '3.7');
const RUN_OPEN = run('OL', 'OL');
const FRAME_CLEAR: Answers = { 'wire-to-frame': { lowestOhm: 'OL' } };
const coil = (coilOhm: string): Answers => ({ 'coil-ohms': { leadsOhm: '0.2', coilOhm } });

interface Journey {
  readonly it: string;
  readonly rig: Rig;
  readonly answers: Answers;
  readonly ends: string;
  readonly sure: Certainty;
  /** Lines of the remedy's numbers that must be there, as `label: value`. */
  readonly numbers?: readonly string[];
  /** What the rest of the remedy must say. */
  readonly says?: readonly RegExp[];
}

const JOURNEYS: readonly Journey[] = [
  {
    it: 'blames the fader when centring it brings the rear back',
    rig: ON_UNIT,
    answers: { ...past('stopped', 'battery'), 'fader-centre': 'cured' },
    ends: 'fader-or-balance-off',
    sure: 'proved',
    says: [/nothing else can be wrong/],
  },
  {
    it: 'blames the fader when every corner plays once it is moved there',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      'fader-centre': null,
      ...NO_METER,
      'four-corners': 'all',
    },
    ends: 'fader-or-balance-off',
    sure: 'proved',
  },
  {
    it: 'only suspects the fader when every corner plays although the middle brought nothing',
    rig: ON_UNIT,
    answers: { ...past('stopped', 'nothing'), ...STILL_SILENT, ...NO_METER, 'four-corners': 'all' },
    ends: 'fader-or-balance-off',
    sure: 'likely',
  },
  {
    it: 'suspects the fader when the rear pairs carry a quarter of the front and all of it once everything stands at 0',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...METER,
      ...rearPair('0.50', '0.52'),
      ...again('2.00', '1.96'),
      ...RUN_GOOD,
      ...FRAME_CLEAR,
    },
    ends: 'fader-or-balance-off',
    sure: 'likely',
    numbers: ['Rear over front, before: 0.25 and 0.26', 'Rear over front, healthy: 0.7 to 1.4'],
    says: [/under 0.7 of the front/],
  },
  {
    it: 'finds no cause in rear pairs that stay weaker than the front: that alone silences nothing',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...METER,
      ...RUN_GOOD,
      ...FRAME_CLEAR,
      ...rearPair('0.50', '0.52'),
      ...again('0.50', '0.52'),
      'four-corners': 'no-rear',
    },
    ends: 'rear-all-healthy',
    sure: 'short list',
    says: [/That alone does not silence them/],
  },
  {
    it: 'blames the passenger control when turning it up brings the rear back',
    rig: ON_UNIT,
    answers: { ...past('stopped', 'nothing'), 'fader-centre': 'no-change', 'rear-control': 'cured' },
    ends: 'rear-control-off',
    sure: 'proved',
  },

  {
    it: 'proves switched-off rear channels when speakers that were added never played and nothing is on the rear pairs',
    rig: ON_UNIT,
    answers: { ...past('never', 'fitted'), ...STILL_SILENT, ...METER, ...UNIT_SILENT, ...RUN_GOOD, ...FRAME_CLEAR },
    ends: 'rear-channels-disabled',
    sure: 'proved',
    numbers: [
      'Front output, clean, engine running: 8.49 V · 18 W',
      'Rear output after the change: 8.49 V · 18 W',
      'With an amplified profile instead: 3.79 V · 3.6 W',
      'That would be: 7 dB quieter',
    ],
    says: [/about one fifth of the power/, /An amplified profile: without an amplifier it only makes the bike quieter/],
  },
  {
    it: 'proves switched-off rear channels behind an amplifier too, and does not advise against a profile made for one',
    rig: ON_SHARED_AMP,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...UNHEARD,
      ...METER,
      ...UNIT_SILENT,
      ...RUN_GOOD,
      ...FRAME_CLEAR,
      'swap-outputs': 'silent',
    },
    ends: 'rear-channels-disabled',
    sure: 'proved',
    // Every speaker of this bike hangs on the amplifier: (14.2 V − 0.8 V) / √2 into its inputs.
    numbers: ['Front output, clean, into an amplifier: 9.48 V'],
    says: [
      /Whether the level should be lowered for the amplifier too is a question of its own/,
      /A new amplifier/,
      /One visit can enable the rear and settle the level/,
    ],
  },
  {
    it: 'finds the head unit silent behind an amplifier that sleeps because it hears nothing',
    rig: { ...ON_LISTENER, deliveredWith: 'two' },
    answers: {
      ...past('never', 'fitted'),
      ...SILENT,
      'amp-light': 'off',
      ...METER,
      ...UNIT_SILENT,
    },
    ends: 'rear-channels-disabled',
    sure: 'proved',
  },
  {
    it: 'asks what is fitted where nothing is known of the bike, and takes the typical build for the figures',
    rig: NOTHING_KNOWN,
    answers: {
      'unit-kind': 'factory',
      'rear-drive': 'unit',
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...METER,
      ...UNIT_SILENT,
      'delivered-with': 'two',
      'rear-rating': '4',
      ...RUN_GOOD,
      ...FRAME_CLEAR,
    },
    ends: 'rear-channels-disabled',
    sure: 'proved',
    numbers: ['Front output, clean, engine running: 8.49 V · 18 W', 'That would be: 7 dB quieter'],
  },
  {
    it: 'treats the rear as amplified when nothing more is known than that an amplifier drives it',
    rig: { unitKind: 'factory', deliveredWith: 'two', rearFedBy: 'amp' },
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      'front-drive': 'unit',
      'rear-inputs': 'own',
      ...METER,
      ...UNIT_SILENT,
      'rear-rating': '4',
      ...RUN_GOOD,
    },
    ends: 'rear-channels-disabled',
    sure: 'proved',
    numbers: ['Front output, clean, engine running: 8.49 V · 18 W'],
    says: [/A new amplifier or new speakers/],
  },
  {
    it: 'never proves switched-off rear channels while nobody knows where the rear inputs get their signal',
    rig: { unitKind: 'factory', deliveredWith: 'two', rearFedBy: 'amp' },
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      'front-drive': 'unit',
      'rear-inputs': null,
      ...METER,
      ...UNIT_SILENT,
      'rear-rating': '4',
      ...RUN_GOOD,
    },
    ends: 'rear-channels-disabled',
    sure: 'likely',
    says: [/takes everything from the front pair/, /silent rear outputs are normal then/],
  },
  {
    it: 'never proves them with a meter that shows 0.1 V either',
    rig: ON_UNIT,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      'tools-at-hand': 'meter',
      'meter-digit': '0.1',
      'rear-pair': { frontV: '3.5', leftV: '0.0', rightV: '0.0' },
      'rear-pair-place': 'unit',
      ...RUN_GOOD,
      ...FRAME_CLEAR,
    },
    ends: 'rear-channels-disabled',
    sure: 'likely',
  },
  {
    it: 'hands over a listening amplifier that sleeps when nobody can measure, and names a silent head unit beside its power',
    rig: { ...ON_LISTENER, deliveredWith: 'two' },
    answers: { ...past('never', 'fitted'), ...SILENT, 'amp-light': 'off', ...NO_METER },
    ends: 'amp-off',
    sure: 'short list',
    says: [/Nothing reaches its inputs: the head unit sends nothing to the rear/, /400 Hz across the rear pair/],
  },
  {
    it: 'takes switched-off rear channels as likely when only a 1.5 V cell was there to clear wire and coil',
    rig: ON_UNIT,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...NO_METER,
      'pop-run': 'moves',
      'four-corners': 'no-rear',
    },
    ends: 'rear-channels-disabled',
    sure: 'likely',
    says: [/The rear run and its coils are healthy/],
  },
  {
    it: 'takes switched-off rear channels as likely on a bike that was built with four speakers speakers, once no short is found',
    rig: { ...ON_UNIT, deliveredWith: 'four' },
    answers: { ...past('never', 'nothing'), ...STILL_SILENT, ...METER, ...UNIT_SILENT, ...RUN_GOOD, ...FRAME_CLEAR },
    ends: 'rear-channels-disabled',
    sure: 'likely',
    says: [/The rear outputs of this head unit are silent/, /Read the stored profile before you pay/],
  },
  {
    it: 'proves that the head unit went back to another profile when the rear stopped after workshop work',
    rig: ON_UNIT,
    answers: { ...past('stopped', 'workshop'), ...STILL_SILENT, ...METER, ...UNIT_SILENT, ...RUN_GOOD, ...FRAME_CLEAR },
    ends: 'profile-reverted',
    sure: 'proved',
    numbers: ['Rear output after the change: 8.49 V · 18 W', 'With an amplified profile instead: 3.79 V · 3.6 W'],
  },
  {
    it: 'only suspects another profile when nobody worked on the bike, and names dead rear outputs beside it',
    rig: ON_AMP,
    answers: { ...past('stopped', 'nothing'), ...STILL_SILENT, ...LAMP_LIT, ...METER, ...UNIT_SILENT, ...RUN_GOOD },
    ends: 'profile-reverted',
    sure: 'likely',
    says: [/Both rear outputs of the head unit are dead/],
  },
  {
    it: 'blames the menu of a replaced head unit that sends nothing to the rear, and offers no reflash',
    rig: ON_REPLACED_UNIT,
    answers: { ...past('never', 'unit'), ...STILL_SILENT, ...METER, ...UNIT_SILENT, ...RUN_GOOD, ...FRAME_CLEAR },
    ends: 'replaced-unit-setting',
    sure: 'likely',
    says: [/no factory profile to select/],
  },
  {
    it: 'blames the menu of a replaced head unit when the rear plays on the front plugs and no plug reacts',
    rig: ON_AMP_BEHIND_REPLACED_UNIT,
    answers: {
      ...past('stopped', 'unit'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...NO_METER,
      'swap-inputs': 'plays',
      wiggle: 'no-effect',
      'amp-switches': 'right',
      'four-corners': 'no-rear',
    },
    ends: 'replaced-unit-setting',
    sure: 'likely',
  },
  {
    it: 'suspects a grounded or open wire when the two of a pair rest at different volts',
    rig: ON_AMP_BEHIND_REPLACED_UNIT,
    answers: {
      ...past('stopped', 'unit'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...RUN_GOOD,
      ...UNIT_SENDS,
      // One wire of a bridge output alone brings half of it.
      ...ampIn('1.00', '2.00'),
      'half-supply': { batteryV: '12.4', plusV: '6.1', minusV: '0' },
    },
    ends: 'one-input-lead-open',
    sure: 'likely',
    says: [/shorts one half of the output/],
  },
  {
    it: 'only suspects the signal plug behind a replaced unit: its adapter may leave the rear pins out, or cross them',
    rig: ON_AMP_BEHIND_REPLACED_UNIT,
    answers: {
      ...past('never', 'unit'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...RUN_GOOD,
      ...UNIT_SENDS,
      ...ampIn('0', '0'),
    },
    ends: 'amp-input-plug-off',
    sure: 'likely',
    says: [/are the four rear pins fitted, each on a rear pair and none on a subwoofer output/],
  },
  {
    it: 'is left with the adapter when a replaced unit sends, the run is good, and the rear is silent all the same',
    rig: ON_REPLACED_UNIT,
    answers: { ...past('never', 'unit'), ...STILL_SILENT, ...METER, ...UNIT_SENDS, ...RUN_GOOD, ...FRAME_CLEAR },
    ends: 'replaced-unit-adapter-gap',
    sure: 'likely',
  },

  {
    it: 'proves the signal plug when what leaves the head unit does not arrive at the amplifier',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'workshop'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...UNIT_SENDS,
      ...ampIn('0', '0'),
      ...RUN_GOOD,
    },
    ends: 'amp-input-plug-off',
    sure: 'proved',
    numbers: ['Healthy at the input: 0.85 to 1.15 of what leaves the head unit'],
  },
  {
    it: 'suspects the signal plug when half of what leaves the head unit is lost on one side',
    rig: ON_DC_LISTENER,
    answers: {
      ...past('stopped', 'workshop'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...RUN_GOOD,
      ...UNIT_SENDS,
      ...ampIn('1.00', '2.00'),
      'half-supply': null,
    },
    ends: 'amp-input-plug-off',
    sure: 'likely',
  },
  {
    it: 'proves the signal plug without a meter when the rear plays on the front plugs and a finger wakes the rear one',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'fitted'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...NO_METER,
      'swap-inputs': 'plays',
      wiggle: 'amp-input',
      'amp-switches': 'right',
      'four-corners': 'no-rear',
    },
    ends: 'amp-input-plug-off',
    sure: 'proved',
  },
  {
    it: 'does not ask the rear pairs of the head unit where the amplifier takes everything from the front pair',
    rig: ON_AMP_FED_FROM_FRONT,
    answers: {
      ...past('stopped', 'workshop'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...ampIn('0', '0'),
      ...RUN_GOOD,
    },
    ends: 'amp-input-plug-off',
    sure: 'proved',
  },
  {
    it: 'never blames rear channels that such an amplifier does not use, not even without a meter',
    rig: ON_AMP_FED_FROM_FRONT,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...NO_METER,
      'pop-run': 'moves',
      wiggle: 'no-effect',
      'amp-switches': 'right',
      'four-corners': 'no-rear',
    },
    ends: 'rear-short-list',
    sure: 'short list',
    says: [/^(?!.*([Ff]ader or balance|Rear channels switched off|[Pp]rofile))/s],
  },
  {
    it: 'blames the input selector of an amplifier that hisses, and gives 19 V and a gain of 2 for speaker wires',
    rig: ON_AMP,
    answers: {
      ...past('never', 'fitted'),
      ...SILENT,
      'rear-hiss': 'hiss',
      'amp-switches': 'mode',
      'amp-light': 'normal',
    },
    ends: 'channel-mode-wrong',
    sure: 'likely',
    // √(90 W × 4 Ω) = 18.97 V, √(75 W × 4 Ω) = 17.32 V; over (14.2 − 0.8) / √2 = 9.48 V of an unloaded output.
    numbers: [
      'Output to set, 90 W into 4 Ω: 19 V',
      'The same with a margin: 17.3 V',
      'Volts out over volts in, full level: about 2.0 times',
      'The same with an amplified profile: about 4.5 times',
    ],
  },
  {
    it: 'gives the same amplifier on a line-level lead the volts to set, and no gain',
    rig: ON_LINE_AMP,
    answers: {
      ...past('never', 'fitted'),
      ...SILENT,
      'rear-hiss': 'hiss',
      'amp-switches': 'mode',
      'amp-light': 'normal',
    },
    ends: 'channel-mode-wrong',
    sure: 'likely',
    numbers: ['Output to set, 90 W into 4 Ω: 19 V'],
  },
  {
    it: 'hands over one that waits for DC and stays off, whatever it is fed by',
    rig: ON_DC_LISTENER,
    answers: { ...past('never', 'fitted'), 'amp-light': 'off' },
    ends: 'amp-off',
    sure: 'short list',
    says: [/half the supply. None: it cannot wake/],
  },
  {
    it: 'sends one that gets its DC and stays off to its power',
    rig: ON_DC_LISTENER,
    answers: {
      ...past('stopped', 'battery'),
      'amp-light': 'off',
    },
    ends: 'amp-off',
    sure: 'short list',
  },
  {
    it: 'lists fuse, remote, ground and amplifier when one with a remote wire stays off, each with its reading',
    rig: ON_AMP,
    answers: { ...past('stopped', 'battery'), 'amp-light': 'off' },
    ends: 'amp-off',
    sure: 'short list',
    // A third of 2 × 90 W over 0.72 × 14.2 V; 1.6 m of 8.37 mm² copper is 3.3 mΩ.
    numbers: [
      'Current with dense loud music: 5.9 A',
      'Lost in the plus lead alone at that current: 0.019 V',
      'Main fuse on 8.37 mm² of copper or more, at most: 40 A',
      'Remote terminal when on: above 11.6 V',
    ],
    says: [/Main fuse open/, /Remote wire open, or its source dead/, /Ground open/, /Amplifier dead/],
  },
  {
    it: 'lists the same for an amplifier that listens, gets its signal, and stays off',
    rig: ON_LISTENER,
    answers: {
      ...past('stopped', 'battery'),
      ...SILENT,
      'amp-light': 'off',
      ...METER,
      ...UNIT_SENDS,
      ...SIGNAL_ARRIVES,
    },
    ends: 'amp-off',
    sure: 'short list',
    // Two channels here: a third of 2 × 150 W over 0.72 × 14.2 V.
    numbers: ['Current with dense loud music: 9.8 A', 'Main fuse on 13.3 mm² of copper or more, at most: 60 A'],
  },
  {
    it: 'takes the fault lamp as it is when there is no meter: unplug the speakers first',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'opened'),
      'amp-light': 'fault',
    },
    ends: 'amp-protecting',
    sure: 'short list',
    says: [/all speakers off the amplifier/],
  },
  {
    it: 'proves a gain far too low when the input is whole and the output gives a thirteenth of what it should when the input is whole and the output gives a quarter of what it should',
    rig: ON_AMP,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...UNIT_SENDS,
      ...SIGNAL_ARRIVES,
      ...ampOut('0.30', '0.30'),
      ...RUN_GOOD,
    },
    ends: 'amp-input-too-low',
    sure: 'proved',
    numbers: ['Output to set, 90 W into 4 Ω: 19 V'],
  },
  {
    it: 'puts range or gain first in the list when the selector does not fit and nobody can measure not fit what is plugged in',
    rig: ON_LINE_AMP,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      'rear-hiss': 'hiss',
      'amp-switches': 'range',
      ...NO_METER,
      'swap-inputs': 'silent',
      'pop-run': 'moves',
      wiggle: 'no-effect',
      'amp-light': 'normal',
      'four-corners': 'no-rear',
    },
    ends: 'rear-short-list',
    sure: 'short list',
    says: [/Likeliest: range or gain of the amplifier too low/],
  },
  {
    it: 'takes the rear channels for dead when the amplifier is lit and gets a signal and gives none, selectors unread',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...RUN_GOOD,
      ...UNIT_SENDS,
      ...SIGNAL_ARRIVES,
      ...ampOut('0.05', '0.06'),
    },
    ends: 'amp-channel-dead',
    sure: 'likely',
    says: [/Read its selectors/, /Check the run for a short before anything else goes on those outputs/],
  },
  {
    it: 'swaps no output onto a run that nobody measured, and names dead rear channels in the list the rear plays on the front output',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...NO_METER,
      'swap-inputs': 'silent',
      'pop-run': 'moves',
      wiggle: 'no-effect',
      'amp-switches': 'right',
      'four-corners': 'no-rear',
    },
    ends: 'rear-short-list',
    sure: 'short list',
    says: [/Rear channels of the amplifier dead/],
  },

  {
    it: 'proves the rear plug when it was apart and pushing it home brought the sound back',
    rig: ON_AMP,
    answers: { ...past('stopped', 'opened'), ...LAMP_LIT, 'lid-check': 'cured', 'contacts-look': 'apart' },
    ends: 'rear-plug-off',
    sure: 'proved',
    // 0.7 to 0.95 of 4 Ω; 2 × 2.2 m of 2.08 mm² copper.
    numbers: ['One coil, cold: 2.8 to 3.8 Ω', 'Both wires of the run: 36 mΩ'],
  },
  {
    it: 'takes the rear plug as likely when pushing it home cured it and nobody looked at it',
    rig: ON_UNIT,
    answers: { ...past('stopped', 'opened'), ...SILENT, 'lid-check': 'cured', 'contacts-look': null },
    ends: 'rear-plug-off',
    sure: 'likely',
  },
  {
    it: 'suspects dirty contacts when the sound comes and goes with the lid and there is a film on them comes and goes with the lid and there is a film on them',
    rig: ON_AMP,
    answers: { ...past('comes-and-goes', 'opened'), ...LAMP_LIT, 'lid-check': 'reacts', 'contacts-look': 'film' },
    ends: 'lid-contacts-dirty',
    sure: 'likely',
    numbers: ['Too much, so a bad contact: more than 1 Ω above that'],
  },
  {
    it: 'suspects dirty contacts when a run reads ten times its coil, which is 20 dB less',
    rig: ON_UNIT,
    answers: { ...past('stopped', 'nothing'), ...STILL_SILENT, 'tools-at-hand': 'meter', ...run('34', '33') },
    ends: 'lid-contacts-dirty',
    sure: 'likely',
  },
  {
    it: 'suspects them at 2 Ω too many when the rear comes and goes',
    rig: ON_UNIT,
    answers: { ...past('comes-and-goes', 'nothing'), ...STILL_SILENT, 'tools-at-hand': 'meter', ...run('6.0', '3.6') },
    ends: 'lid-contacts-dirty',
    sure: 'likely',
  },
  {
    it: 'goes on at 2 Ω too many when the rear is silent always: that makes it weaker, and is said',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...METER,
      ...UNIT_SENDS,
      ...run('6.0', '3.6'),
      ...FRAME_CLEAR,
      'four-corners': 'no-rear',
    },
    ends: 'rear-all-healthy',
    sure: 'short list',
    says: [/makes it weaker, not silent/],
  },
  {
    it: 'takes two runs of 6.4 Ω for healthy where nobody knows the rating: bad contacts are never alike',
    rig: { ...ON_UNIT, rearRatedOhm: undefined } as unknown as Rig,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...METER,
      ...UNIT_SENDS,
      'rear-rating': null,
      ...run('6.4', '6.5'),
      ...FRAME_CLEAR,
      'four-corners': 'no-rear',
    },
    ends: 'rear-all-healthy',
    sure: 'short list',
  },
  {
    it: 'takes the rear plug as likely when it was apart and the sound comes and goes there',
    rig: ON_UNIT,
    answers: { ...past('comes-and-goes', 'opened'), ...SILENT, 'lid-check': 'reacts', 'contacts-look': 'apart' },
    ends: 'rear-plug-off',
    sure: 'likely',
    says: [/was apart or not locked/],
  },
  {
    it: 'suspects the lid lead when the sound comes and goes with the lid and the plug is clean',
    rig: ON_UNIT,
    answers: { ...past('comes-and-goes', 'nothing'), ...SILENT, 'lid-check': 'reacts', 'contacts-look': 'clean' },
    ends: 'lid-lead-broken',
    sure: 'likely',
    says: [/Clean the contacts first/],
  },
  {
    it: 'proves the lid lead when the run is open even from the lid half and the coil is good',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      'lid-check': 'no-plug',
      'tools-at-hand': 'meter',
      ...RUN_OPEN,
      'run-split': 'lid-side',
      ...coil('3.5'),
    },
    ends: 'lid-lead-broken',
    sure: 'proved',
  },
  {
    it: 'proves an open wire when the run is open, the coil is good and the lid plug passes',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'fitted'),
      'lid-check': 'no-effect',
      ...LAMP_LIT,
      'tools-at-hand': 'meter',
      ...RUN_OPEN,
      'run-split': 'bike-side',
    },
    ends: 'speaker-wire-open',
    sure: 'proved',
    numbers: ['Both wires of the run: 36 mΩ'],
  },
  {
    it: 'suspects an open wire with a 1.5 V cell that moves the cone at its tabs but not from the far end',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'fitted'),
      ...STILL_SILENT,
      ...NO_METER,
      'pop-run': 'dead',
      'pop-speaker': 'moves',
      'four-corners': 'no-rear',
    },
    ends: 'speaker-wire-open',
    sure: 'likely',
    says: [/A cell does not click through a short either/],
  },
  {
    it: 'suspects the coil when the run is open from the lid half on and moving the lid does nothing: measured before it is bought',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      'tools-at-hand': 'meter',
      ...RUN_OPEN,
      'run-split': 'lid-side',
    },
    ends: 'coil-open',
    sure: 'likely',
    says: [/Before you buy anything/, /A lead breaking inside its insulation/],
  },
  {
    it: 'hears the hiss that a pushed plug brings back, and looks for the second fault before the amplifier',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'opened'),
      ...LAMP_LIT,
      'lid-check': 'hiss-now',
      ...SILENT,
      'amp-switches': 'right',
      ...METER,
      ...UNIT_SENDS,
      ...ampIn('0', '0'),
    },
    ends: 'amp-input-plug-off',
    sure: 'proved',
  },
  {
    it: 'proves the coil when it reads open at its own tabs',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      'tools-at-hand': 'meter',
      ...RUN_OPEN,
      'run-split': null,
      ...coil('OL'),
    },
    ends: 'coil-open',
    sure: 'proved',
    numbers: ['One coil, cold: 2.8 to 3.8 Ω'],
    says: [/Two coils rarely die at once by age/, /Measure the other one, too/],
  },
  {
    it: 'proves the coil with a 1.5 V cell that moves nothing at its own tabs',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...NO_METER,
      'swap-inputs': 'silent',
      'pop-run': 'dead',
      'pop-speaker': 'dead',
      'amp-switches': 'right',
      'four-corners': 'no-rear',
    },
    ends: 'coil-open',
    sure: 'proved',
    says: [/DC across each rear output under 0.05 V/],
  },
  {
    it: 'tries the run with a cell before plugs are swapped when nobody saw the amplifier',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      'rear-hiss': null,
      'amp-light': null,
      'amp-switches': null,
      ...NO_METER,
      'pop-run': 'moves',
      'swap-inputs': 'silent',
      wiggle: 'no-effect',
      'four-corners': 'no-rear',
    },
    ends: 'rear-short-list',
    sure: 'short list',
  },
  {
    it: 'measures the run and the frame before an output is swapped onto it when a meter is there',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...UNIT_SENDS,
      ...SIGNAL_ARRIVES,
      'amp-out': null,
      ...RUN_GOOD,
      ...FRAME_CLEAR,
      'swap-outputs': 'plays',
    },
    ends: 'amp-channel-dead',
    sure: 'likely',
  },
  {
    it: 'proves a wire on the frame where the head unit protects its silent pair and the rear was still plugged in the rear and protects its silent pair',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'workshop'),
      ...STILL_SILENT,
      'tools-at-hand': 'meter',
      'wire-to-frame': { lowestOhm: '0.8' },
      ...RUN_GOOD,
    },
    ends: 'speaker-wire-to-frame',
    sure: 'proved',
  },
  {
    it: 'proves a shorted run when it reads 0.3 Ω less leads, before anything is switched on again',
    rig: ON_UNIT,
    answers: { ...past('stopped', 'opened'), ...STILL_SILENT, 'tools-at-hand': 'meter', ...run('0.5', '3.6') },
    ends: 'speaker-pair-shorted',
    sure: 'proved',
    numbers: ['One coil, cold: 2.8 to 3.8 Ω'],
  },

  {
    it: 'rules out a short where the rear was still plugged in, and never proves switched-off channels then',
    rig: ON_UNIT,
    answers: { ...past('never', 'fitted'), ...STILL_SILENT, ...METER, ...LOADED, ...FRAME_CLEAR, ...RUN_GOOD },
    ends: 'rear-channels-disabled',
    sure: 'likely',
  },
  {
    it: 'finds a wire on the frame behind outputs that were read without it',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'opened'),
      ...STILL_SILENT,
      'tools-at-hand': 'meter',
      ...RUN_GOOD,
      'wire-to-frame': { lowestOhm: '0.8' },
    },
    ends: 'speaker-wire-to-frame',
    sure: 'proved',
  },
  {
    it: 'suspects the loom behind the fairing when the rear stopped by itself and was read at a plug on the way',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...METER,
      ...UNIT_SILENT,
      'rear-pair-place': 'on-the-way',
      ...RUN_GOOD,
      ...FRAME_CLEAR,
    },
    ends: 'rear-loom-open',
    sure: 'likely',
    says: [/A reflash, before the head unit’s own plug was measured/],
  },
  {
    it: 'never proves another profile from a plug on the way, and names the plug or joint before it',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'workshop'),
      ...STILL_SILENT,
      ...METER,
      ...UNIT_SILENT,
      'rear-pair-place': 'on-the-way',
      ...RUN_GOOD,
      ...FRAME_CLEAR,
    },
    ends: 'profile-reverted',
    sure: 'likely',
    says: [/A plug or joint before the place where you measured/],
  },
  {
    it: 'doubts a reflash that was to enable the rear, and rules out a short first',
    rig: ON_UNIT,
    answers: { ...past('never', 'reflash'), ...STILL_SILENT, ...METER, ...UNIT_SILENT, ...RUN_GOOD, ...FRAME_CLEAR },
    ends: 'rear-channels-disabled',
    sure: 'likely',
    says: [/The reflash did not enable the rear/, /Read the stored profile before you pay/],
  },
  {
    it: 'never calls a battery change work on the head unit: a stored profile survives it',
    rig: ON_UNIT,
    answers: { ...past('stopped', 'battery'), ...STILL_SILENT, ...METER, ...UNIT_SILENT, ...RUN_GOOD, ...FRAME_CLEAR },
    ends: 'profile-reverted',
    sure: 'likely',
    says: [/A stored profile does not change by itself/, /pushed home, no wire pinched/],
  },
  {
    it: 'warns before the rear is enabled for two speakers of 4 Ω side by side: a head unit does not drive 2 Ω',
    rig: { ...ON_UNIT, rearPerChannel: 2, rearWiring: 'parallel' },
    answers: { ...past('never', 'fitted'), ...STILL_SILENT, ...METER, ...UNIT_SILENT, ...RUN_GOOD, ...FRAME_CLEAR },
    ends: 'rear-channels-disabled',
    sure: 'proved',
    says: [/The rear load is 2 Ω. That is too little for a head unit/],
  },
  {
    it: 'does not blame the fader when the rear comes and goes and plays just now with everything in the middle',
    rig: ON_UNIT,
    answers: { ...past('comes-and-goes', 'nothing'), 'fader-centre': 'plays', wiggle: 'no-effect' },
    ends: 'rear-all-healthy',
    sure: 'short list',
    says: [/It plays just now. So it comes and goes/],
  },
  {
    it: 'finds the plug that a finger moves while the rear plays just now',
    rig: ON_UNIT,
    answers: {
      ...past('comes-and-goes', 'opened'),
      'fader-centre': 'plays',
      wiggle: 'rear-run',
      'contacts-look': 'film',
    },
    ends: 'lid-contacts-dirty',
    sure: 'likely',
  },
  {
    it: 'takes a rear pair at a fortieth of the front for silence, also when nothing is plainly zero',
    rig: ON_UNIT,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...METER,
      ...rearPair('0.10', '0.10'),
      ...again('0.10', '0.10'),
      'rear-pair-place': 'unit',
      ...RUN_GOOD,
      ...FRAME_CLEAR,
    },
    ends: 'rear-channels-disabled',
    sure: 'proved',
    says: [/carry next to nothing/],
  },
  {
    it: 'does not look for power where the front plays through the same amplifier',
    rig: ON_SHARED_AMP,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...UNHEARD,
      ...METER,
      ...RUN_GOOD,
      ...FRAME_CLEAR,
      'swap-outputs': null,
      ...UNIT_SENDS,
      ...SIGNAL_ARRIVES,
      ...ampOut('0.02', '0.02'),
    },
    ends: 'amp-channel-dead',
    sure: 'likely',
  },
  {
    it: 'mends the missing channel first behind an amplifier, and condemns no output that has no input',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...rearPair('2.00', '0.00'),
      ...again('2.00', '0.00'),
      ...RUN_GOOD,
    },
    ends: 'one-side-silent',
    sure: 'short list',
    says: [/Mend it first/],
  },
  {
    it: 'finds the wire on the frame behind an amplifier whose outputs are healthy with the speakers off',
    rig: ON_AMP,
    answers: {
      ...past('stopped', 'opened'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...UNIT_SENDS,
      ...SIGNAL_ARRIVES,
      ...ampOut('4.0', '4.1'),
      ...RUN_GOOD,
      'wire-to-frame': { lowestOhm: '0.8' },
    },
    ends: 'speaker-wire-to-frame',
    sure: 'proved',
  },
  {
    it: 'finds everything healthy when every reading on the way is, and says to measure while it fails',
    rig: ON_AMP,
    answers: {
      ...past('comes-and-goes', 'nothing'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...METER,
      ...UNIT_SENDS,
      ...SIGNAL_ARRIVES,
      ...ampOut('4.0', '4.1'),
      ...RUN_GOOD,
      wiggle: 'no-effect',
      ...FRAME_CLEAR,
      'four-corners': 'no-rear',
    },
    ends: 'rear-all-healthy',
    sure: 'short list',
    says: [/measure while it is failing/],
  },
  {
    it: 'finds everything healthy without an amplifier as well',
    rig: ON_UNIT,
    answers: {
      ...past('comes-and-goes', 'nothing'),
      ...STILL_SILENT,
      ...METER,
      ...UNIT_SENDS,
      ...RUN_GOOD,
      wiggle: 'no-effect',
      ...FRAME_CLEAR,
      'four-corners': 'no-rear',
    },
    ends: 'rear-all-healthy',
    sure: 'short list',
  },
  {
    it: 'leaves the rear alone when nothing plays anywhere',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...SILENT,
      'four-corners': 'none',
      'lid-check': 'no-effect',
      ...METER,
      ...RUN_GOOD,
      ...FRAME_CLEAR,
      ...UNIT_SENDS,
    },
    ends: 'nothing-plays',
    sure: 'short list',
    says: [/no speaker plays at all/],
  },
  {
    it: 'leaves the rear alone when one whole side is silent',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...SILENT,
      'four-corners': 'one-side',
      'lid-check': 'no-effect',
      ...METER,
      ...RUN_GOOD,
      ...FRAME_CLEAR,
      ...UNIT_SENDS,
    },
    ends: 'one-side-silent',
    sure: 'short list',
    says: [/One whole side is silent/],
  },
  {
    it: 'follows the living channel to its speaker when both rear corners are silent',
    rig: ON_UNIT,
    answers: {
      ...past('stopped', 'nothing'),
      ...STILL_SILENT,
      ...METER,
      ...rearPair('2.00', '0.00'),
      ...again('2.00', '0.00'),
      ...RUN_GOOD,
      ...FRAME_CLEAR,
    },
    ends: 'one-side-silent',
    sure: 'short list',
    says: [/That explains one silent corner/],
  },
  {
    it: 'never takes one silent corner for a setting of the rear, not even without a meter',
    rig: ON_UNIT,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      'four-corners': 'one-corner',
      ...NO_METER,
      'pop-run': 'moves',
    },
    ends: 'one-side-silent',
    sure: 'short list',
    says: [/One rear corner is silent and the other plays/],
  },
  {
    it: 'ends in a short list with odds when nothing can be measured and nothing reacts',
    rig: ON_AMP,
    answers: {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...LAMP_LIT,
      ...NO_METER,
      'swap-inputs': null,
      'pop-run': null,
      wiggle: 'no-effect',
      'amp-switches': 'right',
      'four-corners': 'no-rear',
    },
    ends: 'rear-short-list',
    sure: 'short list',
    // It is on, and does not even hiss: what feeds it is cleared, its rear channels and the run behind it are not.
    says: [/Rear channels of the amplifier dead/, /The checks below tell them apart/],
  },
];

describe('no rear sound', () => {
  for (const { it: tells, rig, answers, ends, sure, numbers = [], says = [] } of JOURNEYS) {
    it(tells, () => {
      const { verdict, remedy, numbers: written } = ride(noRearSound, rig, answers);
      expect(verdict).toBe(ends);
      expect(remedy.certainty).toBe(sure);
      expect(written).toEqual(expect.arrayContaining([...numbers]));
      for (const text of says) expect(JSON.stringify(remedy)).toMatch(text);
    });
  }

  it('gives no figure of an amplified profile to a rider whose rear hangs on an amplifier', () => {
    const answers = {
      ...past('never', 'fitted'),
      ...STILL_SILENT,
      ...UNHEARD,
      ...METER,
      ...RUN_GOOD,
      ...FRAME_CLEAR,
      'swap-outputs': 'silent',
      ...UNIT_SILENT,
    };
    expect(ride(noRearSound, ON_SHARED_AMP, answers).numbers).toEqual([
      'Front output, clean, into an amplifier: 9.48 V',
    ]);
  });
});

const verdicts = Object.values(noRearSound.states).flatMap((state) => ('verdict' in state ? [state.verdict] : []));

describe('the verdicts of the flow', () => {
  it('have a journey each', () => {
    const reached = new Set(JOURNEYS.map(({ ends }) => ends));
    expect([...new Set(verdicts.map(({ id }) => id))].sort()).toEqual([...reached].sort());
  });

  it.each([
    'rear-channels-disabled',
    'fader-or-balance-off',
    'rear-control-off',
    'rear-plug-off',
    'amp-input-plug-off',
    'channel-mode-wrong',
    'remote-wire-open',
    'main-fuse-open',
    'remote-source-dead',
    'amp-ground-open',
    'amp-dead',
    'sense-starved-by-profile',
    'sense-no-half-supply',
    'turn-on-mode-wrong',
    'speaker-wire-to-frame',
    'replaced-unit-setting',
    'replaced-unit-adapter-gap',
    'profile-reverted',
    'amp-input-too-low',
    'lid-contacts-dirty',
    'lid-lead-broken',
    'speaker-wire-open',
    'coil-open',
    'amp-channel-dead',
  ])('stand for the fault %s', (fault) => {
    expect(verdicts.filter(({ faults }) => faults.includes(fault)).map(({ id }) => id)).toHaveLength(1);
  });
});
