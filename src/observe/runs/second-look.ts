import { isOpen, REAR } from '../bike.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';

/** How many looms have a connector on the way, and how often one that is there is found. Estimates. */
const THERE_SHARE = 0.4;
const FOUND_SHARE = 0.85;

export const saySecondLook: Say = ({ bike: { world }, observer }) => {
  if (world.rig.rearFitted === 'no') return CANNOT;
  const [there, found] = [happens(observer, THERE_SHARE), happens(observer, FOUND_SHARE)];
  const seconds = REAR.map((corner) => world.runs[corner].second);
  const wrong = seconds.find(({ wants }) => wants !== undefined);
  if (!found || !(wrong || there)) return option('none');
  if (!wrong) return option('clean');
  return option(isOpen(wrong) && wrong.wants !== 'cleaning' ? 'apart' : 'dirty');
};
