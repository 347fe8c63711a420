import { type Axle, axleOf, type Corner, isCorner } from '../../rig/corner.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

type Where = 'all' | Axle | Corner;
/** Two places as one: a pair where both are of one axle. */
function everywhere(one: Where, other: Where): Where {
  if (one === other || other === 'all') return other;
  const axle = (where: Where) => (isCorner(where) ? axleOf(where) : where);
  return axle(one) === axle(other) ? axle(one) : 'all';
}

/** Where it distorts: each speaker by itself, the pair of an axle, or everywhere. */
export const whereHarsh: ChoiceStep<Where> = choice({
  place: 'ears',
  id: 'where-harsh',
  short: 'Where it distorts',
  ask: 'At the volume where it starts to distort: which speakers does it come from?',
  phone:
    'Play it at the step where it starts to distort, a few seconds at a time. Note how fader and balance are set. Fader to the rear, to the front, then balance left and right. Where is it distorted: everywhere, one pair, or one speaker?',
  how: [
    'Note how fader and balance are set. Fader fully to the rear, then to the front. Balance left, then right. Then back.',
    'No fader? Listen at each grille from arm’s length.',
    'Ears covered, a few seconds each time.',
  ],
  why: 'One speaker points to that speaker, its mount or its channel. All of them at once points to something further back.',
  tool: 'ears',
  minutes: 2,
  conditions: ['ugly-step'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  leftOut: ({ rig }) => (rig.rearFitted === 'no' ? ['rear', 'rear-left', 'rear-right'] : []),
  both: everywhere,
  options: {
    all: 'Everywhere the same',
    front: 'The front pair',
    rear: 'The rear pair',
    'front-left': 'Only the front left one',
    'front-right': 'Only the front right one',
    'rear-left': 'Only the rear left one',
    'rear-right': 'Only the rear right one',
  },
  outcomes: {
    all: 'everywhere',
    front: 'front pair',
    rear: 'rear pair',
    'front-left': 'front left',
    'front-right': 'front right',
    'rear-left': 'rear left',
    'rear-right': 'rear right',
  },
  ifCannot: 'Too loud for where you are? Skip it, and do it outside later.',
});

type Outcome = 'all' | 'front' | 'rear' | Corner;
export const ONE_CORNER = [
  'front-left',
  'front-right',
  'rear-left',
  'rear-right',
] as const satisfies readonly Outcome[];

/** Whether it may come from one speaker, as far as somebody has listened. */
export const mayBeOneSpeaker = (f: Parameters<typeof is>[0]): boolean => !is(f, 'where-harsh', 'all');
