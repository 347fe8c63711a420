import { describe, expect, it } from 'vitest';
import { ampIn } from '../../src/steps/amplifier/amp-in.ts';
import { ampLight } from '../../src/steps/amplifier/amp-light.ts';
import { ampOut } from '../../src/steps/amplifier/amp-out.ts';
import { ampSwitches } from '../../src/steps/amplifier/amp-switches.ts';
import { halfSupply } from '../../src/steps/amplifier/half-supply.ts';
import { swapInputs } from '../../src/steps/amplifier/swap-inputs.ts';
import { fourCorners } from '../../src/steps/ears/four-corners.ts';
import { lidCheck } from '../../src/steps/plugs/lid-check.ts';
import { wiggle } from '../../src/steps/plugs/wiggle.ts';
import { coilOhms } from '../../src/steps/runs/coil-ohms.ts';
import { runOhms } from '../../src/steps/runs/run-ohms.ts';
import { faderCentre } from '../../src/steps/settings/fader-centre.ts';
import type { Step } from '../../src/steps/step.ts';
import { rearPair } from '../../src/steps/unit/rear-pair.ts';
import { byCell, type Decision, differences, type Named, parse, type RowMeans } from './compare.ts';
import { MATRIX_NO_REAR_SOUND } from './matrix-no-rear-sound.ts';
import { TWENTY_RIGS } from './rigs.ts';

const is = (step: { readonly id: string }, words: Named['words'] = {}): Named => ({ step: step as Step, words });
/** Read with the fader in the middle, as the matrix asks. */
const centred = (...named: Parameters<typeof is>): Named => ({
  ...is(...named),
  after: [faderCentre as unknown as Step],
});
const REACTS = { 'amp-input': 'reacts', 'rear-run': 'reacts', 'amp-supply': 'reacts' };

/** Tests of the matrix, as steps of ours. */
const TESTS: Readonly<Record<string, Named>> = {
  'fader-balance-centre': is(faderCentre),
  'four-corners': is(fourCorners),
  'lid-check': is(lidCheck),
  wiggle: is(wiggle, REACTS),
  'amp-light': is(ampLight),
  'amp-switches-look': is(ampSwitches),
  'half-supply': centred(halfSupply),
  'ac-unit-rear': centred(rearPair, { uneven: 'low' }),
  'ac-amp-in': centred(ampIn),
  'ac-amp-out': centred(ampOut),
  'run-ohms': centred(runOhms),
  'coil-ohms': centred(coilOhms),
  'swap-inputs': centred(swapInputs, { plays: 'moves', silent: 'stays' }),
};

const byAmp: RowMeans['on'] = ({ rearFedBy }) => rearFedBy === 'amp';
const byUnit: RowMeans['on'] = ({ rearFedBy }) => rearFedBy === 'unit';
const row = (...faults: readonly string[]): RowMeans => ({ faults, on: byAmp });

/** Rows of the matrix, as faults of ours. The build is one with an amplifier on the rear, but where a case says so. */
const ROWS: Readonly<Record<string, RowMeans>> = {
  'rear-channels-disabled': row('rear-channels-disabled'),
  'rear-channels-disabled @no-amp': { faults: ['rear-channels-disabled'], on: byUnit },
  'fader-or-balance-off': row('fader-or-balance-off@fader'),
  'rear-plug-off': row('rear-plug-off@both-rear'),
  'amp-input-plug-off': row('amp-input-plug-off', 'amp-input-plug-off@rear'),
  'channel-mode-wrong': row('channel-mode-wrong'),
  'remote-wire-open @amp-on-rear-only': row('remote-wire-open'),
  'main-fuse-open @amp-on-rear-only': row('main-fuse-open'),
  'remote-source-dead @amp-on-rear-only': row('remote-source-dead'),
  'amp-ground-open @amp-on-rear-only': row('amp-ground-open'),
  'amp-dead @amp-on-rear-only': row('amp-dead'),
  'sense-starved-by-profile @amp-on-rear-only': row('sense-starved-by-profile'),
  'turn-on-mode-wrong @amp-on-rear-only': row(
    'turn-on-mode-wrong@sense-but-wire-used',
    'turn-on-mode-wrong@wire-but-none-fitted',
  ),
  'speaker-wire-to-frame': row(
    'speaker-wire-to-frame@both-rear',
    'speaker-wire-to-frame@one-rear',
    'speaker-wire-to-frame@lid-shut',
  ),
  'replaced-unit-setting': row('replaced-unit-setting@rear-off'),
  'replaced-unit-adapter-gap': row('replaced-unit-adapter-gap@rear-pairs'),
  'profile-reverted': row('profile-reverted'),
  'amp-input-too-low': row('amp-input-too-low'),
  'lid-contacts-dirty': row('lid-contacts-dirty@both-rear'),
  'lid-lead-broken': row('lid-lead-broken@both-rear'),
  'speaker-wire-open': row('speaker-wire-open@both-rear'),
  'coil-open @both-rear': row('coil-open@both-rear'),
  'amp-channel-dead @rear-pair': row('amp-channel-dead@rear-pair'),
};

