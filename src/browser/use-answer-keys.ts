import { useEffect } from 'preact/hooks';

/** The keys of the answers in their order: digits, and letters once these run out. 0 is for none of them. */
export const ANSWER_KEYS: readonly string[] = [...'123456789abcdefgh'];
const KEYS = ['0', ...ANSWER_KEYS];

/** Answers by single keys, for hands that stay on a keyboard. Never while something is being typed, or lies over the page. */
export function useAnswerKeys(active: boolean, onNumber: (n: number) => void): void {
  useEffect(() => {
    if (!active) return;
    const onKey = (event: KeyboardEvent) => {
      const typing = event.target instanceof HTMLElement && event.target.matches('input, textarea, select');
      if (typing || document.querySelector('dialog[open]') || event.ctrlKey || event.metaKey || event.altKey) return;
      const n = KEYS.indexOf(event.key.toLowerCase());
      if (n >= 0) onNumber(n);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });
}
