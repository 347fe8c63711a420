import type { Findings } from '../../steps/outcome.ts';
import type { Step } from '../../steps/step.ts';
import { candidates, deliveredOf, MEASURED_BY, measuredProfile } from './profile.ts';
import { type ProfileClash, whyNoProfile } from './profile-clash.ts';
import { STEP_THAT_READS } from './readers.ts';

/** What readings say together that no stored profile does; nothing where one fits. */
export function readingsClash(findings: Findings): ProfileClash | undefined {
  const measured = measuredProfile(findings);
  if (candidates(measured, deliveredOf(findings)).length > 0) return undefined;
  return whyNoProfile(measured, deliveredOf(findings))[0];
}

/** The reading to be taken once more, since what was read fits no profile. Each is asked for once. */
export function toReadAgain(findings: Findings): Step | undefined {
  const open = readingsClash(findings)?.properties.find((property) => !findings.checked?.has(MEASURED_BY[property]));
  return open && STEP_THAT_READS[open];
}
