import { describe, expect, it } from 'vitest';
import { ampLight } from '../../src/steps/amplifier/amp-light.ts';
import { ampSwitches } from '../../src/steps/amplifier/amp-switches.ts';
import { recover } from '../../src/steps/amplifier/recover.ts';
import { speakersUnplugged } from '../../src/steps/amplifier/speakers-unplugged.ts';
import { ampRuns } from '../../src/steps/runs/amp-runs.ts';
import { ampWiresToFrame } from '../../src/steps/runs/amp-wires-to-frame.ts';
import type { Step } from '../../src/steps/step.ts';
import { ampTerminals } from '../../src/steps/supply/amp-terminals.ts';
import { fuseSides } from '../../src/steps/supply/fuse-sides.ts';
import { supplyUnderLoad } from '../../src/steps/supply/supply-under-load.ts';
import { supplyWiggle } from '../../src/steps/supply/supply-wiggle.ts';
import { remoteJumper } from '../../src/steps/turn-on/remote-jumper.ts';
import { remoteVolts } from '../../src/steps/turn-on/remote-volts.ts';
import { senseDc } from '../../src/steps/turn-on/sense-dc.ts';
import { senseLevel } from '../../src/steps/turn-on/sense-level.ts';
import { byCell, type Decision, differences, type Named, parse, type RowMeans } from './compare.ts';
import { MATRIX_AMP_WONT_TURN_ON } from './matrix-amp-wont-turn-on.ts';
import { TWENTY_RIGS } from './rigs.ts';

const is = (step: { readonly id: string }, rest: Omit<Named, 'step'> = {}): Named => ({ step: step as Step, ...rest });
const REACTS = {
  battery: 'reacts',
  holder: 'reacts',
  lead: 'reacts',
  ground: 'reacts',
  remote: 'reacts',
  input: 'reacts',
};
const TERMINALS = [ampTerminals as unknown as Step];

/** Tests of the matrix, as steps of ours. */
const TESTS: Readonly<Record<string, Named>> = {
  'amp-light': is(ampLight),
  wiggle: is(supplyWiggle, { words: REACTS }),
  'amp-switches-look': is(ampSwitches),
  'fuse-check': is(fuseSides, { words: { whole: 'ok' }, coarse: { drop: 'ok' }, after: TERMINALS }),
  'amp-supply-split': is(supplyUnderLoad, { coarse: { 'plus-open': 'plus-drop', 'ground-open': 'ground-drop' } }),
  'remote-volts': is(remoteVolts, {
    coarse: { 'lost-on-way': 'none', 'none-at-source': 'none' },
    after: TERMINALS,
  }),
  'remote-jumper': is(remoteJumper),
  'speakers-unplugged': is(speakersUnplugged),
  recover: is(recover, { words: { stays: 'key-cycle' } }),
  'half-supply': is(senseDc, { after: TERMINALS }),
  'ac-amp-in': is(senseLevel, { words: { unclear: 'ok' }, coarse: { 'one-only': 'ok' } }),
  'wire-to-frame': is(ampWiresToFrame),
  'run-ohms': is(ampRuns),
};

const row = (...faults: readonly string[]): RowMeans => ({ faults });

/** Rows of the matrix, as faults of ours. */
const ROWS: Readonly<Record<string, RowMeans>> = {
  'main-fuse-open': row('main-fuse-open'),
  'remote-wire-open @wire': row('remote-wire-open'),
  'remote-source-dead @wire': row('remote-source-dead'),
  'remote-volts-low @wire': row('remote-volts-low'),
  'amp-ground-open': row('amp-ground-open'),
  'amp-ground-resistive @over-1-ohm': row('amp-ground-resistive@severe'),
  'fuse-holder-resistive @over-1-ohm': row('fuse-holder-resistive@severe'),
  'battery-lug-loose @amp-ring': row('battery-lug-loose@amp-ring', 'battery-lug-loose@amp-minus-ring'),
  'turn-on-mode-wrong @set-to-sense-but-wire-used': row('turn-on-mode-wrong@sense-but-wire-used'),
  'turn-on-mode-wrong @set-to-wire-but-none-fitted': row('turn-on-mode-wrong@wire-but-none-fitted'),
  'sense-starved-by-profile @sense': row('sense-starved-by-profile'),
  'sense-no-half-supply @sense': row('sense-no-half-supply'),
  'rear-channels-disabled @sense-on-rear-wires': row('rear-channels-disabled'),
  'amp-input-plug-off @sense': row('amp-input-plug-off'),
  'replaced-unit-adapter-gap @wire': row('replaced-unit-adapter-gap@remote'),
  'amp-dead': row('amp-dead'),
  'amp-dead @internal-short': row('amp-dead@internal-short'),
  'wire-chafed @plus-lead': row('wire-chafed@plus-lead'),
  'speaker-wire-to-frame': row(
    'speaker-wire-to-frame@both-rear',
    'speaker-wire-to-frame@one-rear',
    'speaker-wire-to-frame@lid-shut',
  ),
  'speaker-pair-shorted': row('speaker-pair-shorted@both-rear', 'speaker-pair-shorted@one-rear'),
  'amp-output-dc': row('amp-output-dc'),
  'amp-heat-protect': row('amp-heat-protect'),
};

