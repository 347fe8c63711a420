import { describe, expect, it } from 'vitest';
import type { Rig } from '../../src/rig/rig.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import type { KnownOf, StepId } from '../../src/steps/ids.ts';
import { findingsFrom } from '../../src/steps/outcome.ts';
import type { Facts } from '../../src/steps/step.ts';

type Outcomes = { readonly [Id in StepId]?: KnownOf<Id> };
const AMP: Rig = { amps: [{ drives: 'rear' }], rearFedBy: 'amp' };

/** Whether it makes sense to ask a step, with these outcomes known. */
function asks(id: StepId, outcomes: Outcomes = {}, rig: Rig = {}, facts: Facts = {}): boolean {
  const known: Readonly<Record<string, string>> = outcomes;
  const values = () => ({ frontV: 1, leftV: outcomes['rear-pair'] === 'none' ? 0 : 0.5, rightV: 0 });
  const findings = findingsFrom({ rig, facts }, (step) => known[step], values);
  const step = ALL_STEPS[id] ?? expect.fail(`no step ${id}`);
  return step.sensible?.(findings) ?? true;
}
/** The steps of these that make sense. */
const asked = (ids: readonly StepId[], outcomes: Outcomes = {}, rig?: Rig) =>
  ids.filter((id) => asks(id, outcomes, rig));

/** A rear flow on an amplifier, and an amplifier flow whose amplifier is dark. */
const ON_AMP = { 'rear-drive': 'amp' } as const satisfies Outcomes;
const DARK = { 'which-amp': 'rear', 'amp-light': 'off' } as const satisfies Outcomes;
const ON = { 'which-amp': 'rear', 'amp-light': 'normal' } as const satisfies Outcomes;
const FAULT = { 'which-amp': 'rear', 'amp-light': 'fault' } as const satisfies Outcomes;

const OF_REAR_AMP = ['front-drive', 'rear-inputs', 'rear-amp-input', 'rear-amp-turn-on', 'amp-in', 'amp-out'] as const;
const SEEN = ['amp-light', 'amp-switches', 'rear-hiss', 'half-supply'] as const;
const FED = ['amp-terminals', 'rings-look', 'supply-wiggle', 'temporary-leads', 'body-fuse', 'fuse-look'] as const;
const WAKES = ['remote-volts', 'remote-jumper', 'remote-lamp', 'key-positions', 'input-plug'] as const;
const LOAD = ['speakers-unplugged', 'amp-wires-to-frame', 'amp-runs', 'amp-dc'] as const;

describe('a step about an amplifier', () => {
  const all = [...OF_REAR_AMP, ...SEEN, ...FED, ...WAKES, 'sense-dc', 'sense-level', 'swap-inputs'] as const;
  it('is not asked where the head unit drives the rear, or where nobody knows of one', () => {
    expect(asked([...all, ...LOAD], { 'rear-drive': 'unit' })).toEqual([]);
    expect(asked([...all, ...LOAD], { 'rear-drive': 'cannot' })).toEqual([]);
  });
  it('is asked where one drives the rear', () => {
    expect(asked([...OF_REAR_AMP, ...SEEN], ON_AMP)).toEqual([...OF_REAR_AMP, ...SEEN]);
  });
  it('is asked of the one that a case is about, which need not drive the rear', () => {
    expect(asked(FED, { ...DARK, 'which-amp': 'front' })).toEqual([...FED]);
    expect(asked([...OF_REAR_AMP, 'rear-hiss'], { ...DARK, 'which-amp': 'front' })).toEqual([]);
  });
  it('asks how the front one is switched only of a front one, and not of one that nobody tells apart', () => {
    expect(asks('front-amp-turn-on', { 'which-amp': 'front' })).toBe(true);
    expect(asks('front-amp-turn-on', { 'which-amp': 'rear' })).toBe(false);
    expect(asks('rear-amp-turn-on', { 'which-amp': 'rear' })).toBe(true);
    expect(asks('rear-amp-turn-on', { 'which-amp': 'cannot' })).toBe(false);
  });
});

