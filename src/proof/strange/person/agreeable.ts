import { offered } from '../../../steps/outcome.ts';
import type { Answer } from '../../../steps/step.ts';
import { stepName } from '../../../steps/subject.ts';
import type { Oddity } from '../oddity.ts';
import { type Given, instead, saying } from './saying.ts';

/* Somebody who wants to be of help: what is told, and not looked at, is told as the question would have it. */

/** What is in the tool bag and on the meter is looked at, whoever is asked. */
const LOOKED_AT = ['tools-at-hand', 'meter-digit'];
const WAS_ONCE_WELL = ['rear-history', 'amp-history'];

function yes(given: Given): Answer {
  const { step, situation, answer } = given;
  if (step.observes.length > 0 || LOOKED_AT.includes(stepName(step))) return answer;
  if (WAS_ONCE_WELL.includes(stepName(step))) return instead(given, 'stopped');
  const agrees = offered(step, situation).find(([, label]) => label.startsWith('Yes'));
  return agrees ? { option: agrees[0] } : answer;
}

export const AGREEABLE: readonly Oddity[] = [
  {
    id: 'agreeable',
    says: 'somebody who says yes to whatever the question suggests, and that it played before',
    class: 'agreeable',
    fits: () => true,
    person: saying(yes),
  },
];
