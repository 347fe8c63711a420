import { happens, option, type Say } from '../observer.ts';

/** How often the one that is burnt is found: it sits behind a panel, and a strip breaks where nobody sees it. An estimate. */
const FOUND_SHARE = 0.9;

export const sayUnitFuses: Say = ({ bike, observer }) =>
  option(happens(observer, FOUND_SHARE) && bike.world.unit.fuseOpen ? 'burnt' : 'whole');
