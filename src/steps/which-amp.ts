import { ampDriving, type KnownAmp, type Rig, withAmpKnown, withKnown } from '../rig/rig.ts';
import { rigQuestion, type Situation } from './step.ts';

/** Which amplifier a case is about, and how it is switched. */

export type AmpPair = 'rear' | 'front';

const onAmp = (rig: Rig, pair: AmpPair): Rig =>
  withAmpKnown(withKnown(rig, pair === 'rear' ? { rearFedBy: 'amp' } : { frontFedBy: 'amp' }), pair, {});

/** With one amplifier on the bike there is nothing to ask. One that drives everything counts as the rear's. */
function knownPair({ amps = [] }: Rig): AmpPair | undefined {
  const [only] = amps;
  return amps.length === 1 ? (only?.drives === 'front' ? 'front' : 'rear') : undefined;
}

export const whichAmp = rigQuestion<AmpPair>({
  id: 'which-amp',
  short: 'Which amplifier',
  ask: 'Which amplifier stays off: the one for the rear, or one that drives only the front?',
  phone: 'How many amplifiers are on the bike? Which one is dark: the one for the back, or the one for the fairing?',
  how: [
    'Follow the thick speaker wires from its outputs.',
    'One amplifier for front and rear counts as the one for the rear.',
  ],
  why: 'Each amplifier has its own fuse, ground and turn-on, and every healthy reading belongs to one of them.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: { rear: 'The one for the rear, or for everything', front: 'One for the front only' },
  outcomes: { rear: 'rear, or everything', front: 'front only' },
  ifCannot: 'We take it as the one for the rear.',
  known: knownPair,
  learn: (pair, rig) => onAmp(rig, pair),
  complete: (rig) => {
    const pair = knownPair(rig);
    return pair ? onAmp(rig, pair) : rig;
  },
});

/** The pair of speakers whose amplifier a case is about. */
export function ampPair({ rig, facts }: Situation): AmpPair {
  const answer = facts[whichAmp.id];
  const said = answer && 'option' in answer ? answer.option : knownPair(rig);
  return said === 'front' ? 'front' : 'rear';
}

/** What is known of the amplifier that a case is about. */
export const theAmp = (situation: Situation): KnownAmp => ampDriving(situation.rig, ampPair(situation)) ?? {};

export const frontAmpTurnOn = rigQuestion<'wire' | 'signal' | 'dc'>({
  id: 'front-amp-turn-on',
  short: 'Front amplifier switched by',
  ask: 'How is the front amplifier switched on?',
  phone: 'Is there a thin wire on the front amplifier marked remote, or does it wake by itself when it hears music?',
  how: [
    'A remote wire sits on a small terminal beside the thick ones.',
    'No such wire: the amplifier listens to its inputs. Its papers say whether for a signal or for DC.',
  ],
  why: 'A wire that carries no volts and an input that hears nothing leave the same dark lamp. They are looked for in different places.',
  tool: 'none',
  minutes: 1,
  observes: [],
  options: { wire: 'By a remote wire', signal: 'By hearing a signal', dc: 'By sensing DC on its inputs' },
  outcomes: { wire: 'a remote wire', signal: 'hearing a signal', dc: 'sensing DC' },
  ifCannot: 'We take it as one that listens until a reading says otherwise.',
  article: 'amplifiers-that-listen',
  known: (rig) => ampDriving(rig, 'front')?.turnOn,
  learn: (turnOn, rig) => withAmpKnown(rig, 'front', { turnOn }),
});
