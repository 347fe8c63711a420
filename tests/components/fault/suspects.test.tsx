import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { repaired } from '../../../src/case/change.ts';
import { answerableNow } from '../../../src/components/fault/OutOfTurn.tsx';
import { SuspectList } from '../../../src/components/fault/Suspects.tsx';
import { whyNow } from '../../../src/components/fault/why-now.ts';
import type { Step } from '../../../src/steps/step.ts';
import { fan, given, hum, shaft, view, words } from './fan.ts';

const shown = (answers: Parameters<typeof given>[0]) =>
  words(renderToString(<SuspectList view={view(given(answers))} />));
const step = (id: string) => fan.steps.get(id) as Step;

describe('the list of suspects', () => {
  it('stands from the first question on, by the odds of all callers', () => {
    expect(shown({})).toMatch(/^Breaker off about 3 in 10 Rotor stuck about 3 in 10/);
  });
  it('says of each what moved it most, for and against', () => {
    expect(shown({ hum: 'silent' })).toMatch(/Breaker off about 6 in 10 for it: Hum: silent/);
  });
  it('puts a cause that was ruled out by its check last, however likely its answers leave it', () => {
    const after = view(repaired(given({ hum: 'silent', shaft: 'free' }), 'breaker-off', 'not-it'));
    expect(after.shares.at(-1)?.cause).toBe('breaker-off');
    const html = renderToString(<SuspectList view={after} />);
    expect(html).toContain('<s>Breaker off</s>');
    expect(words(html)).toMatch(/^Motor dead .*Breaker off you ruled it out by its check/);
    expect(words(html).match(/Breaker off/g)).toHaveLength(1);
  });
  it('folds who is unlikely now, under the answer that spoke most against each', () => {
    const text = shown({ hum: 'silent', shaft: 'free', socket: { socketV: '0' } });
    expect(text).toMatch(/Unlikely now: \d/);
    expect(text).toMatch(/Hum: silent .*Rotor stuck/);
    expect(text.indexOf('Rotor stuck')).toBeGreaterThan(text.indexOf('Unlikely now'));
  });
  it('never runs empty, whatever was answered', () => {
    for (const hums of ['hums', 'silent'])
      for (const turns of ['free', 'stuck'])
        for (const socketV of ['0', '12'])
          expect(shown({ hum: hums, shaft: turns, socket: { socketV } })).toMatch(/^[A-Z].*(in 10|1 in \d+)/);
  });
  it('has one line for all that nobody thought of', () => {
    const text = shown({ hum: 'hums', shaft: 'free', socket: { socketV: '0' } });
    expect(text.match(/not in this list/g)).toHaveLength(1);
  });
});

describe('why a question is asked now', () => {
  it('is what it tells apart, by the names of the causes', () => {
    const says = whyNow(view(given({ hum: 'silent' })), step('socket'));
    expect(says).toBe('Now it tells “Breaker off” from “Motor dead”.');
  });
  it('is not claimed where it tells nothing apart', () => {
    expect(whyNow(view(given({ hum: 'silent' })), step('tools-at-hand'))).toBeUndefined();
  });
});

describe('what may be answered before its turn', () => {
  const idsAfter = (answers: Parameters<typeof given>[0], now: Step) =>
    answerableNow(view(given(answers)), now).map(({ id }) => id);
  it('is every step that makes sense and is not answered, but for the one that is open', () => {
    expect(idsAfter({ hum: 'silent' }, shaft as unknown as Step)).toEqual(['tools-at-hand', 'socket']);
  });
  it('is no step that makes no sense yet', () => {
    expect(idsAfter({}, hum as unknown as Step)).not.toContain('shaft');
  });
});
