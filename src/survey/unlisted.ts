import { always, type Fault, REAR, withSpeakers } from '../world/faults/kit.ts';
import type { Speaker } from '../world/state.ts';

const silenced = (gives: Speaker['gives']): Fault => ({
  id: 'unlisted',
  variant: gives,
  title: 'Something that no reading shows',
  severity: null,
  weights: {},
  fits: always,
  apply: (world) => withSpeakers(world, REAR, { gives }),
});

/**
 * Whatever nobody thought of: the rear is silent, and all that can be read is as on a sound bike. With it among the causes
 * being the only one left is not enough: something has to be seen that is not as it should be. That is what a verdict of
 * the site means, so the least possible has to mean it, too. What goes wrong unseen may leave the hiss or take it.
 */
export const UNLISTED: readonly Fault[] = [silenced('hiss only'), silenced('nothing')];

/** How often it is that, as a share of all other causes together. An estimate. */
export const UNLISTED_SHARE = 0.03;
