import { mayBeOff, staysOn } from '../amplifier/seen-on.ts';
import { ampMayBeThere } from '../fitted/amp-there.ts';
import { type Findings, is } from '../outcome.ts';

/** Whether something may be wrong with what feeds and wakes the amplifier. */
export const supplyMayFail = (f: Findings): boolean => ampMayBeThere(f) && !staysOn(f);

/** Whether no volts come out of its main fuse, as seen or read. */
export const fuseIsOpen = (f: Findings): boolean =>
  is(f, 'fuse-look', 'blown') || is(f, 'fuse-ohms', 'open') || is(f, 'fuse-sides', 'open');

/** Whether something shorts what its main fuse feeds: a lamp stayed bright there, or a new fuse opened too. */
export const fuseStaysOut = (f: Findings): boolean => is(f, 'spare-fuse', 'opens') || is(f, 'fuse-lamp', 'bright');

/** Whether its main fuse may be open: nobody read a positive behind it, and nothing woke it. */
export const fuseMayBeOpen = (f: Findings): boolean =>
  supplyMayFail(f) &&
  mayBeOff(f) &&
  !is(f, 'amp-terminals', 'ok', 'unclear', 'ground-open', 'battery-low', 'battery-high') &&
  !is(f, 'fuse-sides', 'whole', 'no-feed') &&
  !is(f, 'remote-jumper', 'wakes', 'fault');
