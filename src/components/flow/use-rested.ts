import { useEffect, useState } from 'preact/hooks';
import { whenIdle } from '../../browser/when-idle.ts';

/**
 * Whether the page has rested since this was first drawn: what nobody waits for is drawn then. Where nothing is painted
 * there is nothing to wait for.
 */
export function useRested(atOnce = typeof document === 'undefined'): boolean {
  const [rested, setRested] = useState(atOnce);
  useEffect(() => (rested ? undefined : whenIdle(() => setRested(true), 200)), []);
  return rested;
}
