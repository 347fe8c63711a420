import type { Corner } from '../../rig/corner.ts';
import type { Situation } from '../step.ts';
import { toldSilentSide } from '../told/silent-side.ts';
import { worseRun } from './run-ohms.ts';

/** The silent speaker, as far as the answers tell: a run that reads worse than the other, else the side that was told. */
export function silentSpeaker(situation: Situation): Corner | undefined {
  const side = worseRun(situation) ?? toldSilentSide(situation.facts);
  return side && `rear-${side}`;
}

export type OneSpeaker = 'silent' | Corner;

/** Where the speaker is that a step is about: “rear left”, or nothing where it may be either. */
export const speakerPlace = (subject: OneSpeaker, situation: Situation): string | undefined =>
  (subject === 'silent' ? silentSpeaker(situation) : subject)?.replace('-', ' ');

/** “the rear left speaker”, or “the silent speaker”. */
export const theSpeaker = (subject: OneSpeaker, situation: Situation): string =>
  `the ${speakerPlace(subject, situation) ?? 'silent'} speaker`;

/** A few words for the wire, with the place of the speaker behind them where it is known. */
export const atSpeaker =
  (words: string, subject: OneSpeaker) =>
  (situation: Situation): string => {
    const place = speakerPlace(subject, situation);
    return place === undefined ? words : `${words}, ${place}`;
  };
