import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';

export const gainDown: ChoiceStep<'stays-on' | 'goes-off'> = choice({
  place: 'amplifier',
  id: 'gain-down',
  short: 'Its gain turned to half',
  ask: 'Gain turned to half, the same loud passage at the same volume step: does it still go off?',
  phone:
    'Note where its gain knobs stand, then turn them half-way down. Same loud song, same volume number, never with an ear at a speaker: does it still go off, or does it stay on now?',
  how: [
    'Note or mark where each gain knob stands. Turn it half-way down from there.',
    'The same passage at the volume step at which it went off, twice. Stop if anything smells hot.',
    'Then the gain goes back to its mark.',
  ],
  why: 'An amplifier that stays on now was driven too far, or has too heavy a load. One that still goes off loses its supply.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered', 'head-unit-playing'],
  sensible: (f) => ampMayBeThere(f) && !fuseStaysOut(f) && is(f, 'amp-goes-off', 'loud'),
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-tone'],
  options: { 'stays-on': 'No, it stays on now', 'goes-off': 'Yes, it still goes off' },
  outcomes: { 'stays-on': 'stays on at half its gain', 'goes-off': 'goes off at half its gain, too' },
  givenUnder: ['amp-goes-off'],
  ifCannot: 'No knob, out of reach, or too loud for where you are: go on without.',
});