describe('a step about what feeds or wakes an amplifier', () => {
  const wakes = [...WAKES, 'fuse-look', 'body-fuse', 'wakes-when-loud'] as const;
  it('is not asked of one that is on and stays on', () => {
    expect(asked([...FED, ...WAKES, 'sense-dc', 'sense-level'], { ...ON, 'amp-goes-off': 'stays-on' })).toEqual([]);
  });
  it('is asked of one that goes off at times, where it need not be woken', () => {
    const bumps = { ...ON, 'amp-goes-off': 'bumps' } as const;
    expect(asked(FED, bumps)).toEqual(['amp-terminals', 'rings-look', 'supply-wiggle', 'temporary-leads']);
    expect(asked(wakes, bumps)).toEqual(['remote-volts']);
  });
  it('does not wait for one to wake that was heard or shows its fault light', () => {
    expect(asked(['remote-jumper', 'input-plug', 'wakes-when-loud'], FAULT)).toEqual([]);
    expect(asked(['remote-jumper', 'input-plug'], { ...ON_AMP, 'rear-hiss': 'hiss' })).toEqual([]);
  });
  it('looks for other signs of life only where there is no lamp to see', () => {
    expect(asks('amp-signs', DARK)).toBe(false);
    expect(asks('amp-signs', { ...DARK, 'amp-light': 'cannot' })).toBe(true);
  });
});

describe('a remote wire', () => {
  const remote = ['remote-volts', 'remote-lamp', 'key-positions'] as const;
  it('is not looked for on an amplifier that listens, or has no such terminal', () => {
    expect(asked(remote, { ...DARK, 'rear-amp-turn-on': 'signal' })).toEqual([]);
    expect(asked(remote, { ...DARK, 'rear-amp-turn-on': 'dc' })).toEqual([]);
    expect(asked(remote, { ...DARK, 'remote-jumper': 'no-terminal' })).toEqual([]);
  });
  it('is looked for where one switches it, and where nobody knows', () => {
    expect(asked(remote, { ...DARK, 'rear-amp-turn-on': 'wire' })).toEqual([...remote]);
    expect(asked(remote, { ...DARK, 'rear-amp-turn-on': 'cannot' })).toEqual([...remote]);
    expect(asked(remote, { ...DARK, 'which-amp': 'cannot' })).toEqual([...remote]);
  });
  it('is followed to its start only where too little arrives', () => {
    expect(asks('remote-source', DARK)).toBe(false);
    expect(asks('remote-source', { ...DARK, 'remote-volts': 'ok' })).toBe(false);
    expect(asks('remote-source', { ...DARK, 'remote-volts': 'none' })).toBe(true);
    expect(asks('remote-start-lamp', { ...DARK, 'remote-lamp': 'lit' })).toBe(false);
    expect(asks('remote-start-lamp', { ...DARK, 'remote-lamp': 'dark' })).toBe(true);
  });
  it('takes a lamp only where no meter read it', () => {
    expect(asks('remote-lamp', { ...DARK, 'remote-volts': 'none' })).toBe(false);
    expect(asks('remote-lamp', { ...DARK, 'remote-volts': 'cannot' })).toBe(true);
  });
  it('is tried with the key off only where the battery is weak', () => {
    expect(asks('remote-key-off', DARK)).toBe(false);
    expect(asks('remote-key-off', { ...DARK, 'amp-terminals': 'battery-low' })).toBe(true);
  });
  it('is looked for in the adapter only of a replaced head unit', () => {
    expect(asks('adapter-look', { ...DARK, 'unit-kind': 'factory' })).toBe(false);
    expect(asks('adapter-look', { ...DARK, 'unit-kind': 'replaced' })).toBe(true);
    expect(asks('adapter-look', { ...DARK, 'unit-kind': 'replaced', 'rear-amp-turn-on': 'dc' })).toBe(false);
  });
  it('gets no jumper where positive or ground is known to be open', () => {
    expect(asks('remote-jumper', { ...DARK, 'amp-terminals': 'ok' })).toBe(true);
    expect(asks('remote-jumper', { ...DARK, 'amp-terminals': 'plus-open' })).toBe(false);
    expect(asks('remote-jumper', { ...DARK, 'amp-terminals': 'ground-open' })).toBe(false);
  });
});

describe('an amplifier that listens', () => {
  const hears = ['sense-dc', 'sense-level', 'between-look', 'input-plug', 'wakes-when-loud'] as const;
  it('is asked for what it waits for: sound for one, DC for the other, both where nobody knows', () => {
    const by = (turnOn: KnownOf<'rear-amp-turn-on'>) => asked(hears, { ...DARK, 'rear-amp-turn-on': turnOn });
    expect(by('wire')).toEqual([]);
    expect(by('signal')).toEqual(['sense-level', 'input-plug', 'wakes-when-loud']);
    expect(by('dc')).toEqual(['sense-dc', 'between-look', 'input-plug']);
    expect(by('cannot')).toEqual([...hears]);
  });
  it('may be one with a wire whose selector stands on sensing: then it is turned up once its wire was read', () => {
    const wired = { ...DARK, 'rear-amp-turn-on': 'wire' } as const;
    expect(asks('wakes-when-loud', { ...wired, 'remote-volts': 'ok' })).toBe(true);
    expect(asks('wakes-when-loud', { ...wired, 'remote-volts': 'none' })).toBe(false);
  });
  it('is not asked for a box in between where a line-level lead is known to feed it', () => {
    const lineFed: Rig = { amps: [{ drives: 'rear', input: 'line', turnOn: 'dc' }] };
    expect(asks('between-look', { ...DARK, 'rear-amp-turn-on': 'dc' }, lineFed)).toBe(false);
  });
});

