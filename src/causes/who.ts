/** Who can do a fix, in the words used everywhere. */
export const YOURSELF = 'You can do this yourself.';
export const YOURSELF_OR_FITTER = 'You can do this yourself, or have a fitter do it.';
export const FITTER = 'A fitter, or you if you are good at crimping and soldering.';
export const DEALER_OR_SPECIALIST =
  'A dealer’s or a specialist’s tool can do it. Ask for what you want done, not for a profile by name.';
export const AMP_REPAIRER = 'An electronics workshop, or the amplifier’s maker.';
