import { chosen } from '../rig/rig.ts';
import type { CautionId } from './cautions.ts';
import { ampName, theAmp } from './fitted/the-amp.ts';
import { answeredWith } from './outcome.ts';
import type { Situation } from './step.ts';
import type { Subject } from './subject.ts';
import { isLeadUnfused } from './supply/unfused.ts';
import type { TestPoint } from './test-points.ts';

/** Words about an amplifier, by what it is called on this bike. */
type Saying = string | ((amp: string, situation: Situation) => string);

/**
 * A state that a step needs before its question makes sense, and that then stands ready for other steps as well. It is
 * said before the question unless it stands from the step before.
 */
export interface Condition {
  /** How to bring it about, at the bike. */
  readonly bike: Saying;
  /** The same, said to a caller: one sentence that is safe when it is all he hears. */
  readonly phone: Saying;
  /** Both where a step ends it and brings it about again itself: only what makes that safe. */
  readonly inStep?: { readonly bike: string; readonly phone: string };
  /** Both at a running engine: there nobody is told to have it off. */
  readonly atEngine?: { readonly bike: string; readonly phone: string };
  /** Part of the minutes of each step that needs it. Common practice, estimates with no published source. */
  readonly minutes: number;
  /** Where something is clipped on for it that stays there. */
  readonly clips?: readonly TestPoint[];
  readonly cautions: readonly CautionId[];
  /** What is done once no step needs it any more. */
  readonly undo?: string | ((amp: string, situation: Situation) => string);
  /** A plug, a fuse or a wire is opened for it: the key is off by then. */
  readonly opens?: true;
  /** There are several of it on a bike: it stands for one, and has to be brought about for another. */
  readonly of?: 'amp' | 'speaker';
  /** The bikes on which there is such a thing, or may be. */
  where?(situation: Situation): boolean;
}

/** A lead that was found without a fuse goes back on with one, or not at all. */
const LEAD_BACK =
  'Fit a fuse within a hand’s width of the battery, no bigger than the lead’s copper carries. Then key off, lead back on. No fuse: it stays off.';

