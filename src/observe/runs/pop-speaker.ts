import { REAR } from '../bike.ts';
import { clicks, runClicks } from '../clicks.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { oneSpeaker } from '../ohms.ts';
import { probesAt } from '../probes.ts';

export const sayPopSpeaker: Say = ({ bike }) => {
  if (bike.world.rig.rearFitted === 'no') return CANNOT;
  const corner = REAR.find((one) => !runClicks(bike, one)) ?? REAR[0];
  if (!corner) return CANNOT;
  const alone = oneSpeaker(bike, corner);
  const tabs = probesAt(alone, ['speaker-plus', 'speaker-minus'], corner);
  return option(clicks(alone, 'tabs', tabs) ? 'moves' : 'dead');
};
