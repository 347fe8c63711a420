/* What healthy readings along the way of the sound may differ by. All: common practice, no published source. */

/** The rear pairs of a head unit over its front pair: the same tone, the fader in the middle. */
export const REAR_OVER_FRONT_LOWEST_RATIO = 0.7;
export const REAR_OVER_FRONT_HIGHEST_RATIO = 1.4;

/** What arrives at the far end of a signal lead over what leaves the head unit. */
export const ARRIVES_LOWEST_RATIO = 0.85;
export const ARRIVES_HIGHEST_RATIO = 1.15;

/** How far the channels of an amplifier, or the two sides of a line-level lead, may lie apart. */
export const SIDES_APART_RATIO = 0.1;

/** A speaker wire to the frame: clear of it above the first, touching it below the second. */
export const CLEAR_OF_FRAME_OHM = 100e3;
export const TOUCHES_FRAME_OHM = 100;

/** What the joints of a speaker run add to coil and wires: healthy up to the first, bad above the second. */
export const JOINTS_HEALTHY_OHM = 0.3;
export const JOINTS_BAD_OHM = 1;

/** The rated ohms under which an output of a head unit runs hot or protects itself. */
export const UNIT_LEAST_LOAD_OHM = 3.5;
