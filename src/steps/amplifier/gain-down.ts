import { ampMayBeThere } from '../fitted/amp-there.ts';
import { is } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseStaysOut } from '../supply/may-fail.ts';

export const gainDown: ChoiceStep<'stays-on' | 'goes-off'> = choice({
  place: 'amplifier',
  id: 'gain-down',
  short: 'Its gain turned down by half',
  ask: 'Gain turned half-way down, same loud passage, same volume step: does it still cut out?',
  phone:
    'Note where its gain knobs are set, then turn them half-way down. Same loud song, same volume number, no ear near a speaker: does it still cut out, or does it stay on now?',
  how: [
    'Note or mark where each gain knob is set. Turn it half-way down from there.',
    'Play the same passage twice at the volume step where it cut out. Stop if anything smells hot.',
    'Then turn the gain back to its mark.',
  ],
  why: 'An amplifier that stays on now was driven too hard, or its load is too heavy. One that still cuts out is losing its supply.',
  tool: 'none',
  minutes: 4,
  conditions: ['amp-uncovered', 'head-unit-playing'],
  sensible: (f) => ampMayBeThere(f) && !fuseStaysOut(f) && is(f, 'amp-goes-off', 'loud'),
  observes: ['settings', 'profile', 'unit', 'amp-supply', 'amp', 'run', 'speaker'],
  cautions: ['loud-tone'],
  options: { 'stays-on': 'No, it stays on now', 'goes-off': 'Yes, it still cuts out' },
  outcomes: { 'stays-on': 'stays on at half gain', 'goes-off': 'cuts out at half gain too' },
  givenUnder: ['amp-goes-off'],
  ifCannot: 'No knob, out of reach, or too loud where you are: skip it.',
});
