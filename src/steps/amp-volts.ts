import { voltageRatio } from '../compute/decibel.ts';
import { gainTargetV } from '../compute/gain.ts';
import { HALF_SUPPLY_PAIR_DIFFERENCE_V, halfSupplyBandV } from '../compute/half-supply.ts';
import { BRIDGE_LOSS_UNLOADED_V, cleanOutputV } from '../compute/level.ts';
import { AC_DIGITS } from '../compute/meter.ts';
import { formatQuantity, formatRange } from '../compute/quantity.ts';
import { ampDriving, ampEstimate, estimate } from '../rig/rig.ts';
import { smallestDigitV } from './meter.ts';
import { acReading, fedFromRear, leastReferenceV, nothingBelowV, tooLittle } from './rear-volts.ts';
import { type Band, bandOf, measurement, type Situation, type Values } from './step.ts';

/** A signal loses next to nothing between two ends of a sound lead. Common practice, no published source. */
const ARRIVES_LOW_RATIO = 0.85;
const ARRIVES_HIGH_RATIO = 1.15;
/** Left and right of a line-level lead, whose own level nobody knows. Common practice, no published source. */
const SIDES_DIFFER_RATIO = 0.1;

/** Whether something stands between the head unit and the amplifier that makes another level of it. */
const onLineLevel = ({ rig }: Situation) => ampDriving(rig, 'rear')?.input === 'line';

/** What arrives when nothing is lost: 15 % to either side, and the last three digits that the meter may be off. */
function arrivingV(sentV: number, situation: Situation) {
  const offV = AC_DIGITS * smallestDigitV(situation.facts);
  const leastV = nothingBelowV(sentV, situation);
  return {
    lowV: Math.max(leastV, ARRIVES_LOW_RATIO * sentV - offV),
    highV: Math.max(leastV, ARRIVES_HIGH_RATIO * sentV + offV),
  };
}

function inputBands(sentV: number, situation: Situation): readonly Band[] {
  const nothingV = nothingBelowV(sentV, situation);
  const nothing = { label: 'nothing', low: 0, high: nothingV, mood: 'bad' } as const;
  if (onLineLevel(situation))
    return [nothing, { label: 'a signal arrives', low: nothingV, high: Math.max(4 * sentV, 6), mood: 'good' }];
  const { lowV, highV } = arrivingV(sentV, situation);
  return [
    nothing,
    { label: 'lost on the way', low: nothingV, high: lowV, mood: 'unsure' },
    { label: 'healthy', low: lowV, high: highV, mood: 'good' },
    { label: 'more than was sent', low: highV, high: 2 * highV, mood: 'unsure' },
  ];
}

/** More than was sent cannot arrive over plain wires: the volume was touched, or a pair was mixed up. */
function moreThanSent(values: Values, situation: Situation) {
  if (onLineLevel(situation) || values['sentV'] === undefined) return null;
  const most = arrivingV(values['sentV'], situation).highV;
  const reading = ['leftV', 'rightV'].find((name) => (values[name] ?? 0) > most);
  return reading === undefined
    ? null
    : {
        reading,
        message:
          'More than was sent cannot arrive over speaker wires. Leave the volume alone, and take all three readings again. Is there a converter in between? Then change “Signal into the amplifier” to a line-level lead.',
      };
}

