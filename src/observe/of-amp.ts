import type { Answer } from '../steps/step.ts';
import type { Amp } from '../world/state.ts';
import { ampOf } from './bike.ts';
import { type Asked, CANNOT, type Say } from './observer.ts';

export const ofAmp =
  (say: Say): Say =>
  (asked) =>
    ampOf(asked.bike) === null ? CANNOT : say(asked);

export const ofItsAmp =
  (say: (i: number, amp: Amp, asked: Asked) => Answer): Say =>
  (asked) => {
    const i = ampOf(asked.bike);
    const amp = i === null ? undefined : asked.bike.world.amps[i];
    return i === null || !amp ? CANNOT : say(i, amp, asked);
  };
