import type { Findings } from '../../steps/outcome.ts';
import type { Cause } from '../cause.ts';
import { readsForLevel } from '../read-first.ts';
import type { RepairAction } from '../repair-action.ts';
import { FOR_AMPLIFIERS } from './profile-for-amps.ts';
import { type Asked, allOnAmp, rearSwitchedOn } from './rear-switched-on.ts';

const REAR_ON: RepairAction = { do: 'select-profile', rear: 'on' };

const ON_UNIT: Asked = {
  selection: REAR_ON,
  inWords: 'Ask for the rear channels to be put back on, and for nothing else to be changed.',
};
const REAR_ONLY_ON_AMP: Asked = {
  selection: REAR_ON,
  inWords: 'Ask for the rear channels to be put back on. Level and bass stay as they are stored.',
};
const ALL_ON_AMP: Asked = {
  selection: FOR_AMPLIFIERS,
  inWords:
    'Ask for what was stored before. No work order to say? Then, in words: rear on, level lowered for amplifiers, no bass boost, and an EQ that stays the same when the engine starts.',
};

/** Until its papers were read no level is lowered. */
const NOT_READ: Asked = {
  selection: REAR_ON,
  reads: ['made-for'],
  inWords:
    'Ask for what was stored before. No work order to say? Read in the papers of each amplifier whether it was made for the unaltered output. One was: rear on, and nothing else changed. None was: rear on, level lowered for amplifiers, no bass boost, and an EQ that stays the same when the engine starts.',
};

/** A lowered level suits a bike whose every speaker hangs on an amplifier, and none that was made for the full one. */
function askedOnAmp(f: Findings): Asked {
  if (!allOnAmp(f.rig) || f.rig.amps?.some(({ needs }) => needs === 'unaltered')) return REAR_ONLY_ON_AMP;
  return readsForLevel(f).length > 0 ? NOT_READ : ALL_ON_AMP;
}

export const profileReverted: Cause = {
  id: 'profile-reverted',
  title: 'Head unit back on a profile without rear channels',
  faults: ['profile-reverted@'],
  split: {
    byMeter:
      'Fader in the middle, 400 Hz tone, at the head unit’s own plug: nothing across the rear pairs while the front reads?',
    needs: ['tone-400'],
    touches: ['unit-rear-plus'],
    without: 'Ask whoever had the bike since it played: was the head unit updated, swapped or set?',
  },
  mends: ['profile'],
  article: 'what-a-reflash-is',
  remedy: (f) => {
    const visit = rearSwitchedOn(f, { amp: askedOnAmp(f), unit: ON_UNIT });
    return {
      ...visit,
      what: 'The head unit is back on a stored profile without rear channels.',
      background:
        'The head unit remembers its profile, not the bike. A unit swapped in service, or a tool run as routine, comes back as delivered. A battery change does not do it.',
      fix: [
        'Look for the old work order, and ask whoever had the bike what was done to the head unit.',
        'Read the stored profile before you pay: “What is in this head unit now?” takes half an hour.',
        ...visit.fix,
        'Note on the job card what is stored now, in words, for the next workshop.',
      ],
    };
  },
};
