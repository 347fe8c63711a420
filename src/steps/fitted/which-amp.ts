import { type Rig, withAmpKnown, withKnown } from '../../rig/rig.ts';
import { type Facts, type RigStep, rigQuestion, type Situation } from '../step.ts';

export type AmpPair = 'rear' | 'front';

const onAmp = (rig: Rig, pair: AmpPair): Rig =>
  withAmpKnown(withKnown(rig, pair === 'rear' ? { rearFedBy: 'amp' } : { frontFedBy: 'amp' }), pair, {});

/** With one amplifier on the bike there is nothing to ask. One that drives everything counts as the rear's. */
export function knownPair({ amps = [] }: Rig): AmpPair | undefined {
  const [only] = amps;
  return amps.length === 1 ? (only?.drives === 'front' ? 'front' : 'rear') : undefined;
}

/** Which one is meant, told to a flow about one amplifier by a flow that knows the only one of the bike. */
export function onlyAmp({ rig }: Situation): Facts {
  const pair = knownPair(rig);
  return pair ? { 'which-amp': { option: pair } } : {};
}

export const whichAmp: RigStep<AmpPair> = rigQuestion({
  place: 'fitted',
  id: 'which-amp',
  short: 'Which amplifier',
  ask: 'Which amplifier stays off: the one for the rear, or one that drives only the front?',
  phone:
    'How many amplifiers are on the bike? Which one stays off: the one for the back, or the one that drives only the front?',
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
  ifCannot: 'We assume the one for the rear.',
  known: knownPair,
  learn: (pair, rig) => onAmp(rig, pair),
  complete: (rig) => {
    const pair = knownPair(rig);
    return pair ? onAmp(rig, pair) : rig;
  },
});
