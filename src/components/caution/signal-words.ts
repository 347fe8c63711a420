import type { CautionId } from '../../steps/cautions.ts';

/**
 * How grave it is, in the words that safety signs have for it: danger kills or maims, a warning can, a caution can hurt,
 * a notice is about things and not about people. Source: the signal words of ANSI Z535.4 and ISO 3864-2; which word fits
 * which sentence is judged.
 */
export type SignalWord = 'Danger' | 'Warning' | 'Caution' | 'Notice';

export const SIGNAL_WORDS: Readonly<Record<CautionId, SignalWord>> = {
  riding: 'Danger',
  'no-fuse': 'Danger',
  outdoors: 'Danger',
  acid: 'Warning',
  'battery-gas': 'Warning',
  capacitors: 'Warning',
  cranking: 'Warning',
  data: 'Warning',
  fuse: 'Warning',
  'ground-open': 'Warning',
  jumper: 'Warning',
  'lamp-hot': 'Warning',
  'live-clip': 'Warning',
  'minus-first': 'Warning',
  'own-charger': 'Warning',
  'plus-probe': 'Warning',
  'temporary-lead': 'Warning',
  'amp-output': 'Caution',
  'full-tone': 'Caution',
  hot: 'Caution',
  'loud-listening': 'Caution',
  'loud-tone': 'Caution',
  'wakes-loud': 'Caution',
  'comes-back-loud': 'Caution',
  'back-to-full': 'Notice',
  bridge: 'Notice',
  cell: 'Notice',
  cone: 'Notice',
  'flat-battery': 'Notice',
  'into-a-short': 'Notice',
  'key-off': 'Notice',
  'local-rules': 'Notice',
  'ohms-dead': 'Notice',
  'set-gain-again': 'Notice',
  'short-suspected': 'Notice',
  warranty: 'Notice',
};

const GRAVEST_FIRST: readonly SignalWord[] = ['Danger', 'Warning', 'Caution', 'Notice'];

/** Cautions by their word, the gravest first; each once. */
export const byWord = (ids: readonly CautionId[]): readonly (readonly [SignalWord, readonly CautionId[]])[] =>
  GRAVEST_FIRST.flatMap((word) => {
    const own = [...new Set(ids)].filter((id) => SIGNAL_WORDS[id] === word);
    return own.length > 0 ? [[word, own] as const] : [];
  });
