import { is } from '../src/steps/outcome.ts';
import { type PlannedChange, plannedChange } from '../src/steps/plan/planned-change.ts';
import { wishMirroring } from '../src/steps/plan/wish-mirroring.ts';
import { wrongNow } from '../src/steps/plan/wrong-now.ts';
import { ask, askThen, claim, type RowsOpening } from './rows.ts';

const plans = (says: string, plan: PlannedChange) => claim(says, (findings) => is(findings, 'planned-change', plan));
const nothingPlanned = plans('nothing is planned', 'nothing');
const onlyMirroring = plans('phone mirroring is the only wish', 'mirroring');
export const opening: RowsOpening = {
  id: 'is-a-reflash-needed',
  title: 'Does it need a reflash at all?',
  states: {
    askPlan: ask(plannedChange, {
      nothing: 'askWrong',
      'front-only': 'askMirroring',
      'rear-on-unit': 'askMirroring',
      'amp-added': 'askMirroring',
      'amp-exchanged': 'askMirroring',
      'amp-removed': 'askMirroring',
      'unit-replaced': 'nothingToReflash',
      'unit-swapped': 'workIsDone',
      mirroring: 'askWrong',
      louder: 'askMirroring',
      'more-bass': 'askMirroring',
      'bass-gone': 'askBassGone',
      'same-eq': 'askWrong',
      'after-reflash': 'askWorse',
      cannot: 'askMirroring',
    }),
    askWrong: ask(wrongNow, {
      no: [{ when: nothingPlanned, to: 'nothingToDo' }, { when: onlyMirroring, to: 'askUnit' }, { to: 'askMirroring' }],
      'rear-silent': [{ when: onlyMirroring, to: 'askUnit' }, { to: 'askMirroring' }],
      other: [{ when: onlyMirroring, to: 'askUnit' }, { to: 'askMirroring' }],
      cannot: [{ when: onlyMirroring, to: 'askUnit' }, { to: 'askMirroring' }],
    }),
    askMirroring: askThen(wishMirroring, 'askUnit'),
  },
};
