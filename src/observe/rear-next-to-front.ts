import type { Answer } from '../steps/step.ts';
import type { Moment } from '../world/moment.ts';
import type { Asked } from './observer.ts';
import { atOneStep, FRONT, sides, UNIT_REAR } from './one-volume-step.ts';
import { probesAt } from './probes.ts';

/** The rear pairs of the head unit are read with nothing on them: a short of the run cannot hide a live output. */
const REAR_UNPLUGGED = { toneHz: 400, apart: ['runs'] } as const satisfies Partial<Moment>;

export function rearNextToFront(asked: Asked, bike: Asked['bike']): Answer {
  const fronts = sides((corner) => probesAt(bike, FRONT, corner));
  const [leftV, rightV] = sides((corner) => probesAt(bike, UNIT_REAR, corner));
  return atOneStep(asked, bike, ['frontV', fronts], { leftV, rightV }, {}, REAR_UNPLUGGED);
}
