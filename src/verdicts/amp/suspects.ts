import { ampPair } from '../../steps/fitted/the-amp.ts';
import type { AmpPair } from '../../steps/fitted/which-amp.ts';
import type { Situation } from '../../steps/step.ts';
import { type Chances, type MadeTable, type SuspectTexts, suspectTable, type TableFor } from '../made-table.ts';
import { AMP_SIGNS } from './made-signs.ts';
import { AMP_AT_TIMES_SIGNS } from './made-signs-at-times.ts';

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

const pickTexts = (...verdicts: readonly string[]): SuspectTexts =>
  Object.fromEntries(
    verdicts.flatMap((verdict) => (AMP_TEXTS[verdict] ? [[verdict, AMP_TEXTS[verdict]] as const] : [])),
  );

/** The same for an amplifier that is on and goes off at times: what fails only then leaves less to read at the stand. */
export const AMP_AT_TIMES_TEXTS: SuspectTexts = {
  ...pickTexts('battery-lug-loose', 'amp-ground-open', 'remote-volts-low', 'turn-on-mode-wrong', 'amp-heat-protect'),
  'fuse-holder-resistive': {
    title: 'Fuse holder that gives way',
    split: 'Lamp across its plus and ground, press the fuse: does the lamp blink? Warm after loud music?',
  },
  'plus-lead-too-thin': {
    title: 'Plus lead too thin',
    split: 'Read its section off the jacket, scratch it: copper all through? Lamp on: volts from post to amplifier?',
  },
  'amp-ground-resistive': {
    title: 'Ground of the amplifier that gives way',
    split: 'Lamp across its plus and ground: red on its ground, black on the minus post, press the ring: steady?',
  },
  'remote-wire-open': {
    title: 'Remote wire that opens when moved',
    split: 'Head unit on, red on the remote terminal: pull gently along the wire. Does it drop?',
  },
  'amp-input-plug-off': {
    title: 'Signal plug that lets go',
    split: 'Key off, pull the signal plug, push it home until it locks. Does it still go off on bumps?',
  },
  'sense-sleeps-in-quiet': {
    title: 'Listening amplifier that falls asleep in quiet music',
    split: 'Phone at full media volume, no call on, tone controls in the middle: does it stay awake when quiet?',
    means: ['call-mode-audio', 'amplified-profile-eq-changes', 'loudness-or-speed-volume', 'phone-tone-changed'],
  },
  'amp-load-too-low': {
    title: 'Too few ohms on one channel',
    split: 'Key off, plugs off, meter on ohms: each run above half of what the amplifier is rated into?',
  },
  'speaker-wire-to-frame': {
    title: 'Speaker wire that touches the frame when moved',
    split: 'Key off, plugs off, meter on ohms to bare frame: move lids, seat and steering. Always above 100 kΩ?',
  },
  'head-unit-dark': {
    title: 'Head unit that goes dark, and the amplifier with it',
    split: 'Watch its screen while it fails: dark at the same moment?',
  },
  'battery-low': {
    title: 'Battery weak, worn or not charged',
    split: 'Charged and rested, engine off, music loud: do the posts fall below 11.5 V? Stop there.',
    means: ['regulator-out-of-range@low', 'stator-phase-lost', 'load-above-idle-output'],
  },
  'regulator-out-of-range': {
    title: 'Charging voltage too high',
    split: 'Outdoors, about 3000 rpm, lamps on: below 15 V at the posts?',
  },
};

const REAR_TURN_ON = 'rear-amp-turn-on';
const FRONT_TURN_ON = 'front-amp-turn-on';

/**
 * Who looks at the lamp sees it lit, or as it was while it failed. Some amplifiers show their fault lamp for too few volts,
 * too, so it speaks against nobody; it makes those rarer who were never seen to show it. Both shares are estimates.
 */
const lampAtTimes = (seen: Chances = {}): Chances => ({ normal: 0.5, fault: 0.05, ...seen });

/**
 * A table for cases about the amplifier of one pair. It is made on bikes whose case is about the rear's wherever the rear
 * has one, so that says what an amplifier does which is switched that way, whatever it drives. Of two amplifiers the one
 * that the case is not about says nothing.
 */
function aboutAmpOf(pair: AmpPair, made: MadeTable): MadeTable {
  const step = pair === 'front' ? FRONT_TURN_ON : REAR_TURN_ON;
  const suspects = made.suspects.flatMap((suspect) => {
    const { [REAR_TURN_ON]: rear, [FRONT_TURN_ON]: front, ...shows } = suspect.shows;
    const own = rear ?? (pair === 'front' ? front : undefined);
    return own ? [{ ...suspect, shows: { ...shows, [step]: own } }] : [];
  });
  return { ...made, suspects };
}

const AT_TIMES: MadeTable = {
  ...AMP_AT_TIMES_SIGNS,
  suspects: AMP_AT_TIMES_SIGNS.suspects.map((made) => {
    const { 'amp-light': lamp, 'amp-signs': _, ...shows } = made.shows;
    return { ...made, shows: { ...shows, 'amp-light': lampAtTimes(lamp) } };
  }),
};

const off = (pair: AmpPair) => suspectTable(aboutAmpOf(pair, AMP_SIGNS), AMP_TEXTS);
const atTimes = (pair: AmpPair) => suspectTable(aboutAmpOf(pair, AT_TIMES), AMP_AT_TIMES_TEXTS);
const TABLES = {
  off: { rear: off('rear'), front: off('front') },
  'at times': { rear: atTimes('rear'), front: atTimes('front') },
} as const;

/** It is on at the stand, or it is known to come back: then another fault may be behind it than if it were off for good. */
function goesOffAtTimes({ facts }: Situation): boolean {
  const says = (step: string, ...options: readonly string[]) => {
    const answer = facts[step];
    return answer !== undefined && 'option' in answer && options.includes(answer.option);
  };
  return (
    says('amp-light', 'normal') ||
    says('amp-signs', 'alive') ||
    says('amp-goes-off', 'bumps', 'running', 'loud', 'hot', 'quiet') ||
    says('recover', 'at-once', 'after-minutes')
  );
}

export const ampTable: TableFor = (situation) => {
  const table = TABLES[goesOffAtTimes(situation) ? 'at times' : 'off'];
  return table[ampPair(situation) === 'front' ? 'front' : 'rear'];
};