describe('the fuses and leads of an amplifier', () => {
  it('are read at the fuse only where no positive was read behind it', () => {
    expect(asks('fuse-sides', DARK)).toBe(false);
    expect(asks('fuse-sides', { ...DARK, 'amp-terminals': 'ok' })).toBe(false);
    expect(asks('fuse-sides', { ...DARK, 'amp-terminals': 'plus-open' })).toBe(true);
  });
  it('get no finger on them while the fuse is blown: no lamp could flicker', () => {
    expect(asks('supply-wiggle', { ...DARK, 'fuse-look': 'whole' })).toBe(true);
    expect(asks('supply-wiggle', { ...DARK, 'fuse-look': 'blown' })).toBe(false);
  });
  it('leave a fuse in that a positive was read behind, or that let a jumper wake it', () => {
    expect(asks('fuse-look', DARK)).toBe(true);
    expect(asks('fuse-look', { ...DARK, 'amp-terminals': 'ground-open' })).toBe(false);
    expect(asked(['fuse-look', 'body-fuse'], { ...DARK, 'remote-jumper': 'wakes' })).toEqual([]);
  });
  it('get a lamp in the place of the fuse only where the fuse is known to be open, and the lead off where it is bright', () => {
    expect(asks('fuse-lamp', { ...DARK, 'fuse-look': 'whole' })).toBe(false);
    expect(asks('fuse-lamp', { ...DARK, 'fuse-look': 'blown' })).toBe(true);
    expect(asks('fuse-lamp', { ...DARK, 'fuse-sides': 'open' })).toBe(true);
    expect(asks('lead-off-amp', { ...DARK, 'fuse-lamp': 'dark' })).toBe(false);
    expect(asks('lead-off-amp', { ...DARK, 'fuse-lamp': 'bright' })).toBe(true);
  });
  it('get a new fuse only after the lamp, or for one that looks whole', () => {
    expect(asks('spare-fuse', { ...DARK, 'fuse-look': 'blown' })).toBe(false);
    expect(asks('spare-fuse', { ...DARK, 'fuse-look': 'blown', 'fuse-lamp': 'bright' })).toBe(false);
    expect(asks('spare-fuse', { ...DARK, 'fuse-look': 'blown', 'fuse-lamp': 'dark' })).toBe(true);
    expect(asks('spare-fuse', { ...DARK, 'fuse-look': 'whole' })).toBe(true);
    // On with a new fuse: nothing is left to be woken.
    for (const id of ['key-positions', 'remote-jumper', 'remote-lamp'] as const) {
      expect(asks(id, { ...DARK, 'fuse-look': 'blown', 'spare-fuse': 'holds' }), id).toBe(true);
      expect(asks(id, { ...DARK, 'fuse-look': 'blown', 'spare-fuse': 'wakes' }), id).toBe(false);
    }
    expect(asks('spare-fuse', { ...DARK, 'fuse-look': 'whole', 'fuse-sides': 'open' })).toBe(false);
  });
  it('have no fuse put back in once a new one opened, or a lamp in its place stayed bright', () => {
    const fed = [
      ...['amp-terminals', 'fuse-sides', 'supply-under-load', 'plus-path', 'joint-drop', 'lowest-volts'],
      ...['supply-wiggle', 'temporary-leads', 'remote-jumper', 'speakers-unplugged', 'one-by-one', 'signal-plug-out'],
      ...['gain-down', 'amp-dc', 'amp-out', 'amp-signs', 'wakes-when-loud', 'key-positions'],
    ] as StepId[];
    const known = [
      DARK,
      { ...DARK, 'rear-drive': 'amp', 'amp-light': 'none', 'amp-goes-off': 'loud' },
      { ...FAULT, 'speakers-unplugged': 'clears' },
      { ...DARK, 'amp-terminals': 'sags', 'supply-under-load': 'plus-drop' },
      { ...DARK, 'amp-terminals': 'ok', 'remote-volts': 'low' },
    ] as const satisfies readonly Outcomes[];
    const ever = (more: Outcomes) => fed.filter((id) => known.some((outcomes) => asks(id, { ...outcomes, ...more })));
    expect(ever({})).toEqual(fed);
    expect(ever({ 'spare-fuse': 'opens' })).toEqual([]);
    expect(ever({ 'fuse-lamp': 'bright' })).toEqual([]);
    expect(asks('fuse-lamp', { ...DARK, 'fuse-look': 'whole', 'spare-fuse': 'opens' })).toBe(true);
  });
  it('look at the fuses of the amplifier itself only where positive and ground may be there', () => {
    expect(asks('body-fuse', { ...DARK, 'amp-terminals': 'ok' })).toBe(true);
    expect(asks('body-fuse', { ...DARK, 'amp-terminals': 'plus-open' })).toBe(false);
  });
  it('are read under a lamp only after positive and ground were read and are there', () => {
    expect(asks('supply-under-load', DARK)).toBe(false);
    expect(asks('supply-under-load', { ...DARK, 'amp-terminals': 'ground-open' })).toBe(false);
    expect(asks('supply-under-load', { ...DARK, 'amp-terminals': 'unclear' })).toBe(true);
    expect(asks('plus-path', { ...DARK, 'amp-terminals': 'ok' })).toBe(false);
    expect(asks('plus-path', { ...DARK, 'supply-under-load': 'plus-drop' })).toBe(true);
    const worn: Facts = {
      'amp-terminals': { readings: { batteryV: '12.6', plusV: '12.5', groundV: '0.02' } },
      'supply-under-load': { readings: { batteryV: '12.5', ampV: '12', plusDropV: '0.45', groundDropV: '0.05' } },
    };
    expect(asks('plus-path', { ...ON, 'supply-under-load': 'unclear' }, {}, worn)).toBe(true);
  });
  it('are bypassed only where they were not read under a lamp, and never into a short', () => {
    expect(asks('temporary-leads', { ...DARK, 'supply-under-load': 'ok' })).toBe(false);
    expect(asks('temporary-leads', { ...DARK, 'supply-under-load': 'cannot' })).toBe(true);
    expect(asks('temporary-leads', { ...DARK, 'fuse-look': 'blown' })).toBe(false);
    expect(asks('temporary-leads', { ...DARK, 'fuse-lamp': 'bright' })).toBe(false);
  });
  it('are not looked at for a bad ring where they are good under a lamp', () => {
    expect(asks('rings-look', { ...DARK, 'supply-under-load': 'ok' })).toBe(false);
  });
});

