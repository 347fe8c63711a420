import { stepName } from '../../../steps/subject.ts';
import type { World } from '../../../world/state.ts';
import { ridden } from '../../../world/symptoms/symptom.ts';
import type { Observe, Oddity } from '../oddity.ts';
import { comesAndGoes, heard } from './hearing.ts';
import { instead, retyped, saying, typed, unitOf } from './saying.ts';

/* Questions that are understood as other questions, and numbers that are said as other numbers. */

/** Readings of a case before the one that is read aloud wrong, at most. */
const MOST_BEFORE = 4;
/** Whoever is asked again keeps it as often as not. */
const KEEPS_SHARE = 0.5;
function wrongByTen(observe: Observe, draw: () => number): Observe {
  let left = Math.floor(draw() * (MOST_BEFORE + 1));
  const ratio = draw() < 0.5 ? 10 : 0.1;
  const [which, keeps] = [draw(), draw() < KEEPS_SHARE];
  let slipAt: string | undefined;
  return saying((given) => {
    const { step, answer, before } = given;
    if (step.kind !== 'reading' || !('readings' in answer)) return answer;
    if (slipAt === undefined && before === 0 && left-- === 0) slipAt = step.id;
    if (slipAt !== step.id || (before > 0 && !keeps)) return answer;
    const names = Object.keys(answer.readings);
    const wrong = names[Math.floor(which * names.length)];
    return retyped(given, (name, value) => {
      const unit = unitOf(step, name);
      return name === wrong && unit && Number.isFinite(value) ? typed(ratio * value, unit, 3) : undefined;
    });
  })(observe);
}

export const WORDS: readonly Oddity[] = [
  {
    id: 'front-plays-so-it-is-the-same',
    says: '“the front plays” said to “does the front hang on the same amplifier?”',
    class: 'words',
    fits: ({ about, rig }) => about !== null && rig.rearFitted === 'yes',
    person: saying((given) =>
      stepName(given.step) === 'front-drive' && heard(given.bike, 'front') ? instead(given, 'same') : given.answer,
    ),
  },
  {
    id: 'plays-in-the-middle',
    says: '“it plays, and both were in the middle already” of a rear that comes and goes',
    class: 'words',
    fits: (world: World) => comesAndGoes(ridden(world)),
    person: saying((given) =>
      stepName(given.step) === 'fader-centre' && given.before === 0 && comesAndGoes(given.bike)
        ? instead(given, 'plays')
        : given.answer,
    ),
  },
  {
    id: 'wrong-by-ten',
    says: 'one reading of the case read aloud wrong by a factor of ten',
    class: 'words',
    fits: () => true,
    person: wrongByTen,
  },
];
