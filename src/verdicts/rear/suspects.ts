import { type SuspectTexts, suspectTable, type TableFor } from '../made-table.ts';
import { REAR_SIGNS } from './made-signs.ts';

/**
 * Who can be behind a silent rear. What each shows is made from the circuit; here is what the circuit cannot know: what
 * a suspect is called, and the harmless check that separates it.
 */

/** Only an amplifier that listens sleeps because the rear is silent: a wire is there all the same. */
const SILENCE_PUTS_TO_SLEEP = [{ 'amp-light': ['off'], 'rear-amp-turn-on': ['wire'] }];

export const REAR_TEXTS: SuspectTexts = {
  'fader-or-balance-off': {
    title: 'Fader or balance at its end',
    split: 'Put both exactly in the middle and listen.',
    notWith: SILENCE_PUTS_TO_SLEEP,
  },
  'rear-control-off': {
    title: 'Passenger or rear control off',
    split: 'Turn the rear control up and listen.',
    notWith: SILENCE_PUTS_TO_SLEEP,
  },
  'rear-channels-disabled': {
    title: 'Rear channels switched off in the head unit',
    split: 'With a meter: 400 Hz across the rear pair. Nothing while the front reads, with the fader centred.',
    notWith: SILENCE_PUTS_TO_SLEEP,
  },
  'profile-reverted': {
    title: 'Head unit back on a profile without rear channels',
    split: 'Ask whoever had the bike whether the head unit was updated, swapped or set.',
    notWith: SILENCE_PUTS_TO_SLEEP,
  },
  'replaced-unit-setting': {
    title: 'Rear outputs off in the replaced head unit',
    split: 'Look through the replaced unit’s own menu for its rear outputs.',
    notWith: SILENCE_PUTS_TO_SLEEP,
  },
  'replaced-unit-adapter-gap': {
    title: 'Adapter of the replaced head unit without rear pairs',
    split: 'Look at both sides of the adapter’s plug: are the four rear pins fitted?',
    notWith: SILENCE_PUTS_TO_SLEEP,
  },
  'amp-input-plug-off': {
    title: 'Signal plug at the amplifier not home',
    split: 'Key off, pull the signal plug, push it home until it locks, listen.',
    notWith: SILENCE_PUTS_TO_SLEEP,
  },
  'channel-mode-wrong': {
    title: 'Input selector of the amplifier wrong',
    split: 'Read the amplifier’s input selector: does it fit the plugs that are in?',
  },
  'amp-off': {
    title: 'Amplifier without power or turn-on',
    split: 'Plus, ground and turn-on at the amplifier’s own terminals, black probe on the battery minus post.',
  },
  'amp-input-too-low': {
    title: 'Range or gain of the amplifier too low',
    split: 'Read range and gain: do they fit what is plugged in?',
  },
  'amp-channel-dead': {
    title: 'Rear channels of the amplifier dead',
    split: 'No short suspected: put the amplifier’s front output onto the rear speakers.',
  },
  'speaker-wire-to-frame': {
    title: 'Rear speaker wire on the frame',
    split: 'Key off, plug apart, meter on ohms: each rear wire to bare frame metal, above 100 kΩ?',
  },
  'speaker-pair-shorted': {
    title: 'Rear run or coil shorted',
    split: 'Key off, plug apart, meter on ohms: does the run read coil plus wires?',
  },
  'rear-plug-off': {
    title: 'Rear plug not home',
    split: 'Key off, pull every lid and case plug and push it home until it locks.',
  },
  'lid-contacts-dirty': {
    title: 'Dirty plug contacts',
    split: 'Clean the contacts: it cures only this.',
  },
  'lid-lead-broken': {
    title: 'Lead into the lid broken inside',
    split: 'Move the lid slowly while music plays: does it come and go?',
  },
  'speaker-wire-open': {
    title: 'Rear speaker wire open',
    split: 'A 1.5 V cell on the run, then on the speaker: dead on the run only means the wire.',
  },
  'coil-open': {
    title: 'Rear coils open',
    split: 'A 1.5 V cell on the speaker’s own tabs: no movement means the coil.',
  },
};

const TABLE = suspectTable(REAR_SIGNS, REAR_TEXTS);

export const rearTable: TableFor = () => TABLE;
