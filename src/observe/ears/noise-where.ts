import type { World } from '../../world/state.ts';
import { noiseComes } from '../../world/symptoms/tone.ts';
import { changed } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

const without = (world: World, gone: (noise: World['noises'][number]) => boolean): World =>
  world.noises.some(gone) ? { ...world, noises: world.noises.filter((noise) => !gone(noise)) } : world;

/** With the signal plug off nothing comes in by a lead; a loop of two grounds is open, too. */
export const sayNoiseWhere: Say = ({ bike }) => {
  if (!noiseComes(bike)) return CANNOT;
  const phoneOff = changed(bike, 'charging lead off', (world) =>
    without(world, ({ enters }) => enters === 'source-lead'),
  );
  if (!noiseComes(phoneOff)) return option('phone');
  const plugOff = changed(phoneOff, 'signal plug off', (world) => without(world, () => true));
  return option(noiseComes(plugOff) ? 'stays' : 'plug');
};
