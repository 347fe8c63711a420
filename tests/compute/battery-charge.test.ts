import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chargeAddedAh, drawAllowedA, timeToUseS } from '../../src/compute/battery-charge.ts';
import { expectClose } from './close.ts';
import { evenly } from './evenly.ts';

const HOUR_S = 3600;
const DAY_S = 24 * HOUR_S;

describe('chargeAddedAh', () => {
  // Charge is current times time, worked by hand.
  it('takes 3 Ah in 22.5 minutes at idle with 8 A too little', () => {
    expectClose(chargeAddedAh([{ madeA: 22, usedA: 30, timeS: 22.5 * 60 }]), -3);
  });
  it('keeps of 10 Ah that flow in only what the battery gives back', () => {
    expectClose(chargeAddedAh([{ madeA: 30, usedA: 20, timeS: HOUR_S }], 0.85), 8.5);
  });
  it('counts a ride of several stretches as their sum', () => {
    const idle = { madeA: 22, usedA: 27, timeS: 600 };
    const road = { madeA: 48, usedA: 27, timeS: 1800 };
    expectClose(chargeAddedAh([idle, road]), chargeAddedAh([idle]) + chargeAddedAh([road]));
  });
  it('refuses a battery that gives back more than it got', () => {
    expect(() => chargeAddedAh([], 1.1)).toThrow(/^keptRatio must be from 0 to 1, got 1.1$/);
  });
});

describe('timeToUseS', () => {
  // Worked by hand: half of 28 Ah is 14 Ah; 14 Ah / 15 mA = 933 h = 38.9 days.
  it('lets 15 mA take half of 28 Ah in 39 days', () => {
    expectClose(timeToUseS({ capacityAh: 28, shareRatio: 0.5, drawA: 0.015 }) / DAY_S, 38.889, 1e-4);
  });
  it('and the largest draw for so many days take as long', () => {
    fc.assert(
      fc.property(evenly(4, 100), evenly(1, 200), (capacityAh, days) => {
        const drawA = drawAllowedA({ capacityAh, shareRatio: 0.5, timeS: days * DAY_S });
        expectClose(timeToUseS({ capacityAh, shareRatio: 0.5, drawA }), days * DAY_S);
      }),
    );
  });
});
