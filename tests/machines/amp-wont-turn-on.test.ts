import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import type { Certainty } from '../../src/verdicts/verdict.ts';
import { type Answers, ride } from '../case/ride.ts';
import { endOf, type Short } from '../journey.ts';

/*
 * What each rider saw, and the verdict that follows: common practice of the trade, no published source. The numbers are
 * worked by hand: copper has 17.241 nΩm (IEC 60028), 8 gauge is 8.37 mm² (ASTM B258), and four channels of 90 W at 72 %
 * efficiency (from memory) take 360 W / 0.72 / 14.2 V = 35.2 A on full bass, a third of that with dense music.
 */

/** One amplifier of 90 W for all, switched by a remote wire: 1.6 m of 8 gauge, 40 A. */
const BY_WIRE: Rig = EXAMPLE_RIGS['frame-fairing'];
const [AMP] = EXAMPLE_RIGS['frame-fairing'].amps;
const BEHIND_REPLACED_UNIT: Rig = { ...BY_WIRE, unitKind: 'replaced' };
const BY_SOUND: Rig = { ...BY_WIRE, amps: [{ ...AMP, turnOn: 'signal', needs: 'unaltered' }] };
const BY_DC: Rig = { ...BY_WIRE, amps: [{ ...AMP, turnOn: 'dc' }] };
const BY_DC_ON_LINE: Rig = { ...BY_WIRE, amps: [{ ...AMP, turnOn: 'dc', input: 'line' }] };
const FRONT_BY_DC: Rig = { ...BY_WIRE, amps: [{ ...AMP, drives: 'front', turnOn: 'dc' }] };
/** A front amplifier on a wire, and one for the rear that hears. */
const TWO_AMPS: Rig = EXAMPLE_RIGS.trunk;

const past = (history: Short, change: Short): Answers => ({ 'amp-history': history, 'last-change': change });
const DARK: Answers = { ...past('stopped', 'nothing'), 'amp-light': 'off' };
const METER: Answers = { 'tools-at-hand': 'meter' };
const NO_METER: Answers = { 'tools-at-hand': 'none', 'what-else': 'nothing' };
const terminals = (batteryV: string, plusV: string, groundV: string): Answers => ({
  'amp-terminals': { batteryV, plusV, groundV },
});
const FED = terminals('12.5', '12.4', '0.02');
const NO_PLUS = terminals('12.5', '0', '0');
const remote = (remoteV: string): Answers => ({ 'remote-volts': { remoteV } });
/** Its wire carries what it should, so its supply is looked at next. */
const TOLD: Answers = { ...DARK, ...METER, ...remote('12.3') };
const FUSE_OPEN: Answers = { ...TOLD, ...NO_PLUS, 'fuse-look': 'blown' };
/** Supply and wire are there while nothing draws current. */
const STILL_OFF: Answers = { ...TOLD, ...FED, 'wakes-when-loud': 'stays-off', 'body-fuse': 'whole' };
/** Nothing wakes it but a jumper. */
const DEAF: Answers = { ...DARK, ...METER, ...FED, 'remote-jumper': 'wakes', 'wakes-when-loud': 'stays-off' };
const lamp = (batteryV: string, ampV: string, plusDropV: string, groundDropV: string): Answers => ({
  'supply-under-load': { batteryV, ampV, plusDropV, groundDropV },
});
const HOLDS = lamp('12.3', '12.24', '0.04', '0.02');
/** It is on at the stand, and goes off at times. */
const atTimes = (when: Short): Answers => ({
  ...past('comes-and-goes', 'nothing'),
  'amp-light': 'normal',
  'amp-goes-off': when,
});
const NO_LEAD_REACTS: Answers = { 'supply-wiggle': 'no-effect', 'what-else': 'nothing' };
const RUNS_WELL: Answers = { 'amp-runs': { leadsOhm: '0.2', lowestOhm: '3.6' } };
/** Loud music, and every reading on the stand is as on a sound bike. */
const SUPPLY_HOLDS: Answers = { ...atTimes('loud'), ...METER, ...FED, ...lamp('12.4', '12.34', '0.04', '0.02') };
const WELL_ON_THE_STAND: Answers = { ...SUPPLY_HOLDS, ...remote('12.3'), ...RUNS_WELL };
const SELECTORS: Answers = { 'amp-switches': 'right' };
const FAULT: Answers = { ...past('stopped', 'fitted'), 'amp-light': 'fault', 'amp-goes-off': 'always' };
const CLEAR_OF_FRAME: Answers = { ...METER, 'amp-wires-to-frame': { lowestOhm: 'OL' } };
const BY_HAND: Answers = { 'tools-at-hand': 'none' };
const LOST_ON_PLUS: Answers = { ...METER, ...terminals('12.5', '11.5', '0.02'), ...lamp('12.3', '9.28', '3', '0.02') };

interface Journey {
  readonly it: string;
  readonly rig: Rig;
  readonly answers: Answers;
  readonly ends: string;
  readonly sure: Certainty;
  readonly numbers?: readonly string[];
  readonly says?: readonly RegExp[];
}

