import type { Answer } from '../steps/step.ts';
import type { Moment } from '../world/moment.ts';
import { hold } from './hand.ts';
import { type Asked, CANNOT } from './observer.ts';
import { atOneStep, FRONT, sides, UNIT_REAR } from './one-volume-step.ts';
import { acAt, probesAt } from './probes.ts';

/** The rear pairs of the head unit are read with nothing on them: a short of the run cannot hide a live output. */
const REAR_UNPLUGGED = { toneHz: 400, apart: ['runs'] } as const satisfies Partial<Moment>;

export function rearNextToFront(asked: Asked, bike: Asked['bike']): Answer {
  const fronts = sides((corner) => probesAt(bike, FRONT, corner));
  const [leftV, rightV] = sides((corner) => probesAt(bike, UNIT_REAR, corner));
  const pair = leftV ?? rightV;
  if (!pair) return CANNOT;
  const residueV = acAt(bike, { ...REAR_UNPLUGGED, toneHz: null }, pair, asked.observer.meter);
  const before = { residueV: hold(asked.observer).typed('ac', residueV) };
  return atOneStep(asked, bike, ['frontV', fronts], { leftV, rightV }, before, REAR_UNPLUGGED);
}
