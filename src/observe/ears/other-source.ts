import { changed } from '../bike.ts';
import { anyHeard } from '../heard.ts';
import { option, type Say } from '../observer.ts';

/** What is paused is the phone; a station goes on. */
export const sayOtherSource: Say = ({ bike }) => {
  const station = changed(bike, 'another source', (world) =>
    world.settings.paused ? { ...world, settings: { ...world.settings, paused: false } } : world,
  );
  return option(anyHeard(station) ? 'good' : 'same');
};
