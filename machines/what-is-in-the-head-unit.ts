import { profileRead, replacedHasNone } from '../src/plan/profile/profile-read.ts';
import { toReadAgain } from '../src/plan/profile/read-again.ts';
import { tonesOff } from '../src/steps/profile/tones-off.ts';
import { tonesRunning } from '../src/steps/profile/tones-running.ts';
import { topStep } from '../src/steps/profile/top-step.ts';
import { rearPair } from '../src/steps/unit/rear-pair.ts';
import { ask, askAgain, claim, conclude, decide, rowsFlow } from './rows.ts';
import { opening } from './what-is-in-the-head-unit.opening.ts';

const tonesWereRead = claim(
  'the tones were read with the engine off',
  (f) => f.values('tones-off')['v400V'] !== undefined,
);

/** Reads the stored profile by what it does: tones across the front pair, the rear pair, the loudest clean step. */
export const whatIsInTheHeadUnit = rowsFlow(opening.id, opening.title, {
  ...opening.states,
  measureTones: ask(tonesOff, {
    boosted: 'measureRearPair',
    flat: 'measureRearPair',
    cut: 'measureRearPair',
    unclear: 'measureRearPair',
    cannot: 'measureRearPair',
  }),
  measureRearPair: ask(rearPair, {
    ok: 'measureTopStep',
    uneven: 'measureTopStep',
    none: 'measureTopStep',
    'one-only': 'measureTopStep',
    cannot: 'measureTopStep',
  }),
  measureTopStep: ask(topStep, {
    full: 'afterTopStep',
    lowered: 'afterTopStep',
    unclear: 'afterTopStep',
    cannot: 'afterTopStep',
  }),
  // The engine comes last, so that it is started once, outdoors. Without readings to compare with it would say nothing.
  afterTopStep: decide({ when: tonesWereRead, to: 'measureTonesRunning' }, { to: 'readAgain' }),
  measureTonesRunning: ask(tonesRunning, {
    same: 'readAgain',
    changes: 'readAgain',
    unclear: 'readAgain',
    cannot: 'readAgain',
  }),
  readAgain: askAgain(toReadAgain, 'profileIsRead'),

  unitWasReplaced: conclude(replacedHasNone),
  profileIsRead: conclude(profileRead),
});