describe('what an amplifier protects itself from', () => {
  it('is not looked for in one that is simply dark', () => {
    expect(asked(LOAD, DARK)).toEqual([]);
  });
  it('is looked for where its fault light shows, where it goes off at times, and where nobody sees a lamp', () => {
    expect(asked(LOAD, FAULT)).toEqual([...LOAD]);
    expect(asked(LOAD, { ...ON, 'amp-goes-off': 'loud' })).toEqual([...LOAD]);
    expect(asked(LOAD, { ...DARK, 'remote-jumper': 'fault' })).toEqual([...LOAD]);
    expect(asked(LOAD, { ...DARK, 'amp-light': 'cannot' })).toEqual([...LOAD]);
  });
  it('is not looked for as DC where its fault stays with all speakers off: a stage that is shut down shows none', () => {
    expect(asks('amp-dc', { ...FAULT, 'speakers-unplugged': 'stays' })).toBe(false);
  });
  it('asks how it comes back of one that goes', () => {
    expect(asks('recover', FAULT)).toBe(true);
    expect(asks('recover', DARK)).toBe(false);
  });
  it('plugs runs back in only where it is well without them, and none of them read as a short', () => {
    expect(asks('one-by-one', FAULT)).toBe(false);
    expect(asks('one-by-one', { ...FAULT, 'speakers-unplugged': 'clears' })).toBe(true);
    expect(asks('one-by-one', { ...FAULT, 'speakers-unplugged': 'clears', 'amp-wires-to-frame': 'shorted' })).toBe(
      false,
    );
    expect(asks('one-by-one', { ...FAULT, 'speakers-unplugged': 'clears', 'amp-runs': 'low' })).toBe(false);
  });
});

describe('what is told of the past', () => {
  it('asks when it goes off only of one that is on, shows its fault, or comes and goes', () => {
    expect(asks('amp-goes-off', DARK)).toBe(false);
    expect(asks('amp-goes-off', ON)).toBe(true);
    expect(asks('amp-goes-off', FAULT)).toBe(true);
    expect(asks('amp-goes-off', { ...DARK, 'amp-history': 'comes-and-goes' })).toBe(true);
  });
  it('does not ask what else stopped of one that never worked', () => {
    expect(asks('what-else', { ...DARK, 'amp-history': 'never' })).toBe(false);
    expect(asks('what-else', { ...DARK, 'amp-history': 'stopped' })).toBe(true);
  });
});

