import { spotOf } from '../../world/test-points.ts';
import { cornersOfAmp, lookAt } from '../bike.ts';
import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { dcAt } from '../probes.ts';

export const sayAmpDc: Say = ({ bike, observer }) => {
  const look = lookAt(bike, { toneHz: null, apart: ['amp-outputs'] });
  const volts = cornersOfAmp(bike).map((corner) => {
    const pair = [spotOf('amp-out-plus', bike.world, corner), spotOf('amp-out-minus', bike.world, corner)] as const;
    return look && pair[0] && pair[1] ? Math.abs(dcAt(look, [pair[0], pair[1]]) ?? 0) : 0;
  });
  return volts.length === 0 || !look
    ? CANNOT
    : { readings: { highestV: hold(observer).typed('dc', Math.max(...volts)) } };
};
