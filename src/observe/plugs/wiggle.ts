import { offered } from '../../steps/outcome.ts';
import { rearPlays } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { type Pressable, reacting } from '../press.ts';

/** What the parts are called that are pressed to bring the rear back. */
const FOR_THE_REAR = {
  input: 'amp-input',
  run: 'rear-run',
  battery: 'amp-supply',
  holder: 'amp-supply',
  ground: 'amp-supply',
  remote: 'amp-supply',
} as const satisfies Record<Pressable, string>;

const ALL = Object.keys(FOR_THE_REAR) as Pressable[];

export const sayWiggle: Say = ({ step, bike, situation, observer }) => {
  const offers = offered(step, situation).map(([name]) => name);
  const names = ALL.filter((name) => offers.includes(FOR_THE_REAR[name]));
  const found = reacting(bike, names, rearPlays, observer);
  return option(found ? FOR_THE_REAR[found] : 'no-effect');
};
