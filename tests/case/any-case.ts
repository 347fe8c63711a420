import fc from 'fast-check';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import type { Case, CaseEvent } from '../../src/case/events.ts';
import type { Answer } from '../../src/steps/step.ts';
import { anyRig } from '../rig/any-rig.ts';

/** Text as people type it, in any script, with the signs of a keyboard between. */
const text = (maxLength: number) =>
  fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: Math.floor(maxLength / 10) }),
    fc.string({ maxLength }),
    fc.constantFrom('3,1', '3.1 V', 'OL', '−0,3', 'Ω 2k', '左後ろ', '🏍️ silent', '"', '\\', '', ' '),
  );

const steps = [...noRearSound.steps.keys()];

/** A record like those of the site, which have the usual prototype. */
const plain = <T>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }) =>
  fc.record(model, { noNullPrototype: true }) as fc.Arbitrary<T>;

/**
 * A name of a reading. None with a quote or a backslash: JSON.parse of V8 14.6 takes a key that is one escaped sign for
 * another one that it read before (`{"\\"": 1}` after `{"\\\\": 1}`). Names of readings have neither.
 */
const readingName = text(10).map((name) => name.replace(/["\\]/g, ''));

/** Any answer, whether a step has it or not. */
export const anyAnswer: fc.Arbitrary<Answer> = fc.oneof(
  fc.constant<Answer>({ cannot: true }),
  text(30).map((option) => ({ option })),
  fc.dictionary(readingName, text(40), { maxKeys: 4, noNullPrototype: true }).map((readings) => ({ readings })),
);
const anyStepId = fc.oneof(fc.constantFrom(...steps), text(20));
const anyVerdictId = fc.oneof(fc.constantFrom(...noRearSound.ends), text(20));

const anyEvent: fc.Arbitrary<CaseEvent> = fc.oneof(
  plain({ type: fc.constant('answer' as const), step: anyStepId, answer: anyAnswer }),
  plain({ type: fc.constant('revise' as const), step: anyStepId, answer: anyAnswer }),
  plain({ type: fc.constant('confirm' as const), step: anyStepId }),
  plain({ type: fc.constant('leave' as const), step: anyStepId }),
  plain({ type: fc.constantFrom('repair' as const, 'cured' as const), verdict: anyVerdictId }),
  plain({
    type: fc.constant('repair' as const),
    verdict: anyVerdictId,
    result: fc.constantFrom('better' as const, 'not-it' as const),
  }),
  plain({ type: fc.constant('note' as const), text: text(1000) }),
  plain({ type: fc.constant('handOver' as const), flow: text(30) }),
  plain({ type: fc.constant('rig' as const), rig: anyRig }),
);

/** Any list of events, sensible or not. */
export const anyCase: fc.Arbitrary<Case> = plain({
  flow: fc.oneof(fc.constant(noRearSound.id), text(30)),
  events: fc.array(anyEvent, { maxLength: 40 }),
});