describe('the rear pairs of the head unit', () => {
  it('are not read where the amplifier takes everything from the front pair', () => {
    expect(asks('rear-pair', { ...ON_AMP, 'rear-inputs': 'front' })).toBe(false);
    expect(asks('rear-pair', { ...ON_AMP, 'rear-inputs': 'own' })).toBe(true);
    expect(asks('rear-pair')).toBe(true);
  });
  it('are read for an amplifier that stays off only where it listens to them', () => {
    const fedFrom = (from: 'own' | 'front'): Rig => ({ amps: [{ drives: 'rear', fedFrom: from }] });
    expect(asks('rear-pair', DARK, fedFrom('own'))).toBe(true);
    expect(asks('rear-pair', DARK, fedFrom('front'))).toBe(false);
    expect(asks('rear-pair', { ...DARK, 'which-amp': 'front' }, { amps: [{ drives: 'front' }] })).toBe(false);
  });
  it('are read again, and asked about their place, only where they were not level with the front', () => {
    expect(asked(['rear-pair-again', 'rear-pair-place'], { 'rear-pair': 'ok' })).toEqual([]);
    expect(asked(['rear-pair-again', 'rear-pair-place'])).toEqual([]);
    expect(asked(['rear-pair-again', 'rear-pair-place'], { 'rear-pair': 'none' })).toHaveLength(2);
    expect(asked(['rear-pair-again', 'rear-pair-place'], { 'rear-pair': 'uneven' })).toEqual(['rear-pair-again']);
    expect(asked(['rear-pair-again', 'rear-pair-place'], { 'rear-pair': 'one-only' })).toHaveLength(2);
  });
  it('are not asked about as delivered, nor the stored profile, where the head unit was replaced', () => {
    const profile = ['delivered-with', 'tones-off', 'top-step'] as const;
    expect(asked(profile, { 'unit-kind': 'replaced' })).toEqual([]);
    expect(asked(profile, { 'unit-kind': 'factory' })).toEqual([...profile]);
  });
  it('are compared with a running engine only where they were read with it off', () => {
    expect(asks('tones-running')).toBe(false);
    expect(asks('tones-running', { 'tones-off': 'cannot' })).toBe(false);
    expect(asks('tones-running', { 'tones-off': 'flat' })).toBe(true);
  });
});

describe('plugs, runs and coils', () => {
  it('are not opened at a plug that he said is not there', () => {
    expect(asks('contacts-look', { 'lid-check': 'no-plug' })).toBe(false);
    expect(asks('contacts-look', { 'lid-check': 'cured' })).toBe(true);
    expect(asks('run-split', { 'run-ohms': 'open', 'lid-check': 'no-plug' })).toBe(false);
  });
  it('are looked into no further than the reading before it asks for', () => {
    expect(asked(['run-split', 'coil-ohms'])).toEqual([]);
    expect(asked(['run-split', 'coil-ohms'], { 'run-ohms': 'ok' })).toEqual([]);
    expect(asked(['run-split', 'coil-ohms'], { 'run-ohms': 'open' })).toEqual(['run-split', 'coil-ohms']);
    expect(asked(['run-split', 'coil-ohms'], { 'run-ohms': 'low' })).toEqual(['coil-ohms']);
  });
  it('get a cell only where ohms were not read, and at the speaker only where the run is dead', () => {
    expect(asks('pop-run', { 'run-ohms': 'ok' })).toBe(false);
    expect(asks('pop-run', { 'run-ohms': 'cannot' })).toBe(true);
    expect(asks('pop-speaker')).toBe(false);
    expect(asks('pop-speaker', { 'pop-run': 'moves' })).toBe(false);
    expect(asks('pop-speaker', { 'pop-run': 'dead' })).toBe(true);
  });
});

