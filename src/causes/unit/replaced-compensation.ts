import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';
import { RATIO_CHECK } from './engine-difference.ts';

export const replacedCompensation: Cause = {
  id: 'replaced-compensation',
  title: 'Noise compensation on in the replaced head unit',
  faults: ['replaced-unit-setting@engine'],
  split: {
    ...RATIO_CHECK,
    without: 'Engine, noise or vehicle compensation off in the replaced unit’s own menu: does it stay the same now?',
  },
  mends: ['settings'],
  article: 'why-the-tone-follows-the-engine',
  remedy: () => ({
    what: 'The replaced head unit changes its tone with the engine, because of a setting in its own menu.',
    background: 'It senses the charging voltage or listens with a microphone, and lifts the bass against the noise.',
    numbers: [],
    repair: [{ do: 'set-unit-menu', compensation: 'off' }],
    fix: [
      'Open the replaced unit’s own menu, following its papers: sound, then noise, engine or vehicle compensation.',
      'Set it to off. Key off and on: does the setting stay?',
      'Outdoors, compare engine off and idling again.',
    ],
    tools: 'None',
    minutes: 10,
    who: YOURSELF,
    parts: [],
    notBuy: ['A reflash: this head unit has no factory profile to select.'],
    cautions: ['outdoors', 'hot'],
    proofOfCure: { byEar: 'The same with the engine off and idling, ear at a speaker.' },
  }),
};
