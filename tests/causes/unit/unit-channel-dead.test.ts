import { describe, expect, it } from 'vitest';
import { titleOf } from '../../../src/causes/cause.ts';
import { unitChannelDead } from '../../../src/causes/unit/unit-channel-dead.ts';
import { figuresOf, ON_UNIT, onBike } from '../on-bike.ts';

describe('a dead output of the head unit', () => {
  it('has its side in the title where the readings tell it', () => {
    const title = (leftV: number, rightV: number) =>
      titleOf(unitChannelDead, onBike(ON_UNIT, {}, { 'rear-pair': { frontV: 2, leftV, rightV } }));
    expect(title(0.01, 2)).toBe('Rear left output of the head unit dead');
    expect(title(1.9, 0)).toBe('Rear right output of the head unit dead');
    expect(title(1.9, 2)).toBe('An output of the head unit dead');
    expect(titleOf(unitChannelDead, onBike(ON_UNIT))).toBe('An output of the head unit dead');
  });
  it('shows each rear pair as a share of the front pair', () => {
    const read = { 'rear-pair': { frontV: 2, leftV: 0.01, rightV: 1.9 } };
    expect(figuresOf(unitChannelDead, onBike(ON_UNIT, {}, read))).toEqual({
      'rear-left-over-front': '0.5 %',
      'rear-right-over-front': '95 %',
      'rear-over-front-healthy': '70 to 140 %',
    });
  });
});
