import { contactsLook as looks } from '../../world/sights.ts';
import { REAR } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayContactsLook: Say = ({ found }) => {
  if (found.world.rig.rearFitted === 'no') return CANNOT;
  const sides = REAR.map((corner) => looks(found.world, corner));
  return option((['apart', 'film'] as const).find((look) => sides.includes(look)) ?? 'clean');
};
