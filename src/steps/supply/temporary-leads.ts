import { toldToGoOff } from '../amplifier/seen-on.ts';
import { isKnown } from '../outcome.ts';
import { type ChoiceStep, choice } from '../step.ts';
import { fuseIsOpen, fuseStaysOut, supplyMayFail } from './may-fail.ts';
import { ofTheLead } from './unfused.ts';

const HOW: readonly string[] = [
  'Main fuse out while you clip. A 4 mm² lead or thicker from the amplifier’s ground to the battery negative post. Fuse back, key on: light on?',
  'Not yet: key off, main fuse out. A second lead from amplifier positive to the positive post, its own 10 A fuse at the battery, the amplifier’s end first. Fuse back, key on: light on?',
  'On with both? Key off, take the ground one off, key on: still on means the positive one, off means both.',
  'Is it on, and cuts out only when loud or shaken? Do that again with each lead: does it still cut out?',
  'Then key off, main fuse out, and take both off again, positive first, starting at the battery.',
];

/** Both ways bypassed, one at a time: the test of leads for whoever has no meter. */
export const temporaryLeads: ChoiceStep<'plus' | 'ground' | 'both' | 'neither'> = choice({
  place: 'supply',
  id: 'temporary-leads',
  short: 'Temporary positive and ground leads',
  ask: (s) =>
    `A temporary ground lead to battery negative, then a fused positive lead: does the amplifier ${toldToGoOff(s) ? 'stay' : 'come'} on with one of them?`,
  phone: (s) =>
    ofTheLead(
      'Main fuse out while you clip. A thick lead from the amplifier’s ground to battery negative, fuse back, key on: light on? If not: key off, main fuse out, a lead from the amplifier’s positive to battery positive, with its own 10 amp fuse at the battery. Fuse back, key on. Which lead did it: ground, positive, only both, or neither?',
      s,
    ),
  how: (s) => HOW.map((line) => ofTheLead(line, s)),
  why: 'Whichever lead cures it shows which of the old ones is bad.',
  tool: 'jumper',
  minutes: 10,
  conditions: ['key-off', 'amp-uncovered'],
  sensible: (f) => supplyMayFail(f) && !isKnown(f, 'supply-under-load') && !fuseIsOpen(f) && !fuseStaysOut(f),
  observes: ['amp-supply', 'amp'],
  clips: ['battery-plus', 'amp-plus'],
  cautions: ['temporary-lead', 'key-off', 'ground-open'],
  options: {
    ground: 'Yes, with the ground lead',
    plus: 'Yes, with the positive lead alone',
    both: 'Only with both',
    neither: 'No, with neither',
  },
  outcomes: {
    ground: 'cured by a new ground',
    plus: 'cured by a new positive',
    both: 'cured only by both',
    neither: 'no better with both',
  },
});
