import { CANNOT, option, type Say } from '../observer.ts';

export const sayFrontAmpTurnOn: Say = ({ step, bike }) => {
  const known = step.kind === 'rig' ? step.known(bike.world.rig) : undefined;
  return known === undefined ? CANNOT : option(known);
};
