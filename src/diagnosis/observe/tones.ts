import { usable, valuesIn } from '../../steps/outcome.ts';
import { cleanOffV, referenceToneV, tonesOff, tonesRunning, topStep } from '../../steps/profile-tones.ts';
import type { Answer, ReadingStep } from '../../steps/step.ts';
import type { Moment } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { hold } from './hand.ts';
import { centred, flat } from './left.ts';
import { type Asked, CANNOT, type Says } from './observer.ts';
import { acAt, probesAt } from './probes.ts';
import { stepsFrom, stepsNear } from './volume.ts';

/* What the stored profile does to tones across the front pair. */

const TONE_OF = { v400V: 400, v80V: 80, v1000V: 1000, v4000V: 4000 } as const;
type Tone = keyof typeof TONE_OF;
/** Fewer digits than this tell no difference of a tenth, and nobody writes them down. */
const LEAST_DIGITS = 10;

/** Tone controls flat, fader in the middle. */
const prepared = (bike: Ridden) => centred(flat(bike));

const frontV = ({ observer }: Asked, bike: Ridden, moment: Partial<Moment>): number => {
  const pairs = (['front-left', 'front-right'] as const).map((corner) =>
    probesAt(bike, ['unit-front-plus', 'unit-front-minus'], corner),
  );
  return Math.max(...pairs.map((pair) => (pair ? acAt(bike, moment, pair, observer.meter) : 0)));
};

/** All tones at one step of the volume; the optional ones where this meter can show them. */
function tonesAt(asked: Asked, bike: Ridden, moment: Partial<Moment>, named?: readonly string[]): Answer {
  const hand = hold(asked.observer);
  const leastV = LEAST_DIGITS * asked.observer.meter.acDigitV;
  const readings = (Object.keys(TONE_OF) as Tone[]).flatMap((name) => {
    const volts = frontV(asked, bike, { ...moment, toneHz: TONE_OF[name] });
    const wanted = named ? named.includes(name) : name === 'v400V' || name === 'v80V' || volts >= leastV;
    return wanted ? [[name, hand.typed('ac', volts)]] : [];
  });
  return { readings: Object.fromEntries(readings) };
}

/** The volume is turned down until the readings can be used. */
function firstUsable(
  { step, situation }: Asked,
  volumes: readonly number[],
  answerAt: (volumeRatio: number) => Answer,
): Answer {
  for (const volumeRatio of volumes) {
    const answer = answerAt(volumeRatio);
    if (usable(step, answer, situation)) return answer;
  }
  return CANNOT;
}

const at400V = (asked: Asked, bike: Ridden) => (volumeRatio: number) =>
  frontV(asked, bike, { toneHz: 400, volumeRatio });

const LAST_STEP = 1;
/** Below this share of its clean output no head unit clips, so the climb begins here. */
const CLEAN_SHARE = 0.4;

/** Step by step up, until one adds less than the one before, and one back. Null where the scale ends at once. */
function climbed(volumes: readonly number[], readV: (volumeRatio: number) => number): number | null {
  let [lastV, addedV]: [number | null, number] = [null, 0];
  for (const volumeRatio of volumes) {
    const volts = readV(volumeRatio);
    if (lastV !== null && volts - lastV < addedV) return lastV;
    addedV = lastV === null ? 0 : volts - lastV;
    lastV = volts;
  }
  return lastV;
}

export const TONES: Says = {
  [tonesOff.id]: (asked) => {
    const bike = prepared(asked.bike);
    const volumes = stepsNear(referenceToneV(asked.situation), at400V(asked, bike));
    return firstUsable(asked, volumes, (volumeRatio) => tonesAt(asked, bike, { volumeRatio }));
  },
  [tonesRunning.id]: (asked) => {
    const bike = prepared(asked.bike);
    const { facts } = asked.situation;
    const off = valuesIn(facts[tonesOff.id], tonesOff as unknown as ReadingStep);
    // The volume stays where it was, so the reading with the engine off tells the step.
    const wasV = off['v400V'] ?? referenceToneV(asked.situation);
    const volumes = stepsNear(wasV, at400V(asked, bike));
    const named = Object.keys(off).length > 0 ? Object.keys(off) : undefined;
    return firstUsable(asked, volumes, (volumeRatio) => tonesAt(asked, bike, { volumeRatio, engine: 'idle' }, named));
  },
  [topStep.id]: (asked) => {
    const bike = prepared(asked.bike);
    const at80V = (volumeRatio: number) => frontV(asked, bike, { toneHz: 80, volumeRatio, apart: ['amp-outputs'] });
    const topV = climbed(stepsFrom(CLEAN_SHARE * cleanOffV(asked.situation).lowV, at80V), at80V) ?? at80V(LAST_STEP);
    return topV > 0 ? { readings: { topV: hold(asked.observer).typed('ac', topV) } } : CANNOT;
  },
};
