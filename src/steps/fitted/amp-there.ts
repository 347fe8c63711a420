import { type Findings, is } from '../outcome.ts';

/** Whether there is an amplifier that the case is about, or may be. Whoever cannot tell counts as having none. */
export const ampMayBeThere = (f: Findings): boolean =>
  f.outcome('which-amp') !== undefined ||
  (!is(f, 'rear-drive', 'unit', 'cannot') && !is(f, 'amps-drive', 'none', 'cannot'));

/** Whether a bike may have one, also where nobody could tell. */
export const ampMayBeFitted = (f: Findings): boolean =>
  f.outcome('which-amp') !== undefined || (!is(f, 'rear-drive', 'unit') && !is(f, 'amps-drive', 'none'));

/** Whether that amplifier drives the rear, or may. */
export const rearAmpMayBeThere = (f: Findings): boolean =>
  ampMayBeThere(f) && !is(f, 'which-amp', 'front') && !is(f, 'amps-drive', 'front');