/** What reaches the rear inputs of the amplifier, against what leaves the head unit at the same volume step. */
export const ampIn = measurement<'ok' | 'low' | 'none'>({
  id: 'amp-in',
  short: 'Rear inputs of the amplifier',
  ask: 'Does the signal for the rear arrive at the amplifier’s inputs?',
  phone:
    'Same tone, same volume. First the pair that feeds it, at the radio’s plug, then the thin wires where they enter the amplifier.',
  how: (s) => [
    'Key off, speakers off the amplifier, key on.',
    `Play the 400 Hz tone. Come up from zero until the reference reads ${formatQuantity(leastReferenceV(s) * 1.2, 'V', 2)} or more. Leave the volume there.`,
    `Reference: one ${fedFromRear(s) ? 'rear' : 'front'} pair as it leaves the head unit.`,
    fedFromRear(s)
      ? 'Then the rear left and rear right inputs at the amplifier, plug fitted.'
      : 'Then the left and right inputs that are plugged in, at the amplifier. The rear takes its signal from them.',
  ],
  why: 'What leaves the head unit and does not arrive is lost in a plug, a lead or an adapter between the two.',
  tool: 'meter',
  minutes: 8,
  observes: ['settings', 'profile', 'unit', 'unit-leads'],
  cautions: ['bridge', 'loud-tone', 'flat-battery'],
  tones: ['400hz'],
  probes: { red: 'amp-in-plus', black: 'amp-in-minus' },
  readings: {
    sentV: {
      ...acReading('The pair that feeds it, at the head unit'),
      probes: (s) =>
        fedFromRear(s)
          ? { red: 'unit-rear-plus', black: 'unit-rear-minus' }
          : { red: 'unit-front-plus', black: 'unit-front-minus' },
    },
    leftV: acReading('Left input'),
    rightV: acReading('Right input'),
  },
  unusable: (values, s) => tooLittle('sentV', values['sentV'], s) ?? moreThanSent(values, s),
  bands: (reading, values, s) =>
    reading === 'sentV' || values['sentV'] === undefined || tooLittle('sentV', values['sentV'], s)
      ? null
      : inputBands(values['sentV'], s),
  judge: (values, s) => {
    const bands = inputBands(values['sentV'] ?? 0, s);
    const [leftV, rightV] = [values['leftV'] ?? 0, values['rightV'] ?? 0];
    const labels = [leftV, rightV].map((valueV) => bandOf(bands, valueV)?.label);
    if (labels.every((label) => label === 'nothing')) return 'none';
    if (onLineLevel(s)) {
      const alikeV = SIDES_DIFFER_RATIO * Math.max(leftV, rightV) + AC_DIGITS * smallestDigitV(s.facts);
      return labels.includes('nothing') || Math.abs(leftV - rightV) > alikeV ? 'low' : 'ok';
    }
    return labels.every((label) => label === 'healthy') ? 'ok' : 'low';
  },
  healthy: (values, s) => {
    if (onLineLevel(s))
      return 'A converter makes its own level, so only this counts: a signal on both sides, left and right within 10 %.';
    if (values['sentV'] === undefined) return 'Healthy is what leaves the head unit, within 15 %.';
    const { lowV, highV } = arrivingV(values['sentV'], s);
    return `Healthy is ${formatRange(lowV, highV, 'V')}: what was sent, within 15 % and the last three digits of the meter.`;
  },
  outcomes: { ok: 'all of it arrives', low: 'part is lost on the way', none: 'nothing arrives' },
  article: 'measure-a-speaker-pair',
  givenUnder: ['meter-digit', 'rear-drive', 'rear-amp-input'],
  ifCannot: 'Push the signal plug home, key off, and go on.',
});

/** The level that the head unit sends on its speaker wires: all it has, or what an amplified profile leaves of it. */
export type SentLevel = 'full' | 'lowered';

/**
 * The gain that makes full power out of the loudest clean input on speaker wires, from the amplifier's rating and the
 * profile's level. On a line-level lead nobody knows what the converter makes of it, so there is no such figure.
 */
export function expectedGainRatio(situation: Situation, level: SentLevel): number {
  const amp = ampDriving(situation.rig, 'rear') ?? {};
  const targetV = gainTargetV({
    powerW: ampEstimate(amp, 'powerW').value,
    loadOhm: ampEstimate(amp, 'ratedOhm').value,
  });
  const loudestV = cleanOutputV({
    supplyV: estimate(situation.rig, 'supplyRunningV').value,
    lossV: BRIDGE_LOSS_UNLOADED_V,
  });
  if (level === 'full') return targetV / loudestV;
  return targetV / (loudestV * voltageRatio({ gainDb: -estimate(situation.rig, 'loweredByDb').value }));
}

/** Both gains, since nobody knows which level the profile sends until it was read. */
export const gainInWords = (situation: Situation): string =>
  `${expectedGainRatio(situation, 'full').toFixed(1)} times (full level) or ${expectedGainRatio(situation, 'lowered').toFixed(1)} times (amplified profile)`;

/** A gain this far under the expected one starves the speakers: 9 dB, an eighth of the power. An estimate. */
const LOW_GAIN_RATIO = voltageRatio({ gainDb: -9 });
const NO_GAIN_RATIO = 0.02;

/** Half as much again as the residue or the last digit is still not the tone. An estimate. */
const HIDDEN_RATIO = 1.5;

/** An amplifier on a line-level lead makes more of it, whatever the converter gives. */
const LEAST_LINE_GAIN = 1;

/** The least that a healthy amplifier makes of this input. */
const leastOutputV = (values: Values, situation: Situation) =>
  (onLineLevel(situation) ? LEAST_LINE_GAIN : LOW_GAIN_RATIO * expectedGainRatio(situation, 'full')) *
  (values['inV'] ?? 0);

