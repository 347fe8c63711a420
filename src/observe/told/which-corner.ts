import { type Axle, axleOf, type Corner, cornersOf, sideOf } from '../../rig/corner.ts';
import { COMPLAINTS } from '../../world/symptoms/index.ts';
import { playing } from '../bike.ts';
import { option, type Say } from '../observer.ts';

/** The corner that is silent, or weak beside its partner; both of a side or of an axle; or all, or none. */
export const sayWhichCorner: Say = ({ bike }) => {
  const how = bike.fitted.map((corner) => [corner, playing(bike, corner)] as const);
  const worst = (['silent', 'weak'] as const).find((one) => how.some(([, it]) => it === one));
  const bad: readonly Corner[] = how.flatMap(([corner, it]) => (it === worst ? [corner] : []));
  const [first, second] = bad;
  if (!first) return option(COMPLAINTS['bass-cancels'](bike) === 'yes' ? 'thin' : 'plays');
  if (!second) return option(first);
  if (bad.length === bike.fitted.length) return option('all');
  if (bad.length === 2 && sideOf(first) === sideOf(second)) return option(sideOf(first));
  const axle = (['rear', 'front'] as const).find((one: Axle) => cornersOf(one).every((corner) => bad.includes(corner)));
  return option(axle ?? axleOf(first));
};
