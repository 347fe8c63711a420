import { ampDriving } from '../../rig/rig.ts';
import type { Situation } from '../step.ts';
import { ampPair } from './the-amp.ts';

/** Whether the amplifier in question takes the head unit's own rear pairs, as far as anybody knows. */
export const fedFromRear = (situation: Situation) => ampDriving(situation.rig, 'rear')?.fedFrom !== 'front';

/** Whether the amplifier that a case is about hears what the head unit sends to the rear. */
export const ampHearsRear = (situation: Situation) => ampPair(situation) === 'rear' && fedFromRear(situation);
