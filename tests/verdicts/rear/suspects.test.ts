import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { REAR_TEXTS, rearTable } from '../../../src/verdicts/rear/suspects.ts';
import { describeSuspects, unsuspected } from '../suspects-law.ts';

/** The table of suspects against the flow that it is ranked in. What each shows is held to the circuit elsewhere. */
const { suspects } = rearTable({ rig: {}, facts: {} });
describeSuspects(noRearSound, suspects, REAR_TEXTS);

describe('the suspects of a silent rear', () => {
  it('cover every verdict that stands for a fault', () =>
    // A wire of an input pair that is off takes one side, never the whole rear: nobody suspects it before it is read.
    expect(unsuspected(noRearSound, suspects)).toEqual(['one-input-lead-open']));
});