export const CONDITIONS = {
  'key-off': { bike: 'Key off.', phone: 'Key off first.', minutes: 0, cautions: [], undo: 'Key on again.' },
  'minus-off': {
    bike: 'Key off. Ring and watch off. Battery negative off, all its leads together.',
    phone: 'Key off, ring and watch off, then take all leads off the battery negative post together.',
    minutes: 0,
    cautions: ['minus-first', 'battery-gas', 'cranking'],
    undo: 'Battery negative back on, last of all.',
    opens: true,
  },
  'key-on': {
    bike: 'Key on, engine off.',
    phone: 'Key on, and leave the engine off.',
    minutes: 0,
    cautions: ['flat-battery'],
    undo: 'Key off.',
  },
  'head-unit-playing': {
    bike: 'Key on, engine off, music on, not loud.',
    phone: 'Key on, engine off, and music on, not loud.',
    atEngine: { bike: 'Head unit on, music on, not loud.', phone: 'Radio on, and music on, not loud.' },
    minutes: 0,
    cautions: ['flat-battery'],
    undo: 'Key off.',
  },
  'music-paused': {
    bike: 'Key on, engine off, head unit on, music paused.',
    phone: 'Key on, engine off, radio on, and the music paused.',
    atEngine: { bike: 'Head unit on, music paused.', phone: 'Radio on, and the music paused.' },
    minutes: 0,
    cautions: ['flat-battery'],
    undo: 'Key off.',
  },
  'ugly-step': {
    bike: 'Key on, engine off. The track and volume step where it starts to distort, a few seconds at a time, ears covered.',
    phone:
      'Key on, engine off, the song and volume number where it starts to distort, a few seconds at a time, ears covered.',
    minutes: 0.5,
    cautions: ['loud-listening', 'flat-battery'],
    undo: 'Volume down.',
  },
  'tone-400': {
    bike: 'Volume at zero. Start the 400 Hz tone and come up one step at a time.',
    phone: 'Volume at zero first, then start the 400 tone and come up one step at a time.',
    minutes: 2,
    cautions: ['loud-tone', 'flat-battery'],
    undo: 'Volume at zero, tone off.',
  },
  'tone-80': {
    bike: 'Volume at zero. Start the 80 Hz tone and come up one step at a time.',
    phone: 'Volume at zero first, then start the 80 tone and come up one step at a time.',
    minutes: 0,
    cautions: ['full-tone', 'flat-battery'],
    undo: 'Volume at zero, tone off.',
  },
  'controls-flat': {
    bike: 'Note how the sound menu is set. Fader and balance in the middle, bass and treble flat, loudness and speed volume off.',
    phone:
      'Note how the sound menu is set, then fader and balance to the middle, bass and treble to zero, loudness and speed volume off.',
    minutes: 0,
    cautions: [],
    undo: 'Sound menu back to where it was.',
  },
  'volume-zero': {
    bike: (amp) => `Volume at zero. Note where the gain of ${amp} is set and turn it down, if you can reach it.`,
    phone: (amp) => `Volume at zero, then note where the gain of ${amp} is set and turn it down, if you can reach it.`,
    of: 'amp',
    minutes: 0,
    cautions: ['wakes-loud'],
    undo: 'Gain back to where it was.',
  },
  'engine-running': {
    bike: 'Outdoors, on the stand, in neutral: engine on, at idle.',
    phone: 'Outdoors only, on the stand and in neutral, start the engine and let it idle.',
    inStep: {
      bike: 'Outdoors, on the stand, in neutral. The engine is started further down.',
      phone: 'Outdoors only, on the stand and in neutral, start the engine only when I say so.',
    },
    minutes: 0,
    cautions: ['outdoors', 'hot'],
    undo: 'Engine off.',
  },
  'meter-on-ac': {
    bike: 'Meter on AC volts, the V with a wave.',
    phone: 'Turn the meter to AC volts, the V with the wave.',
    minutes: 0,
    cautions: [],
  },
  'meter-on-dc': {
    bike: 'Meter on DC volts, the V with a straight line.',
    phone: 'Turn the meter to DC volts, the V with the straight line.',
    minutes: 0,
    cautions: [],
  },
  'meter-on-ohms': {
    bike: 'Key off. Meter on ohms, the Ω.',
    phone: 'Key off, then turn the meter to ohms, the horseshoe sign.',
    minutes: 0,
    cautions: ['ohms-dead'],
  },
  'black-on-minus': {
    bike: 'Black probe on the battery negative post. It stays there.',
    phone: 'Put the black probe on the battery negative post and leave it there.',
    minutes: 0,
    cautions: [],
  },
  'panel-off': {
    bike: 'Key off. Take off the panel that hides the head unit’s plug.',
    phone: 'Key off, then take off the panel that hides the radio’s plug.',
    minutes: 2,
    cautions: ['data', 'warranty'],
    undo: 'Panel back on.',
  },
  'unit-plug-apart': {
    bike: 'Key off. Pull the head unit’s plug straight out.',
    phone: 'Key off, then pull the radio’s plug straight out, and leave every other plug there alone.',
    minutes: 1,
    cautions: ['bridge'],
    undo: 'Key off, head unit’s plug home until it locks.',
    opens: true,
  },
  'amp-uncovered': {
    bike: (amp) => `Take off the seat, lid or panel over ${amp}.`,
    phone: (amp) => `Take off the seat, lid or panel over ${amp}, and mind that its case may be hot.`,
    of: 'amp',
    minutes: 1,
    cautions: ['hot'],
    undo: (amp) => `Cover back over ${amp}.`,
  },
  'amp-outputs-off': {
    bike: (amp, { rig }) =>
      rig.amps
        ? `Key off. Mark the speaker plugs, pull all of them off ${amp}, keep their ends off metal.`
        : 'Key off. Is there an amplifier? Mark its speaker plugs, pull all of them off, keep their ends off metal.',
    phone: (amp, { rig }) =>
      rig.amps
        ? `Key off, mark the thick speaker plugs, pull all of them off ${amp}, and keep their ends off metal.`
        : 'Key off, and if there is an amplifier, mark its thick speaker plugs, pull them all off, and keep their ends off metal.',
    of: 'amp',
    minutes: 1,
    cautions: ['bridge'],
    undo: 'Key off, speaker plugs back as they were marked.',
    opens: true,
    where: ({ rig }) => rig.amps?.length !== 0 && !(rig.rearFedBy === 'unit' && rig.frontFedBy === 'unit'),
  },
  'rear-off-unit': {
    bike: 'Key off. Unplug the rear speakers from the head unit, at any plug you can reach.',
    phone: 'Key off, then unplug the rear speakers from the radio, at any plug you can reach.',
    minutes: 0,
    cautions: ['bridge'],
    undo: 'Key off, rear speakers plugged in again.',
    opens: true,
    where: ({ rig }) => chosen(rig, 'rearFedBy') !== 'amp',
  },
  'rear-plug-apart': {
    bike: 'Key off. Pull the plug that feeds the rear speakers: at the amplifier, or else on the rear loom.',
    phone:
      'Key off, then pull the plug that feeds the rear speakers: at the amplifier, or else on the lead to the back.',
    minutes: 1,
    cautions: ['bridge'],
    undo: 'Key off, rear speaker plug home until it locks.',
    opens: true,
  },
  'front-plug-apart': {
    bike: 'Key off. Pull the plug that feeds the front speakers: at the amplifier, or else at the head unit.',
    phone:
      'Key off, then pull the plug that feeds the front speakers: at the amplifier, or else at the back of the radio.',
    minutes: 1,
    cautions: ['bridge', 'data'],
    undo: 'Key off, front speaker plug home until it locks.',
    opens: true,
  },
  'lid-plug-apart': {
    of: 'speaker',
    bike: 'Key off. Open the plug of the lid or case.',
    phone: 'Key off, then open the plug of the lid or case.',
    minutes: 0,
    cautions: [],
    undo: 'Key off, lid plug home until it locks.',
    opens: true,
  },
  'grille-open': {
    bike: 'Key off. Grille off the worst speaker.',
    phone: 'Key off, then take the grille off the worst speaker, and mind its cone.',
    minutes: 4,
    cautions: ['cone', 'warranty'],
    undo: 'Grille back on.',
    opens: true,
  },
  'grille-off': {
    of: 'speaker',
    bike: 'Key off. Grille off, one wire off the speaker’s tabs.',
    phone: 'Key off, take the grille off, mind the cone, and pull one wire off the speaker.',
    minutes: 5,
    cautions: ['cone', 'warranty'],
    undo: 'Key off, wire back on its tab, grille on.',
    opens: true,
  },
  'line-leads-out': {
    bike: (amp) => `Key off. Pull any line-level leads, the round shielded plugs, out of ${amp}.`,
    phone: (amp) => `Key off, then pull any line-level lead, the round shielded plugs, out of ${amp}.`,
    of: 'amp',
    minutes: 0,
    cautions: ['ground-open'],
    undo: 'Key off, line-level leads back in.',
    opens: true,
    where: (situation) => theAmp(situation).input !== 'speaker',
  },
  'signal-plug-out': {
    bike: (amp) => `Key off. Signal plug out of ${amp}, line-level leads too, their ends kept off metal.`,
    phone: (amp) =>
      `Key off, then pull the thin signal plug out of ${amp}, round line plugs too, and keep their ends off metal.`,
    of: 'amp',
    minutes: 1,
    cautions: ['bridge'],
    undo: 'Key off, signal plug home until it locks.',
    opens: true,
  },
  'remote-off': {
    bike: (amp) => `Key off. Remote wire off ${amp}, its end insulated.`,
    phone: (amp) => `Key off, then take the thin remote wire off ${amp} and tape its end.`,
    of: 'amp',
    minutes: 0,
    cautions: [],
    undo: 'Key off, remote wire back on its terminal.',
    opens: true,
  },
  'fuse-out': {
    bike: (amp, s) =>
      isLeadUnfused(s)
        ? `Key off. Battery negative off, the lead of ${amp} off the positive post, its end taped, negative on again.`
        : `Key off. Main fuse of ${amp} out of its holder, near the battery.`,
    phone: (amp, s) =>
      isLeadUnfused(s)
        ? `Key off, battery negative off, the thick lead of ${amp} off the positive post and its end taped, then negative on again.`
        : `Key off, then pull the main fuse of ${amp}, near the battery.`,
    of: 'amp',
    minutes: 0,
    cautions: ['hot', 'fuse', 'capacitors'],
    undo: (_, s) => {
      if ((['wakes', 'holds', 'fault'] as const).some((one) => answeredWith(s.facts, 'spare-fuse', one)))
        return 'Key off. The new fuse stays in.';
      if (answeredWith(s.facts, 'spare-fuse', 'opens') || answeredWith(s.facts, 'fuse-lamp', 'bright'))
        return isLeadUnfused(s)
          ? 'The lead stays off the battery: something behind it is shorted.'
          : 'The fuse stays out: something behind it is shorted.';
      return isLeadUnfused(s) ? LEAD_BACK : 'Key off, a fuse of the same rating back in.';
    },
    opens: true,
  },
  'lamp-for-fuse': {
    of: 'amp',
    bike: (_, s) =>
      isLeadUnfused(s)
        ? 'Key off, the lead off the battery positive post. A 12 V lamp of 21 to 55 W on two leads between post and lead. It gets very hot.'
        : 'Key off, main fuse out. A 12 V lamp of 21 to 55 W on two leads in its place. It gets very hot.',
    phone: (_, s) =>
      isLeadUnfused(s)
        ? 'Key off, the lead off the battery positive post, and a 12 V lamp of 21 to 55 W on two leads between post and lead: it gets very hot.'
        : 'Key off, main fuse out, and a 12 V lamp of 21 to 55 W on two leads in its place: it gets very hot.',
    minutes: 2,
    clips: ['fuse-in'],
    cautions: ['fuse', 'lamp-hot'],
    undo: 'Key off, lamp out.',
    opens: true,
  },
  'lamp-on': {
    bike: (amp, s) =>
      isLeadUnfused(s)
        ? `Key off, the lead off the battery positive post. A 55 W lamp with a 10 A fuse in its lead, from the positive of ${amp} to its ground. The lead back on through a fuse, key on, engine off. It gets very hot.`
        : `Key off, main fuse out. A 55 W lamp with a 10 A fuse in its lead, from the positive of ${amp} to its ground. Fuse back, key on, engine off. It gets very hot.`,
    phone: (amp, s) =>
      isLeadUnfused(s)
        ? `Key off, lead off battery positive, a 55 W lamp with a 10 A fuse from positive to ground of ${amp}, lead on through a fuse: very hot.`
        : `Key off, main fuse out, a 55 W lamp with a 10 A fuse in its lead from positive to ground of ${amp}, fuse back, key on: very hot.`,
    of: 'amp',
    minutes: 2,
    clips: ['amp-plus'],
    cautions: ['lamp-hot', 'capacitors', 'flat-battery'],
    undo: (_, s) =>
      isLeadUnfused(s)
        ? 'Key off, the lead off the battery, lamp off by its leads, the lead back on through a fuse.'
        : 'Key off, main fuse out, lamp off by its leads, fuse back.',
    opens: true,
  },
} as const satisfies Readonly<Record<string, Condition>>;

