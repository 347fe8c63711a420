import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../../machines/no-rear-sound.ts';
import { REAR_SUSPECTS } from '../../../src/verdicts/rear/suspects.ts';
import { describeSuspects, unsuspected } from '../suspects-law.ts';

/** The table of signs against the flow that it is ranked in. Signs themselves: common practice, no published source. */
describeSuspects(noRearSound, REAR_SUSPECTS);

describe('the suspects of a silent rear', () => {
  it('cover every verdict that stands for a fault', () =>
    // A wire of an input pair that is off takes one side, never the whole rear: nobody suspects it before it is read.
    expect(unsuspected(noRearSound, REAR_SUSPECTS)).toEqual(['one-input-lead-open']));
});
