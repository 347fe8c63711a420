import { fedFromRear } from '../../steps/fitted/fed-from.ts';
import type { Say } from '../observer.ts';
import { atOneStep, FRONT, INPUT, sides, UNIT_REAR } from '../one-volume-step.ts';
import { probesAt } from '../probes.ts';

export const sayAmpIn: Say = (asked) => {
  const { bike } = asked;
  const sent = sides((corner) => probesAt(bike, fedFromRear(asked.situation) ? UNIT_REAR : FRONT, corner));
  const [leftV, rightV] = sides((corner) => probesAt(bike, INPUT, corner));
  return atOneStep(asked, bike, ['sentV', sent], { leftV, rightV });
};
