import { useEffect } from 'preact/hooks';

/** So many answers have a key: one press of a digit, of which 0 is for none of them. */
export const MOST_KEYS = 9;

/** Answers by the number keys, for hands that stay on a keyboard. Never while something is being typed, or lies over the page. */
export function useNumberKeys(active: boolean, onNumber: (n: number) => void): void {
  useEffect(() => {
    if (!active) return;
    const onKey = (event: KeyboardEvent) => {
      const typing = event.target instanceof HTMLElement && event.target.matches('input, textarea, select');
      if (
        typing ||
        document.querySelector('dialog[open]') ||
        event.ctrlKey ||
        event.metaKey ||
        event.altKey ||
        !/^[0-9]$/.test(event.key)
      )
        return;
      onNumber(Number(event.key));
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });
}
