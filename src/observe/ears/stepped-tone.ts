import { BASS_HZ, ugliness } from '../../world/symptoms/tone.ts';
import { option, type Say } from '../observer.ts';
import { uglyTrials } from '../ugly.ts';

export const saySteppedTone: Say = ({ bike }) => {
  const [trial] = uglyTrials(bike).filter(({ toneHz }) => toneHz === BASS_HZ);
  const heard = trial && ugliness(bike, trial);
  if (!heard || heard.chops.length > 0) return option('chops');
  const kinds = Object.values(heard.corners).flat();
  if (kinds.includes('cut off')) return option('rough');
  if (kinds.includes('scrapes') || kinds.includes('rattles')) return option('rattles');
  return option(kinds.length > 0 ? 'rough' : 'clean');
};
