import type { KnownAmp } from '../../rig/rig.ts';

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

/** Whether the unaltered output is only assumed to be needed, since nobody knows what a listening amplifier wants. */
export const needIsAssumed = (amps: readonly KnownAmp[]): boolean =>
  ampNeed(amps) === 'unaltered' && !amps.some((amp) => amp.needs === 'unaltered');

/** Who can select an amplified profile, which depends on whether a factory amplifier answers on the data bus. */
export function whoSelectsAmplified(amps: readonly KnownAmp[]): string {
  if (amps.some((amp) => amp.kind === 'factory')) {
    return 'A dealer or an independent specialist. The dealer’s tool selects an amplified profile because a factory amplifier answers on the data bus. If yours does not answer, that is a fault to mend first.';
  }
  if (amps.length > 0 && amps.every((amp) => amp.kind === 'add-on')) {
    return 'An independent specialist. The dealer’s tool selects an amplified profile only if a factory amplifier answers, and yours was added later.';
  }
  return 'An independent specialist in any case. A dealer only if the amplifier is a factory one that answers on the data bus.';
}
