import { describe, expect, it } from 'vitest';
import { faderOrBalanceOff } from '../../../src/causes/settings/fader-or-balance-off.ts';
import { speedVolume } from '../../../src/causes/settings/speed-volume.ts';
import { toneControlsUp } from '../../../src/causes/settings/tone-controls-up.ts';
import { onBike } from '../on-bike.ts';

/* What is written down after it was changed is the wrong thing. Common sense, no published source. */
describe.each([
  [faderOrBalanceOff, 'fader-centre'],
  [toneControlsUp, 'unit-flat'],
  [speedVolume, 'speed-off'],
] as const)('the old settings of $id', (cause, step) => {
  it('are written down before the fix changes them', () => {
    expect(cause.remedy(onBike({})).fix[0]).toMatch(/^Write down /);
  });
  it('are not asked for once the step has changed them, which said so first', () => {
    const after = cause.remedy(onBike({}, { [step]: 'cured' }));
    expect(after.fix.join(' ')).not.toMatch(/write down/i);
  });
});
