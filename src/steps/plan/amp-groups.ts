import type { AmpValues } from '../../rig/fields.ts';
import type { KnownAmp, Rig } from '../../rig/rig.ts';

/** Amplifiers that are asked about together: a single one, or all that drive the same speakers. */
export const AMP_GROUPS = {
  only: { id: 'amp', name: 'Amplifier', the: 'The amplifier' },
  both: { id: 'amp-all', name: 'Amplifier for all four', the: 'The amplifier for all four' },
  front: { id: 'amp-front', name: 'Front amplifier', the: 'The front amplifier' },
  rear: { id: 'amp-rear', name: 'Rear amplifier', the: 'The rear amplifier' },
} as const;

export type AmpGroup = keyof typeof AMP_GROUPS;

const isIn = (group: AmpGroup) => (amp: KnownAmp) => group === 'only' || amp.drives === group;

export const withGroup = (rig: Rig, group: AmpGroup, learnt: KnownAmp): Rig =>
  rig.amps ? { ...rig, amps: rig.amps.map((amp) => (isIn(group)(amp) ? { ...amp, ...learnt } : amp)) } : rig;

/** What the amplifiers of a group have in common, or the value that is hardest to please. Unknown while one is. */
export function hardest<K extends keyof AmpValues>(
  rig: Rig,
  group: AmpGroup,
  field: K,
  order: readonly AmpValues[K][],
) {
  const values = (rig.amps ?? []).filter(isIn(group)).map((amp) => amp[field]);
  return values.some((value) => value === undefined) ? undefined : order.find((value) => values.includes(value));
}
