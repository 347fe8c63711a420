import { deliveredWith } from '../src/steps/fitted/delivered-with.ts';
import { unitKind } from '../src/steps/fitted/unit-kind.ts';
import { metersDigit } from '../src/steps/tools/meter-digit.ts';
import { toolsAtHand } from '../src/steps/tools/tools-at-hand.ts';
import { ask, type RowsOpening } from './rows.ts';

export const opening: RowsOpening = {
  id: 'what-is-in-the-head-unit',
  title: 'What is in this head unit now?',
  states: {
    askUnit: ask(unitKind, { factory: 'askDelivered', replaced: 'unitWasReplaced', cannot: 'askDelivered' }),
    askDelivered: ask(deliveredWith, { two: 'askTools', four: 'askTools', cannot: 'askTools' }),
    askTools: ask(toolsAtHand, { meter: 'askMeter', none: 'profileIsRead', cannot: 'profileIsRead' }),
    askMeter: ask(metersDigit, {
      '0.001': 'measureTones',
      '0.01': 'measureTones',
      '0.1': 'measureTones',
      cannot: 'measureTones',
    }),
  },
};
