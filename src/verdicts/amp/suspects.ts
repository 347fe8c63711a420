import type { Findings } from '../../steps/outcome.ts';
import { ampPair } from '../../steps/which-amp.ts';
import type { Suspect } from '../suspects.ts';

/**
 * Who can be behind an amplifier that stays off, with what each step would show. Weights and factors: common practice of
 * the trade, estimates with no published source. Order does not matter; ranking sorts.
 */

/** Its lamp is dark, or it shows no sign of life. */
const OFF = { 'amp-light': ['off'], 'amp-signs': ['dead'] };
/** A contact that comes and goes: dark, fault or on, whenever somebody looks. */
const ANY_LAMP = { 'amp-light': ['off', 'fault', 'normal'] };
const FAULT = { 'amp-light': ['fault'] };

/** How the amplifier of the case is switched: with two on the bike the other one says nothing about it. */
const switchedBy =
  (...kinds: readonly ('wire' | 'signal' | 'dc')[]) =>
  (f: Findings) => ({ [`${ampPair(f)}-amp-turn-on`]: kinds });

const STILL = { 'supply-wiggle': ['no-effect'], 'key-positions': ['none'], 'wakes-when-loud': ['stays-off'] };
const SWITCHES_FIT = { 'amp-switches': ['right', 'mode', 'range'] };
const BODY_FUSE_GOOD = { 'body-fuse': ['whole', 'none'] };
const MAIN_FUSE_GOOD = {
  'fuse-sides': ['whole'],
  'fuse-look': ['whole'],
  'spare-fuse': ['holds'],
  'fuse-lamp': ['dark'],
};
const LEADS_GOOD = {
  'amp-terminals': ['ok'],
  'supply-under-load': ['ok'],
  'temporary-leads': ['neither'],
};
const SUPPLY_GOOD = { ...MAIN_FUSE_GOOD, ...BODY_FUSE_GOOD, ...LEADS_GOOD };
const REMOTE_GOOD = { 'remote-volts': ['ok'], 'remote-lamp': ['lit'], 'remote-source': ['live'] };
const SPEAKERS_STAY = { 'speakers-unplugged': ['stays'] };
const HEARS = {
  'input-plug': ['no-change'],
  'sense-dc': ['half'],
  'sense-level': ['ok', 'unclear'],
  'rear-pair': ['ok'],
};

/** Nothing at all reaches its plus: the jumper has nothing to give. */
const NO_PLUS = {
  ...OFF,
  ...STILL,
  ...SWITCHES_FIT,
  ...REMOTE_GOOD,
  ...HEARS,
  'amp-terminals': ['plus-open'],
  'remote-jumper': ['dead'],
  'temporary-leads': ['plus'],
};
/** Everything is there but what should wake it. */
const NOT_WOKEN = { ...OFF, ...STILL, ...SWITCHES_FIT, ...SUPPLY_GOOD, 'remote-jumper': ['wakes', 'no-terminal'] };
/** A path that lets volts through, and no current. */
const WEAK = {
  ...ANY_LAMP,
  ...SWITCHES_FIT,
  ...REMOTE_GOOD,
  ...HEARS,
  ...SPEAKERS_STAY,
  'key-positions': ['none'],
  'wakes-when-loud': ['stays-off'],
  'amp-goes-off': ['bumps', 'loud'],
  recover: ['at-once'],
  'amp-terminals': ['ok', 'unclear'],
  'remote-jumper': ['wakes', 'dead'],
};
/** Its outputs see a short, so it shuts them until the key is turned. */
const SHORTED_RUN = {
  ...FAULT,
  ...SUPPLY_GOOD,
  'speakers-unplugged': ['clears'],
  recover: ['key-cycle', 'stays'],
  'supply-wiggle': ['no-effect'],
};
const PROTECTS_ITSELF = {
  ...FAULT,
  ...SUPPLY_GOOD,
  ...SPEAKERS_STAY,
  'supply-wiggle': ['no-effect'],
};

const FRESHLY_FITTED = { never: 3, stopped: 0.5, 'comes-and-goes': 0.3 };
const COMES_AND_GOES = { 'comes-and-goes': 3, never: 0.5 };

