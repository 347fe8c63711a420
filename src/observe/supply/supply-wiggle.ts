import { ampIsOn, ampOf } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { reacting } from '../press.ts';

const OF_THE_SUPPLY = ['battery', 'holder', 'lead', 'terminal', 'ground', 'remote', 'input'] as const;

export const saySupplyWiggle: Say = ({ bike, observer }) =>
  ampOf(bike) === null ? CANNOT : option(reacting(bike, OF_THE_SUPPLY, ampIsOn, observer) ?? 'no-effect');
