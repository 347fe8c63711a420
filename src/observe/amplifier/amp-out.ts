import { hold } from '../hand.ts';
import { CANNOT, type Say } from '../observer.ts';
import { atOneStep, INPUT, OUTPUT, sides, TONE } from '../one-volume-step.ts';
import { acAt, probesAt } from '../probes.ts';

export const sayAmpOut: Say = (asked) => {
  const { bike, observer } = asked;
  const inputs = sides((corner) => probesAt(bike, INPUT, corner));
  const [leftV, rightV] = sides((corner) => probesAt(bike, OUTPUT, corner));
  if (!leftV) return CANNOT;
  const residueV = acAt(bike, { ...TONE, toneHz: null }, leftV, observer.meter);
  const before = { residueV: hold(observer).typed('ac', residueV) };
  return atOneStep(asked, bike, ['inV', inputs], { leftV, rightV }, before);
};
