import { offered } from '../../steps/outcome.ts';
import { bestOf, ofConcern } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { type Pressable, reacting } from '../press.ts';

/** What the parts are called that are pressed to bring the rear back. */
const FOR_THE_REAR = {
  input: 'amp-input',
  run: 'rear-run',
  battery: 'amp-supply',
  holder: 'amp-supply',
  terminal: 'amp-supply',
  ground: 'amp-supply',
  remote: 'amp-supply',
  unit: 'unit-plug',
} as const satisfies Record<Pressable, string>;

const ALL = Object.keys(FOR_THE_REAR) as Pressable[];

export const sayWiggle: Say = ({ step, found, bike, situation, observer }) => {
  const corners = ofConcern(found);
  const offers = offered(step, situation).map(([name]) => name);
  const names = ALL.filter((name) => offers.includes(FOR_THE_REAR[name]));
  const reacts = reacting(bike, names, (it) => bestOf(it, corners) !== 'silent', observer);
  return option(reacts ? FOR_THE_REAR[reacts] : 'no-effect');
};
