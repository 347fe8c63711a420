import { type RigStep, rigQuestion } from '../step.ts';
import { AMP_GROUPS, type AmpGroup, hardest, withGroup } from './amp-groups.ts';

/** Only one that senses DC is asked this: it never wakes on a lead that carries none. */
export function ampSignalStep(group: AmpGroup): RigStep<'speaker' | 'line'> {
  const { id, name, the } = AMP_GROUPS[group];
  return rigQuestion({
    place: 'plan',
    id: `${id}-signal`,
    short: `${name} fed by`,
    ask: `${the}: do plain speaker wires go into it, or a line-level lead?`,
    phone: `${the}: do two plain wires per channel go into it, or a shielded lead with a round plug?`,
    how: [
      'Speaker wires: two plain wires per channel, from the head unit’s plug.',
      'Line level: a round plug on a shielded lead, from a converter, a transformer or a line output.',
    ],
    why: 'Only the head unit’s speaker wires carry the DC it waits for.',
    tool: 'none',
    minutes: 1,
    observes: [],
    options: { speaker: 'Speaker wires', line: 'A line-level lead' },
    outcomes: { speaker: 'speaker wires', line: 'a line-level lead' },
    article: 'half-the-supply-on-a-speaker-wire',
    known: (rig) => hardest(rig, group, 'input', ['line', 'speaker']),
    learn: (input, rig) => withGroup(rig, group, { input }),
  });
}