function outputBands(values: Values, situation: Situation): readonly Band[] {
  const inV = values['inV'] ?? 0;
  const nothingV = Math.max(
    NO_GAIN_RATIO * inV,
    HIDDEN_RATIO * (values['residueV'] ?? 0),
    HIDDEN_RATIO * smallestDigitV(situation.facts),
  );
  const healthyV = Math.max(nothingV, leastOutputV(values, situation));
  return [
    { label: 'nothing', low: 0, high: nothingV, mood: 'bad' },
    { label: 'weak', low: nothingV, high: healthyV, mood: 'unsure' },
    {
      label: 'healthy',
      low: healthyV,
      high: Math.max(4 * healthyV, 4 * expectedGainRatio(situation, 'full') * inV),
      mood: 'good',
    },
  ];
}

/** 20 dB under the gain that is right is silence to an ear; what is less far off only makes it weaker. */
export function silencedByGain(values: Values, situation: Situation): boolean {
  // Whoever cannot tell which level the profile sends takes the lower one: setting the gain harms nothing.
  const gainRatio = onLineLevel(situation) ? LEAST_LINE_GAIN : expectedGainRatio(situation, 'lowered');
  const rightV = gainRatio * (values['inV'] ?? 0);
  return Math.max(values['leftV'] ?? 0, values['rightV'] ?? 0) < voltageRatio({ gainDb: -20 }) * rightV;
}

/** A refusal of readings in which residue would pass for a dead output, or hide a healthy one. */
function hidden(values: Values, situation: Situation) {
  const { inV, residueV } = values;
  const leastV = leastOutputV(values, situation);
  if (!inV || residueV === undefined || HIDDEN_RATIO * residueV <= leastV) return null;
  const neededV = (inV * HIDDEN_RATIO * residueV) / leastV;
  return {
    reading: 'inV',
    message: `The residue of ${formatQuantity(residueV, 'V', 2)} would hide the tone. Turn the volume up until this reads at least ${formatQuantity(neededV, 'V', 2)}, then take all readings again.`,
  };
}

const unusableOutput = (values: Values, situation: Situation) =>
  tooLittle('inV', values['inV'], situation) ?? hidden(values, situation);

const ampReading = (label: string) => ({
  label,
  unit: 'V' as const,
  possible: [0, 120] as const,
  impossible: 'No amplifier on a 12 V bike gives that. Is the meter on AC volts, and on the right range?',
});

/** What the amplifier makes of its input. Residue of its switching stage is read first, with the tone off. */
export const ampOut = measurement<'ok' | 'low' | 'none'>({
  id: 'amp-out',
  short: 'Rear outputs of the amplifier',
  ask: 'What comes out of the amplifier’s rear outputs?',
  phone:
    'Speakers unplugged from the amplifier. Tone off first: read the thick output wires. Then tone on: one input, then both rear outputs.',
  how: [
    'Key off, speakers off the amplifier, key on.',
    'Rear channels on full range for this: behind a low-pass a 400 Hz tone looks dead.',
    'Tone off: read one rear output. What shows now is residue of the switching stage, not sound.',
    'Play the 400 Hz tone at the same volume as before: one rear input, then rear left and rear right output.',
  ],
  why: 'An input that is fine and an output that is not: the fault is inside the amplifier or on its knobs.',
  tool: 'meter',
  minutes: 8,
  observes: ['settings', 'profile', 'unit', 'unit-leads', 'amp-supply', 'amp'],
  cautions: ['amp-output', 'key-off', 'bridge', 'loud-tone', 'flat-battery'],
  tones: ['400hz'],
  probes: { red: 'amp-out-plus', black: 'amp-out-minus' },
  readings: {
    residueV: ampReading('Rear output, tone off'),
    inV: { ...acReading('Rear input, tone on'), probes: { red: 'amp-in-plus', black: 'amp-in-minus' } },
    leftV: ampReading('Rear left output'),
    rightV: ampReading('Rear right output'),
  },
  unusable: unusableOutput,
  bands: (reading, values, s) =>
    (reading === 'leftV' || reading === 'rightV') && values['inV'] !== undefined && !unusableOutput(values, s)
      ? outputBands(values, s)
      : null,
  judge: (values, s) => {
    const bands = outputBands(values, s);
    const labels = [values['leftV'], values['rightV']].map((valueV) => bandOf(bands, valueV ?? 0)?.label ?? 'healthy');
    if (labels.includes('nothing')) return 'none';
    return labels.includes('weak') ? 'low' : 'ok';
  },
  healthy: (values, s) => {
    const full = onLineLevel(s)
      ? 'On a line-level lead the amplifier makes more out of its input, never less.'
      : `This amplifier reaches full power with about ${gainInWords(s)} its input.`;
    const healthy = outputBands(values, s).find(({ label }) => label === 'healthy');
    return values['inV'] === undefined || !healthy
      ? full
      : `${full} Healthy here is above ${formatQuantity(healthy.low, 'V', 2)}.`;
  },
  outcomes: { ok: 'healthy', low: 'too little', none: 'nothing comes out' },
  givenUnder: ['meter-digit', 'rear-drive', 'rear-amp-input'],
  ifCannot: 'We exchange a front and a rear output by ear instead.',
});

