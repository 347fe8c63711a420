import { formatQuantity, formatRange } from '../compute/quantity.ts';
import { ampDriving, chosen } from '../rig/rig.ts';
import { smallestDigitV } from './meter.ts';
import type { Findings } from './outcome.ts';
import {
  type Band,
  bandOf,
  choice,
  measurement,
  type Reading,
  type ReadingStep,
  type Situation,
  type Values,
} from './step.ts';
import { ampPair } from './which-amp.ts';

/** Rear over front at centred fader. Common practice, no published source. */
const EQUAL_LOW_RATIO = 0.7;
const EQUAL_HIGH_RATIO = 1.4;
/** Below this share of the front nothing is coming out. Common practice, no published source. */
const NOTHING_RATIO = 0.02;

/** AC volts across a pair of the head unit can reach the peak of a clipped wave on an average-reading meter, no more. */
export const UNIT_AC_POSSIBLE_V = [0, 16] as const;
export const acReading = (label: string, optional = false): Reading => ({
  label,
  unit: 'V',
  optional,
  possible: UNIT_AC_POSSIBLE_V,
  impossible:
    'A head unit on a 12 V bike cannot give that across one pair. Is the meter on AC volts, and on the right range?',
});

/** The least reference reading that lets this meter tell "nothing" from "a little". */
export function leastReferenceV(situation: Situation): number {
  const digitV = smallestDigitV(situation.facts);
  return digitV >= 0.1 ? 3 : digitV >= 0.01 ? 0.5 : 0.2;
}

/** Below this a reading counts as nothing: a fiftieth of the reference, plus the last digit that the meter may be off. */
export const nothingBelowV = (referenceV: number, situation: Situation): number =>
  NOTHING_RATIO * referenceV + smallestDigitV(situation.facts);

/** A refusal of readings taken with too little signal for this meter. */
export function tooLittle(reading: string, valueV: number | undefined, situation: Situation) {
  const leastV = leastReferenceV(situation);
  if (valueV === undefined || valueV >= leastV) return null;
  const digit = formatQuantity(smallestDigitV(situation.facts), 'V', 1);
  return {
    reading,
    message: `Too little for a meter that shows ${digit}. Turn the volume up until this reads at least ${formatQuantity(leastV, 'V', 2)}, then take all readings again.`,
  };
}

function rearBands(frontV: number, situation: Situation): readonly Band[] {
  const nothingV = nothingBelowV(frontV, situation);
  const [lowV, highV] = [EQUAL_LOW_RATIO * frontV, EQUAL_HIGH_RATIO * frontV];
  return [
    { label: 'nothing', low: 0, high: nothingV, mood: 'bad' },
    { label: 'weak', low: nothingV, high: lowV, mood: 'unsure' },
    { label: 'healthy', low: lowV, high: highV, mood: 'good' },
    { label: 'louder than the front', low: highV, high: 2 * highV, mood: 'unsure' },
  ];
}

const rearReadings: ReadingStep['readings'] = {
  frontV: { ...acReading('Front pair'), probes: { red: 'unit-front-plus', black: 'unit-front-minus' } },
  leftV: acReading('Rear left pair'),
  rightV: acReading('Rear right pair'),
};
const frontOf = (values: Values) => values['frontV'] ?? 0;

function judgeRear(values: Values, situation: Situation): 'ok' | 'uneven' | 'none' | 'one-only' {
  const bands = rearBands(frontOf(values), situation);
  const labels = [values['leftV'], values['rightV']].map((valueV) => bandOf(bands, valueV ?? 0)?.label);
  const silent = labels.filter((label) => label === 'nothing').length;
  if (silent > 0) return silent === 2 ? 'none' : 'one-only';
  return labels.every((label) => label === 'healthy') ? 'ok' : 'uneven';
}

/** What keeps ears and speakers whole: no speaker on an amplifier, and short bursts where the head unit drives them. */
function beforeTheTone({ rig, facts }: Situation): readonly string[] {
  const ampKnown = (rig.amps?.length ?? 0) > 0;
  return [
    ...(rig.amps?.length === 0 ? [] : ['An amplifier on the bike: key off, speakers off the amplifier, key on.']),
    ...(smallestDigitV(facts) >= 0.1 && !(ampKnown && rig.frontFedBy === 'amp')
      ? [
          'Your meter needs 3 V to see the difference. Speakers on the head unit are loud then: ears covered, bursts under 5 seconds.',
        ]
      : []),
  ];
}

/** A short on the run silences an output that is switched on. With the run unplugged it cannot. */
const rearUnplugged = ({ rig }: Situation): readonly string[] =>
  chosen(rig, 'rearFedBy') === 'amp'
    ? []
    : [
        'Key off, rear speakers unplugged at any plug you can reach, key on: a short on their wires cannot hide a live output then.',
      ];

type RearPairOutcome = 'ok' | 'uneven' | 'none' | 'one-only';