describe('the rear on an amplifier', () => {
  const SAME = { ...ON_AMP, 'front-drive': 'same' } as const;
  it('has its plugs exchanged only where the same amplifier drives front and rear', () => {
    expect(asked(['swap-inputs', 'swap-outputs'], { ...ON_AMP, 'front-drive': 'unit' })).toEqual([]);
    expect(asked(['swap-inputs', 'swap-outputs'], SAME)).toEqual(['swap-inputs', 'swap-outputs']);
    expect(asks('swap-inputs', { ...SAME, 'rear-inputs': 'front' })).toBe(false);
  });
  it('keeps its outputs where they are while a short is possible, or its lamp is not lit as usual', () => {
    expect(asks('swap-outputs', { ...SAME, 'wire-to-frame': 'unclear' })).toBe(false);
    expect(asks('swap-outputs', { ...SAME, 'run-ohms': 'low' })).toBe(false);
    expect(asks('swap-outputs', { ...SAME, 'bulb-to-frame': 'to-frame' })).toBe(false);
    expect(asks('swap-outputs', { ...SAME, 'bulb-to-frame': 'clear' })).toBe(true);
    expect(asked(['swap-inputs', 'swap-outputs'], { ...SAME, 'amp-light': 'fault' })).toEqual([]);
  });
  it('is not listened to, nor read at its outputs, while the amplifier is off', () => {
    expect(asked(['rear-hiss', 'amp-out'], { ...ON_AMP, 'amp-light': 'off' })).toEqual([]);
    expect(asked(['rear-hiss', 'amp-out'], { ...ON_AMP, 'amp-light': 'normal' })).toEqual(['rear-hiss', 'amp-out']);
  });
  it('is read for half the supply only on speaker wires', () => {
    expect(asks('half-supply', { ...ON_AMP, 'rear-amp-input': 'line' })).toBe(false);
    expect(asks('half-supply', { ...ON_AMP, 'rear-amp-input': 'speaker' })).toBe(true);
  });
  it('is not asked about selectors that a factory amplifier does not have', () => {
    expect(asks('amp-switches', ON_AMP, { amps: [{ drives: 'rear', kind: 'factory' }] })).toBe(false);
    expect(asks('amp-switches', ON_AMP, AMP)).toBe(true);
  });
  it('leaves the fader alone where it hisses and has no say', () => {
    expect(asks('fader-centre', { ...ON_AMP, 'rear-inputs': 'front', 'rear-hiss': 'hiss' })).toBe(false);
    expect(asks('fader-centre', { ...ON_AMP, 'rear-inputs': 'front' })).toBe(true);
  });
});

describe('a step that was never asked before', () => {
  it('is not asked of an amplifier that is on and stays on, where it is about one that fails', () => {
    const fails = [
      'signal-plug-out',
      'gain-down',
      'water-look',
      'lowest-volts',
      'copper-look',
      'shared-screw',
    ] as const;
    expect(asked(fails, { ...ON, 'amp-goes-off': 'stays-on' })).toEqual([]);
    expect(asked([...fails, 'fuses-blown', 'pin-look'], { 'rear-drive': 'unit' })).toEqual([]);
  });
  it('asks when the rear is silent only where it ever played', () => {
    expect(asks('when-silent', { 'rear-history': 'never' })).toBe(false);
    expect(asks('when-silent', { 'rear-history': 'comes-and-goes' })).toBe(true);
  });
  it('pulls the signal plug under a fault light, and not of an amplifier that sleeps without it', () => {
    expect(asks('signal-plug-out', { ...FAULT, 'rear-amp-turn-on': 'wire' })).toBe(true);
    expect(asks('signal-plug-out', { ...FAULT, 'rear-amp-turn-on': 'signal' })).toBe(false);
    expect(asks('signal-plug-out', { ...DARK, 'rear-amp-turn-on': 'wire' })).toBe(false);
  });
  it('turns the gain down only where loud music makes it go off', () => {
    expect(asks('gain-down', { ...ON, 'amp-goes-off': 'loud' })).toBe(true);
    expect(asks('gain-down', { ...ON, 'amp-goes-off': 'bumps' })).toBe(false);
  });
  it('looks for the lowest volts once the steady ones were read, and for the joints once the lamp showed a loss', () => {
    expect(asks('lowest-volts', DARK)).toBe(false);
    expect(asks('lowest-volts', { ...DARK, 'amp-terminals': 'sags' })).toBe(true);
    expect(asks('lowest-volts', { ...DARK, 'amp-terminals': 'plus-open' })).toBe(false);
    expect(asks('joint-drop', { ...DARK, 'supply-under-load': 'ok' })).toBe(false);
    expect(asks('joint-drop', { ...DARK, 'supply-under-load': 'ground-drop' })).toBe(true);
  });
  it('takes the bulb where no meter read the same, and where the amplifier may protect itself', () => {
    expect(asks('bulb-to-frame', ON_AMP)).toBe(true);
    expect(asks('bulb-to-frame', { ...ON_AMP, 'wire-to-frame': 'clear' })).toBe(true);
    expect(asks('bulb-to-frame', { ...ON_AMP, 'wire-to-frame': 'clear', 'run-ohms': 'ok' })).toBe(false);
    expect(asks('bulb-to-frame', FAULT)).toBe(true);
    expect(asks('bulb-to-frame', DARK)).toBe(false);
  });
  it('leads from a positive that sags to the load, and not to a jumper or the fuses of the amplifier', () => {
    const sags = { ...DARK, 'amp-terminals': 'sags' } as const;
    expect(asked(['supply-under-load', 'fuse-sides', 'fuse-look'], sags)).toHaveLength(3);
    expect(asked(['remote-jumper', 'body-fuse'], sags)).toEqual([]);
  });
  it('measures the fuse once it was pulled and looks whole, and tries no new one for one that is through', () => {
    const pulled = { ...DARK, 'amp-terminals': 'plus-open', 'fuse-look': 'whole' } as const;
    expect(asked(['fuse-ohms', 'spare-fuse'], pulled)).toEqual(['fuse-ohms', 'spare-fuse']);
    expect(asks('fuse-ohms', { ...DARK, 'amp-terminals': 'plus-open', 'fuse-look': 'blown' })).toBe(false);
    expect(asks('spare-fuse', { ...pulled, 'fuse-ohms': 'through' })).toBe(false);
    expect(asks('fuse-lamp', { ...pulled, 'fuse-ohms': 'open' })).toBe(true);
    // A new one that wakes it may only sit better than the old one did.
    expect(asks('fuse-ohms', { ...pulled, 'spare-fuse': 'wakes' })).toBe(true);
  });
  it('measures into an amplifier that is dark or at fault, where positive and ground are there', () => {
    expect(asks('amp-ohms', { ...DARK, 'amp-terminals': 'ok' })).toBe(true);
    expect(asks('amp-ohms', FAULT)).toBe(true);
    expect(asks('amp-ohms', { ...DARK, 'amp-terminals': 'plus-open' })).toBe(false);
    expect(asks('amp-ohms', { ...DARK, 'remote-jumper': 'wakes' })).toBe(false);
    expect(asks('amp-ohms', { ...ON, 'amp-goes-off': 'stays-on' })).toBe(false);
  });
  it('asks for signs of life where there is no lamp, and what trips it where the lamp blinks', () => {
    expect(asks('amp-signs', { ...ON, 'amp-light': 'none' })).toBe(true);
    expect(asks('speakers-unplugged', { ...ON, 'amp-light': 'blinks' })).toBe(true);
    expect(asked(['rear-hiss', 'amp-out', 'swap-inputs'], { ...ON_AMP, 'amp-light': 'blinks' })).toEqual([]);
  });
});

