import { describe, expect, it } from 'vitest';
import { faderOrBalanceOff } from '../../../src/causes/settings/fader-or-balance-off.ts';
import { rearControlOff } from '../../../src/causes/settings/rear-control-off.ts';
import { figuresOf, ON_UNIT, onBike } from '../on-bike.ts';

// Rear over front of 0.7 to 1.4: common practice, no published source.
describe('a fader that is off', () => {
  it('shows rear over front as it was read', () => {
    const read = { 'rear-pair': { frontV: 2, leftV: 0.5, rightV: 3 } };
    expect(figuresOf(faderOrBalanceOff, onBike(ON_UNIT, {}, read))).toEqual({
      'rear-left-over-front': '25 %',
      'rear-right-over-front': '150 %',
      'rear-over-front-healthy': '70 to 140 %',
    });
  });
  it('has only the healthy figure when ears found it, or a front that was not playing', () => {
    const silent = { 'rear-pair': { frontV: 0, leftV: 0, rightV: 0 } };
    for (const findings of [onBike(ON_UNIT), onBike(ON_UNIT, {}, silent)]) {
      expect(figuresOf(faderOrBalanceOff, findings)).toEqual({ 'rear-over-front-healthy': '70 to 140 %' });
    }
  });
});

describe('settings', () => {
  it.each([faderOrBalanceOff, rearControlOff])('$id: takes no tool and nothing to buy', (cause) => {
    expect(cause.remedy(onBike(ON_UNIT))).toMatchObject({ tools: 'None', parts: [] });
  });
});
