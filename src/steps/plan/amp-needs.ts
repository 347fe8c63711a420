import { type RigStep, rigQuestion } from '../step.ts';
import { AMP_GROUPS, type AmpGroup, hardest, withGroup } from './amp-groups.ts';

export function ampNeedsStep(group: AmpGroup): RigStep<'any' | 'unaltered'> {
  const { id, name, the } = AMP_GROUPS[group];
  return rigQuestion({
    place: 'plan',
    id: `${id}-needs`,
    short: `${name} made for`,
    ask: `${the}: is it made only for the head unit’s unaltered output?`,
    phone: `${the}: do its papers say that the head unit must stay as it left the factory, or must not be reflashed?`,
    how: [
      'Look in its papers for “no reflash”, “factory output” or “corrects the factory sound”. A remote wire does not settle it.',
      'Any source: its papers name no head unit, or somebody has heard it play well with an amplified profile.',
      'Several of them? Answer for the fussiest one.',
    ],
    why: 'Some amplifiers expect the full output and take its bass boost out themselves. A lowered output leaves them asleep or too quiet.',
    tool: 'papers',
    minutes: 3,
    observes: [],
    options: { any: 'No, it takes any source', unaltered: 'Yes, the unaltered output only' },
    outcomes: { any: 'any source', unaltered: 'the unaltered output only' },
    ifCannot:
      'One that wakes by sound then counts as made for the unaltered output, one with a remote wire as taking any source.',
    article: 'amplifiers-that-listen',
    known: (rig) => hardest(rig, group, 'needs', ['unaltered', 'any']),
    learn: (needs, rig) => withGroup(rig, group, { needs }),
  });
}