export type ConditionId = keyof typeof CONDITIONS;
/** A condition, and which of several things it is about where a step names one. */
export type ConditionKey = ConditionId | `${ConditionId}@${Subject}`;

export const nameOf = (key: ConditionKey): ConditionId => key.split('@', 1)[0] as ConditionId;
export const conditionOf = (key: ConditionKey): Condition => CONDITIONS[nameOf(key)];

/** The condition for what a step names: of an amplifier, or of a speaker, there are several. */
export const conditionAt = (subject: Subject, key: ConditionKey): ConditionKey =>
  conditionOf(key).of === undefined ? key : `${nameOf(key)}@${subject}`;

/** What is known, as far as it is about the amplifier that a condition names. */
function situationOf(key: ConditionKey, { amp: _, ...known }: Situation): Situation {
  const amp = (['front', 'rear'] as const).find((pair) => key.endsWith(`@${pair}`));
  return amp ? { ...known, amp } : known;
}

function said(words: Saying, key: ConditionKey, situation: Situation): string {
  const at = situationOf(key, situation);
  return typeof words === 'function' ? words(ampName(at), at) : words;
}

/** How a condition is brought about on this bike. */
export function wordsOf(key: ConditionKey, situation: Situation): { readonly bike: string; readonly phone: string } {
  const { bike, phone } = conditionOf(key);
  return { bike: said(bike, key, situation), phone: said(phone, key, situation) };
}

