import { type Findings, is } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import type { RepairAction } from '../repair-action.ts';
import { type Asked, allOnAmp, rearSwitchedOn } from './rear-switched-on.ts';

const REAR_ON: RepairAction = { do: 'select-profile', rear: 'on' };

const ASKED: { readonly amp: Asked; readonly unit: Asked } = {
  amp: {
    selection: REAR_ON,
    inWords: 'Ask for the rear channels to be enabled. Level and bass stay as they are stored.',
  },
  unit: { selection: REAR_ON, inWords: 'Ask for the rear channels to be enabled, and for nothing else to be changed.' },
};

/** A bike built with rear speakers, or one that was just reflashed, should have them on: look before anybody is paid. */
const lookFirst = (f: Findings): readonly string[] => [
  ...(f.rig.deliveredWith === 'four' || is(f, 'last-change', 'reflash')
    ? ['Read the stored profile before you pay: “What is in this head unit now?” takes half an hour.']
    : []),
  ...(is(f, 'last-change', 'reflash')
    ? ['Ask what was selected, spelt out: rear on or off, level, bass. A profile’s name tells you nothing.']
    : []),
  ...(allOnAmp(f.rig)
    ? [
        'Every speaker is on an amplifier: go through the plan “Does it need a reflash at all?” first. One visit can enable the rear and settle the level.',
      ]
    : []),
];

export const rearChannelsDisabled: Cause = {
  id: 'rear-channels-disabled',
  title: 'Rear channels switched off in the head unit',
  faults: ['rear-channels-disabled'],
  provedBy: ['rear-control'],
  split: {
    byMeter:
      'Fader in the middle, 400 Hz tone, at the head unit’s own plug: nothing across the rear pairs while the front reads?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without:
      'Did the rear itself ever play, heard at its grille? And did the bike leave the factory with front speakers only?',
    asStep: { byMeter: 'rear-pair' },
  },
  mends: ['profile'],
  article: 'what-a-reflash-is',
  remedy: (f) => {
    const visit = rearSwitchedOn(f, ASKED);
    return {
      ...visit,
      what: 'The rear channels are switched off in the settings stored in the head unit.',
      background:
        'A bike built with front speakers only leaves the factory like this, with nothing broken. Half the supply as DC on the rear wires says nothing about it.',
      fix: [...lookFirst(f), ...visit.fix],
    };
  },
};
