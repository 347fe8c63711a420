import { axleOf, type Corner } from '../../rig/corner.ts';
import { playing } from '../bike.ts';
import { option, type Say } from '../observer.ts';

/** Which speakers are heard, called by the axle where a whole axle is alike. */
export const sayWhatPlays: Say = ({ bike }) => {
  const how = bike.fitted.map((corner: Corner) => [axleOf(corner), playing(bike, corner)] as const);
  const of = (axle: 'front' | 'rear') => how.flatMap(([one, it]) => (one === axle ? [it] : []));
  const [front, rear] = [of('front'), of('rear')];
  if (how.every(([, it]) => it === 'plays')) return option('all');
  if (how.every(([, it]) => it === 'silent')) return option('none');
  if (rear.length > 0 && rear.every((it) => it === 'silent')) return option('no-rear');
  if (rear.length > 0 && rear.every((it) => it === 'weak') && front.every((it) => it === 'plays'))
    return option('rear-weak');
  if (rear.length > 0 && front.every((it) => it !== 'plays') && rear.every((it) => it === 'plays'))
    return option('no-front');
  return option('some');
};
