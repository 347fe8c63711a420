import { numberIn } from '../../steps/outcome.ts';
import { againAtV, referenceToneV } from '../../steps/profile/tones.ts';
import type { Say } from '../observer.ts';
import { at400V, firstUsable, prepared, tonesAt } from '../tones.ts';
import { quietFirst, stepsNear } from '../volume.ts';

/** What people call about the same: a boost is at least four times. */
const ABOUT_THE_SAME_RATIO = 2;

export const sayTonesOff: Say = (asked) => {
  const bike = prepared(asked.bike);
  const { situation } = asked;
  const at = at400V(asked, bike);
  const answerAt = (volumeRatio: number) => tonesAt(asked, bike, { volumeRatio });
  const answer = firstUsable(asked, quietFirst(referenceToneV(situation), at), answerAt);
  const [v80V, v400V] = ['v80V', 'v400V'].map((name) => numberIn(answer, name, 'V') ?? 0) as [number, number];
  const againV = againAtV(situation);
  if (againV === null || v400V <= 0 || v80V > ABOUT_THE_SAME_RATIO * v400V) return answer;
  const again = firstUsable(asked, stepsNear(againV, at), answerAt);
  return 'cannot' in again ? answer : again;
};
