import { type Axle, axleOf, type Corner, sideOf } from '../../rig/corner.ts';
import type { Situation } from '../step.ts';
import { toldSilent, toldSilentSide, toldWholeSide } from '../told/silent-side.ts';
import { worseRun } from './run-ohms.ts';

/** The silent speaker, as far as the answers tell: a run that reads worse than the other, else the one that was told. */
export function silentSpeaker(situation: Situation): Corner | undefined {
  const told = toldSilent(situation.facts);
  if (toldWholeSide(situation.facts) && worseRun(situation, 'front'))
    return onAxle('front', worseRun(situation, 'front'));
  const axle = told ? axleOf(told) : 'rear';
  return onAxle(axle, worseRun(situation, axle) ?? (told ? sideOf(told) : toldSilentSide(situation.facts)));
}

const onAxle = (axle: Axle, side: 'left' | 'right' | undefined): Corner | undefined => side && `${axle}-${side}`;

/** The axle that the silent speaker is on; the rear, where nobody said. */
export const axleOfSpeaker = (subject: OneSpeaker, situation: Situation): Axle =>
  axleOf(subject === 'silent' ? (silentSpeaker(situation) ?? 'rear-left') : subject);

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