/** How a condition is undone, with what is known. */
export function undoOf(key: ConditionKey, situation: Situation): string | undefined {
  const { undo } = conditionOf(key);
  const at = situationOf(key, situation);
  return typeof undo === 'function' ? undo(ampName(at), at) : undo;
}

/** What plays or is lit by the key. */
const BY_THE_KEY: readonly ConditionId[] = [
  'key-on',
  'head-unit-playing',
  'ugly-step',
  'music-paused',
  'tone-400',
  'tone-80',
];
/** Of each of these only one can stand: the later one ends the other. */
const ONE_OF: readonly (readonly ConditionId[])[] = [
  [...BY_THE_KEY, 'key-off', 'minus-off'],
  ['engine-running', 'key-off', 'minus-off'],
  ['lamp-on', 'key-off', 'minus-off'],
  ['meter-on-ac', 'meter-on-dc', 'meter-on-ohms'],
  ['fuse-out', 'lamp-for-fuse', 'lamp-on'],
];
const KEY_OFF: readonly ConditionKey[] = ['key-off', 'minus-off'];

/** Whether two conditions can stand at the same time. A battery negative that is off has the key off, too. */
export function standTogether(one: ConditionKey, other: ConditionKey): boolean {
  if (one === other || (KEY_OFF.includes(one) && KEY_OFF.includes(other))) return true;
  const [a, b] = [nameOf(one), nameOf(other)];
  return !ONE_OF.some((group) => group.includes(a) && group.includes(b));
}