// Full volts at an amplifier that stays dark leave the battery out of it: common practice, no published source.
describe('the starter', () => {
  it('is asked about where volts are low, or sag at times, and not where they are full and it stays dark', () => {
    expect(asks('starter-turns', { ...DARK, 'amp-terminals': 'battery-low' })).toBe(true);
    expect(asks('starter-turns', { ...DARK, 'amp-terminals': 'ok' })).toBe(false);
    expect(asks('starter-turns', { ...ON, 'amp-goes-off': 'loud', 'amp-terminals': 'ok' })).toBe(true);
  });
});

// What a bump silences hisses as ever while it plays: common practice, no published source.
describe('a rear that comes and goes', () => {
  const GOES: Outcomes = { ...ON_AMP, 'rear-history': 'comes-and-goes' };
  it('is listened to for a hiss while it is silent, and not while it plays', () => {
    expect(asks('rear-hiss', { ...GOES, 'fader-centre': 'no-change' })).toBe(true);
    expect(asks('rear-hiss', { ...GOES, 'fader-centre': 'plays' })).toBe(false);
    expect(asks('rear-hiss', { ...ON_AMP, 'rear-history': 'stopped', 'fader-centre': 'plays' })).toBe(true);
  });
});

// Nothing plays over a broken wire, and a connector before the lid is not in the lid: common practice, no published source.
describe('a run that is open', () => {
  const SAME: Outcomes = { ...ON_AMP, 'front-drive': 'same' };
  it('is not played from the front’s output, nor from its signal', () => {
    for (const id of ['swap-inputs', 'swap-outputs'] as const) {
      expect(asks(id, { ...SAME, 'run-ohms': 'ok' }), id).toBe(true);
      expect(asks(id, { ...SAME, 'run-ohms': 'open' }), id).toBe(false);
      expect(asks(id, { ...SAME, 'pop-run': 'dead' }), id).toBe(false);
    }
  });
  it('is not followed under the seat where it is open from the lid’s half on', () => {
    expect(asks('second-look', { 'run-ohms': 'open' })).toBe(true);
    expect(asks('second-look', { 'run-ohms': 'open', 'run-split': 'bike-side' })).toBe(true);
    expect(asks('second-look', { 'run-ohms': 'open', 'run-split': 'lid-side' })).toBe(false);
  });
});

