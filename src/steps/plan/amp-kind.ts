import { type RigStep, rigQuestion } from '../step.ts';
import { AMP_GROUPS, type AmpGroup, hardest, withGroup } from './amp-groups.ts';

export function ampKindStep(group: AmpGroup): RigStep<'add-on' | 'factory'> {
  const { id, name, the } = AMP_GROUPS[group];
  return rigQuestion({
    place: 'plan',
    id: `${id}-kind`,
    short: name,
    ask: `${the}: is it the bike maker’s own, or one added later?`,
    phone: `${the}: did it come from the bike’s maker, with its own plug into the bike’s wiring, or did somebody add it?`,
    how: [
      'A factory amplifier is on the bike’s data bus and carries the bike maker’s part number.',
      'Several of them? If any was added later, it decides.',
    ],
    why: 'A dealer’s tool selects an amplified profile only if a factory amplifier answers on the data bus.',
    tool: 'none',
    minutes: 0.5,
    observes: [],
    options: { 'add-on': 'Added later', factory: 'The bike maker’s own' },
    outcomes: { 'add-on': 'added later', factory: 'factory amplifier' },
    ifCannot: 'Then we name the tool that can do it either way.',
    known: (rig) => hardest(rig, group, 'kind', ['add-on', 'factory']),
    learn: (kind, rig) => withGroup(rig, group, { kind }),
  });
}
