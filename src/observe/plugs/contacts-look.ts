import { contactsLook as looks } from '../../world/sights.ts';
import { REAR } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayContactsLook: Say = ({ found }) => {
  if (found.world.rig.rearFitted === 'no' || found.world.rig.rearPlug === 'no') return CANNOT;
  const { world } = found;
  const sides = REAR.map((corner) => (world.runs[corner].dock.wants === 'pin' ? 'pin' : looks(world, corner)));
  return option((['pin', 'apart', 'film'] as const).find((look) => sides.includes(look)) ?? 'clean');
};
