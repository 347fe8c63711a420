/** Where a probe can go, and where that is on the drawing of the signal path. */
export const TEST_POINTS = {
  'unit-front-plus': 'one wire of a front pair, at the head unit',
  'unit-front-minus': 'the other wire of the same front pair',
  'unit-rear-plus': 'one wire of a rear pair, at the head unit',
  'unit-rear-minus': 'the other wire of the same rear pair',
  'amp-in-plus': 'one wire of a rear input pair, at the amplifier',
  'amp-in-minus': 'the other wire of the same input pair',
  'amp-out-plus': 'one screw of a rear output, on the amplifier',
  'amp-out-minus': 'the other screw of the same output',
  'run-plus': 'one wire of a rear speaker run, plug apart',
  'run-minus': 'the other wire of the same run',
  'speaker-plus': 'one tab of the speaker',
  'speaker-minus': 'the other tab',
  frame: 'bare bright metal of the frame',
  'battery-minus': 'the battery minus post',
} as const;
export type TestPoint = keyof typeof TEST_POINTS;
