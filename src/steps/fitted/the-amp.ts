import { ampDriving, type KnownAmp } from '../../rig/rig.ts';
import type { Situation } from '../step.ts';
import { toldSilent } from '../told/silent-side.ts';
import { type AmpPair, knownPair, whichAmp } from './which-amp.ts';

/** The pair of speakers whose amplifier a question names, else a case is about. */
export function ampPair({ rig, facts, amp }: Situation): AmpPair {
  if (amp) return amp;
  if (toldSilent(facts)?.startsWith('front') && rig.amps?.some(({ drives }) => drives === 'front')) return 'front';
  const said = (id: string): string | undefined => {
    const answer = facts[id];
    return answer && 'option' in answer ? answer.option : undefined;
  };
  // Of two amplifiers it is the one whose speakers sound ugly.
  const where = rig.amps?.some(({ drives }) => drives === 'front') ? said('where-harsh') : undefined;
  const pair = said(whichAmp.id) ?? knownPair(rig) ?? where ?? 'rear';
  return pair.startsWith('front') ? 'front' : 'rear';
}

/** What is known of the amplifier that a case is about. */
export const theAmp = (situation: Situation): KnownAmp => ampDriving(situation.rig, ampPair(situation)) ?? {};

/** Whether its pair has to be said. */
const isNamed = ({ rig, amp }: Situation): boolean => (rig.amps ? rig.amps.length > 1 : amp !== undefined);

/** “the amplifier”; its pair is named where the bike has two, or where a question names one and nobody counted them. */
export function ampName(situation: Situation): string {
  return isNamed(situation) ? `the ${ampPair(situation)} amplifier` : 'the amplifier';
}

/** A few words for the wire, with the amplifier behind them where it has to be named. */
export const atAmp =
  (words: string) =>
  (situation: Situation): string =>
    isNamed(situation) ? `${words}, ${ampPair(situation)} amplifier` : words;
