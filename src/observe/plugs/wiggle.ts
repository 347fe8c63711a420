import { offered } from '../../steps/outcome.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { bestOf, ofConcern, playing, REAR } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { type Pressable, reacting } from '../press.ts';

/** What the parts are called that are pressed to bring the rear back. */
const FOR_THE_REAR = {
  input: 'amp-input',
  run: 'rear-run',
  battery: 'amp-supply',
  holder: 'amp-supply',
  lead: 'amp-supply',
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
  // Where both sides play just now, one that goes under the finger is heard to go.
  const bothPlay = REAR.every((corner) => playing(bike, corner) === 'plays');
  const isBack = bothPlay
    ? (it: Ridden) => REAR.every((corner) => playing(it, corner) !== 'silent')
    : (it: Ridden) => bestOf(it, corners) !== 'silent';
  const reacts = reacting(bike, names, isBack, observer);
  return option(reacts ? FOR_THE_REAR[reacts] : 'no-effect');
};
