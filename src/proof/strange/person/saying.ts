import { meaning } from '../../../observe/index.ts';
import { offered, valuesIn } from '../../../steps/outcome.ts';
import type { Answer, ReadingStep, Situation, Step } from '../../../steps/step.ts';
import { stepName } from '../../../steps/subject.ts';
import type { Ridden } from '../../../world/symptoms/index.ts';
import type { Observe } from '../oddity.ts';

/* What an oddity of a person is written with. A step is known by its id, or by what it is made of. */

/** A step that is asked, what a careful person says to it, and how often it was asked before. */
export interface Given {
  readonly step: Step;
  readonly bike: Ridden;
  readonly situation: Situation;
  readonly answer: Answer;
  readonly before: number;
}

/** Somebody who says something else than a careful person. `cannot` stays what it is: there is nothing to see. */
export const saying =
  (change: (given: Given) => Answer) =>
  (observe: Observe): Observe => {
    const asked = new Map<string, number>();
    return (step, bike, situation) => {
      const before = asked.get(step.id) ?? 0;
      asked.set(step.id, before + 1);
      const answer = observe(step, bike, situation);
      // What is said is of the amplifier that the step names.
      const meant = meaning(step, bike) ?? bike;
      return 'cannot' in answer ? answer : change({ step, bike: meant, situation, answer, before });
    };
  };

/** Of those who are asked again, half look at what they did. */
export const LOOKS_AGAIN_SHARE = 0.5;

export const optionIn = (answer: Answer): string | undefined => ('option' in answer ? answer.option : undefined);

/** The first of these options that the step offers on this bike, or what was said before. */
export function instead({ step, situation, answer }: Given, ...options: readonly string[]): Answer {
  const offers = offered(step, situation).map(([name]) => name);
  const option = options.find((name) => offers.includes(name));
  return option === undefined ? answer : { option };
}

/** What the steps call it when nothing is heard, or nothing changes. */
const NOTHING = ['no-change', 'no-effect', 'silent', 'stays-off', 'no-rear', 'dead'];
export const nothingHeard = (given: Given): Answer => instead(given, ...NOTHING);

/** Says one thing for another, by step: `{ step: { told: instead } }`. An option that is not offered is not said. */
export const swapped =
  (table: Readonly<Record<string, Readonly<Record<string, string>>>>) =>
  (given: Given): Answer => {
    const told = table[stepName(given.step)]?.[optionIn(given.answer) ?? ''];
    return told === undefined ? given.answer : instead(given, told);
  };

export type ReadingGiven = Given & { readonly step: ReadingStep };
/** Each reading of a measurement typed anew; `undefined` leaves it as it is. */
export function retyped(
  given: Given,
  change: (name: string, value: number, given: ReadingGiven) => string | undefined,
): Answer {
  const { step, answer } = given;
  if (step.kind !== 'reading' || !('readings' in answer)) return answer;
  const values = valuesIn(answer, step);
  const readings = Object.entries(answer.readings).map(([name, typed]) => {
    const value = values[name];
    return [name, (value === undefined ? undefined : change(name, value, { ...given, step })) ?? typed] as const;
  });
  return { readings: Object.fromEntries(readings) };
}

const UP_TO = { Ω: [1e3, 1e6] } as const;
/** A number as a meter shows it, with its unit. */
export function typed(value: number, unit: 'V' | 'Ω', decimals = 2): string {
  if (unit === 'V') return `${value.toFixed(decimals)} V`;
  if (value === Infinity) return 'OL';
  const [kilo, mega] = UP_TO['Ω'];
  if (value >= mega) return `${(value / mega).toFixed(2)} MΩ`;
  return value >= kilo ? `${(value / kilo).toFixed(1)} kΩ` : `${value.toFixed(1)} Ω`;
}

/** Whether a reading is in volts or ohms: other units have no oddities. */
export const unitOf = ({ readings }: ReadingStep, name: string): 'V' | 'Ω' | undefined => {
  const unit = readings[name]?.unit;
  return unit === 'V' || unit === 'Ω' ? unit : undefined;
};
/** Of a step in ohms the reading of the leads alone. */
export const isLeads = (name: string): boolean => name === 'leadsOhm';
