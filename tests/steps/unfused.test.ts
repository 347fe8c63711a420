import { describe, expect, it } from 'vitest';
import { answered } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { cautionsOfCheck, cautionsOfFix } from '../../src/causes/action-cautions.ts';
import { CAUSES } from '../../src/causes/all.ts';
import { remedyOf, splitOf } from '../../src/causes/cause.ts';
import { SIGNAL_WORDS } from '../../src/components/caution/signal-words.ts';
import { SPOKEN } from '../../src/components/caution/spoken.ts';
import { readyFor } from '../../src/components/flow/ready.ts';
import { largestFuseA } from '../../src/compute/fuse.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { CAUTIONS } from '../../src/steps/cautions.ts';
import { CONDITIONS, type ConditionId, undoOf, wordsOf } from '../../src/steps/conditions.ts';
import { inWords, type Situation, type Step } from '../../src/steps/step.ts';
import { onBike } from '../causes/on-bike.ts';

/* A lead from the battery needs a fuse at the battery, or it burns. Common practice, no published source. */

const NONE: Situation = { rig: {}, facts: { 'fuse-look': { option: 'none' } } };
const FUSED: Situation = { rig: {}, facts: { 'fuse-look': { option: 'whole' } } };
const steps = new Map(Object.values(ALL_STEPS).map((step) => [step.id, step as Step]));
const begun: Case = { flow: '', events: [{ type: 'rig', rig: {} }] };
const ready = (id: string, situation: Situation, it = begun) => readyFor(steps.get(id) as Step, it, steps, situation);

/** Steps that are about the fuse itself, and are not asked once it is known that there is none or lead to it. */
const OF_THE_FUSE = [
  'fuse-look',
  'fuse-ohms',
  'fuse-sides',
  'spare-fuse',
  'plus-path',
  'supply-wiggle',
  'last-change',
  'body-fuse',
];
const isOfTheFuse = (id: string) => id.startsWith('unit-fuse') || OF_THE_FUSE.includes(id.replace(/@.*/, ''));
const SAYS_THERE_IS_ONE = /main fuse (out|of|back|last|and)|\bfuse back\b|of the same rating|\bfuse out\b/i;

describe('a battery lead in which no fuse was found', () => {
  it('is a danger, with the fuse that each lead carries, from that answer on', () => {
    expect(SIGNAL_WORDS['no-fuse']).toBe('Danger');
    for (const [mm2, sectionM2] of [
      ['3.31', 3.31e-6],
      ['5.26', 5.26e-6],
      ['8.37', 8.37e-6],
      ['13.3', 13.3e-6],
    ] as const)
      expect(CAUTIONS['no-fuse']).toContain(`${largestFuseA({ sectionM2 })} A on ${mm2}`);
    for (const step of steps.values()) {
      expect(ready(step.id, NONE).cautions, step.id).toContain('no-fuse');
      expect(ready(step.id, NONE).care, step.id).toContain(SPOKEN['no-fuse']);
      expect(ready(step.id, FUSED).cautions, step.id).not.toContain('no-fuse');
    }
  });
  it('is told with every check and every fix, and with none where there is a fuse', () => {
    for (const cause of CAUSES) {
      const f = { ...onBike({}), facts: NONE.facts };
      expect(cautionsOfCheck(cause, f), cause.id).toContain('no-fuse');
      expect(cautionsOfFix(cause.remedy(f), f), cause.id).toContain('no-fuse');
      expect(cautionsOfFix(cause.remedy(f), { ...f, facts: FUSED.facts }), cause.id).not.toContain('no-fuse');
    }
  });
  it('comes off the battery where a fuse would come out, and goes back on through one', () => {
    for (const id of Object.keys(CONDITIONS) as ConditionId[]) {
      const { bike, phone } = wordsOf(id, NONE);
      for (const text of [bike, phone, undoOf(id, NONE) ?? '']) expect(text).not.toMatch(SAYS_THERE_IS_ONE);
    }
    for (const id of ['fuse-out', 'lamp-for-fuse', 'lamp-on'] as const) {
      const { bike, phone } = wordsOf(id, NONE);
      expect(bike).toMatch(/^Key off.*lead .*off the (battery )?positive post/);
      expect(phone).toMatch(/^Key off[^.?!]*\.$/);
      expect(phone.split(/\s+/).length).toBeLessThanOrEqual(30);
    }
    expect(undoOf('fuse-out', NONE)).toMatch(/Fit a fuse within a hand’s width of the battery.* No fuse: it stays off/);
    expect(ready('fuse-lamp', NONE).cautions).toEqual(expect.arrayContaining(['minus-first', 'battery-gas']));
  });
  it('is spoken of as a lead by every step that would open its fuse', () => {
    const said = [...steps.values()]
      .filter(({ id }) => !isOfTheFuse(id))
      .flatMap((step) => {
        const how = typeof step.how === 'function' ? step.how(NONE) : step.how;
        return [inWords(step.ask, NONE), inWords(step.phone, NONE), ...how].map((line) => `${step.id}: ${line}`);
      });
    const asIfFused = said.filter((line) => SAYS_THERE_IS_ONE.test(line));
    expect(asIfFused).toEqual([]);
    expect(inWords((steps.get('temporary-leads') as Step).phone, NONE)).toMatch(
      /^Battery negative off, lead off the positive post/,
    );
  });
  it('is spoken of as a lead by every check and every fix, the negative off first', () => {
    // A frozen head unit has a fuse of its own.
    const OF_A_FUSE = ['main-fuse-open', 'fuse-holder-bad', 'breaker-trips-hot', 'unit-hung'];
    const said = CAUSES.filter(({ id }) => !OF_A_FUSE.includes(id)).flatMap((cause) => {
      const f = { ...onBike(EXAMPLE_RIGS['frame-fairing']), facts: NONE.facts };
      const { fix, proofOfCure } = remedyOf(cause, f);
      const { byMeter, without } = splitOf(cause, f);
      return [...fix, proofOfCure.byEar, proofOfCure.byMeter ?? '', byMeter, without].map(
        (line) => `${cause.id}: ${line}`,
      );
    });
    expect(said.filter((line) => SAYS_THERE_IS_ONE.test(line))).toEqual([]);
    const off = said.filter((line) => /lead off the positive post/i.test(line));
    expect(off.length).toBeGreaterThan(10);
    for (const line of off) expect(line).toMatch(/negative off, lead off/);
  });
  it('is that of one amplifier: the lead of the other has its fuse', () => {
    const two: Situation = {
      rig: { amps: [{ drives: 'front' }, { drives: 'rear' }] },
      facts: { 'which-amp': { option: 'rear' }, 'fuse-look@front': { option: 'none' } },
    };
    expect(wordsOf('fuse-out@front', two).bike).toMatch(/lead of the front amplifier off the positive post/);
    expect(wordsOf('fuse-out@rear', two).bike).toMatch(/Main fuse of the rear amplifier out/);
    expect(ready('amp-ohms', two).cautions).toContain('no-fuse');
  });
  it('needs nobody to have been there before: the case goes on as it would', () => {
    const it_ = answered(begun, 'fuse-look', { option: 'none' });
    expect(ready('amp-terminals', NONE, it_).bike.join(' ')).toMatch(/Fit a fuse within a hand’s width/);
  });
});
