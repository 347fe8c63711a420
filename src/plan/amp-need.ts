import type { KnownAmp } from '../rig/rig.ts';

/** What amplifiers ask of the output profile, easiest to please first. Common practice, no published source. */
export const AMP_NEEDS = ['none', 'factory', 'wire', 'flexible', 'unknown', 'unaltered'] as const;
export type AmpNeed = (typeof AMP_NEEDS)[number];

const listens = (amp: KnownAmp) => amp.turnOn === 'signal' || amp.turnOn === 'dc';

/** What one amplifier needs. One that listens needs the unaltered output until it is proved otherwise. */
export function needOf(amp: KnownAmp): AmpNeed {
  if (amp.needs === 'unaltered') return 'unaltered';
  if (listens(amp)) return amp.needs === 'any' ? 'flexible' : 'unaltered';
  if (amp.kind === 'factory') return 'factory';
  if (amp.turnOn === 'wire') return 'wire';
  return amp.needs === 'any' ? 'flexible' : 'unknown';
}

/** What a list of amplifiers needs: what the one that is hardest to please needs. */
export function ampNeed(amps: readonly KnownAmp[]): AmpNeed {
  const hardest = Math.max(0, ...amps.map((amp) => AMP_NEEDS.indexOf(needOf(amp))));
  return AMP_NEEDS[hardest] ?? 'none';
}

/** Whether it is known, and not only assumed, that an amplifier needs the unaltered output. */
export const needIsProved = (amps: readonly KnownAmp[]): boolean => amps.some((amp) => amp.needs === 'unaltered');

export type AssumedNeed = 'unaltered' | 'any';

/**
 * What an amplifier is only assumed to need, where nobody knows what it was made for: the unaltered output when it
 * listens, any output when it has a remote wire.
 */
export function assumedNeedOf(amp: KnownAmp): AssumedNeed | null {
  if (amp.needs !== undefined) return null;
  if (listens(amp)) return 'unaltered';
  return amp.turnOn === 'wire' && amp.kind !== 'factory' ? 'any' : null;
}

/** The assumption that the whole answer rests on, if any. One amplifier that is known to be hard to please decides. */
export function assumedNeed(amps: readonly KnownAmp[]): AssumedNeed | null {
  if (needIsProved(amps)) return null;
  const assumed = amps.map(assumedNeedOf);
  return assumed.includes('unaltered') ? 'unaltered' : assumed.includes('any') ? 'any' : null;
}

/** Who can select an amplified profile, which depends on whether a factory amplifier answers on the data bus. */
export const dealerCanSelect = (amps: readonly KnownAmp[]): boolean => amps.some((amp) => amp.kind === 'factory');

export function whoSelectsAmplified(amps: readonly KnownAmp[], answers: boolean): string {
  if (dealerCanSelect(amps)) {
    return `A dealer or an independent specialist. The dealer’s tool selects an amplified profile ${answers ? 'because your factory amplifier answers on the data bus.' : 'if the factory amplifier answers on the data bus. If it does not, that is a fault to mend first.'}`;
  }
  if (amps.length > 0 && amps.every((amp) => amp.kind === 'add-on')) {
    return 'An independent specialist. The dealer’s tool selects an amplified profile only if a factory amplifier answers, and yours was added later.';
  }
  return 'An independent specialist in any case. A dealer only if the amplifier is a factory one that answers on the data bus.';
}