/** The rear pairs of the head unit, judged against the front pair read in the same step, since nobody knows the volume. */
export const rearPair = measurement<RearPairOutcome>({
  id: 'rear-pair',
  short: 'Rear pairs at the head unit',
  ask: 'What AC voltage is across the rear pairs at the head unit, next to the front pair?',
  phone:
    'Tone on, same volume step for all three. Meter on AC volts. Front pair first, then rear left, then rear right. Read me each number.',
  how: (s) => [
    ...beforeTheTone(s),
    ...rearUnplugged(s),
    'Bass and treble flat, loudness off, fader and balance in the middle.',
    `Play the 400 Hz tone. Come up from zero until the front pair reads ${formatQuantity(leastReferenceV(s) * 1.2, 'V', 2)} or more. Leave the volume there.`,
    'One probe on each wire of a pair, never from a wire to metal. Front, rear left, rear right.',
    chosen(s.rig, 'rearFedBy') === 'amp'
      ? 'The head unit’s plug is out of reach? Use the signal wires on the way to the amplifier.'
      : 'The head unit’s plug is out of reach? Use any rear plug on the way, on the side toward the head unit.',
  ],
  why: 'Only a tone shows whether a channel is let through. Half the supply as DC may stand on the wires of a channel that is switched off, too.',
  tool: 'meter',
  minutes: 8,
  observes: ['settings', 'profile', 'unit', 'unit-leads'],
  cautions: ['bridge', 'loud-tone', 'flat-battery'],
  tones: ['400hz'],
  probes: { red: 'unit-rear-plus', black: 'unit-rear-minus' },
  readings: rearReadings,
  unusable: (values, s) => tooLittle('frontV', values['frontV'], s),
  bands: (reading, values, s) =>
    reading === 'frontV' || values['frontV'] === undefined || tooLittle('frontV', values['frontV'], s)
      ? null
      : rearBands(frontOf(values), s),
  judge: judgeRear,
  healthy: (values) =>
    values['frontV'] === undefined
      ? `Healthy is ${EQUAL_LOW_RATIO} to ${EQUAL_HIGH_RATIO} of what the front pair reads.`
      : `Healthy is ${formatRange(EQUAL_LOW_RATIO * frontOf(values), EQUAL_HIGH_RATIO * frontOf(values), 'V')}: the front reading times ${EQUAL_LOW_RATIO} to ${EQUAL_HIGH_RATIO}.`,
  outcomes: {
    ok: 'level with the front',
    uneven: 'not level with the front',
    none: 'nothing comes out',
    'one-only': 'only one side',
  },
  article: 'measure-a-speaker-pair',
  givenUnder: ['meter-digit'],
  ifCannot: 'We go on with what can be reached.',
});

/** The same once more, where a rear that is there and weak may be a fader, a balance or a bass control that moved. */
export const rearPairAgain = measurement<RearPairOutcome>({
  ...rearPair,
  id: 'rear-pair-again',
  short: 'Rear pairs, once more',
  ask: 'With fader, balance, bass and treble exactly at 0: what do the same three pairs read now?',
  phone:
    'Set fader, balance, bass and treble to zero, loudness off. Same tone, front pair first, then rear left, rear right. Numbers?',
  how: (s) => [
    ...beforeTheTone(s),
    ...rearUnplugged(s),
    'Fader and balance exactly at 0. Bass and treble flat, loudness and speed volume off, rear control up.',
    `Play the 400 Hz tone until the front pair reads ${formatQuantity(leastReferenceV(s) * 1.2, 'V', 2)} or more. Leave the volume there.`,
    'Front, rear left, rear right, as before.',
  ],
  why: 'A rear pair that is weak, or there on one side only, is more often a setting than a broken output.',
  minutes: 3,
  givenUnder: ['meter-digit', 'rear-pair'],
  ifCannot: 'We go on with the first reading.',
});

/** How the rear pairs were read: a break before the place, or a short after it, looks like a head unit that sends nothing. */
export const rearPairPlace = choice<'unit' | 'on-the-way' | 'loaded'>({
  id: 'rear-pair-place',
  short: 'Where it was measured',
  ask: 'Where did you measure, and was the rear unplugged?',
  phone:
    'Where did the probes sit: right behind the radio, or at some plug on the way back? And were the rear speakers unplugged?',
  how: [
    'The head unit’s own plug is the one that goes into its back.',
    'On an amplifier the rear counts as unplugged: its speakers do not hang on the head unit.',
  ],
  why: 'A plug left apart behind the fairing, or a short on the speaker run, reads exactly like a head unit that sends nothing.',
  tool: 'none',
  minutes: 0.2,
  observes: [],
  options: {
    unit: 'At the head unit’s own plug, rear unplugged',
    'on-the-way': 'At a plug or wire on the way, rear unplugged',
    loaded: 'The rear speakers were still plugged in',
  },
  outcomes: { unit: 'at the head unit', 'on-the-way': 'on the way', loaded: 'with the rear plugged in' },
  givenUnder: ['rear-pair'],
  ifCannot: 'We take it as somewhere on the way, with the rear plugged in.',
});

/** Rear pairs that read so little that the ear calls it silent: 20 dB under the front. */
const SILENT_RATIO = 0.1;

/** Whether both rear pairs give nothing, or so little that it is silence to an ear. */
export function rearPairSilent(findings: Findings): boolean {
  const found = rearPairFound(findings);
  if (found !== 'uneven') return found === 'none';
  const again = findings.outcome(rearPairAgain.id) === 'uneven';
  const { frontV = 0, leftV = 0, rightV = 0 } = findings.values(again ? rearPairAgain.id : rearPair.id);
  return Math.max(leftV, rightV) < SILENT_RATIO * frontV;
}

/** What was found at the rear pairs: the second reading where there was one. */
export function rearPairFound({ outcome }: Findings): string | undefined {
  const again = outcome(rearPairAgain.id);
  return again === undefined || again === 'cannot' ? outcome(rearPair.id) : again;
}

/** Whether the amplifier in question takes the head unit's own rear pairs, as far as anybody knows. */
export const fedFromRear = (situation: Situation) => ampDriving(situation.rig, 'rear')?.fedFrom !== 'front';

/** Whether the amplifier that a case is about hears what the head unit sends to the rear. */
export const ampHearsRear = (situation: Situation) => ampPair(situation) === 'rear' && fedFromRear(situation);
