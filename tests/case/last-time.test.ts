import { describe, expect, it } from 'vitest';
import { lastReadings } from '../../src/case/last-time.ts';

describe('lastReadings', () => {
  it('gives the last readings of each measurement, also when a repair has made them stale', () => {
    expect(
      lastReadings([
        { type: 'rig', rig: {} },
        { type: 'answer', step: 'unit-kind', answer: { option: 'factory' } },
        { type: 'answer', step: 'rear-pair', answer: { readings: { frontV: '1.0', leftV: '0' } } },
        { type: 'answer', step: 'run-ohms', answer: { readings: { leadsOhm: '0.2' } } },
        { type: 'revise', step: 'rear-pair', answer: { readings: { frontV: '1,1' } } },
        { type: 'repair', verdict: 'rear-channels-disabled' },
        { type: 'answer', step: 'run-ohms', answer: { cannot: true } },
      ]),
    ).toEqual({ 'rear-pair': { frontV: '1,1' }, 'run-ohms': { leadsOhm: '0.2' } });
  });
  it('gives nothing for a fresh case', () => expect(lastReadings([{ type: 'rig', rig: {} }])).toEqual({}));
});
