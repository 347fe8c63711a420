import type { CautionId } from '../../steps/cautions.ts';

/**
 * What is said of a caution once it was read in full at an earlier question, as it is said aloud. Only those that cannot
 * maim have it: a danger or a warning stands in full each time.
 */
export const SHORT_NAMES: Readonly<Partial<Record<CautionId, string>>> = {
  'amp-output': 'speakers stay off the amplifier',
  'full-tone': 'full tone in short bursts only',
  hot: 'mind the hot parts',
  'loud-listening': 'loud for seconds only',
  'loud-tone': 'bring the tone up from volume zero',
  'wakes-loud': 'it may wake at full blast',
  bridge: 'keep speaker wires off the frame',
  cell: '1.5 V, half a second only',
  'comes-back-loud': 'it may come back loud',
  cone: 'press the cone evenly',
  'flat-battery': 'twenty minutes at most',
  'into-a-short': 'don’t restart it into a short',
  'key-off': 'key off before any plug',
  'ohms-dead': 'ohms only with the plug apart',
  'short-suspected': 'don’t swap while there may be a short',
  warranty: 'think of the warranty',
};
