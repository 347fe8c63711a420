import type { Cause } from '../cause.ts';
import { YOURSELF } from '../who.ts';
import { REAR_AS_LOUD_AS_FRONT, REAR_OVER_FRONT_HEALTHY } from './rear-over-front.ts';

export const replacedUnitSetting: Cause = {
  id: 'replaced-unit-setting',
  title: 'Rear outputs off in the replaced head unit',
  faults: ['replaced-unit-setting@rear-off'],
  split: {
    byMeter:
      'Rear outputs on in its menu, 400 Hz tone, at its own plug: does a rear pair now read what the front reads?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without: 'Look through the replaced unit’s own menu for its rear outputs.',
  },
  mends: ['settings'],
  article: 'what-a-reflash-is',
  remedy: () => ({
    what: 'The replaced head unit has its rear outputs switched off in its own menu.',
    background: 'Its menu is often left as it came out of the box.',
    numbers: [REAR_OVER_FRONT_HEALTHY],
    repair: [{ do: 'set-unit-menu', rear: 'on' }],
    fix: [
      'Volume at zero. Open the replaced unit’s own menu, following its papers.',
      'Rear outputs on, and set to speakers, not to “subwoofer”.',
      'Key off and on: does the setting stay?',
    ],
    tools: 'None',
    minutes: 10,
    who: YOURSELF,
    parts: [],
    notBuy: ['A reflash: this head unit has no factory profile to select.'],
    proofOfCure: REAR_AS_LOUD_AS_FRONT,
  }),
};
