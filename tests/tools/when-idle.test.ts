import { afterEach, describe, expect, it, vi } from 'vitest';
import { oneByOne, whenIdle } from '../../src/browser/when-idle.ts';

/** A browser that rests only when it is told to. */
function restingWhenTold() {
  const waiting = new Map<number, () => void>();
  let last = 0;
  vi.stubGlobal('requestIdleCallback', (then: () => void) => {
    waiting.set(++last, then);
    return last;
  });
  vi.stubGlobal('cancelIdleCallback', (handle: number) => waiting.delete(handle));
  return {
    rest() {
      const now = [...waiting];
      for (const [handle, then] of now) {
        waiting.delete(handle);
        then();
      }
    },
  };
}

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

describe('what can wait until the page rests', () => {
  it('is done when it rests, unless it was called off', () => {
    const page = restingWhenTold();
    const done: string[] = [];
    whenIdle(() => done.push('kept'), 1000);
    whenIdle(() => done.push('called off'), 1000)();
    expect(done).toEqual([]);
    page.rest();
    expect(done).toEqual(['kept']);
  });

  it('is done after a while where the browser cannot say that it rests', () => {
    vi.useFakeTimers();
    const done: string[] = [];
    whenIdle(() => done.push('kept'), 2000);
    whenIdle(() => done.push('called off'), 2000)();
    vi.runAllTimers();
    expect(done).toEqual(['kept']);
  });

  it('is done one at each rest, so that a tap between has to wait for one only', () => {
    const page = restingWhenTold();
    const done: number[] = [];
    oneByOne([1, 2, 3].map((n) => () => void done.push(n)));
    page.rest();
    expect(done).toEqual([1]);
    page.rest();
    expect(done).toEqual([1, 2]);
  });

  it('leaves the rest undone when it is called off between two', () => {
    const page = restingWhenTold();
    const done: number[] = [];
    const callOff = oneByOne([1, 2, 3].map((n) => () => void done.push(n)));
    page.rest();
    callOff();
    page.rest();
    expect(done).toEqual([1]);
  });
});
