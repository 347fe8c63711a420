import { describe, expect, it } from 'vitest';
import type { Late, StagedFlow } from '../../machines/machine.ts';
import { answered, confirmed } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { FAULT_FLOWS } from '../../src/case/flows.ts';
import { replay } from '../../src/case/replay.ts';
import { withoutCauses } from '../../src/inference/table.ts';
import { toolsAtHand } from '../../src/steps/tools/tools-at-hand.ts';
import { answersByOutcome, caseOn, give } from '../journey.ts';

/* What is told is what somebody believes. A fitter looks before he says what it is: common practice, no published source. */

const FLOWS: readonly (readonly [StagedFlow, Late])[] = await Promise.all(
  FAULT_FLOWS.map(async ([, row]) => [await row.load(), await row.late()] as const),
);
const flowOf = (id: string) => FLOWS.find(([flow]) => flow.id === id) ?? expect.fail(`no flow ${id}`);

/** A run of kilohms in place of ohms. */
const GREEN = { leadsOhm: '0.3', leftOhm: '2200', rightOhm: '2200' };

/** A case in which everything that comes in a fixed order is answered, each time with the nth of its answers. */
function told(flow: StagedFlow, late: Late, nth: number): Case {
  let it = caseOn(flow);
  for (;;) {
    const standing = replay(flow, it, late);
    if (standing.open.kind !== 'step' || !flow.inOrder.includes(standing.open.step)) return it;
    const { step } = standing.open;
    const answers = [...answersByOutcome(step, standing).values()];
    it = answered(it, step.id, answers[nth % answers.length] ?? { cannot: true });
  }
}

describe('what is only told', () => {
  it('ends in no cause and in no list while there is anything to look at', () => {
    for (const [flow, late] of FLOWS)
      for (let nth = 0; nth < 6; nth++) {
        const { open } = replay(flow, told(flow, late, nth), late);
        expect(['step', 'onward', 'doubt'], `${flow.id}, answer ${nth}`).toContain(open.kind);
      }
  });
  it('has the tone compared before two tunings are called the cause, however common they are', () => {
    const [flow, late] = flowOf('eq-changes-when-engine-starts');
    const said = {
      'unit-kind': 'factory',
      'amps-drive': 'none',
      'tone-history': 'never',
      'was-reflashed': 'no',
      'last-change': 'nothing',
      'where-changes': 'stand',
    } as const;
    const standing = replay(flow, give(caseOn(flow), said), late);
    expect(standing.open.kind === 'step' && standing.open.step.id).toBe('engine-compare');
  });
  it('is all there is where nothing can be looked at, and then it ends all the same', () => {
    const [flow, late] = flowOf('eq-changes-when-engine-starts');
    let it = told(flow, late, 0);
    for (let i = 0; i < 20; i++) {
      const { open } = replay(flow, it, late);
      if (open.kind !== 'step') return expect(['cause', 'list']).toContain(open.kind);
      it = answered(it, open.step.id, open.step.id === toolsAtHand.id ? { option: 'none' } : { cannot: true });
    }
    expect.fail('it goes on asking');
  });
});

describe('speakers that fall silent with the engine running', () => {
  const [flow, late] = flowOf('eq-changes-when-engine-starts');
  const said = { 'unit-kind': 'factory', 'tone-history': 'stopped', 'was-reflashed': 'no', 'last-change': 'battery' };
  const after = (ampsDrive: string) => {
    const it = give(caseOn(flow), { ...said, 'amps-drive': ampsDrive, 'where-changes': 'silent' });
    return replay(flow, answered(it, 'where-changes', { option: 'silent' }), late);
  };
  it.each([
    ['rear', 'amp-wont-turn-on'],
    ['none', 'one-speaker-or-side-dead'],
  ])('are no tone: with an amplifier for %s it goes on in %s', (ampsDrive, to) => {
    const { open } = after(ampsDrive);
    if (open.kind === 'doubt') return expect(open.step.id).toBe('where-changes');
    expect(open.kind === 'onward' && open.to.flow).toBe(to);
  });
});

