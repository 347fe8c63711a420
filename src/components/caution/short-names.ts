import type { CautionId } from '../../steps/cautions.ts';

/**
 * What a caution is called once it was read in full at an earlier question. Only those that cannot maim have one: a
 * danger or a warning stands in full each time.
 */
export const SHORT_NAMES: Readonly<Partial<Record<CautionId, string>>> = {
  'amp-output': 'speakers off the amplifier',
  'full-tone': 'full tone in short bursts',
  hot: 'hot parts',
  'loud-listening': 'loud for seconds only',
  'loud-tone': 'tone up from volume zero',
  'wakes-loud': 'it may wake at full blast',
  bridge: 'no speaker wire to the frame',
  cell: '1.5 V for half a second',
  'comes-back-loud': 'it may come back loud',
  cone: 'press the cone evenly',
  'flat-battery': 'twenty minutes at most',
  'into-a-short': 'no restarts into a short',
  'key-off': 'key off before any plug',
  'ohms-dead': 'ohms only with the plug apart',
  'short-suspected': 'no swap while a short is possible',
  warranty: 'ask about the warranty',
};
