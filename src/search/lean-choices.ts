import { markOf } from './choices.ts';
import type { SameWords } from './same-words.ts';

/** A word of a choice with the signs before it. */
const PART = /^(\+?)([=@]?)(.*)$/;

/** Whether one choice stands in another, so that whoever says this says that. */
const standsIn = (short: readonly string[], long: readonly string[]): boolean =>
  long.some((_, at) =>
    short.every((part, i) => part === long[at + i] || (i === 0 && part === long[at]?.replace(/^\+/, ''))),
  );

/** Written choices with one word for all that mean the same, each choice once, and none that says more than another does. */
export function leanChoices(written: string, oneFor: SameWords['oneFor']): string {
  const marks = markOf(written);
  const one = (part: string) => {
    const [, behind = '', sign = '', word = ''] = PART.exec(part) ?? [];
    const head = oneFor(word);
    return sign === '' && oneFor(head) === head && !/[$~%^#]/.test(word) ? behind + head : part;
  };
  const choices = [
    ...new Set(
      written
        .slice(marks.length)
        .split('|')
        .map((choice) => choice.split(' ').map(one).join(' ')),
    ),
  ];
  const parts = choices.map((choice) => choice.split(' '));
  const needed = choices.filter((_, at) => !parts.some((short, i) => i !== at && standsIn(short, parts[at] ?? [])));
  return marks + needed.join('|');
}
