import type { Ridden } from '../../world/symptoms/index.ts';
import { REAR } from '../bike.ts';
import { runClicks } from '../clicks.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { runOf } from '../ohms.ts';

/** A cone that gets less than half of what the cell gives a sound run only ticks. An estimate. */
const FAINT_RATIO = 2;

function clicksOf(bike: Ridden): 'moves' | 'faint' | 'dead' {
  if (!REAR.every((corner) => runClicks(bike, corner))) return 'dead';
  const faint = REAR.some(
    (corner) => (runOf(bike, corner) ?? Infinity) > FAINT_RATIO * (runOf(bike.healthy(), corner) ?? 0),
  );
  return faint ? 'faint' : 'moves';
}

export const sayPopRun: Say = ({ bike }) => (bike.world.rig.rearFitted === 'no' ? CANNOT : option(clicksOf(bike)));
