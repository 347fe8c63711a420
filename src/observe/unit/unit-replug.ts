import { repaired } from '../../world/repair.ts';
import { axleOfConcern, bestOf, changed, ofConcern } from '../bike.ts';
import { option, type Say } from '../observer.ts';

/** Plugging it again wipes a film, for now. A pin that stands back stays where it is. */
export const sayUnitReplug: Say = ({ found, bike }) => {
  const corners = ofConcern(found);
  const home = changed(bike, 'unit plugged again', (world) =>
    repaired(world, { do: 'clean-contacts', plug: 'unit', where: axleOfConcern(found) }),
  );
  return option(bestOf(home, corners) === 'plays' && bestOf(bike, corners) !== 'plays' ? 'cured' : 'no-change');
};
