import { describe, expect, it, vi } from 'vitest';
import { reloadIntoNewest } from '../../src/browser/take-over.ts';

/** A page that shows “A new version is ready. Reload”, and what happens to it. */
function page(waits: boolean) {
  const happened: string[] = [];
  const workers = new EventTarget();
  const waiting = { postMessage: (message: string) => void happened.push(message) } as unknown as ServiceWorker;
  const press = () =>
    reloadIntoNewest({ waiting: waits ? waiting : null }, workers as ServiceWorkerContainer, () => {
      happened.push('reload');
    });
  return { happened, press, takenOver: () => workers.dispatchEvent(new Event('controllerchange')) };
}

describe('“A new version is ready. Reload”', () => {
  it('asks the waiting version to take over, and reloads once it has', () => {
    const { happened, press, takenOver } = page(true);
    press();
    expect(happened).toEqual(['take-over']);
    takenOver();
    takenOver();
    expect(happened).toEqual(['take-over', 'reload']);
  });
  it('reloads all the same when the waiting version says nothing, and only once', () => {
    vi.useFakeTimers();
    const { happened, press, takenOver } = page(true);
    press();
    vi.advanceTimersByTime(10_000);
    takenOver();
    expect(happened).toEqual(['take-over', 'reload']);
    vi.useRealTimers();
  });
  it('reloads at once when another tab has already made it take over', () => {
    const { happened, press } = page(false);
    press();
    expect(happened).toEqual(['reload']);
  });
});
