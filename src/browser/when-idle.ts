/** Does something once the page rests, at the latest after so many milliseconds. Gives how to call it off. */
export function whenIdle(then: () => void, atLatestMs: number): () => void {
  // Not every browser can say when it rests.
  if (typeof requestIdleCallback !== 'function') {
    const timer = setTimeout(then, Math.min(atLatestMs, 200));
    return () => clearTimeout(timer);
  }
  const handle = requestIdleCallback(() => then(), { timeout: atLatestMs });
  return () => cancelIdleCallback(handle);
}

/** Does one thing after another, each once the page rests. Gives how to call off the rest. */
export function oneByOne(tasks: readonly (() => void)[]): () => void {
  const [now, ...later] = tasks;
  if (!now) return () => {};
  let callOff = whenIdle(() => {
    now();
    callOff = oneByOne(later);
  }, 1000);
  return () => callOff();
}
