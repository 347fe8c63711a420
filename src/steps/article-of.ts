import type { Place, Step } from './step.ts';

/** What is behind the questions of a place, for those that name no article of their own. */
const ARTICLE_AT: Readonly<Record<Place, string>> = {
  fitted: 'how-the-signal-travels',
  told: 'talk-a-caller-through',
  tools: 'read-a-meter',
  settings: 'how-the-signal-travels',
  ears: 'how-the-signal-travels',
  plugs: 'connectors-vibration-and-water',
  unit: 'half-the-supply-on-a-speaker-wire',
  runs: 'half-the-supply-on-a-speaker-wire',
  supply: 'voltage-drop-under-load',
  'turn-on': 'amplifiers-that-listen',
  amplifier: 'why-an-amplifier-protects-itself',
  plan: 'when-a-reflash-helps',
  profile: 'two-tones-one-ratio',
};

/** The slug of the article behind a step. */
export const articleOf = ({ article, place }: Step): string => article ?? ARTICLE_AT[place];
