import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import type { Flow } from '../../machines/rows.ts';
import { adopt } from '../../src/case/adopt.ts';
import { answered, back, canGoBack, handedOver, learntHere, repaired, revised } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { isFlowId } from '../../src/case/flows.ts';
import { fromLink, toLink } from '../../src/case/link.ts';
import { replay } from '../../src/case/replay.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { answersByOutcome, caseOn, type Short, toAnswer } from '../journey.ts';
import { anyRig } from '../rig/any-rig.ts';

/** A case that goes from one flow to another and back: nothing is asked twice, and nothing goes round in a circle. */

const FLOWS: Readonly<Record<string, Flow>> = { [noRearSound.id]: noRearSound, [ampWontTurnOn.id]: ampWontTurnOn };
const give = (it: Case, answers: Readonly<Record<string, Short>>): Case =>
  Object.entries(answers).reduce((so, [step, short]) => answered(so, step, toAnswer(short)), it);
const open = (flow: Flow, it: Case) => {
  const standing = replay(flow, it);
  return 'step' in standing.open ? `${standing.open.step.id}?` : standing.open.verdict.id;
};

/** The case on the page of the flow that its verdict hands over to, or null where it does not. */
function onward(flow: Flow, it: Case): { readonly flow: Flow; readonly case: Case } | null {
  const standing = replay(flow, it);
  if (!('verdict' in standing.open) || !learntHere(it)) return null;
  const to = standing.open.verdict.handsOver?.(standing.findings);
  const next = to && FLOWS[to.flow];
  if (!to || !next) return null;
  return { flow: next, case: adopt(next, handedOver(it, standing, next.id, to.answers)).case };
}

/** An amplifier of the rear only: one that makes the front play would not be suspected of having no power. */
const [AMP] = EXAMPLE_RIGS['frame-fairing'].amps;
const ON_WIRE: Rig = { ...EXAMPLE_RIGS['frame-fairing'], frontFedBy: 'unit', amps: [{ ...AMP, drives: 'rear' }] };
const DARK = { 'rear-history': 'stopped', 'last-change': 'battery', 'amp-light': 'off' };
const begun = give(caseOn(noRearSound, ON_WIRE), DARK);
/** One that listens is handed over only after everything that it may wait for was tried. */
const LISTENS: Rig = { ...ON_WIRE, amps: [{ ...AMP, drives: 'rear', turnOn: 'signal' }] };
const listening = give(caseOn(noRearSound, LISTENS), {
  ...DARK,
  'fader-centre': 'no-change',
  'rear-control': 'none',
  'tools-at-hand': 'meter',
  'meter-digit': '0.01',
  'rear-pair': { frontV: '2', leftV: '2', rightV: '2' },
  'amp-in': { sentV: '2', leftV: '2', rightV: '2' },
});

describe('a silent rear whose amplifier is dark', () => {
  const there = onward(noRearSound, begun);

  it('goes on with the amplifier', () => {
    expect(open(noRearSound, begun)).toBe('amp-off');
    expect(there?.flow.id).toBe('amp-wont-turn-on');
  });
  it('is not asked again which amplifier it is, what was done last and what the lamp shows', () => {
    const amp = there?.case ?? begun;
    expect(open(ampWontTurnOn, amp)).toBe('amp-history?');
    const further = give(amp, { 'amp-history': 'stopped' });
    expect(open(ampWontTurnOn, further)).toBe('tools-at-hand?');
    expect(replay(ampWontTurnOn, further).terminals.map(({ step }) => step.id)).toEqual([
      'amp-history',
      'last-change',
      'amp-light',
    ]);
  });
  it('is known to be about the rear amplifier on a bike with two', () => {
    const two = give(caseOn(noRearSound, EXAMPLE_RIGS.trunk), {
      ...DARK,
      'fader-centre': 'no-change',
      'rear-control': 'none',
      'tools-at-hand': 'meter',
      'meter-digit': '0.01',
      'rear-pair': { frontV: '2', leftV: '2', rightV: '2' },
      'amp-in': { sentV: '2', leftV: '2', rightV: '2' },
    });
    expect(open(noRearSound, two)).toBe('amp-off');
    expect(open(ampWontTurnOn, onward(noRearSound, two)?.case ?? two)).toBe('amp-history?');
  });
  it('survives a link with everything that the rear flow will want back', async () => {
    const amp = there?.case ?? begun;
    const opened = await fromLink(await toLink(amp));
    expect(opened.ok && adopt(ampWontTurnOn, opened.case)).toEqual({ case: amp, refused: [] });
  });
  it('does not step back behind the hand-over: the answers before it belong to the other page', () => {
    const amp = there?.case ?? begun;
    expect(canGoBack(amp)).toBe(false);
    expect(back(give(amp, { 'amp-history': 'never' }))).toEqual(amp);
  });
});

