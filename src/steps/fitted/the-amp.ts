import { ampDriving, type KnownAmp } from '../../rig/rig.ts';
import type { Situation } from '../step.ts';
import { type AmpPair, knownPair, whichAmp } from './which-amp.ts';

/** The pair of speakers whose amplifier a case is about. */
export function ampPair({ rig, facts }: Situation): AmpPair {
  const answer = facts[whichAmp.id];
  const said = answer && 'option' in answer ? answer.option : knownPair(rig);
  return said === 'front' ? 'front' : 'rear';
}

/** What is known of the amplifier that a case is about. */
export const theAmp = (situation: Situation): KnownAmp => ampDriving(situation.rig, ampPair(situation)) ?? {};