// Both play before the plugs were touched: common practice, no published source.
describe('a side that comes and goes', () => {
  // A joint that a bump opens reads well at the stand: common practice, no published source.
  it('is not read while it plays at the stand, where a bump or the steering silences it', () => {
    const at: Outcomes = { ...ON_AMP, 'when-silent': 'bumps' };
    for (const id of ['run-ohms', 'unit-sides', 'input-sides', 'output-sides'] as const) {
      expect(asks(id, at), id).toBe(true);
      expect(asks(id, { ...at, 'fader-centre': 'plays' }), id).toBe(false);
      expect(asks(id, { ...at, 'when-silent': 'hot', 'fader-centre': 'plays' }), id).toBe(true);
    }
  });
  it('has no plugs swapped while it plays', () => {
    const onAmp: Outcomes = { ...ON_AMP, 'which-corner': 'rear-left', 'when-silent': 'bumps' };
    for (const id of ['swap-sides-in', 'swap-sides-out'] as const) {
      expect(asks(id, onAmp), id).toBe(true);
      expect(asks(id, { ...onAmp, 'fader-centre': 'plays' }), id).toBe(false);
    }
  });
});

describe('every step', () => {
  it('says of a case of which nothing is known whether it makes sense', () => {
    for (const id of Object.keys(ALL_STEPS) as StepId[]) expect(typeof asks(id), id).toBe('boolean');
  });
  it('can make sense on some bike: an amplifier that is dark, on, at fault or unseen, and a rear that is silent', () => {
    const cases: readonly Outcomes[] = [
      {},
      { ...DARK, 'fuse-look': 'blown', 'fuse-lamp': 'bright', 'remote-lamp': 'dark' },
      { ...DARK, 'amp-terminals': 'plus-open', 'fuse-look': 'blown', 'fuse-lamp': 'dark' },
      { ...DARK, 'amp-terminals': 'plus-open', 'fuse-look': 'whole' },
      { ...DARK, 'amp-terminals': 'battery-low', 'remote-volts': 'none', 'unit-kind': 'replaced' },
      { ...DARK, 'which-amp': 'front', 'amp-terminals': 'ok', 'fuse-lamp': 'dark' },
      { ...DARK, 'amp-light': 'cannot', 'rear-amp-turn-on': 'cannot' },
      { ...FAULT, 'speakers-unplugged': 'clears', 'supply-under-load': 'plus-drop' },
      { ...ON_AMP, 'front-drive': 'same', 'lid-check': 'cured', 'rear-pair': 'none', 'run-ohms': 'open' },
      { ...ON_AMP, 'front-drive': 'same', 'run-ohms': 'ok' },
      { ...ON, 'amp-goes-off': 'loud' },
      { ...ON, 'amp-goes-off': 'hot' },
      { 'pop-run': 'dead', 'tones-off': 'flat' },
      { 'amps-drive': 'none', 'unit-screen': 'normal' },
      { 'unit-screen': 'dark', 'unit-fuses': 'whole' },
      { 'source-plays': 'cannot', 'audio-target': 'cannot' },
      { 'unit-kind': 'replaced', 'unit-screen': 'normal' },
      { 'where-harsh': 'rear-left', 'engine-compare': 'noise' },
      { 'what-plays': 'all' },
      { 'loud-compare': 'ugly' },
      { 'which-corner': 'thin' },
    ];
    const ofFront = (outcomes: Outcomes): Outcomes =>
      Object.fromEntries(Object.entries(outcomes).map(([id, outcome]) => [`${id}@front`, outcome]));
    const all = [...cases, ...cases.map(ofFront)];
    const ofFrontLeft: Facts = { 'which-corner': { option: 'front-left' } };
    const never = (Object.keys(ALL_STEPS) as StepId[]).filter(
      (id) => !all.some((outcomes) => asks(id, outcomes) || asks(id, outcomes, {}, ofFrontLeft)),
    );
    expect(never).toEqual([]);
  });
});

describe('the rating of a rear speaker', () => {
  it('is asked only of somebody who may have a meter to set it against', () => {
    expect(asks('rear-rating')).toBe(true);
    expect(asks('rear-rating', { 'tools-at-hand': 'none' })).toBe(false);
  });
});

describe('the remote wire', () => {
  it('is not read while the head unit stays dark: it wakes nothing then, whatever is wrong', () => {
    const dark: Facts = { 'unit-screen': { option: 'dark' } };
    for (const id of ['remote-volts', 'remote-lamp'] as const) {
      expect(asks(id, DARK), id).toBe(true);
      expect(asks(id, DARK, {}, dark), id).toBe(false);
    }
  });
});