describe('an amplifier that is on and silent', () => {
  const silent = give(caseOn(ampWontTurnOn, ON_WIRE), {
    'amp-history': 'stopped',
    'last-change': 'nothing',
    'amp-light': 'normal',
    'amp-goes-off': 'stays-on',
  });
  it('goes on with the rear, which knows what drives it, its lamp and the last change', () => {
    const there = onward(ampWontTurnOn, silent);
    expect(there?.flow.id).toBe('no-rear-sound');
    const rear = give(there?.case ?? silent, {
      'rear-history': 'stopped',
      'rear-hiss': null,
      'fader-centre': 'no-change',
      'rear-control': 'none',
      'lid-check': 'no-effect',
    });
    expect(open(noRearSound, rear)).toBe('amp-switches?');
  });
  it('is told to nobody when it drives only the front', () => {
    const front = give(caseOn(ampWontTurnOn, EXAMPLE_RIGS.trunk), {
      'which-amp': 'front',
      'amp-history': 'stopped',
      'last-change': 'nothing',
      'amp-light': 'normal',
      'amp-goes-off': 'stays-on',
    });
    expect(open(ampWontTurnOn, front)).toBe('amp-is-on');
    expect(onward(ampWontTurnOn, front)).toBeNull();
  });
});

/** What wakes an amplifier, and what it protects itself from: seen from the rear, and found on the other side. */
describe('a silent rear that hands its amplifier on', () => {
  const byDc = { ...AMP, drives: 'rear', turnOn: 'dc' } as const;
  const BY_DC: Rig = { ...ON_WIRE, amps: [byDc] };
  const BY_DC_ON_LINE: Rig = { ...ON_WIRE, amps: [{ ...byDc, input: 'line' }] };
  const METER = { 'tools-at-hand': 'meter' };
  const FED = { 'amp-terminals': { batteryV: '12.5', plusV: '12.4', groundV: '0' } };
  const STOPPED = { 'amp-history': 'stopped' };
  const NO_DC = {
    ...STOPPED,
    ...METER,
    ...FED,
    'remote-jumper': 'wakes',
    'input-plug': 'no-change',
    'amp-switches': 'right',
    'sense-dc': { plusV: '0.1', minusV: '0' },
    'between-look': 'box',
  };
  const PROTECTS = { ...DARK, 'amp-light': 'fault' };
  const TRIPS = { ...STOPPED, 'amp-goes-off': 'always', ...METER };
  const WRONG_SELECTOR = { 'remote-volts': { remoteV: '12.3' }, ...FED, 'wakes-when-loud': 'wakes' };
  const STARVED = {
    ...FED,
    'remote-jumper': 'wakes',
    'input-plug': 'no-change',
    'amp-switches': 'right',
    'wakes-when-loud': 'wakes',
  };
  const RUN_SHORTED = { 'amp-wires-to-frame': { lowestOhm: 'OL' }, 'speakers-unplugged': 'clears' };

  it.each([
    ['turn-on-mode-wrong', begun, { ...STOPPED, ...METER, ...WRONG_SELECTOR }],
    ['sense-starved-by-profile', listening, { ...STOPPED, ...METER, ...STARVED }],
    ['sense-no-half-supply', give(caseOn(noRearSound, BY_DC), DARK), NO_DC],
    ['sense-no-half-supply', give(caseOn(noRearSound, BY_DC_ON_LINE), DARK), NO_DC],
    [
      'speaker-wire-to-frame',
      give(caseOn(noRearSound, ON_WIRE), PROTECTS),
      { ...TRIPS, 'amp-wires-to-frame': { lowestOhm: '0.4' } },
    ],
    ['speaker-pair-shorted', give(caseOn(noRearSound, ON_WIRE), PROTECTS), { ...TRIPS, ...RUN_SHORTED }],
  ])('ends there in %s', (found, here, answers) => {
    const there = onward(noRearSound, here) ?? expect.fail('no hand-over');
    expect(open(ampWontTurnOn, give(there.case, answers))).toBe(found);
  });
});