export const AMP_SUSPECTS: readonly Suspect[] = [
  {
    verdict: 'main-fuse-open',
    title: 'Main fuse open',
    weight: 7,
    signs: {
      ...NO_PLUS,
      'fuse-sides': ['open'],
      'fuse-look': ['blown', 'whole'],
      'fuse-lamp': ['dark'],
      'spare-fuse': ['wakes'],
    },
    odds: { 'last-change': { fitted: 2, battery: 2 }, 'amp-history': { 'comes-and-goes': 0.2 } },
    split: 'Key off, pull the main fuse near the battery: is its strip burnt through?',
  },
  {
    verdict: 'wire-chafed',
    title: 'Plus lead chafed or broken',
    weight: 3,
    signs: {
      ...NO_PLUS,
      'fuse-sides': ['open', 'whole'],
      'fuse-look': ['blown', 'whole'],
      'fuse-lamp': ['bright', 'dark'],
      'lead-off-amp': ['bright'],
      'spare-fuse': ['opens', 'holds'],
      'supply-wiggle': ['no-effect', 'holder'],
    },
    odds: { 'last-change': { workshop: 2, opened: 2 } },
    split: 'A lamp in place of the fuse, plus lead off the amplifier: still bright?',
  },
  {
    verdict: 'amp-shorted-inside',
    title: 'Amplifier shorted inside',
    weight: 2,
    signs: {
      ...NO_PLUS,
      'fuse-sides': ['open'],
      'fuse-look': ['blown'],
      'fuse-lamp': ['bright'],
      'lead-off-amp': ['dark'],
      'spare-fuse': ['opens'],
      'temporary-leads': ['neither'],
    },
    odds: { 'amp-history': { never: 0.5 }, 'last-change': { battery: 2 } },
    split: 'A lamp in place of the fuse: bright with the amplifier on the lead, dark without it?',
  },
  {
    verdict: 'fuse-holder-resistive',
    title: 'Fuse holder without contact',
    weight: 4,
    signs: {
      ...WEAK,
      'amp-terminals': ['ok', 'unclear', 'plus-open'],
      'fuse-sides': ['whole', 'open'],
      'fuse-look': ['whole'],
      'spare-fuse': ['wakes', 'holds'],
      'supply-wiggle': ['holder', 'no-effect'],
      'supply-under-load': ['plus-drop'],
      'plus-path': ['holder'],
      'temporary-leads': ['plus'],
    },
    odds: { 'amp-history': COMES_AND_GOES, 'last-change': { opened: 2 } },
    split: 'Press the fuse in its holder with one finger: does the lamp flicker?',
  },
  {
    verdict: 'battery-lug-loose',
    title: 'Ring at the battery loose',
    weight: 4,
    signs: {
      ...WEAK,
      'amp-terminals': ['ok', 'unclear', 'plus-open', 'ground-open'],
      'fuse-sides': ['no-feed', 'whole'],
      'fuse-look': ['whole'],
      'supply-wiggle': ['battery'],
      'rings-look': ['battery'],
      'supply-under-load': ['plus-drop', 'ground-drop'],
      'plus-path': ['ring'],
      'temporary-leads': ['plus', 'ground'],
    },
    odds: { 'amp-history': COMES_AND_GOES, 'last-change': { battery: 4, workshop: 2 }, 'what-else': { bike: 3 } },
    split: 'Key off: does a ring on a battery post turn by hand?',
  },
  {
    verdict: 'plus-lead-too-thin',
    title: 'Plus lead too thin',
    weight: 2,
    signs: {
      ...WEAK,
      ...MAIN_FUSE_GOOD,
      ...BODY_FUSE_GOOD,
      'amp-goes-off': ['loud'],
      'supply-wiggle': ['no-effect'],
      'supply-under-load': ['plus-drop'],
      'plus-path': ['lead'],
      'temporary-leads': ['plus'],
    },
    odds: { 'amp-history': { 'comes-and-goes': 2, never: 1.5 }, 'last-change': { fitted: 2 } },
    split: 'Read the section on the lead, and scrape an end: copper all through?',
  },
  {
    verdict: 'amp-ground-open',
    title: 'Ground of the amplifier open',
    weight: 5,
    signs: {
      ...NO_PLUS,
      ...MAIN_FUSE_GOOD,
      ...BODY_FUSE_GOOD,
      'amp-terminals': ['ground-open'],
      'supply-wiggle': ['ground', 'no-effect'],
      'rings-look': ['ground', 'tight'],
      'supply-under-load': ['ground-drop'],
      'temporary-leads': ['ground'],
    },
    odds: { 'last-change': { fitted: 2, workshop: 2, opened: 2 } },
    split: 'Red on the amplifier’s ground, black on the battery minus post: near zero, or near the battery?',
  },
  {
    verdict: 'amp-ground-resistive',
    title: 'Ground of the amplifier with poor contact',
    weight: 4,
    signs: {
      ...WEAK,
      ...MAIN_FUSE_GOOD,
      ...BODY_FUSE_GOOD,
      'supply-wiggle': ['ground', 'no-effect'],
      'supply-under-load': ['ground-drop'],
      'temporary-leads': ['ground'],
    },
    odds: { 'amp-history': { 'comes-and-goes': 2, never: 2 }, 'last-change': { fitted: 2 } },
    split: 'Look under its ground ring: paint, anodising, green?',
  },
  {
    verdict: 'remote-wire-open',
    title: 'Remote wire open',
    weight: 7,
    signsHere: switchedBy('wire'),
    signs: {
      ...NOT_WOKEN,
      'supply-wiggle': ['no-effect', 'remote'],
      'remote-volts': ['none'],
      'remote-source': ['live'],
      'remote-lamp': ['dark'],
      'remote-start-lamp': ['lit'],
      'adapter-look': ['through'],
    },
    odds: { 'last-change': { workshop: 2, unit: 2, opened: 1.5 } },
    split: 'Head unit on: volts on the remote terminal, against battery minus?',
  },
  {
    verdict: 'remote-source-dead',
    title: 'Remote wire on a dead or wrong feed',
    weight: 5,
    signsHere: switchedBy('wire'),
    signs: {
      ...NOT_WOKEN,
      'key-positions': ['none', 'some'],
      'remote-volts': ['none'],
      'remote-source': ['dead'],
      'remote-lamp': ['dark'],
      'remote-start-lamp': ['dark'],
    },
    odds: { 'what-else': { accessories: 5 }, 'amp-history': { never: 2 }, 'last-change': { fitted: 2, unit: 2 } },
    split: 'Head unit on: volts where the remote wire begins?',
  },
  {
    verdict: 'remote-volts-low',
    title: 'Too few volts on the remote wire',
    weight: 3,
    signsHere: switchedBy('wire'),
    signs: {
      ...NOT_WOKEN,
      'remote-volts': ['low'],
      'remote-source': ['low', 'live'],
      'remote-lamp': ['lit', 'dark'],
      'remote-start-lamp': ['lit'],
      'adapter-look': ['through'],
    },
    odds: { 'last-change': { fitted: 2 }, 'amp-history': { 'comes-and-goes': 2 } },
    split: 'Head unit on: the remote terminal within 1 V of the battery?',
  },
  {
    verdict: 'replaced-unit-adapter-gap',
    title: 'Adapter of the replaced head unit without the remote wire',
    weight: 3,
    signsHere: switchedBy('wire'),
    signs: {
      ...NOT_WOKEN,
      'unit-kind': ['replaced'],
      'remote-volts': ['none'],
      'remote-source': ['live'],
      'remote-lamp': ['dark'],
      'remote-start-lamp': ['lit'],
      'adapter-look': ['gap'],
    },
    odds: { 'last-change': { unit: 6, nothing: 0.3 } },
    split: 'Look at both sides of the adapter’s plug: is the remote wire on both?',
  },
  {
    verdict: 'remote-on-permanent',
    title: 'Remote wire never off, battery emptied',
    weight: 1,
    signsHere: switchedBy('wire'),
    signs: {
      ...OFF,
      ...STILL,
      'what-else': ['bike'],
      'amp-terminals': ['battery-low'],
      'remote-key-off': ['live'],
    },
    odds: { 'last-change': { fitted: 2 } },
    split: 'Ten minutes after key off: volts on the remote terminal?',
  },
  {
    verdict: 'turn-on-mode-wrong',
    title: 'Turn-on selector wrong',
    weight: 5,
    signs: {
      ...OFF,
      ...STILL,
      ...SUPPLY_GOOD,
      ...REMOTE_GOOD,
      ...HEARS,
      'amp-switches': ['turn-on'],
      'remote-jumper': ['wakes', 'dead', 'no-terminal'],
    },
    odds: { 'last-change': { fitted: 3 }, 'amp-history': FRESHLY_FITTED },
    split: 'Read the amplifier’s turn-on selector: does it stand on what is wired?',
  },
  {
    verdict: 'sense-starved-by-profile',
    title: 'Listening amplifier that hears too little',
    weight: 5,
    signsHere: switchedBy('signal'),
    signs: {
      ...NOT_WOKEN,
      ...HEARS,
      'wakes-when-loud': ['wakes', 'stays-off'],
      'sense-level': ['low', 'unclear'],
    },
    odds: { 'last-change': { reflash: 6, nothing: 0.5 } },
    split: 'Gain down, then turn the volume up step by step: does it wake?',
  },
  {
    verdict: 'sense-no-half-supply',
    title: 'Listening amplifier without the DC it waits for',
    weight: 4,
    signsHere: switchedBy('dc'),
    signs: { ...NOT_WOKEN, ...HEARS, 'sense-dc': ['zero'], 'between-look': ['box', 'direct'] },
    odds: { 'last-change': { unit: 3, fitted: 2 }, 'amp-history': { never: 2 } },
    split: 'Follow its signal wires: is a converter or a line-level lead in between?',
  },
  {
    verdict: 'nothing-to-hear',
    title: 'Rear pairs silent, so the amplifier sleeps',
    weight: 4,
    signsHere: switchedBy('signal', 'dc'),
    signs: {
      ...NOT_WOKEN,
      'which-amp': ['rear'],
      'input-plug': ['no-change'],
      'sense-level': ['none'],
      'sense-dc': ['zero'],
      'between-look': ['direct'],
      'rear-pair': ['none'],
    },
    odds: { 'last-change': { workshop: 2, unit: 2, reflash: 2 }, 'amp-history': { never: 3 } },
    split: '400 Hz across a rear pair at the head unit: nothing, while the front pair reads?',
  },
  {
    verdict: 'amp-input-plug-off',
    title: 'Signal plug of the amplifier off',
    weight: 4,
    signsHere: switchedBy('signal', 'dc'),
    signs: {
      ...NOT_WOKEN,
      'supply-wiggle': ['input', 'no-effect'],
      'input-plug': ['cured', 'no-change'],
      'sense-level': ['none'],
      'sense-dc': ['zero', 'one-odd'],
      'between-look': ['direct'],
      'rear-pair': ['ok'],
    },
    odds: { 'last-change': { fitted: 2, workshop: 2, unit: 2 } },
    split: 'Key off, pull the signal plug, push it home until it locks, key on.',
  },
  {
    verdict: 'sense-sleeps-in-quiet',
    title: 'Asleep in quiet passages',
    weight: 1,
    signsHere: switchedBy('signal'),
    signs: { 'amp-light': ['normal', 'off'], 'amp-goes-off': ['quiet'], 'wakes-when-loud': ['wakes', 'wakes-silent'] },
    odds: { 'amp-history': { 'comes-and-goes': 3, never: 0.2 } },
    split: 'Phone at full volume: does it stay awake then?',
  },
  {
    verdict: 'amp-body-fuse-open',
    title: 'Fuse in the amplifier itself open',
    weight: 3,
    signs: {
      ...OFF,
      ...STILL,
      ...SWITCHES_FIT,
      ...MAIN_FUSE_GOOD,
      ...LEADS_GOOD,
      ...REMOTE_GOOD,
      ...HEARS,
      'body-fuse': ['blown'],
      'remote-jumper': ['dead'],
    },
    odds: { 'last-change': { battery: 3, fitted: 2 } },
    split: 'Key off, pull the small fuses beside its power plug: strips whole?',
  },
  {
    verdict: 'amp-dead',
    title: 'Amplifier itself dead',
    weight: 4,
    signs: {
      ...OFF,
      ...STILL,
      ...SWITCHES_FIT,
      ...SUPPLY_GOOD,
      ...REMOTE_GOOD,
      ...HEARS,
      'remote-jumper': ['dead', 'no-terminal'],
    },
    odds: { 'amp-history': { never: 0.5, 'comes-and-goes': 0.3 }, 'last-change': { battery: 2, opened: 2 } },
    split: 'A 55 W lamp across its plus and ground: bright, and within 0.5 V of the battery?',
  },
  {
    verdict: 'speaker-wire-to-frame',
    title: 'Speaker wire on the frame',
    weight: 5,
    signs: { ...SHORTED_RUN, 'amp-wires-to-frame': ['shorted'], 'amp-runs': ['ok'], 'one-by-one': ['one'] },
    odds: { 'last-change': { fitted: 2, opened: 2, workshop: 2 } },
    split: 'Key off, plugs off, meter on ohms: each speaker wire to bare frame metal, above 100 kΩ?',
  },
  {
    verdict: 'speaker-pair-shorted',
    title: 'Speaker run or coil shorted',
    weight: 3,
    signs: {
      ...SHORTED_RUN,
      'amp-wires-to-frame': ['clear'],
      'amp-runs': ['low', 'heavy'],
      'one-by-one': ['one'],
    },
    odds: { 'last-change': { fitted: 2 } },
    split: 'Key off, plugs off, meter on ohms: does each run read like the others?',
  },
  {
    verdict: 'amp-load-too-low',
    title: 'Too many speakers on one channel',
    weight: 2,
    signs: {
      ...SHORTED_RUN,
      recover: ['at-once', 'key-cycle', 'stays'],
      'amp-wires-to-frame': ['clear'],
      'amp-runs': ['heavy', 'ok'],
      'one-by-one': ['together', 'none'],
    },
    odds: { 'last-change': { fitted: 4 }, 'amp-history': { never: 2 } },
    split: 'Count the speakers on each channel, and read their ohms.',
  },
  {
    verdict: 'amp-output-dc',
    title: 'Output stage of the amplifier damaged',
    weight: 2,
    signs: { ...PROTECTS_ITSELF, recover: ['key-cycle', 'stays'], 'amp-dc': ['offset', 'ok'] },
    odds: { 'amp-history': { never: 0.5 }, 'last-change': { battery: 1.5 } },
    split: 'Key off, all speakers off, key on: is the fault lamp still there?',
  },
  {
    verdict: 'amp-heat-protect',
    title: 'Amplifier too hot',
    weight: 4,
    signs: {
      ...SUPPLY_GOOD,
      ...SPEAKERS_STAY,
      'amp-light': ['fault', 'normal'],
      'amp-goes-off': ['hot'],
      recover: ['after-minutes'],
      'supply-wiggle': ['no-effect'],
      'amp-dc': ['ok'],
    },
    odds: { 'amp-history': { 'comes-and-goes': 3, never: 0.2 }, 'last-change': { fitted: 1.5 } },
    split: 'Feel its case: too hot to leave your hand there? Does it come back when cooler?',
  },
  {
    verdict: 'battery-low',
    title: 'Battery too low',
    weight: 3,
    signs: {
      ...OFF,
      'amp-light': ['off', 'fault', 'normal'],
      'amp-goes-off': ['loud'],
      recover: ['at-once', 'stays'],
      'amp-terminals': ['battery-low', 'ok'],
      'remote-key-off': ['dead'],
      'supply-under-load': ['battery-sags'],
      'speakers-unplugged': ['stays'],
      'what-else': ['bike'],
      'key-positions': ['none'],
      'wakes-when-loud': ['stays-off'],
      'supply-wiggle': ['no-effect'],
      'temporary-leads': ['neither'],
    },
    odds: { 'last-change': { battery: 1.5 } },
    split: 'Key on, engine off: 12.2 V or more at the battery posts?',
  },
  {
    verdict: 'regulator-out-of-range',
    title: 'Charging voltage too high',
    weight: 1,
    signs: {
      'amp-light': ['off', 'fault'],
      ...STILL,
      ...MAIN_FUSE_GOOD,
      ...BODY_FUSE_GOOD,
      'amp-terminals': ['battery-high'],
      'remote-jumper': ['dead'],
      'temporary-leads': ['neither'],
      'speakers-unplugged': ['stays'],
      recover: ['at-once', 'stays', 'key-cycle'],
    },
    odds: {},
    split: 'Outdoors, about 3000 rpm: below 15 V at the battery posts?',
  },
];