const wireReading = (label: string) => ({
  label,
  unit: 'V' as const,
  possible: [-0.5, 18] as const,
  impossible: 'No wire on a 12 V bike carries that against battery minus. Is the meter on DC volts?',
});

function halfBands(batteryV: number): readonly Band[] {
  const { lowV, highV } = halfSupplyBandV({ supplyV: batteryV });
  return [
    { label: 'no DC', low: -0.5, high: 0.25 * batteryV, mood: 'bad' },
    { label: 'unclear', low: 0.25 * batteryV, high: lowV, mood: 'unsure' },
    { label: 'half the supply', low: lowV, high: highV, mood: 'good' },
    { label: 'too high', low: highV, high: 1.1 * batteryV, mood: 'bad' },
  ];
}

/** Half the supply as DC on each wire shows that a wire reaches a live bridge output. It proves nothing about a channel. */
export const halfSupply = measurement<'half' | 'zero' | 'one-odd' | 'unclear'>({
  id: 'half-supply',
  short: 'DC on the rear input wires',
  ask: 'Music paused: what DC voltage is on each rear input wire, against battery minus?',
  phone:
    'Meter on DC volts, black on the battery minus post. Battery plus first. Then red on each of the thin rear input wires in turn.',
  how: [
    'Head unit on, music paused.',
    'Black probe on the battery minus post. Red on battery plus: note it.',
    'Red on both wires of one rear input pair at the amplifier, on the side toward the head unit.',
  ],
  why: 'A wire that reaches a live output rests at about half the supply. No DC where there is AC at the head unit means that the wire does not come from there.',
  tool: 'meter',
  minutes: 6,
  observes: ['unit', 'unit-leads'],
  cautions: ['bridge'],
  probes: { red: 'amp-in-plus', black: 'battery-minus' },
  readings: {
    batteryV: {
      label: 'Battery plus',
      unit: 'V',
      probes: 'not drawn',
      possible: [8, 16],
      impossible:
        'A 12 V battery that runs the head unit reads 8 to 16 V. Is the meter on DC volts, black on the minus post?',
    },
    plusV: wireReading('One wire of the pair'),
    minusV: { ...wireReading('The other wire'), probes: { red: 'amp-in-minus', black: 'battery-minus' } },
  },
  bands: (reading, values) =>
    reading === 'batteryV' || values['batteryV'] === undefined ? null : halfBands(values['batteryV']),
  judge: (values) => {
    const bands = halfBands(values['batteryV'] ?? 12);
    const [plusV = 0, minusV = 0] = [values['plusV'], values['minusV']];
    // The scale ends above the battery; what reads higher still is too high as well.
    const labels = [plusV, minusV].map((valueV) => bandOf(bands, valueV)?.label ?? 'too high');
    if (labels.every((label) => label === 'no DC')) return 'zero';
    const alike = Math.abs(plusV - minusV) <= HALF_SUPPLY_PAIR_DIFFERENCE_V;
    if (!alike || labels.includes('too high')) return 'one-odd';
    return labels.every((label) => label === 'half the supply') ? 'half' : 'unclear';
  },
  healthy: (values) => {
    if (values['batteryV'] === undefined)
      return 'Healthy is 0.40 to 0.55 of the battery reading, both wires within 0.5 V.';
    const { lowV, highV } = halfSupplyBandV({ supplyV: values['batteryV'] });
    return `Healthy is ${formatRange(lowV, highV, 'V')} on each wire, both within ${HALF_SUPPLY_PAIR_DIFFERENCE_V} V.`;
  },
  outcomes: { half: 'half the supply', zero: 'no DC at all', 'one-odd': 'one wire is off', unclear: 'unclear' },
  article: 'half-the-supply-on-a-speaker-wire',
  givenUnder: ['rear-drive'],
});