/** Rows whose bikes include one with a line-level lead, or one whose rear wires carry half the supply or none. */
const BEHIND_THE_UNIT = [
  'fader-or-balance-off',
  'rear-plug-off',
  'remote-wire-open @amp-on-rear-only',
  'main-fuse-open @amp-on-rear-only',
  'remote-source-dead @amp-on-rear-only',
  'amp-dead @amp-on-rear-only',
  'amp-input-plug-off',
  'speaker-wire-to-frame',
  'lid-contacts-dirty',
  'lid-lead-broken',
  'speaker-wire-open',
  'coil-open @both-rear',
  'amp-channel-dead @rear-pair',
];
const UNIT_IS_SILENT = ['rear-channels-disabled', 'replaced-unit-setting', 'profile-reverted'];

const DECIDED: readonly Decision[] = [
  {
    faults: ['amp-input-plug-off'],
    test: 'wiggle',
    hand: 'reacts',
    circuit: 'no-effect/reacts',
    why: 'A plug that is right out reacts to no finger, and not everybody notices that it hangs.',
  },
  {
    faults: BEHIND_THE_UNIT,
    test: 'half-supply',
    hand: 'half',
    circuit: 'half/zero',
    why: 'A line-level lead passes no DC: zero is healthy there. The matrix has speaker wires in mind.',
  },
  {
    faults: ['sense-starved-by-profile @amp-on-rear-only'],
    test: 'half-supply',
    hand: 'half/zero',
    circuit: 'half',
    why: 'An amplifier made for the unaltered output hangs on speaker wires, and those rest at half the supply.',
  },
  {
    faults: ['sense-starved-by-profile @amp-on-rear-only'],
    test: 'ac-amp-in',
    hand: 'low',
    circuit: 'ok',
    why: 'The step compares with what leaves the head unit, and all of it arrives. It is too little for this amplifier, and not lost.',
  },
  {
    faults: [...UNIT_IS_SILENT, 'replaced-unit-adapter-gap', 'amp-input-plug-off'],
    test: 'ac-amp-out',
    hand: 'none',
    circuit: 'n/a',
    why: 'The step compares with the input, and there is nothing to compare with: its reference is refused as too little.',
  },
  {
    faults: UNIT_IS_SILENT,
    test: 'ac-amp-in',
    hand: 'none',
    circuit: 'n/a',
    why: 'The step compares with what leaves the head unit, and nothing does: its reference is refused as too little.',
  },
  {
    faults: ['fader-or-balance-off', 'replaced-unit-setting'],
    test: 'amp-light',
    hand: 'normal',
    circuit: 'normal/off',
    why: 'An amplifier that listens to the rear pairs alone falls asleep when they are silent, whatever silences them.',
  },
  {
    faults: ['amp-input-plug-off', 'speaker-wire-to-frame'],
    test: 'four-corners',
    hand: 'no-rear/none',
    circuit: 'no-rear',
    why: 'Nothing at all plays only where one amplifier drives everything, and then the complaint is another one.',
  },
  {
    faults: ['lid-contacts-dirty', 'lid-lead-broken', 'speaker-wire-open'],
    test: 'four-corners',
    hand: 'no-rear/one-corner',
    circuit: 'no-rear',
    why: 'With one corner silent the rear is not: the complaint is then of one speaker. Both runs have the fault here.',
  },
  {
    faults: ['channel-mode-wrong'],
    test: 'ac-unit-rear',
    hand: 'ok/none',
    circuit: 'ok',
    why: 'The selector is at the amplifier and does not reach the head unit; a rear that is off as well is a second fault.',
  },
  {
    faults: ['channel-mode-wrong'],
    test: 'ac-amp-in',
    hand: 'none',
    circuit: 'ok',
    why: 'It silences the rear only where all signal comes in at the front inputs, and those are read then: it is there.',
  },
  {
    faults: ['speaker-wire-to-frame'],
    test: 'ac-amp-out',
    hand: 'none',
    circuit: 'ok',
    why: 'The step is done with the speakers unplugged and the key cycled: the short is off, and the output is back.',
  },
  {
    faults: [
      'remote-wire-open @amp-on-rear-only',
      'main-fuse-open @amp-on-rear-only',
      'remote-source-dead @amp-on-rear-only',
      'amp-ground-open @amp-on-rear-only',
      'amp-dead @amp-on-rear-only',
      'sense-starved-by-profile @amp-on-rear-only',
      'turn-on-mode-wrong @amp-on-rear-only',
      'speaker-wire-to-frame',
    ],
    test: 'swap-inputs',
    hand: 'stays',
    circuit: 'n/a',
    why: 'An amplifier that drives the rear alone has no front plug to swap with, and one that drives all would silence the front.',
  },
  {
    faults: ['amp-input-too-low'],
    test: 'amp-switches-look',
    hand: 'right/range',
    circuit: 'range',
    why: 'What makes the rear inaudible beside the front is a knob at its lower end, and that is seen.',
  },
];

describe('a bike with no rear sound', { timeout: 180_000 }, () => {
  it('is asked every test and has every row of the hand-made matrix', () => {
    const cells = parse(MATRIX_NO_REAR_SOUND);
    expect(Object.keys(ROWS)).toEqual([...cells.keys()]);
    expect(Object.keys(TESTS)).toEqual([...(cells.values().next().value?.keys() ?? [])]);
  });
  it('shows at each test what the hand-made matrix says, or what was decided', () => {
    const found = differences('no-rear-sound', parse(MATRIX_NO_REAR_SOUND), ROWS, TESTS, Object.values(TWENTY_RIGS));
    expect(found).toEqual(byCell(DECIDED, parse(MATRIX_NO_REAR_SOUND)));
  });
});
