import { type RigStep, rigQuestion } from '../step.ts';
import { AMP_GROUPS, type AmpGroup, hardest, withGroup } from './amp-groups.ts';

export function ampTurnOnStep(group: AmpGroup): RigStep<'wire' | 'signal' | 'dc'> {
  const { id, name, the } = AMP_GROUPS[group];
  return rigQuestion({
    place: 'plan',
    id: `${id}-turn-on`,
    short: `${name} switched by`,
    ask: `${the}: what switches it on?`,
    phone: `${the}: is there a thin wire on it marked remote, or does it wake by itself when it hears music?`,
    how: [
      'A remote wire sits on a small terminal beside the thick ones, and carries 12 V while the head unit is on.',
      'No such wire: it listens to its inputs. Its papers say whether for a signal or for DC.',
      'Several of them? One that listens decides.',
    ],
    why: 'An amplifier with a wire wakes at any level. One that listens can stay asleep when the level goes down.',
    tool: 'none',
    minutes: 1,
    observes: [],
    options: { wire: 'A remote wire', signal: 'Hearing a signal', dc: 'Sensing DC on its inputs' },
    outcomes: { wire: 'a remote wire', signal: 'hearing a signal', dc: 'sensing DC' },
    article: 'amplifiers-that-listen',
    known: (rig) => hardest(rig, group, 'turnOn', ['dc', 'signal', 'wire']),
    learn: (turnOn, rig) => withGroup(rig, group, { turnOn }),
  });
}
