import type { Corner } from '../../rig/corner.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';

/** Where it is ugly: each speaker by itself, the pair of an axle, or everywhere. */
export const whereHarsh: ChoiceStep<'all' | 'front' | 'rear' | Corner> = choice({
  place: 'ears',
  id: 'where-harsh',
  short: 'Where it is ugly',
  ask: 'At the volume at which it turns ugly: where does the ugly sound come from?',
  phone:
    'Play it at the step where it turns ugly, a few seconds at a time. Fader to the rear, to the front, then balance left and right. Where is it ugly: everywhere, one pair, or one speaker?',
  how: [
    'Fader fully to the rear, then to the front. Balance left, then right. Come back to the middle.',
    'No fader on it? Listen from an arm’s length at each grille.',
    'Ears covered, a few seconds each time.',
  ],
  why: 'One speaker points to that speaker, its mount or its channel. Everything at once points to what comes before.',
  tool: 'ears',
  minutes: 2,
  conditions: ['ugly-step'],
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  leftOut: ({ rig }) => (rig.rearFitted === 'no' ? ['rear', 'rear-left', 'rear-right'] : []),
  options: {
    all: 'Everywhere alike',
    front: 'From the front pair',
    rear: 'From the rear pair',
    'front-left': 'From the front left one only',
    'front-right': 'From the front right one only',
    'rear-left': 'From the rear left one only',
    'rear-right': 'From the rear right one only',
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
  ifCannot: 'Too loud for where you are? Go on without, and do it outside later.',
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
