import { cornersOf } from '../../rig/corner.ts';
import { offered } from '../../steps/outcome.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { axleOfConcern, bestOf, ofConcern, playing } from '../bike.ts';
import { option, type Say } from '../observer.ts';
import { type Pressable, reacting } from '../press.ts';

/** What the parts are called that are pressed to bring a silent speaker back. */
const CALLED = {
  input: 'amp-input',
  run: 'rear-run',
  front: 'rear-run',
  battery: 'amp-supply',
  holder: 'amp-supply',
  lead: 'amp-supply',
  terminal: 'amp-supply',
  ground: 'amp-supply',
  remote: 'amp-supply',
  unit: 'unit-plug',
} as const satisfies Record<Pressable, string>;

const ALL = Object.keys(CALLED) as Pressable[];

export const sayWiggle: Say = ({ step, found, bike, situation, observer }) => {
  const corners = ofConcern(found);
  const offers = offered(step, situation).map(([name]) => name);
  const names = ALL.filter((name) => offers.includes(CALLED[name]));
  // Where both sides play just now, one that goes under the finger is heard to go.
  const axle = cornersOf(axleOfConcern(found));
  const bothPlay = axle.every((corner) => playing(bike, corner) === 'plays');
  const isBack = bothPlay
    ? (it: Ridden) => axle.every((corner) => playing(it, corner) !== 'silent')
    : (it: Ridden) => bestOf(it, corners) !== 'silent';
  const reacts = reacting(bike, names, isBack, observer);
  return option(reacts ? CALLED[reacts] : 'no-effect');
};
