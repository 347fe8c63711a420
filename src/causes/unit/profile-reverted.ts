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
    'Ask for what was stored before. No job card to say? Then spell it out: rear on, level lowered for amplifiers, no bass boost, and an EQ that stays the same when the engine starts.',
};

/** Until its papers were read no level is lowered. */
const NOT_READ: Asked = {
  selection: REAR_ON,
  reads: ['made-for'],
  inWords:
    'Ask for what was stored before. No job card to say? Check each amplifier’s papers: was it made for the unaltered output? If one was: rear on, and nothing else changed. If none was: rear on, level lowered for amplifiers, no bass boost, and an EQ that stays the same when the engine starts.',
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
    without: 'Ask whoever has had the bike since it played: was the head unit updated, swapped or set up?',
    asStep: { byMeter: 'rear-pair' },
  },
  mends: ['profile'],
  article: 'what-a-reflash-is',
  remedy: (f) => {
    const visit = rearSwitchedOn(f, { amp: askedOnAmp(f), unit: ON_UNIT });
    return {
      ...visit,
      what: 'The head unit has gone back to a stored profile without rear channels.',
      background:
        'The head unit remembers its profile, not the bike. A unit swapped at a service, or reset by a dealer’s tool, comes back as it left the factory. A battery change does not do that.',
      fix: [
        'Look for the old job card, and ask whoever has had the bike what was done to the head unit.',
        'Read the stored profile before you pay: “What is in this head unit now?” takes half an hour.',
        ...visit.fix,
        'Note on the job card what is stored now, in words, for the next workshop.',
      ],
    };
  },
};
