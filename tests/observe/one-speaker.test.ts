import { describe, expect, it } from 'vitest';
import { inputSides } from '../../src/steps/amplifier/input-sides.ts';
import { outputSides } from '../../src/steps/amplifier/output-sides.ts';
import { swapSidesIn } from '../../src/steps/amplifier/swap-sides-in.ts';
import { swapSidesOut } from '../../src/steps/amplifier/swap-sides-out.ts';
import { fourCorners } from '../../src/steps/ears/four-corners.ts';
import { lidCheck } from '../../src/steps/plugs/lid-check.ts';
import { wiggle } from '../../src/steps/plugs/wiggle.ts';
import { coilOhms } from '../../src/steps/runs/coil-ohms.ts';
import { popSpeaker } from '../../src/steps/runs/pop-speaker.ts';
import { runOhms } from '../../src/steps/runs/run-ohms.ts';
import { wireToFrame } from '../../src/steps/runs/wire-to-frame.ts';
import { faderCentre } from '../../src/steps/settings/fader-centre.ts';
import type { Step } from '../../src/steps/step.ts';
import { unitSides } from '../../src/steps/unit/unit-sides.ts';
import { byCell, type Decision, differences, type Named, parse, type RowMeans } from './compare.ts';
import { MATRIX_ONE_SPEAKER } from './matrix-one-speaker.ts';
import { TWENTY_RIGS } from './rigs.ts';

const is = (step: { readonly id: string }, words: Named['words'] = {}): Named => ({ step: step as Step, words });
const REACTS = { 'amp-input': 'reacts', 'rear-run': 'reacts', 'amp-supply': 'reacts', 'unit-plug': 'reacts' };

/** Tests of the matrix, as steps of ours. */
const TESTS: Readonly<Record<string, Named>> = {
  'fader-balance-centre': is(faderCentre),
  'four-corners': is(fourCorners),
  'lid-check': is(lidCheck),
  wiggle: is(wiggle, REACTS),
  'swap-outputs': is(swapSidesOut),
  'swap-inputs': is(swapSidesIn),
  'run-ohms': is(runOhms),
  'coil-ohms': is(coilOhms),
  'wire-to-frame': is(wireToFrame),
  'pop-cell': is(popSpeaker, { moves: 'ok' }),
  'ac-unit': is(unitSides, { alike: 'ok' }),
  'ac-amp-in': is(inputSides, { alike: 'ok' }),
  'ac-amp-out': is(outputSides, { alike: 'ok' }),
};

const byAmp: RowMeans['on'] = ({ rearFedBy }) => rearFedBy === 'amp';
const row = (...faults: readonly string[]): RowMeans => ({ faults, on: byAmp });

/** Rows of the matrix, as faults of ours: of a rear speaker, on the left and on the right. */
const ROWS: Readonly<Record<string, RowMeans>> = {
  'fader-or-balance-off': row('fader-or-balance-off@balance', 'fader-or-balance-off@balance-right'),
  'coil-open': row('coil-open@one-rear', 'coil-open@one-rear-right'),
  'rear-plug-off': row('rear-plug-off@one-rear', 'rear-plug-off@one-rear-right'),
  'lid-lead-broken': row('lid-lead-broken@one-rear', 'lid-lead-broken@one-rear-right'),
  'lid-contacts-dirty': row('lid-contacts-dirty@one-rear', 'lid-contacts-dirty@one-rear-right'),
  'speaker-wire-open': row('speaker-wire-open@one-rear', 'speaker-wire-open@one-rear-right'),
  'one-input-lead-open': row('signal-lead-open@one-wire', 'signal-lead-open@one-wire-right'),
  'replaced-unit-adapter-gap': row('replaced-unit-adapter-gap@one-rear', 'replaced-unit-adapter-gap@one-rear-right'),
  'amp-channel-dead': row('amp-channel-dead@one', 'amp-channel-dead@one-right'),
  'unit-channel-dead': row('unit-channel-dead@one-rear', 'unit-channel-dead@one-rear-right'),
  'speaker-wire-to-frame': row('speaker-wire-to-frame@one-rear-alone', 'speaker-wire-to-frame@one-rear-alone-right'),
  'speaker-pair-shorted': row('speaker-pair-shorted@one-rear-alone', 'speaker-pair-shorted@one-rear-alone-right'),
};

const DECIDED: readonly Decision[] = [
  {
    faults: ['one-input-lead-open'],
    test: 'four-corners',
    hand: 'one-corner',
    circuit: 'one-corner/one-side',
    why: 'An amplifier that takes everything from the front pair loses a whole side with one of its two inputs.',
  },
  {
    faults: ['one-input-lead-open'],
    test: 'wiggle',
    hand: 'reacts/no-effect',
    circuit: 'no-effect',
    why: 'A wire that is broken through, its ends apart: what touches at times is another fault.',
  },
  {
    faults: ['replaced-unit-adapter-gap'],
    test: 'four-corners',
    hand: 'one-corner/one-side/no-rear',
    circuit: 'one-corner',
    why: 'One rear pair is missing here. Without both rear pairs the complaint is of the rear.',
  },
  {
    faults: ['amp-channel-dead'],
    test: 'four-corners',
    hand: 'one-corner/one-side',
    circuit: 'one-corner',
    why: 'One channel drives one corner. Two dead ones of one side are two faults.',
  },
  {
    faults: ['speaker-wire-to-frame', 'speaker-pair-shorted'],
    test: 'four-corners',
    hand: 'one-corner/one-side/none',
    circuit: 'one-corner',
    why: 'Where more than its own channel protects itself, the complaint is of the rear, or of the amplifier.',
  },
  {
    faults: ['speaker-wire-to-frame'],
    test: 'lid-check',
    hand: 'reacts/no-effect',
    circuit: 'no-effect',
    why: 'It lies on the frame whatever the lid does. One that the lid moves is a variant of another complaint.',
  },
  {
    faults: ['speaker-wire-to-frame', 'speaker-pair-shorted'],
    test: 'ac-amp-out',
    hand: 'one-only/none',
    circuit: 'ok',
    why: 'The step is done with the speakers unplugged and the key cycled: the short is off, and the output is back.',
  },
  {
    faults: ['speaker-pair-shorted'],
    test: 'coil-ohms',
    hand: 'ok/low',
    circuit: 'ok',
    why: 'The two wires of the run touch. A coil that is shorted itself is not among the faults.',
  },
];

describe('a bike with one silent speaker', { timeout: 180_000 }, () => {
  it('is asked every test and has every row of the hand-made matrix', () => {
    const cells = parse(MATRIX_ONE_SPEAKER);
    expect(Object.keys(ROWS)).toEqual([...cells.keys()]);
    expect(Object.keys(TESTS)).toEqual([...(cells.values().next().value?.keys() ?? [])]);
  });
  it('shows at each test what the hand-made matrix says, or what was decided', () => {
    const cells = parse(MATRIX_ONE_SPEAKER);
    const found = differences('one-speaker-or-side-dead', cells, ROWS, TESTS, Object.values(TWENTY_RIGS));
    expect(found).toEqual(byCell(DECIDED, cells));
  });
});
