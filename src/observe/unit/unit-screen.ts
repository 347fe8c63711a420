import { screen } from '../../world/sights.ts';
import { option, type Say } from '../observer.ts';

export const sayUnitScreen: Say = ({ bike }) => {
  const { now } = bike.at({});
  return option(now.ok ? screen(bike.world, now) : 'dark');
};
