import { stepName } from '../../../steps/subject.ts';
import { hasAmp, REAR, turnsOnBy, withAmp, withRuns, withSettings } from '../../../world/faults/kit.ts';
import { OPEN } from '../../../world/healthy.ts';
import { oncePerKey } from '../../../world/remembered.ts';
import type { World } from '../../../world/state.ts';
import { type Ridden, ridden } from '../../../world/symptoms/index.ts';
import type { Observe, Oddity } from '../oddity.ts';

/* Steps that are done and not undone: whatever is asked next is asked of another bike. */

const leftSo = oncePerKey<Ridden, Ridden>();

interface Leaves {
  /** The steps after which it is so. */
  readonly after: readonly string[];
  /** The steps that look at the bike as it should be: they take apart, or set right, what was left. */
  readonly butAt: readonly string[];
  /** The steps that set it right for good. */
  readonly until?: readonly string[];
  readonly so: (world: World) => World;
}

const leaves =
  (id: string, { after, butAt, until = [], so }: Leaves) =>
  (observe: Observe): Observe => {
    let left = false;
    return (step, bike, situation) => {
      if (until.includes(stepName(step))) left = false;
      const looksAt = left && !butAt.includes(stepName(step)) ? leftSo(bike, id, () => ridden(so(bike.world))) : bike;
      const answer = observe(step, looksAt, situation);
      if (after.includes(stepName(step)) && !('cannot' in answer)) left = true;
      return answer;
    };
  };

/** Steps that unplug the rear runs, or read on them with the plug off. */
const UNPLUGS_RUNS = ['run-ohms', 'run-split', 'wire-to-frame', 'amp-runs', 'amp-wires-to-frame', 'pop-run'];
const UNPLUGS_OUTPUTS = [...UNPLUGS_RUNS, 'amp-out', 'amp-dc', 'speakers-unplugged'];

export const DEEDS: readonly Oddity[] = [
  {
    id: 'leaves-fader-at-the-front',
    says: 'the fader left at its front end after the corners were compared',
    class: 'deeds',
    fits: ({ rig }) => rig.rearFitted === 'yes',
    person: leaves('fader at the front', {
      after: ['four-corners'],
      butAt: ['four-corners', 'fader-centre'],
      until: ['fader-centre'],
      so: (world) => withSettings(world, { fader: -1 }),
    }),
  },
  {
    id: 'leaves-speakers-unplugged',
    says: 'the rear speakers left unplugged after they were measured',
    class: 'deeds',
    fits: ({ rig }) => rig.rearFitted === 'yes',
    person: leaves('rear unplugged', {
      after: UNPLUGS_OUTPUTS,
      butAt: [...UNPLUGS_RUNS, 'coil-ohms', 'pop-speaker'],
      so: (world) => withRuns(world, REAR, { joint: { plus: OPEN, minus: OPEN }, toFrame: OPEN, acrossPair: OPEN }),
    }),
  },
  {
    id: 'leaves-remote-wire-off',
    says: 'the remote wire left off its terminal after the jumper',
    class: 'deeds',
    fits: (world) => hasAmp(world) && turnsOnBy('wire')(world),
    person: leaves('remote wire off', {
      after: ['remote-jumper'],
      butAt: ['remote-jumper'],
      so: (world) => withAmp(world, { remoteWire: OPEN }),
    }),
  },
];
