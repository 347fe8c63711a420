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
      'A remote wire goes to a small terminal next to the thick ones, and carries 12 V while the head unit is on.',
      'No such wire: it wakes by what is on its inputs. Its papers say whether by sound or by DC.',
      'Several of them? If any wakes by sound, it decides.',
    ],
    why: 'An amplifier with a wire wakes at any level. One that wakes by sound can stay asleep when the level goes down.',
    tool: 'none',
    minutes: 1,
    observes: [],
    options: { wire: 'A remote wire', signal: 'Sound on its inputs', dc: 'DC on its inputs' },
    outcomes: { wire: 'a remote wire', signal: 'sound on its inputs', dc: 'DC on its inputs' },
    article: 'amplifiers-that-listen',
    known: (rig) => hardest(rig, group, 'turnOn', ['dc', 'signal', 'wire']),
    learn: (turnOn, rig) => withGroup(rig, group, { turnOn }),
  });
}
