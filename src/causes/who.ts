/** Who can do a fix, in the words used everywhere. */
export const YOURSELF = 'You can do this yourself.';
export const YOURSELF_OR_FITTER = 'You can do this yourself. A fitter does it in the same time.';
export const FITTER = 'A fitter, or you if you crimp and solder well.';
export const DEALER_OR_SPECIALIST =
  'A dealer’s tool can do it, and so can a specialist’s. Say what you want done, not the name of a profile.';
export const AMP_REPAIRER = 'An electronics workshop, or the maker of the amplifier.';
