import { type Rig, withKnown, without } from '../../rig/rig.ts';
import { type RigStep, rigQuestion } from '../step.ts';

export type PlannedChange =
  | 'nothing'
  | 'front-only'
  | 'rear-on-unit'
  | 'amp-added'
  | 'amp-exchanged'
  | 'amp-removed'
  | 'unit-replaced'
  | 'unit-swapped'
  | 'mirroring'
  | 'louder'
  | 'more-bass'
  | 'bass-gone'
  | 'same-eq'
  | 'after-reflash';

/** The rig as it will be: what the plan settles is set, and what it may change is forgotten, so that it is asked. */
function plannedRig(plan: PlannedChange, rig: Rig): Rig {
  switch (plan) {
    case 'front-only':
      return without(rig, 'frontRatedOhm');
    case 'rear-on-unit':
      return withKnown(without(rig, 'rearRatedOhm'), { rearFitted: 'yes', rearFedBy: 'unit' });
    case 'amp-added':
    case 'amp-removed':
      return without(rig, 'amps', 'frontFedBy', 'rearFitted', 'rearFedBy');
    case 'amp-exchanged':
      return without(rig, 'amps');
    case 'unit-replaced':
      return withKnown(rig, { unitKind: 'replaced' });
    case 'unit-swapped':
      return withKnown(rig, { unitKind: 'factory' });
    default:
      return rig;
  }
}

export const plannedChange: RigStep<PlannedChange> = rigQuestion({
  place: 'plan',
  id: 'planned-change',
  short: 'Plan',
  ask: 'What do you want to change, or what should get better?',
  phone: 'What are you planning on the bike, or what should be better afterwards?',
  how: [
    'Take the one that comes closest. Everything after this is asked about the bike as it will be.',
    'A factory head unit, new or used, is not “another make”. It remembers what it was set to, not your bike.',
  ],
  why: 'Most changes need nothing done to the head unit. Some need one setting, and some would be spoilt by it.',
  tool: 'none',
  minutes: 0.5,
  observes: [],
  options: {
    nothing: 'Nothing. Somebody said I need a reflash',
    'front-only': 'New front speakers, nothing else',
    'rear-on-unit': 'Rear speakers on the head unit',
    'amp-added': 'An amplifier is added',
    'amp-exchanged': 'An amplifier is swapped for another',
    'amp-removed': 'An amplifier comes off',
    'unit-replaced': 'A head unit of another make',
    'unit-swapped': 'A factory head unit swapped in, or with an unknown history',
    louder: 'Louder, or less boomy when loud',
    'more-bass': 'More bass',
    'bass-gone': 'Bass goes with the engine, or on the road',
    'same-eq': 'Bass and treble should stay the same when the engine starts',
    mirroring: 'Just phone mirroring without a headset',
    'after-reflash': 'It got worse after a reflash',
  },
  outcomes: {
    nothing: 'nothing, somebody said so',
    'front-only': 'new front speakers only',
    'rear-on-unit': 'rear speakers on the head unit',
    'amp-added': 'an amplifier is added',
    'amp-exchanged': 'an amplifier is swapped',
    'amp-removed': 'an amplifier comes off',
    'unit-replaced': 'a head unit of another make',
    'unit-swapped': 'a factory head unit with an unknown history',
    mirroring: 'phone mirroring only',
    louder: 'louder or less boomy',
    'more-bass': 'more bass',
    'bass-gone': 'bass goes with the engine or on the road',
    'same-eq': 'same EQ with the engine running',
    'after-reflash': 'worse after a reflash',
  },
  ifCannot: 'We go through the whole build.',
  article: 'what-a-reflash-is',
  known: () => undefined,
  learn: plannedRig,
});
