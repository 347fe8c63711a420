import { gainFromVoltageRatioDb } from '../../compute/decibel.ts';
import { ratioBand } from '../../compute/meter.ts';
import {
  AMPLIFIED_SAME_SHAPE,
  type ProfileShape,
  profileGainDb,
  UNALTERED_SHAPE,
} from '../../compute/profile-response.ts';
import { estimate } from '../../rig/rig.ts';
import type { StepId } from '../../steps/ids.ts';
import type { Findings } from '../../steps/outcome.ts';
import { smallestDigitV } from '../../steps/tools/smallest-digit.ts';

/** A measured tone against 400 Hz, with what the meter leaves possible on either side. */
export interface Point {
  readonly frequencyHz: number;
  readonly gainDb: number;
  readonly lowDb: number;
  readonly highDb: number;
  readonly engineRunning: boolean;
}

const REFERENCE_HZ = 400;
const TONES = { v80V: 80, v400V: REFERENCE_HZ, v1000V: 1000, v4000V: 4000 } as const;
/** Error bars end here: a meter that could not tell a tone from nothing leaves everything below open. */
const FLOOR_DB = -18;

const dB = (voltageRatio: number) =>
  voltageRatio > 0 ? Math.max(FLOOR_DB, gainFromVoltageRatioDb({ voltageRatio })) : FLOOR_DB;

function pointsOf(findings: Findings, step: StepId, engineRunning: boolean): readonly Point[] {
  const values = findings.values(step);
  const denominatorV = values['v400V'];
  if (!denominatorV) return [];
  return Object.entries(TONES).flatMap(([name, frequencyHz]) => {
    const numeratorV = values[name];
    if (numeratorV === undefined || numeratorV <= 0) return [];
    const at = { frequencyHz, gainDb: dB(numeratorV / denominatorV), engineRunning };
    if (frequencyHz === REFERENCE_HZ) return [{ ...at, lowDb: 0, highDb: 0 }];
    const { lowRatio, highRatio } = ratioBand({
      numeratorV,
      denominatorV,
      smallestDigitV: smallestDigitV(findings.facts),
    });
    return [{ ...at, lowDb: dB(lowRatio), highDb: highRatio === Infinity ? -FLOOR_DB : dB(highRatio) }];
  });
}

/** Every tone that was measured, engine off and running, as decibels against 400 Hz. */
export const measuredPoints = (findings: Findings): readonly Point[] => [
  ...pointsOf(findings, 'tones-off', false),
  ...pointsOf(findings, 'tones-running', true),
];

export interface Curve {
  readonly name: string;
  readonly points: readonly { readonly frequencyHz: number; readonly gainDb: number }[];
}

const FREQUENCIES_HZ = Array.from({ length: 49 }, (_, i) => 40 * 200 ** (i / 48));

const curve = (name: string, profile: ProfileShape): Curve => {
  const gainAt = (frequencyHz: number) => profileGainDb({ profile, frequencyHz, engineRunning: false });
  const reference = gainAt(REFERENCE_HZ);
  return {
    name,
    points: FREQUENCIES_HZ.map((frequencyHz) => ({ frequencyHz, gainDb: gainAt(frequencyHz) - reference })),
  };
};

/** The responses that the stored profiles have with the engine off, against 400 Hz, where their levels cancel. */
export const candidateCurves = (findings: Findings): readonly Curve[] => [
  curve('bass boosted', { ...UNALTERED_SHAPE, boostDb: estimate(findings.rig, 'boostDb').value }),
  curve('flat', AMPLIFIED_SAME_SHAPE),
];
