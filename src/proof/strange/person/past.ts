import { stepName } from '../../../steps/subject.ts';
import { hasAmp } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { ridden, whenAmpGoesOff } from '../../../world/symptoms/index.ts';
import { isUntouched } from '../bike/harmless.ts';
import type { Oddity } from '../oddity.ts';
import { instead, saying } from './saying.ts';

/* What is told of the past, and of the past as if it were now. */

/** Harmless things that people remember before the one that matters. */
const WASHED = ['washed', 'rain', 'opened'];

/** A feed that is dead, a unit or a battery that is not as it should be: somebody could have seen it. */
const somethingElseStopped = (world: World): boolean =>
  world.amps.some(({ remoteSource }) => remoteSource === 'dead') ||
  !isUntouched(world, ({ supply, unit: { permanent, switched, ground } }) => [supply, permanent, switched, ground]);

export const PAST: readonly Oddity[] = [
  {
    id: 'tells-the-wash',
    says: 'somebody who tells of the wash, and not of what was done to the bike before it',
    class: 'past',
    fits: () => true,
    person: saying((given) => (stepName(given.step) === 'last-change' ? instead(given, ...WASHED) : given.answer)),
  },
  {
    id: 'lamp-of-yesterday',
    says: 'the amplifier’s light told as it was when all was well, until somebody asks again',
    class: 'past',
    fits: hasAmp,
    person: saying((given) =>
      stepName(given.step) === 'amp-light' && given.before === 0 ? instead(given, 'normal') : given.answer,
    ),
  },
  {
    id: 'blames-the-heat',
    says: 'somebody who says “when it is hot” of whatever comes and goes',
    class: 'past',
    fits: (world) => whenAmpGoesOff(ridden(world)).length > 0,
    person: saying((given) =>
      ['amp-goes-off', 'when-silent'].includes(stepName(given.step)) ? instead(given, 'hot') : given.answer,
    ),
  },
  {
    id: 'notices-nothing-else',
    says: 'somebody who does not notice what else stopped',
    class: 'past',
    fits: (world) => hasAmp(world) && somethingElseStopped(world),
    person: saying((given) => (stepName(given.step) === 'what-else' ? instead(given, 'nothing') : given.answer)),
  },
];
