import { repaired } from '../../world/repair.ts';
import { ampOf, changed, lampOf } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayInputPlug: Say = ({ bike }) => {
  if (ampOf(bike) === null) return CANNOT;
  const home = changed(bike, 'signal plug home', (world) => repaired(world, { do: 'seat-plug', plug: 'amp-input' }));
  const [before, after] = [lampOf(bike, {}), lampOf(home, {})];
  return option(before === after || after === 'off' ? 'no-change' : after === 'normal' ? 'cured' : 'fault');
};