const JOURNEYS: readonly Journey[] = [
  {
    it: 'finds the main fuse open, and no short behind it, with a lamp in its place',
    rig: BY_WIRE,
    answers: { ...FUSE_OPEN, 'fuse-lamp': 'dark' },
    ends: 'main-fuse-open',
    sure: 'proved',
    // 120 W / 0.72 / 14.2 V = 11.7 A; 360 W / 0.72 / 14.2 V = 35.2 A.
    numbers: [
      'Main fuse on 8.37 mm² of copper or more, at most: 40 A',
      'Current with dense loud music: 12 A',
      'Current on full bass: 35 A',
    ],
    says: [/A bigger fuse: it protects the lead/],
  },
  {
    it: 'finds the main fuse open without a meter when one new fuse of the same rating brings the lamp back',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': 'blown',
      'fuse-lamp': null,
      'spare-fuse': 'wakes',
    },
    ends: 'main-fuse-open',
    sure: 'proved',
  },
  {
    it: 'says only that the fuse is likely the matter when nobody could try what is behind it',
    rig: BY_WIRE,
    answers: { ...FUSE_OPEN, 'fuse-lamp': null, 'spare-fuse': null },
    ends: 'main-fuse-open',
    sure: 'likely',
  },
  {
    it: 'finds the plus lead on the frame when the lamp stays bright without the amplifier',
    rig: BY_WIRE,
    answers: { ...FUSE_OPEN, 'fuse-lamp': 'bright', 'lead-off-amp': 'bright' },
    ends: 'wire-chafed',
    sure: 'proved',
    says: [/touches the frame/, /beside a fuel tank/],
  },
  {
    it: 'finds the plus lead open when the fuse is good on both sides and nothing reaches the amplifier',
    rig: BY_WIRE,
    answers: { ...TOLD, ...NO_PLUS, 'fuse-look': 'whole', 'fuse-sides': { inV: '12.5', outV: '12.5' } },
    ends: 'wire-chafed',
    sure: 'proved',
    says: [/open between the fuse and the amplifier/],
  },
  {
    it: 'blames the amplifier when the lamp in the fuse’s place goes dark as soon as it is off the lead',
    rig: BY_WIRE,
    answers: { ...FUSE_OPEN, 'fuse-lamp': 'bright', 'lead-off-amp': 'dark' },
    ends: 'amp-shorted-inside',
    sure: 'proved',
    says: [/each speaker run in ohms and to the frame/],
  },
  {
    it: 'stops at two causes when a new fuse opens at once and there is no lamp to tell them apart',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': 'blown',
      'fuse-lamp': null,
      'spare-fuse': 'opens',
    },
    ends: 'fuse-opens-again',
    sure: 'short list',
    says: [/A third fuse, and never a bigger one/],
  },
  {
    it: 'blames the holder when the fuse is whole and its amplifier side is dead',
    rig: BY_WIRE,
    answers: { ...TOLD, ...NO_PLUS, 'fuse-look': 'whole', 'fuse-sides': { inV: '12.5', outV: '0' } },
    ends: 'fuse-holder-resistive',
    sure: 'likely',
    // 1.16 × 17.241 nΩm × 1.6 m / 8.37 mm² + 6 mΩ = 9.8 mΩ, at the 5 A of the lamp.
    numbers: ['Lost on the plus way with a 55 W lamp, healthy: below 0.049 V'],
  },
  {
    it: 'blames the holder by a finger on it, without a tool, on a bike where the amplifier comes and goes',
    rig: BY_WIRE,
    answers: { ...DARK, ...NO_METER, 'amp-history': 'comes-and-goes', 'supply-wiggle': 'holder' },
    ends: 'fuse-holder-resistive',
    sure: 'proved',
  },
  {
    it: 'finds the holder by what it loses with the lamp on',
    rig: BY_WIRE,
    answers: { ...DARK, ...remote('12.3'), ...LOST_ON_PLUS, 'plus-path': { ringV: '0.01', holderV: '2.95' } },
    ends: 'fuse-holder-resistive',
    sure: 'proved',
    // 3 V / 5 A; (12.3 V − 10.5 V) / 0.6 Ω.
    numbers: ['So its resistance is: 0.6 Ω', 'It may cut out from a current of: 3 A'],
  },
  {
    it: 'finds the ring at the battery when not even the fuse gets any volts',
    rig: BY_WIRE,
    answers: {
      ...TOLD,
      'last-change': 'battery',
      ...NO_PLUS,
      'fuse-look': 'whole',
      'fuse-sides': { inV: '0', outV: '0' },
    },
    ends: 'battery-lug-loose',
    sure: 'likely',
    says: [/Minus ring off first/],
  },
  {
    it: 'proves the ring at the battery when it alone loses the volts under the lamp',
    rig: BY_WIRE,
    answers: { ...DARK, ...remote('12.3'), ...LOST_ON_PLUS, 'plus-path': { ringV: '2.95', holderV: '0.02' } },
    ends: 'battery-lug-loose',
    sure: 'proved',
  },
  {
    it: 'finds the plus lead too thin when neither ring nor holder loses the volts, and says how thick it must be',
    rig: BY_WIRE,
    answers: {
      ...past('comes-and-goes', 'fitted'),
      'amp-light': 'normal',
      'amp-goes-off': 'loud',
      ...METER,
      ...FED,
      ...lamp('12.3', '11.78', '0.5', '0.02'),
      'plus-path': { ringV: '0.01', holderV: '0.03' },
    },
    ends: 'plus-lead-too-thin',
    sure: 'proved',
    // 17.241 nΩm × 1.6 m × 35.2 A / 0.25 V = 3.9 mm² of copper alone.
    numbers: ['Section for 1.6 m, at least: 3.9 mm²'],
  },
  {
    it: 'finds the ground open when its terminal hangs up at the battery’s volts',
    rig: BY_WIRE,
    answers: { ...TOLD, ...terminals('12.5', '12.5', '12.3') },
    ends: 'amp-ground-open',
    sure: 'proved',
    numbers: ['Its ground against battery minus, as read: 12.3 V'],
    says: [/A fuse in the ground lead hides the fault/],
  },
  {
    it: 'finds a ground that only gives way under the lamp',
    rig: BY_WIRE,
    answers: {
      ...past('comes-and-goes', 'nothing'),
      'amp-light': 'normal',
      'amp-goes-off': 'loud',
      ...METER,
      ...FED,
      ...lamp('12.3', '9.26', '0.04', '3'),
    },
    ends: 'amp-ground-resistive',
    sure: 'proved',
    numbers: ['So its resistance is: 0.6 Ω'],
  },
  {
    it: 'finds the ground without a meter when a second lead beside it brings the lamp back',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': 'whole',
      'spare-fuse': 'holds',
      'remote-jumper': 'dead',
      'body-fuse': 'whole',
      'temporary-leads': 'ground',
    },
    ends: 'amp-ground-resistive',
    sure: 'likely',
    says: [/Ground open/, /pull gently at both ends of its ground lead/],
  },
  {
    it: 'finds the remote wire open when it has volts at its start and none at its end',
    rig: BY_WIRE,
    answers: { ...DARK, ...METER, ...remote('0.1'), 'what-else': 'nothing', 'remote-source': { startV: '12.4' } },
    ends: 'remote-wire-open',
    sure: 'proved',
    numbers: ['Remote terminal when on, healthy: above 11.6 V', 'Amplifiers switch on above: 7 to 9 V'],
  },
  {
    it: 'finds the remote wire open with an LED lamp instead of a meter',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': 'whole',
      'spare-fuse': null,
      'remote-jumper': 'wakes',
      'remote-lamp': 'dark',
      'remote-start-lamp': 'lit',
    },
    ends: 'remote-wire-open',
    sure: 'proved',
  },
  {
    it: 'finds the feed dead when the remote wire has no volts even where it begins',
    rig: BY_WIRE,
    answers: { ...DARK, ...METER, ...remote('0'), 'what-else': 'nothing', 'remote-source': { startV: '0' } },
    ends: 'remote-source-dead',
    sure: 'proved',
    says: [/accessory fuse of that feed first/],
  },
  {
    it: 'finds the wrong feed, without any tool, when another position of the key wakes it',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      ...past('never', 'fitted'),
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': 'whole',
      'spare-fuse': null,
      'remote-jumper': null,
      'remote-lamp': null,
      'key-positions': 'some',
    },
    ends: 'remote-source-dead',
    sure: 'likely',
    says: [/does not follow the head unit/],
  },
  {
    it: 'finds the wire on the frame that a jumper brings to light on an amplifier that nothing woke',
    rig: BY_DC,
    answers: {
      ...DARK,
      ...METER,
      ...FED,
      'remote-jumper': 'fault',
      'amp-wires-to-frame': { lowestOhm: '0.4' },
    },
    ends: 'speaker-wire-to-frame',
    sure: 'proved',
  },
  {
    it: 'finds the wire on the frame of an amplifier that shows its fault lamp as soon as it is turned up',
    rig: BY_WIRE,
    answers: { ...TOLD, ...FED, 'wakes-when-loud': 'fault', 'amp-wires-to-frame': { lowestOhm: '0.4' } },
    ends: 'speaker-wire-to-frame',
    sure: 'proved',
  },
  {
    it: 'lists what a listening amplifier may protect itself from when it was turned up and nothing could be measured',
    rig: BY_SOUND,
    answers: { ...DARK, ...NO_METER, 'wakes-when-loud': 'fault' },
    ends: 'amp-output-dc',
    sure: 'short list',
    says: [/A speaker run that is shorted, or too few ohms/, /Heat/, /Supply that is too low or too high/],
  },
  {
    it: 'does not call a listening amplifier deaf before its supply was loaded: a jumper wakes it without music',
    rig: BY_DC,
    answers: {
      ...DARK,
      ...METER,
      ...FED,
      'remote-jumper': 'wakes',
      'input-plug': 'no-change',
      'between-look': 'direct',
      ...SELECTORS,
      'sense-dc': { plusV: '6.2', minusV: '6.2' },
    },
    ends: 'amp-dead',
    sure: 'likely',
    says: [/A supply that gives way under load/],
  },
  {
    it: 'finds too few volts on the remote wire',
    rig: BY_WIRE,
    answers: { ...DARK, ...METER, ...remote('5.8') },
    ends: 'remote-volts-low',
    sure: 'proved',
    numbers: ['Remote terminal, as read: 5.8 V'],
    says: [/dimmed lamp feed/],
  },
  {
    it: 'finds the adapter of a replaced head unit without a pin for the remote wire',
    rig: BEHIND_REPLACED_UNIT,
    answers: {
      ...DARK,
      'last-change': 'unit',
      ...METER,
      ...remote('0'),
      'what-else': 'nothing',
      'remote-source': { startV: '12.4' },
      'adapter-look': 'gap',
    },
    ends: 'replaced-unit-adapter-gap',
    sure: 'proved',
  },
  {
    it: 'finds a remote wire that never goes off behind a battery that is empty each morning',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      'last-change': 'fitted',
      ...METER,
      ...remote('11'),
      ...terminals('11.2', '11.1', '0.02'),
      'remote-key-off': { remoteV: '11.9' },
    },
    ends: 'remote-on-permanent',
    sure: 'proved',
    // 28 Ah × 0.5 / 0.9 A.
    numbers: ['It takes half the battery in about: 16 hours'],
  },
  {
    it: 'finds the battery nearly empty, and does not sell an amplifier for it',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      ...METER,
      ...remote('10'),
      ...terminals('10.1', '10.0', '0.02'),
      'remote-key-off': { remoteV: '0' },
    },
    ends: 'battery-low',
    sure: 'proved',
    // 10.1 V − 20 mΩ (from memory) × 11.7 A.
    numbers: [
      'And pulls it down to about: 9.87 V',
      'Battery, as read: 10.1 V',
      'It goes off below, at its own terminals: 9.0 to 10.5 V',
    ],
    says: [/An amplifier, before the battery is full/],
  },
  {
    it: 'suspects the battery without a meter when the whole bike is weak and no joint reacts',
    rig: BY_WIRE,
    answers: { ...DARK, ...NO_METER, 'what-else': 'bike', 'supply-wiggle': 'no-effect' },
    ends: 'battery-low',
    sure: 'short list',
    says: [/nobody has read them yet/, /^(?!.*, as read)/],
  },
  {
    it: 'finds a charging voltage at which amplifiers switch off to save themselves',
    rig: BY_WIRE,
    answers: { ...FAULT, ...CLEAR_OF_FRAME, 'speakers-unplugged': 'stays', ...terminals('16.4', '16.3', '0.02') },
    ends: 'regulator-out-of-range',
    sure: 'likely',
    numbers: ['Healthy at 3000 rpm: 13.8 to 14.7 V'],
  },
  {
    it: 'finds the turn-on selector on sensing though a good remote wire is fitted',
    rig: BY_WIRE,
    answers: { ...TOLD, ...FED, 'wakes-when-loud': 'wakes' },
    ends: 'turn-on-mode-wrong',
    sure: 'likely',
    numbers: ['The remote wire that it does not look at carries: 12.3 V'],
    says: [/a remote wire is fitted/],
  },
  {
    it: 'finds the turn-on selector on wire though none is fitted',
    rig: BY_SOUND,
    answers: { ...DEAF, 'input-plug': 'no-change', 'amp-switches': 'turn-on' },
    ends: 'turn-on-mode-wrong',
    sure: 'proved',
    says: [/no remote wire is fitted/],
  },
  {
    it: 'finds a listening amplifier starved by a reflash, and offers the way back to the full level',
    rig: BY_SOUND,
    answers: { ...DARK, ...NO_METER, 'last-change': 'reflash', 'wakes-when-loud': 'wakes' },
    ends: 'sense-starved-by-profile',
    sure: 'likely',
    // √(1 W × 4 Ω) = 2 V; 7 dB less is 0.45 times.
    numbers: ['One watt at the head unit, unaltered: 2 V', 'The same volume step with an amplified profile: 0.89 V'],
    says: [/have the full level and the bass boost put back/, /The wire wakes it; it does not bring back the level\./],
  },
  {
    it: 'offers no way back to a level that nobody lowered: it was never reflashed and nothing was read',
    rig: BY_SOUND,
    answers: { ...DARK, ...NO_METER, 'last-change': 'battery', 'wakes-when-loud': 'wakes' },
    ends: 'sense-starved-by-profile',
    sure: 'likely',
    says: [/^(?!.*put back).*The wire wakes it; it does not bring back the level/s],
  },
  {
    it: 'offers the way back where the level was read to be under what its papers ask for',
    rig: BY_SOUND,
    answers: {
      ...DEAF,
      'remote-jumper': 'no-terminal',
      'input-plug': 'no-change',
      ...SELECTORS,
      'meter-digit': '0.01',
      'sense-level': { usualV: '0.28', loudV: '2.4', papersV: '0.5' },
    },
    ends: 'sense-starved-by-profile',
    // Too little is read. A fader that was turned down leaves as little as a lowered profile.
    sure: 'likely',
    numbers: ['It hears at your usual volume: 0.28 V', 'It wakes above: 0.5 V'],
    says: [/put back/, /The fader or a rear control turned down/],
  },
  {
    it: 'finds the converter that keeps back the DC an amplifier waits for, without asking it to be turned up',
    rig: BY_DC,
    answers: {
      ...DARK,
      ...past('never', 'fitted'),
      ...METER,
      ...FED,
      'remote-jumper': 'wakes',
      'input-plug': 'no-change',
      'between-look': 'box',
    },
    ends: 'sense-no-half-supply',
    sure: 'likely',
    // 0.40 and 0.55 of 12.5 V.
    numbers: ['On each wire of a live speaker pair: 5.0 to 6.9 V'],
    says: [/DC fed into an input/],
  },
  {
    it: 'is sure of the missing DC where nobody could see the leads, and my bike says that a line-level lead feeds it',
    rig: BY_DC_ON_LINE,
    answers: {
      ...DARK,
      ...past('never', 'fitted'),
      ...METER,
      ...FED,
      'remote-jumper': 'wakes',
      'input-plug': 'no-change',
      'between-look': null,
      ...SELECTORS,
      'sense-dc': { plusV: '0', minusV: '0' },
    },
    ends: 'sense-no-half-supply',
    sure: 'proved',
  },
  {
    it: 'reads ohms and loads the supply, and blames no pair and no load that reads well, when it trips only when loud',
    rig: BY_WIRE,
    answers: {
      ...FAULT,
      'amp-goes-off': 'loud',
      ...METER,
      ...CLEAR_OF_FRAME,
      'speakers-unplugged': 'clears',
      'amp-runs': { leadsOhm: '0.2', lowestOhm: '3.6' },
      'one-by-one': 'together',
      ...lamp('12.3', '9.28', '3', '0.02'),
      'plus-path': { ringV: '0.01', holderV: '2.9' },
    },
    ends: 'fuse-holder-resistive',
    sure: 'proved',
  },
  {
    it: 'says that it held while it was tested, and what to read while it fails, where readings cleared everybody',
    rig: BY_WIRE,
    answers: { ...atTimes('bumps'), ...NO_LEAD_REACTS, ...CLEAR_OF_FRAME, ...FED, ...HOLDS },
    ends: 'amp-short-list',
    sure: 'short list',
    says: [/It held while you tested/, /read its plus, its ground and, if a wire switches it, its remote terminal/],
  },
  {
    it: 'thinks of the lost ground where a line-level plug moves the lamp of one on a wire',
    rig: { ...BY_WIRE, amps: [{ ...AMP, input: 'line' }] },
    answers: { ...atTimes('bumps'), 'supply-wiggle': 'input' },
    ends: 'amp-ground-resistive',
    sure: 'likely',
    says: [/the shields carry its current/, /Ground open/],
  },
  {
    it: 'thinks of a tired battery first where all reads well on the stand and it goes off when loud',
    rig: BY_WIRE,
    answers: WELL_ON_THE_STAND,
    ends: 'amp-short-list',
    sure: 'short list',
    says: [/"what":"Likeliest: battery weak/, /^(?!.*It held)/],
  },
  {
    it: 'keeps those who can make it dip, and says nothing of having held, while nobody has read them',
    rig: BY_WIRE,
    answers: { ...atTimes('loud'), ...BY_HAND, 'supply-wiggle': 'no-effect', 'temporary-leads': 'neither' },
    ends: 'amp-short-list',
    sure: 'short list',
    says: [/^(?!.*It held)/, /Battery weak, worn or not charged/, /Too few volts on the remote wire/, /Too few ohms/],
  },
  {
    it: 'finds too few volts on the wire of one that goes off when loud, though plus and ground hold',
    rig: BY_WIRE,
    answers: { ...SUPPLY_HOLDS, ...remote('6') },
    ends: 'remote-volts-low',
    sure: 'proved',
  },
  {
    it: 'finds two speakers side by side on one channel, which trip it only when loud',
    rig: BY_WIRE,
    answers: { ...WELL_ON_THE_STAND, 'amp-runs': { leadsOhm: '0.2', lowestOhm: '1.8' } },
    ends: 'amp-load-too-low',
    sure: 'likely',
    numbers: ['Lowest run, less your leads: 1.6 Ω'],
    says: [/A shorted run or coil/],
  },
  {
    // 12.5 V less 12.1 V; a sound battery of 0.02 Ω (from memory) loses 5 A × 0.02 Ω = 0.1 V.
    it: 'finds a battery that gives way under the lamp, though it is not empty and its leads are good',
    rig: BY_WIRE,
    answers: { ...WELL_ON_THE_STAND, ...lamp('12.1', '12.04', '0.04', '0.02') },
    ends: 'battery-low',
    sure: 'likely',
    // 0.4 V / 5 A = 0.08 Ω; full bass of 360 W / 0.72 / 14.2 V = 35.2 A pulls 12.5 V to 9.7 V.
    numbers: ['Lost in the battery: 0.4 V', 'A sound one loses: about 0.1 V', 'And pulls it down to about: 9.68 V'],
    says: [/gives way when something draws/, /^(?!.*never goes off)/],
  },
  {
    // 1.6 m of 8 gauge and its joints: 17.241 nΩm × 1.16 × 1.6 m / 8.37 mm² + 6 mΩ = 9.8 mΩ, 0.05 V at 5 A.
    it: 'lists the parts of a plus way that is only worn, and proves none of them',
    rig: BY_WIRE,
    answers: {
      ...WELL_ON_THE_STAND,
      ...lamp('12.4', '12.26', '0.12', '0.02'),
      'plus-path': { ringV: '0.01', holderV: '0.08' },
    },
    ends: 'fuse-holder-resistive',
    sure: 'short list',
    says: [/The plus lead too thin or half broken/, /A loose ring at the battery/, /A load that is too heavy/],
  },
  {
    // 0.19 V / 5 A = 38 mΩ.
    it: 'says of a ground that is only worn that it is not the reason by itself, and lists the load',
    rig: BY_WIRE,
    answers: { ...WELL_ON_THE_STAND, ...lamp('12.4', '12.15', '0.06', '0.19') },
    ends: 'amp-ground-resistive',
    sure: 'short list',
    numbers: ['So its resistance is: 38 mΩ'],
    says: [
      /By itself it would not switch the amplifier off/,
      /A load that is too heavy/,
      /^(?!.*when the ground lead is moved)/,
    ],
  },
  {
    it: 'sends whoever has one suspect left to the check that shows it, and calls it unseen',
    rig: BY_WIRE,
    answers: { ...atTimes('bumps'), ...NO_LEAD_REACTS, ...BY_HAND, 'temporary-leads': null, 'rings-look': 'tight' },
    ends: 'amp-short-list',
    sure: 'short list',
    says: [/Nobody has seen this one yet/, /Do the check below before anything else/, /touches the frame when moved/],
  },
  {
    it: 'finds the contact that reacts to a finger where it goes off on bumps',
    rig: BY_WIRE,
    answers: { ...atTimes('bumps'), 'supply-wiggle': 'holder' },
    ends: 'fuse-holder-resistive',
    sure: 'proved',
  },
  {
    it: 'asks what else fails on bumps, and finds a head unit that goes dark and takes the amplifier with it',
    rig: BY_WIRE,
    answers: { ...atTimes('bumps'), 'supply-wiggle': 'no-effect', 'what-else': 'unit' },
    ends: 'head-unit-dark',
    sure: 'short list',
    says: [/the head unit itself goes dark/, /push each home/],
  },
  {
    it: 'thinks of the posts where the whole bike goes weak on bumps, though no ring reacted to a finger',
    rig: BY_WIRE,
    answers: { ...atTimes('bumps'), 'supply-wiggle': 'no-effect', 'what-else': 'bike' },
    ends: 'battery-lug-loose',
    sure: 'likely',
    says: [/What all of it shares is the battery posts/],
  },
  {
    it: 'thinks of the feed that its wire shares where a socket goes off on bumps with it',
    rig: BY_WIRE,
    answers: { ...atTimes('bumps'), 'supply-wiggle': 'no-effect', 'what-else': 'accessories' },
    ends: 'remote-source-dead',
    sure: 'likely',
    says: [/gives way at times/, /goes off with it: they share a feed/, /^(?!.*carries no volts)/],
  },
  {
    it: 'finds a speaker wire that touches the frame on bumps where no lead of the supply reacts',
    rig: BY_WIRE,
    answers: { ...atTimes('bumps'), ...NO_LEAD_REACTS, ...METER, 'amp-wires-to-frame': { lowestOhm: '0.3' } },
    ends: 'speaker-wire-to-frame',
    sure: 'proved',
    says: [/It goes off on bumps/],
  },
  {
    it: 'has the charging read where it goes off with the engine running, loud or not',
    rig: BY_WIRE,
    answers: atTimes('running'),
    ends: 'regulator-out-of-range',
    sure: 'likely',
    says: [/Charging is what changes when the engine starts/, /Outdoors, about 3000 rpm/, /^(?!.*Battery, as read)/],
  },
  {
    it: 'reads the selector of one with a wire that falls asleep in quiet passages',
    rig: BY_WIRE,
    answers: { ...atTimes('quiet'), 'amp-switches': 'turn-on' },
    ends: 'turn-on-mode-wrong',
    sure: 'proved',
    says: [/It goes off in quiet passages/],
  },
  {
    it: 'presses its leads where it comes and goes and nobody knows when',
    rig: BY_WIRE,
    answers: {
      ...past('comes-and-goes', 'nothing'),
      'amp-light': 'normal',
      'amp-goes-off': null,
      'supply-wiggle': 'remote',
    },
    ends: 'remote-wire-open',
    sure: 'proved',
  },
  {
    it: 'asks for the lamp again where one that was told to be dark comes and goes, and turns out to be on',
    rig: BY_WIRE,
    answers: { ...TOLD, 'amp-history': 'comes-and-goes', ...FED, 'wakes-when-loud': 'awake' },
    ends: 'amp-is-on',
    sure: 'short list',
    says: [/Change the answer “Amplifier lamp”/, /^(?!.*Go on with)/],
  },
  {
    it: 'thinks of the fuse that a remote wire shares when another accessory died with it, and proves nothing without a meter',
    rig: BY_WIRE,
    answers: { ...DARK, ...BY_HAND, 'what-else': 'accessories' },
    ends: 'remote-source-dead',
    sure: 'likely',
    says: [/they share a feed or a fuse/],
  },
  {
    it: 'thinks of silent rear pairs, of settings and of a deaf amplifier when a jumper wakes it and nobody has a meter',
    rig: TWO_AMPS,
    answers: {
      'which-amp': 'rear',
      ...DARK,
      ...NO_METER,
      'wakes-when-loud': 'stays-off',
      'supply-wiggle': 'no-effect',
      'fuse-look': 'whole',
      'spare-fuse': 'holds',
      'remote-jumper': 'wakes',
      'input-plug': 'no-change',
      ...SELECTORS,
      'temporary-leads': 'neither',
    },
    ends: 'nothing-to-hear',
    sure: 'short list',
    says: [
      /The fader or a rear control turned down/,
      /A wire of its signal plug open/,
      /The part of it that listens is dead/,
    ],
  },
  {
    it: 'thinks of the front pair, and of a wire of it on metal, when it is the front amplifier that a jumper alone wakes',
    rig: FRONT_BY_DC,
    answers: {
      ...DARK,
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': 'whole',
      'spare-fuse': 'holds',
      'remote-jumper': 'wakes',
      'input-plug': 'no-change',
      'between-look': 'direct',
      ...SELECTORS,
      'temporary-leads': 'neither',
    },
    ends: 'amp-input-plug-off',
    sure: 'likely',
    says: [/400 Hz across the front pair/, /a wire of the pair touches metal/],
  },
  {
    it: 'has the supply loaded when a jumper wakes one whose wire carries enough and whose selector is right',
    rig: BY_WIRE,
    answers: {
      ...TOLD,
      ...FED,
      'wakes-when-loud': null,
      'remote-jumper': 'wakes',
      ...SELECTORS,
      'supply-under-load': { batteryV: '12.3', ampV: '9.28', plusDropV: '3', groundDropV: '0.02' },
      'plus-path': { ringV: '0.01', holderV: '2.9' },
    },
    ends: 'fuse-holder-resistive',
    sure: 'proved',
  },
  {
    it: 'takes a dark amplifier that nobody can name for one with a wire first, and reads that wire',
    rig: TWO_AMPS,
    answers: {
      'which-amp': null,
      ...DARK,
      ...METER,
      ...remote('0'),
      'what-else': 'nothing',
      'remote-source': { startV: '0' },
    },
    ends: 'remote-source-dead',
    sure: 'proved',
  },
  {
    it: 'clears the amplifier that sleeps because nothing is on its inputs, and hands over to the rear',
    rig: TWO_AMPS,
    answers: {
      'which-amp': 'rear',
      ...DEAF,
      ...past('never', 'fitted'),
      'input-plug': 'no-change',
      ...SELECTORS,
      'meter-digit': '0.01',
      'sense-level': { usualV: '0', loudV: '0' },
      'what-else': 'nothing',
    },
    ends: 'nothing-to-hear',
    sure: 'likely',
    says: [/A remote wire: it would wake, and still have nothing to play/],
  },
  {
    it: 'finds the signal plug when pushing it home wakes the amplifier',
    rig: BY_SOUND,
    answers: { ...DEAF, 'input-plug': 'cured' },
    ends: 'amp-input-plug-off',
    sure: 'proved',
  },
  {
    it: 'finds the signal lost between a head unit that sends it and an amplifier that hears nothing',
    rig: BY_DC,
    answers: {
      ...DARK,
      ...METER,
      ...FED,
      'remote-jumper': 'wakes',
      'input-plug': 'no-change',
      'between-look': 'direct',
      ...SELECTORS,
      'sense-dc': { plusV: '0', minusV: '0' },
      'meter-digit': '0.01',
      'rear-pair': { frontV: '2.00', leftV: '1.9', rightV: '2.0' },
    },
    ends: 'amp-input-plug-off',
    sure: 'likely',
  },
  {
    it: 'knows an amplifier that falls asleep in quiet passages',
    rig: BY_SOUND,
    answers: { ...past('comes-and-goes', 'nothing'), 'amp-light': 'normal', 'amp-goes-off': 'quiet' },
    ends: 'sense-sleeps-in-quiet',
    sure: 'likely',
  },
  {
    it: 'looks at the fuse in the amplifier before it blames the amplifier',
    rig: BY_WIRE,
    answers: { ...STILL_OFF, 'body-fuse': 'blown' },
    ends: 'amp-body-fuse-open',
    sure: 'proved',
  },
  {
    it: 'blames the amplifier only when its wire, its fuses and its supply under the lamp are all good',
    rig: BY_WIRE,
    answers: {
      ...TOLD,
      ...terminals('12.5', '11.8', '0.02'),
      ...HOLDS,
      'wakes-when-loud': 'stays-off',
      'body-fuse': 'whole',
    },
    ends: 'amp-dead',
    sure: 'proved',
    says: [/A reflash: it does not start an amplifier/],
  },
  {
    it: 'calls an amplifier deaf that hears enough and wakes only by a jumper, and puts it on a wire',
    rig: BY_SOUND,
    answers: {
      ...DEAF,
      'input-plug': 'no-change',
      ...SELECTORS,
      'meter-digit': '0.01',
      'sense-level': { usualV: '1.6', loudV: '4' },
    },
    ends: 'amp-dead',
    sure: 'likely',
    says: [/alive, and deaf/, /A new amplifier, before it was tried on a wire/],
  },
  {
    it: 'finds a speaker wire on the frame behind a fault lamp, before anything is started again',
    rig: BY_WIRE,
    answers: { ...FAULT, ...METER, 'amp-wires-to-frame': { lowestOhm: '0.4' } },
    ends: 'speaker-wire-to-frame',
    sure: 'proved',
    numbers: ['Lowest to the frame, as read: 0.4 Ω'],
  },
  {
    it: 'finds a run whose wires touch each other',
    rig: BY_WIRE,
    answers: {
      ...FAULT,
      ...METER,
      'amp-wires-to-frame': null,
      'speakers-unplugged': 'clears',
      'amp-runs': { leadsOhm: '0.2', lowestOhm: '0.5' },
    },
    ends: 'speaker-pair-shorted',
    sure: 'proved',
    numbers: ['Lowest run, less your leads: 0.3 Ω', 'One coil, cold: 2.8 to 3.8 Ω'],
  },
  {
    it: 'finds the run that trips it without a meter, one plug at a time',
    rig: BY_WIRE,
    answers: { ...FAULT, ...BY_HAND, 'speakers-unplugged': 'clears', 'one-by-one': 'one' },
    ends: 'run-trips-it',
    sure: 'likely',
  },
  {
    it: 'finds too many speakers on a channel when no single one trips it',
    rig: BY_WIRE,
    answers: { ...FAULT, ...BY_HAND, 'speakers-unplugged': 'clears', 'one-by-one': 'together' },
    ends: 'amp-load-too-low',
    sure: 'likely',
    numbers: ['The amplifier is rated into: 4 Ω', 'Two such speakers side by side: 2 Ω'],
  },
  {
    it: 'finds DC on an output behind a fault lamp whose speakers nobody can unplug',
    rig: BY_WIRE,
    answers: { ...FAULT, ...CLEAR_OF_FRAME, 'speakers-unplugged': null, ...FED, 'amp-dc': { highestV: '6' } },
    ends: 'amp-output-dc',
    sure: 'proved',
    // 6² V² over the coldest 4 Ω coil, 2.8 Ω.
    numbers: ['Heat that it would leave in a coil: 13 W'],
  },
  {
    it: 'suspects the output stage when speakers and heat are cleared and it still protects itself, and has the supply checked first',
    rig: BY_WIRE,
    answers: { ...FAULT, ...CLEAR_OF_FRAME, 'speakers-unplugged': 'stays', ...FED },
    ends: 'amp-output-dc',
    sure: 'likely',
  },
  {
    it: 'finds two wires of a run together by elimination, and has the ohms read first of all',
    rig: BY_WIRE,
    answers: { ...FAULT, ...CLEAR_OF_FRAME, 'speakers-unplugged': 'clears' },
    ends: 'speaker-pair-shorted',
    sure: 'likely',
    says: [/"fix":\["Plugs off, meter on ohms/, /A load that is too heavy/],
  },
  {
    it: 'finds the short of an amplifier that nothing woke, by the fault lamp that a jumper brings',
    rig: BY_DC,
    answers: {
      ...DARK,
      ...METER,
      ...FED,
      'remote-jumper': 'fault',
      'amp-wires-to-frame': { lowestOhm: 'OL' },
      'amp-runs': { leadsOhm: '0.2', lowestOhm: '0.5' },
    },
    ends: 'speaker-pair-shorted',
    sure: 'proved',
  },
  {
    it: 'looks for a weak contact where a fault lamp goes dark without the speakers',
    rig: BY_WIRE,
    answers: {
      ...FAULT,
      ...CLEAR_OF_FRAME,
      'speakers-unplugged': 'dark',
      ...FED,
      ...lamp('12.3', '9.26', '0.04', '3'),
    },
    ends: 'amp-ground-resistive',
    sure: 'proved',
  },
  {
    it: 'has the lamp put on its terminals before anybody buys an amplifier, where they were read without load',
    rig: BY_WIRE,
    answers: STILL_OFF,
    ends: 'amp-dead',
    sure: 'likely',
    says: [/"fix":\["The lamp/, /A supply that gives way under load/, /An amplifier, before the lamp was on/],
  },
  {
    it: 'hands an amplifier that listens and is on by now back to the rear',
    rig: BY_SOUND,
    answers: { ...DEAF, 'wakes-when-loud': 'awake' },
    ends: 'amp-is-on',
    sure: 'short list',
  },
  {
    it: 'knows heat by the minutes it takes to come back',
    rig: BY_WIRE,
    answers: { ...FAULT, 'amp-goes-off': null, recover: 'after-minutes' },
    ends: 'amp-heat-protect',
    sure: 'proved',
    // A third of 360 W at 72 %: 120 W × 0.28 / 0.72.
    numbers: ['Heat it has to get rid of with dense loud music: 47 W'],
  },
  {
    it: 'follows a lamp that is on now and goes off with the heat',
    rig: BY_WIRE,
    answers: { ...past('comes-and-goes', 'nothing'), 'amp-light': 'normal', 'amp-goes-off': 'hot' },
    ends: 'amp-heat-protect',
    sure: 'likely',
  },
  {
    it: 'leaves the amplifier alone when the head unit is dark, too',
    rig: BY_WIRE,
    answers: { ...DARK, ...METER, ...remote('0'), 'what-else': 'unit' },
    ends: 'head-unit-dark',
    sure: 'short list',
  },
  {
    it: 'leaves the amplifier alone when it is on and only silent',
    rig: BY_WIRE,
    answers: { ...past('stopped', 'nothing'), 'amp-light': 'normal', 'amp-goes-off': 'stays-on' },
    ends: 'amp-is-on',
    sure: 'short list',
  },
  {
    it: 'takes a click and a warm case for an amplifier that is on where no lamp can be seen',
    rig: BY_WIRE,
    answers: { ...past('stopped', 'nothing'), 'amp-light': null, 'amp-signs': 'alive', 'amp-goes-off': 'stays-on' },
    ends: 'amp-is-on',
    sure: 'short list',
  },
  {
    it: 'thinks of heat besides the output stage when nobody saw how the amplifier comes back',
    rig: BY_WIRE,
    answers: {
      ...FAULT,
      'amp-goes-off': null,
      recover: null,
      ...CLEAR_OF_FRAME,
      'speakers-unplugged': 'stays',
      ...FED,
    },
    ends: 'amp-output-dc',
    sure: 'likely',
    says: [/^(?!.*from itself).*half an hour/s],
  },
  {
    it: 'thinks of an amplifier that cooled meanwhile when it wakes in another position and nobody saw its lamp',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      'amp-light': null,
      'amp-signs': 'dead',
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': 'whole',
      'spare-fuse': null,
      'remote-jumper': null,
      'remote-lamp': null,
      'key-positions': 'some',
    },
    ends: 'remote-source-dead',
    sure: 'likely',
    says: [/Amplifier too hot/],
  },
  {
    it: 'takes the speakers off before it blames an amplifier whose lamp nobody sees, and finds their wire on the frame',
    rig: BY_WIRE,
    answers: {
      ...STILL_OFF,
      'amp-light': null,
      'amp-signs': 'dead',
      'speakers-unplugged': 'clears',
      'amp-wires-to-frame': { lowestOhm: '0.4' },
    },
    ends: 'speaker-wire-to-frame',
    sure: 'proved',
  },
  {
    it: 'is not sure of a dead amplifier whose lamp nobody sees, though it stays off without speakers',
    rig: BY_WIRE,
    answers: { ...STILL_OFF, 'amp-light': null, 'amp-signs': 'dead', 'speakers-unplugged': 'stays' },
    ends: 'amp-dead',
    sure: 'likely',
    says: [/^(?!.*turn-on selector").*Uncover its lamp/s],
  },
  {
    it: 'names, besides a dead amplifier found without a meter, only the battery that was not read',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': 'whole',
      'spare-fuse': 'holds',
      'remote-jumper': 'dead',
      'body-fuse': 'whole',
      'temporary-leads': 'neither',
    },
    ends: 'amp-dead',
    sure: 'likely',
    says: [/"mayAlsoBe":\[\{"what":"A battery below 12.2 V or above 15 V"[^{]*\}\]/],
  },
  {
    it: 'names the fuse in its case besides a dead amplifier when nobody could look at it',
    rig: BY_WIRE,
    answers: { ...STILL_OFF, 'body-fuse': null },
    ends: 'amp-dead',
    sure: 'likely',
    says: [/Fuse in the amplifier itself open/],
  },
  {
    it: 'names the adapter besides the remote wire when nobody looked at the plug of a replaced head unit',
    rig: BEHIND_REPLACED_UNIT,
    answers: {
      ...DARK,
      ...METER,
      ...remote('0'),
      'what-else': 'nothing',
      'remote-source': { startV: '12.3' },
      'adapter-look': null,
    },
    ends: 'remote-wire-open',
    sure: 'likely',
    says: [/Adapter of the replaced head unit/],
  },
  {
    it: 'ends in a short list when a jumper wakes it and nothing could be read on its wire',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      ...METER,
      'remote-volts': null,
      ...FED,
      'remote-jumper': 'wakes',
      'remote-lamp': null,
      'key-positions': null,
    },
    ends: 'amp-short-list',
    sure: 'short list',
    says: [/Remote wire open/, /Remote wire on a dead or wrong feed/],
  },
  {
    it: 'thinks of the turn-on selector besides too little sound when nobody could read it',
    rig: BY_SOUND,
    answers: {
      ...DEAF,
      'input-plug': 'no-change',
      'amp-switches': null,
      'meter-digit': '0.01',
      'sense-level': { usualV: '0.28', loudV: '2.4' },
    },
    ends: 'sense-starved-by-profile',
    // Four are left: the supply, the settings of the head unit, the selector, and the level itself.
    sure: 'short list',
    says: [/Its turn-on selector/, /The fader or a rear control turned down/],
  },
  {
    it: 'thinks of a silent head unit besides the signal plug when its pairs could not be read',
    rig: BY_DC,
    answers: {
      ...DARK,
      ...METER,
      ...FED,
      'remote-jumper': 'wakes',
      'input-plug': 'no-change',
      'between-look': 'direct',
      ...SELECTORS,
      'sense-dc': { plusV: '0', minusV: '0' },
      'meter-digit': '0.01',
      'rear-pair': null,
    },
    ends: 'amp-input-plug-off',
    sure: 'likely',
    says: [/The head unit sends nothing/],
  },
  {
    it: 'ends in a short list with odds when nothing can be measured, bypassed or swapped',
    rig: BY_WIRE,
    answers: {
      ...DARK,
      'last-change': null,
      ...NO_METER,
      'supply-wiggle': 'no-effect',
      'fuse-look': null,
      'remote-jumper': null,
      'remote-lamp': null,
      'key-positions': null,
      'amp-switches': null,
      'body-fuse': null,
      'temporary-leads': null,
      'rings-look': null,
    },
    ends: 'amp-short-list',
    sure: 'short list',
    says: [/three readings at the amplifier/],
  },
];

describe('the amplifier stays off', () => {
  for (const { it: tells, rig, answers, ends, sure, numbers = [], says = [] } of JOURNEYS) {
    it(tells, () => {
      const { verdict, remedy, numbers: written } = ride(ampWontTurnOn, rig, answers);
      expect(verdict).toBe(ends);
      expect(remedy.certainty).toBe(sure);
      expect(written).toEqual(expect.arrayContaining([...numbers]));
      for (const text of says) expect(JSON.stringify(remedy)).toMatch(text);
    });
  }
});

describe('which amplifier it is', () => {
  it('is not asked on a bike with one', () => expect(endOf(ampWontTurnOn, BY_WIRE, {})).toBe('amp-history?'));
  it('is asked on a bike with two, and on one of which nothing is known', () => {
    expect(endOf(ampWontTurnOn, TWO_AMPS, {})).toBe('which-amp?');
    expect(endOf(ampWontTurnOn, {}, {})).toBe('which-amp?');
  });
  it('decides how it is switched: the front one of this bike by a wire, the rear one by what it hears', () => {
    expect(endOf(ampWontTurnOn, TWO_AMPS, { 'which-amp': 'front', ...DARK, ...METER })).toBe('remote-volts?');
    expect(endOf(ampWontTurnOn, TWO_AMPS, { 'which-amp': 'rear', ...DARK, ...METER })).toBe('amp-terminals?');
  });
  it('is said in the verdict where there are two', () => {
    const answers = { ...FAULT, 'amp-goes-off': 'hot' };
    const what = (pair: string) => ride(ampWontTurnOn, TWO_AMPS, { 'which-amp': pair, ...answers }).remedy.what;
    expect(what('front')).toMatch(/^The front amplifier /);
    expect(what('rear')).toMatch(/^The rear amplifier /);
    expect(ride(ampWontTurnOn, BY_WIRE, answers).remedy.what).toMatch(/^The amplifier /);
  });
});

describe('volts that were lost at the terminals, and are all there under the lamp', () => {
  it('lead on to what should wake it, and the supply is not asked again afterwards', () => {
    const held = { ...terminals('12.5', '11.5', '0.02'), ...HOLDS };
    expect(endOf(ampWontTurnOn, BY_WIRE, { ...TOLD, ...held })).toBe('wakes-when-loud?');
    const woken = { 'input-plug': 'no-change', ...SELECTORS, 'meter-digit': '0.01' };
    const hears = { ...woken, 'sense-level': { usualV: '1.6', loudV: '4' } };
    expect(endOf(ampWontTurnOn, BY_SOUND, { ...DARK, ...METER, ...held, ...DEAF, ...held, ...hears })).toBe('amp-dead');
  });
});

describe('an amplifier that waits for DC', () => {
  it('is never asked to be turned up: how loud it is does not matter to it', () =>
    expect(endOf(ampWontTurnOn, BY_DC, { ...DARK, ...METER, ...FED, 'remote-jumper': 'wakes' })).toBe('input-plug?'));
});

const verdicts = Object.values(ampWontTurnOn.states).flatMap((state) => ('verdict' in state ? [state.verdict] : []));

describe('the states of the flow', () => {
  const targets = (name: string): readonly string[] => {
    const state = ampWontTurnOn.states[name];
    if (!state || 'verdict' in state) return [];
    const routes = 'decide' in state ? [state.decide] : Object.values(state.routes);
    return routes.flatMap((route) => (typeof route === 'string' ? [route] : route.map(({ to }) => to)));
  };
  it('never lead back to one another, whatever is known: there is no way round in a circle', () => {
    const done = new Set<string>();
    const visit = (name: string, way: readonly string[]): void => {
      expect(way, [...way, name].join(' ')).not.toContain(name);
      if (done.has(name)) return;
      for (const to of targets(name)) visit(to, [...way, name]);
      done.add(name);
    };
    visit(ampWontTurnOn.first, []);
    expect(done.size).toBe(Object.keys(ampWontTurnOn.states).length);
  });
});

describe('the verdicts of the flow', () => {
  it('have a journey each', () => {
    const reached = new Set(JOURNEYS.map(({ ends }) => ends));
    expect([...new Set(verdicts.map(({ id }) => id))].sort()).toEqual([...reached].sort());
  });

  // The faults that leave an amplifier off, as the trade knows them: common practice, no published source.
  it.each([
    'main-fuse-open',
    'remote-wire-open',
    'remote-source-dead',
    'remote-volts-low',
    'remote-on-permanent',
    'amp-ground-open',
    'amp-ground-resistive',
    'fuse-holder-resistive',
    'battery-lug-loose',
    'battery-undercharged',
    'battery-worn',
    'regulator-out-of-range',
    'turn-on-mode-wrong',
    'sense-starved-by-profile',
    'sense-no-half-supply',
    'rear-channels-disabled',
    'amp-input-plug-off',
    'replaced-unit-adapter-gap',
    'amp-dead',
    'wire-chafed',
    'speaker-wire-to-frame',
    'speaker-pair-shorted',
    'amp-output-dc',
    'amp-heat-protect',
  ])('stand for the fault %s', (fault) => {
    expect(verdicts.filter(({ faults }) => faults.includes(fault)).length).toBeGreaterThan(0);
  });

  it('name at most three faults each', () => {
    for (const { id, faults } of verdicts) expect(faults.length, id).toBeLessThanOrEqual(3);
  });
});