describe('a loose mount', () => {
  it('is proved by a hand that finds it only, whatever else that rattles is ruled out', () => {
    const [flow, late] = flowOf('distortion-at-volume');
    const only: Late = { ...late, table: withoutCauses(late.table, ['coil-rubbing']) };
    const sure = (more: Parameters<typeof give>[1]) => {
      const inOrder = Object.fromEntries(flow.inOrder.map(({ id }) => [id, null]));
      const heard = { 'where-harsh': 'front-left', 'bass-or-all': 'bass', 'clean-enough': 'quiet' };
      const { decided } = replay(
        flow,
        give(caseOn(flow), { ...inOrder, ...heard, 'stepped-tone': 'rattles', ...more }),
        only,
      );
      return [decided?.reckoning?.shares[0]?.cause, decided?.reckoning?.certainty];
    };
    expect(sure({ 'panel-press': 'no-effect' })).toEqual(['mount-loose', 'likely']);
    expect(sure({ 'panel-press': 'speaker' })).toEqual(['mount-loose', 'proved']);
  });
});

describe('a head unit that stays dark', () => {
  // Feeds, ground and fuses come before the unit itself: common practice, no published source.
  const FED = { batteryV: '12.5', constantV: '12.4', keyV: '12.3', groundV: '0.02' };
  it('is called dead only once its feeds and its fuses were looked at, whoever else was ruled out', () => {
    const [flow, late] = flowOf('no-sound-at-all');
    const only: Late = { ...late, table: withoutCauses(late.table, ['unit-feed-missing']) };
    const asked = (more: Parameters<typeof give>[1]) => {
      const inOrder = Object.fromEntries(flow.inOrder.map(({ id }) => [id, null]));
      const { open } = replay(flow, give(caseOn(flow), { ...inOrder, 'tools-at-hand': 'meter', ...more }), only);
      return open.kind === 'step' ? open.step.id : open.kind;
    };
    const looks = {
      'unit-screen': 'dark',
      'bike-lights': 'bright',
      'amp-light': 'off',
      'unit-restart': 'no-change',
      'pin-look': 'level',
    };
    expect(asked(looks)).toBe('unit-feeds');
    expect(asked({ ...looks, 'unit-feeds': FED })).toBe('unit-fuses');
  });
});

/* Pushing a plug home comes before taking it apart for a reading, and so does turning a knob: common practice, no published source. */
describe('what is tried in seconds', () => {
  const [flow, late] = flowOf('no-rear-sound');
  const onUnit = { 'unit-kind': 'factory', 'rear-drive': 'unit', 'front-drive': 'unit' };
  const past = {
    'which-silent': 'both',
    'rear-history': 'stopped',
    'when-silent': 'always',
    'last-change': 'nothing',
  };
  const begun = give(caseOn(flow), { ...onUnit, ...past, 'tried-already': 'nothing' });
  it('is undone and done again before anything else is asked, once it brought the sound back', () => {
    const { open } = replay(flow, answered(begun, 'fader-centre', { option: 'cured' }), late);
    expect(open).toMatchObject({ kind: 'doubt', step: { id: 'fader-centre' } });
  });
  it('comes before a plug is taken apart to be read', () => {
    expect(flow.before('run-split')).toContain('lid-check');
  });
  it('leaves nothing to be read at a plug on whose contacts a film was seen', () => {
    const split = flow.steps.get('run-split') ?? expect.fail('no such step');
    const looked = (saw: string) => ({ 'lid-check': 'reacts', 'contacts-look': saw, 'run-ohms': GREEN });
    const completes = (saw: string) => split.completes?.(replay(flow, give(begun, looked(saw)), late).findings);
    expect(completes('clean')).toBe(true);
    expect(completes('film')).toBe(false);
  });
});

describe('a head unit that plays cleaner with the engine running, and drives all speakers itself', () => {
  it('runs out of volts without it: who drives it that far is looked for where it distorts', () => {
    const [flow, late] = flowOf('eq-changes-when-engine-starts');
    const said = { 'unit-kind': 'factory', 'tone-history': 'never', 'was-reflashed': 'no', 'last-change': 'nothing' };
    const it = give(caseOn(flow), {
      ...said,
      'amps-drive': 'none',
      'engine-compare': 'same',
      'loud-compare': 'cleaner',
    });
    const { open } = replay(flow, confirmed(it, 'loud-compare'), late);
    expect(open.kind === 'onward' && open.to.flow).toBe('distortion-at-volume');
  });
});
