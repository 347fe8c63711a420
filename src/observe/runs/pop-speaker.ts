import { CORNERS, cornersOf } from '../../rig/corner.ts';
import { silentSpeaker } from '../../steps/runs/silent-speaker.ts';
import { axleOfConcern } from '../bike.ts';
import { clicks, runClicks } from '../clicks.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { oneSpeaker } from '../ohms.ts';
import { probesAt } from '../probes.ts';

export const sayPopSpeaker: Say = ({ step, found, bike, situation }) => {
  const corner =
    CORNERS.find((one) => one === step.about?.subject) ??
    silentSpeaker(situation) ??
    cornersOf(axleOfConcern(found)).find((one) => !runClicks(bike, one)) ??
    'rear-left';
  if (!bike.fitted.includes(corner)) return CANNOT;
  const alone = oneSpeaker(bike, corner);
  const tabs = probesAt(alone, ['speaker-plus', 'speaker-minus'], corner);
  return option(clicks(alone, 'tabs', tabs) ? 'moves' : 'dead');
};
