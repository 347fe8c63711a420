import { answeredWith, type Findings, is } from '../outcome.ts';
import type { Situation } from '../step.ts';

/** Whether somebody saw or heard that the amplifier is on. What the front does is no proof of it. */
export const seenOn = (f: Findings): boolean =>
  is(f, 'amp-light', 'normal') ||
  is(f, 'amp-signs', 'alive') ||
  is(f, 'wakes-when-loud', 'awake') ||
  is(f, 'rear-hiss', 'hiss') ||
  is(f, 'lid-check', 'hiss-now');

/** Whether it is on and goes off at times, or may. */
export const goesOffAtTimes = (f: Findings): boolean =>
  is(f, 'amp-goes-off', 'bumps', 'wet', 'running', 'loud', 'hot', 'quiet', 'unknown') ||
  (is(f, 'amp-history', 'comes-and-goes') && !is(f, 'amp-goes-off', 'stays-on', 'ugly', 'always'));

/** The same as far as it was told, for words that know no more than the answers. */
export const toldToGoOff = ({ facts }: Pick<Situation, 'facts'>): boolean =>
  answeredWith(facts, 'amp-history', 'comes-and-goes');

/** Whether it showed its fault light, by itself or woken for a moment. */
export const showsFault = (f: Findings): boolean =>
  is(f, 'amp-light', 'fault') ||
  is(f, 'amp-goes-off', 'always') ||
  is(f, 'remote-jumper', 'fault') ||
  is(f, 'wakes-when-loud', 'fault');

/** Whether it is on, and nobody knows of a time when it is not: nothing is wrong with what feeds and wakes it. */
export const staysOn = (f: Findings): boolean => seenOn(f) && !goesOffAtTimes(f) && !showsFault(f);

/** Whether it may be dark right now, so that something can wake it. */
export const mayBeOff = (f: Findings): boolean =>
  !seenOn(f) && !is(f, 'amp-light', 'fault') && !is(f, 'spare-fuse', 'wakes');

/** Whether its lamp was looked for and tells nothing. */
export const hasNoLamp = (f: Findings): boolean => is(f, 'amp-light', 'none', 'cannot');

/** Whether it may protect itself from its load. One that is simply dark has nothing to protect itself with. */
export const mayProtectItself = (f: Findings): boolean =>
  showsFault(f) || goesOffAtTimes(f) || hasNoLamp(f) || is(f, 'amp-light', 'blinks');
