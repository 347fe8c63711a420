import type { Cause } from '../cause.ts';
import { UNIT_REPAIR, UNIT_REPAIR_STEPS } from './unit-repair.ts';

export const unitOutputsDead: Cause = {
  id: 'unit-outputs-dead',
  title: 'All outputs of the head unit dead',
  faults: ['unit-outputs-dead'],
  split: {
    byMeter:
      'Speakers unplugged, 400 Hz tone, at the head unit’s own plug: does no pair read anything, though the song counts on?',
    needs: ['tone-400'],
    touches: ['unit-front-plus'],
    without:
      'Everything unplugged from its outputs, key off and on, then one speaker that is known good straight on its plug: still silent?',
  },
  mends: ['unit'],
  article: 'no-sound-at-all',
  remedy: () => ({
    ...UNIT_REPAIR,
    what: 'The head unit runs, and none of its outputs gives anything.',
    background:
      'A jump start the wrong way round, water, or a speaker wire on metal kills the output stage. The screen goes on as if nothing were wrong.',
    numbers: [],
    fix: [
      'Key off, plug apart, meter on ohms: across the two wires of each pair, and from each wire to bare frame metal. A short there kills the next head unit, too.',
      ...UNIT_REPAIR_STEPS,
    ],
    tools: 'Meter, trim tools',
    minutes: 60,
    notBuy: ['Speakers or an amplifier: they get no signal.', 'A reflash: it won’t mend an output.'],
    ifDoneAnyway: 'A mute wire on ground sounds the same, and the next head unit will be as silent.',
    cautions: ['ohms-dead'],
    proofOfCure: {
      byEar: 'All corners play, one after the other.',
      byMeter: '400 Hz tone, fader and balance in the middle, at the head unit: every pair reads alike.',
      needs: ['tone-400'],
      touches: ['unit-front-plus'],
    },
  }),
};