/** What is left standing once the engine is stopped: that takes the key, so what goes by the key is brought about anew. */
export const engineStopped = (stands: readonly ConditionKey[]): readonly ConditionKey[] =>
  stands.filter((key) => nameOf(key) !== 'engine-running' && !BY_THE_KEY.includes(nameOf(key)));

/** What is left standing once the key is off. */
export const keyOff = (stands: readonly ConditionKey[]): readonly ConditionKey[] =>
  stands.some((key) => KEY_OFF.includes(key))
    ? stands
    : [...stands.filter((key) => standTogether(key, 'key-off')), 'key-off'];

/** Whether a line has the key turned off, and with it all that runs. */
export const turnsKeyOff = (line: string): boolean => /^Key off\b/.test(line);
/** Whether a line that is said first leaves no engine running. */
export const stopsEngine = (line: string): boolean => turnsKeyOff(line) || /\bengine off\b/i.test(line);

/**
 * What has to be done for these conditions, in this order, where some stand already: what is opened is opened with the
 * key off, and what ends a condition that stood takes its place.
 */
export function toDo(
  conditions: readonly ConditionKey[],
  standing: readonly ConditionKey[],
  situation: Situation,
): { readonly next: readonly ConditionKey[]; readonly stands: readonly ConditionKey[] } {
  const next: ConditionKey[] = [];
  let stands: readonly ConditionKey[] = standing;
  const bringAbout = (key: ConditionKey) => {
    next.push(key);
    stands = [...stands.filter((other) => standTogether(other, key)), key];
  };
  for (const key of conditions) {
    const { opens, where } = conditionOf(key);
    if (stands.includes(key) || (where && !where(situationOf(key, situation)))) continue;
    const needsKeyOff = opens || (key !== 'key-off' && turnsKeyOff(wordsOf(key, situation).bike));
    if (needsKeyOff && !stands.some((other) => KEY_OFF.includes(other))) bringAbout('key-off');
    bringAbout(key);
  }
  return { next, stands };
}
