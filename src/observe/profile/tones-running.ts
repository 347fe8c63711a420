import { valuesIn } from '../../steps/outcome.ts';
import { referenceToneV } from '../../steps/profile/tones.ts';
import { tonesOff } from '../../steps/profile/tones-off.ts';
import type { ReadingStep } from '../../steps/step.ts';
import type { Say } from '../observer.ts';
import { at400V, firstUsable, prepared, tonesAt } from '../tones.ts';
import { quietFirst } from '../volume.ts';

export const sayTonesRunning: Say = (asked) => {
  const bike = prepared(asked.bike);
  const { facts } = asked.situation;
  const off = valuesIn(facts[tonesOff.id], tonesOff as unknown as ReadingStep);
  // The volume stays where it was, so the reading with the engine off tells the step.
  const wasV = off['v400V'] ?? referenceToneV(asked.situation);
  const volumes = quietFirst(wasV, at400V(asked, bike));
  const named = Object.keys(off).length > 0 ? Object.keys(off) : undefined;
  return firstUsable(asked, volumes, (volumeRatio) => tonesAt(asked, bike, { volumeRatio, engine: 'idle' }, named));
};
