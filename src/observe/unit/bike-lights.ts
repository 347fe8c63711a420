import { isWeak } from '../bike-power.ts';
import { option, type Say } from '../observer.ts';

export const sayBikeLights: Say = ({ bike }) =>
  option(bike.at({}).now.ok ? (isWeak(bike) ? 'weak' : 'bright') : 'dark');
