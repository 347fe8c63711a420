import { useState } from 'preact/hooks';
import { keepReadings } from '../../browser/keep-readings.ts';
import type { ProfileReadings, SavedAnswer } from '../../rig/rig.ts';
import type { Facts } from '../../steps/step.ts';

/** What is worth keeping: the readings, and the meter that took them. */
const KEPT = ['meter-digit', 'tones-off', 'rear-pair', 'tones-running', 'top-step'];
const READ = KEPT.slice(1);

const answersIn = (facts: Facts): Readonly<Record<string, SavedAnswer>> =>
  Object.fromEntries(
    KEPT.flatMap((id) => {
      const answer = facts[id];
      return answer && !('cannot' in answer) ? [[id, answer] as const] : [];
    }),
  );

const today = () => new Date().toISOString().slice(0, 10);

interface Props {
  readonly facts: Facts;
  /** What is kept already. */
  readonly saved: ProfileReadings | undefined;
}

/** Keeps what was read of the stored profile with the bike, so that nobody reads it twice. */
export function KeepReadings({ facts, saved }: Props) {
  const [told, setTold] = useState('');
  const answers = answersIn(facts);
  if (!READ.some((id) => answers[id])) return null;
  if (saved && JSON.stringify(saved.answers) === JSON.stringify(answers)) return null;
  return (
    <p>
      <button
        type="button"
        class="plain"
        onClick={() => setTold(keepReadings({ on: today(), answers }) ?? 'Kept with “My bike”, with today’s date.')}
      >
        Keep these readings with “My bike”
      </button>{' '}
      <span role="status" class="hint">
        {told}
      </span>
    </p>
  );
}
