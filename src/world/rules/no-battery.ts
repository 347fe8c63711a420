import type { Network, Refusal } from '../network.ts';

/** A bike without a battery. Only the power network of a bike has to have one, so `solve` does not ask this. */
export const noBattery = ({ elements }: Pick<Network, 'elements'>): Refusal | null =>
  elements.some(({ kind }) => kind === 'battery') ? null : { reason: 'no-battery' };