describe('what a hand-over brought', () => {
  const amp = onward(noRearSound, listening)?.case ?? listening;
  const carriedIn = (it: Case) => Object.keys(replay(ampWontTurnOn, it).carried);

  it('is carried along though this flow has no such step, and goes on with the case', () => {
    expect(carriedIn(amp)).toEqual(expect.arrayContaining(['rear-history', 'fader-centre', 'rear-control']));
    const on = handedOver(amp, replay(ampWontTurnOn, amp), noRearSound.id);
    expect(on.events).toContainEqual({ type: 'answer', step: 'fader-centre', answer: { option: 'no-change' } });
  });
  it('is dropped by a repair: what the other flow saw may be otherwise now', () => {
    const further = give(amp, {
      'amp-history': 'stopped',
      'amp-terminals': { batteryV: '11.2', plusV: '11.1', groundV: '0' },
    });
    expect(open(ampWontTurnOn, further)).toBe('battery-low');
    const carried = carriedIn(repaired(further, 'battery-low'));
    expect(carried).not.toContain('fader-centre');
    expect(carried).not.toContain('amp-light');
  });
  it('is dropped when an answer is changed that it may have been given under, and kept when it came before', () => {
    const further = give(amp, { 'amp-history': 'stopped' });
    expect(carriedIn(revised(further, 'last-change', { option: 'fitted' }))).not.toContain('fader-centre');
    expect(carriedIn(revised(further, 'amp-history', { option: 'never' }))).toContain('fader-centre');
  });
});

describe('an amplifier that slept while its lamp was looked at, and is on by now', () => {
  it('goes back to the rear as one that is on, whatever its lamp showed before', () => {
    const amp = onward(noRearSound, listening)?.case ?? listening;
    const awake = give(amp, {
      'amp-history': 'stopped',
      'tools-at-hand': 'meter',
      'amp-terminals': { batteryV: '12.5', plusV: '12.4', groundV: '0' },
      'remote-jumper': 'wakes',
      'input-plug': 'no-change',
      'amp-switches': 'right',
      'wakes-when-loud': 'awake',
    });
    expect(open(ampWontTurnOn, awake)).toBe('amp-is-on');
    const there = onward(ampWontTurnOn, awake);
    expect(there && open(there.flow, there.case)).toBe('rear-hiss?');
  });
});

describe('two flows that may pass a case to each other', () => {
  it('come to an end after few hand-overs, whatever is fitted and answered, and ask nothing twice without a reason', () => {
    const luck = fc.infiniteStream(fc.nat(1000));
    fc.assert(
      fc.property(anyRig, luck, fc.constantFrom(noRearSound, ampWontTurnOn), (rig, choices, first) => {
        let at: { readonly flow: Flow; readonly case: Case } = { flow: first, case: caseOn(first, rig) };
        const asked = new Set<string>();
        for (let handOvers = 0; ; handOvers++) {
          expect(handOvers).toBeLessThan(6);
          for (;;) {
            const standing = replay(at.flow, at.case);
            if (!('step' in standing.open)) break;
            const { step } = standing.open;
            expect(asked.has(step.id), `${step.id} a second time`).toBe(false);
            asked.add(step.id);
            const answers = [...answersByOutcome(step, standing).values()];
            const answer = answers[(choices.next().value ?? 0) % answers.length] ?? { cannot: true };
            at = { ...at, case: answered(at.case, step.id, answer) };
          }
          const next = onward(at.flow, at.case);
          if (!next) return;
          at = next;
        }
      }),
      { numRuns: 150 },
    );
  }, 60_000);
  it('hand over only to flows that exist', () => {
    for (const flow of Object.values(FLOWS)) expect(isFlowId(flow.id)).toBe(true);
  });
});
