import { type AmpPair, ampPair } from '../../steps/which-amp.ts';
import { type MadeTable, type SuspectTexts, suspectTable, type TableFor } from '../made-table.ts';
import { AMP_SIGNS } from './made-signs.ts';

/**
 * Who can be behind an amplifier that stays off. What each shows is made from the circuit; here is what the circuit cannot
 * know: what a suspect is called, and the harmless check that separates it.
 */

export const AMP_TEXTS: SuspectTexts = {
  'main-fuse-open': {
    title: 'Main fuse open',
    split: 'Key off, pull the main fuse near the battery: is its strip burnt through?',
  },
  'wire-chafed': {
    title: 'Plus lead chafed or broken',
    split: 'A lamp in place of the fuse, plus lead off the amplifier: still bright?',
  },
  'amp-shorted-inside': {
    title: 'Amplifier shorted inside',
    split: 'A lamp in place of the fuse: bright with the amplifier on the lead, dark without it?',
  },
  'fuse-holder-resistive': {
    title: 'Fuse holder without contact',
    split: 'Press the fuse in its holder with one finger: does the lamp flicker?',
  },
  'battery-lug-loose': {
    title: 'Ring at the battery loose',
    split: 'Key off: does a ring on a battery post turn by hand?',
  },
  'amp-ground-open': {
    title: 'Ground of the amplifier open',
    split: 'Red on the amplifier’s ground, black on the battery minus post: near zero, or near the battery?',
  },
  'amp-ground-resistive': {
    title: 'Ground of the amplifier with poor contact',
    split: 'Look under its ground ring: paint, anodising, green?',
  },
  'remote-wire-open': {
    title: 'Remote wire open',
    split: 'Head unit on: volts on the remote terminal, against battery minus?',
  },
  'remote-source-dead': {
    title: 'Remote wire on a dead or wrong feed',
    split: 'Head unit on: volts where the remote wire begins?',
  },
  'remote-volts-low': {
    title: 'Too few volts on the remote wire',
    split: 'Head unit on: the remote terminal within 1 V of the battery?',
  },
  'replaced-unit-adapter-gap': {
    title: 'Adapter of the replaced head unit without the remote wire',
    split: 'Look at both sides of the adapter’s plug: is the remote wire on both?',
  },
  'turn-on-mode-wrong': {
    title: 'Turn-on selector wrong',
    split: 'Read the amplifier’s turn-on selector: does it stand on what is wired?',
  },
  'sense-starved-by-profile': {
    title: 'Listening amplifier that hears too little',
    split: 'Gain down, then turn the volume up step by step: does it wake?',
  },
  'sense-no-half-supply': {
    title: 'Listening amplifier without the DC it waits for',
    split: 'Follow its signal wires: is a converter or a line-level lead in between?',
  },
  'nothing-to-hear': {
    title: 'Rear pairs silent, so the amplifier sleeps',
    split: '400 Hz across a rear pair at the head unit: nothing, while the front pair reads?',
    // A front pair without sound is another complaint.
    notWith: [{ 'which-amp': ['front'] }],
  },
  'amp-input-plug-off': {
    title: 'Signal plug of the amplifier off',
    split: 'Key off, pull the signal plug, push it home until it locks, key on.',
  },
  'amp-body-fuse-open': {
    title: 'Fuse in the amplifier itself open',
    split: 'Key off, pull the small fuses beside its power plug: strips whole?',
  },
  'amp-dead': {
    title: 'Amplifier itself dead',
    split: 'A 55 W lamp across its plus and ground: bright, and within 0.5 V of the battery?',
  },
  'speaker-wire-to-frame': {
    title: 'Speaker wire on the frame',
    split: 'Key off, plugs off, meter on ohms: each speaker wire to bare frame metal, above 100 kΩ?',
  },
  'speaker-pair-shorted': {
    title: 'Speaker run or coil shorted',
    split: 'Key off, plugs off, meter on ohms: does each run read like the others?',
  },
  'amp-output-dc': {
    title: 'Output stage of the amplifier damaged',
    split: 'Key off, all speakers off, key on: is the fault lamp still there?',
  },
  'amp-heat-protect': {
    title: 'Amplifier too hot',
    split: 'Feel its case: too hot to leave your hand there? Does it come back when cooler?',
  },
};

const REAR_TURN_ON = 'rear-amp-turn-on';
const FRONT_TURN_ON = 'front-amp-turn-on';

/**
 * The table for cases about the amplifier of one pair. It is made on bikes whose case is about the rear's wherever the rear
 * has one, so that says what an amplifier does which is switched that way, whatever it drives. Of two amplifiers the one
 * that the case is not about says nothing.
 */
function aboutAmpOf(pair: AmpPair): MadeTable {
  const step = pair === 'front' ? FRONT_TURN_ON : REAR_TURN_ON;
  const suspects = AMP_SIGNS.suspects.flatMap((made) => {
    const { [REAR_TURN_ON]: rear, [FRONT_TURN_ON]: front, ...shows } = made.shows;
    const own = rear ?? (pair === 'front' ? front : undefined);
    return own ? [{ ...made, shows: { ...shows, [step]: own } }] : [];
  });
  return { ...AMP_SIGNS, suspects };
}

const REAR = suspectTable(aboutAmpOf('rear'), AMP_TEXTS);
const FRONT = suspectTable(aboutAmpOf('front'), AMP_TEXTS);

export const ampTable: TableFor = (situation) => (ampPair(situation) === 'front' ? FRONT : REAR);