const DECIDED: readonly Decision[] = [
  {
    faults: ['amp-input-plug-off @sense'],
    test: 'wiggle',
    hand: 'reacts',
    circuit: 'no-effect/reacts',
    why: 'A plug that is right out reacts to no finger, and not everybody notices that it hangs.',
  },
  {
    faults: ['amp-ground-resistive @over-1-ohm', 'fuse-holder-resistive @over-1-ohm'],
    test: 'amp-light',
    hand: 'off/fault',
    circuit: 'off',
    why: 'Too few volts leave an amplifier dark. Makers who light a fault light for it are the exception, and the step takes both.',
  },
  {
    faults: ['amp-ground-resistive @over-1-ohm', 'fuse-holder-resistive @over-1-ohm'],
    test: 'speakers-unplugged',
    hand: 'stays',
    circuit: 'clears/stays',
    why: 'From 2.2 to 2.6 Ω only what it plays pulls it down. Without speakers it draws its idle 0.9 A, and stays on.',
  },
  {
    faults: ['battery-lug-loose @amp-ring'],
    test: 'remote-jumper',
    hand: 'dead/wakes',
    circuit: 'dead',
    why: 'A ring that only just touches has far more than the 2.6 Ω at which the idle current alone holds the amplifier off.',
  },
  {
    faults: ['battery-lug-loose @amp-ring'],
    test: 'fuse-check',
    hand: 'ok',
    circuit: 'ok/sags',
    why: 'Behind a ring of hundreds of ohms the standby of the amplifier alone loses half a volt, on both sides of the fuse.',
  },
  {
    faults: ['turn-on-mode-wrong @set-to-sense-but-wire-used'],
    test: 'remote-jumper',
    hand: 'dead',
    circuit: 'wakes',
    why: 'The step sets the selector to wire for the jumper, so that it proves supply, ground and amplifier whatever it stood on.',
  },
  {
    faults: ['sense-starved-by-profile @sense', 'rear-channels-disabled @sense-on-rear-wires'],
    test: 'half-supply',
    hand: 'half/zero',
    circuit: 'half',
    why: 'These amplifiers hang on speaker wires, whose outputs are awake and rest at half the supply, enabled or not.',
  },
  {
    faults: ['sense-starved-by-profile @sense'],
    test: 'ac-amp-in',
    hand: 'low',
    circuit: 'ok',
    why: 'A lowered profile still gives 0.4 V at an ordinary level. Without the papers of the amplifier nobody can call that too little.',
  },
  {
    faults: ['amp-input-plug-off @sense'],
    test: 'half-supply',
    hand: 'half',
    circuit: 'zero',
    why: 'The matrix reads on the loom, the step where the wires enter the amplifier: behind a plug that is off there is nothing.',
  },
  {
    faults: ['replaced-unit-adapter-gap @wire'],
    test: 'ac-amp-in',
    hand: 'ok/one-only/none',
    circuit: 'ok',
    why: 'The gap of this case is the remote wire. Missing pairs are another variant, and leave an amplifier on a wire awake.',
  },
  {
    faults: ['wire-chafed @plus-lead'],
    test: 'wiggle',
    hand: 'reacts/no-effect',
    circuit: 'no-effect',
    why: 'The fuse is open by then: moving the lead lights nothing. It is the lamp in place of the fuse that flickers.',
  },
  {
    faults: ['speaker-wire-to-frame'],
    test: 'wiggle',
    hand: 'reacts/no-effect',
    circuit: 'no-effect',
    why: 'The step presses the leads of the supply. A speaker wire is not among them, and a protection that tripped waits for the key.',
  },
];

describe('a bike whose amplifier stays off', { timeout: 180_000 }, () => {
  it('is asked every test and has every row of the hand-made matrix', () => {
    const cells = parse(MATRIX_AMP_WONT_TURN_ON);
    expect(Object.keys(ROWS)).toEqual([...cells.keys()]);
    expect(Object.keys(TESTS)).toEqual([...(cells.values().next().value?.keys() ?? [])]);
  });
  it('shows at each test what the hand-made matrix says, or what was decided', () => {
    const cells = parse(MATRIX_AMP_WONT_TURN_ON);
    const found = differences('amp-wont-turn-on', cells, ROWS, TESTS, Object.values(TWENTY_RIGS));
    expect(found).toEqual(byCell(DECIDED, cells));
  });
});
