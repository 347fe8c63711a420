import { usable } from '../steps/outcome.ts';
import type { Answer } from '../steps/step.ts';
import type { Moment } from '../world/moment.ts';
import type { Ridden } from '../world/symptoms/index.ts';
import { hold } from './hand.ts';
import { centred, flat } from './left.ts';
import { type Asked, CANNOT } from './observer.ts';
import { acAt, probesAt } from './probes.ts';

/* What the stored profile does to tones across the front pair. */

const TONE_OF = { v400V: 400, v80V: 80, v1000V: 1000, v4000V: 4000 } as const;

type Tone = keyof typeof TONE_OF;

/** Fewer digits than this tell no difference of a tenth, and nobody writes them down. */
const LEAST_DIGITS = 10;

/** Tone controls flat, fader in the middle. */
export const prepared = (bike: Ridden) => centred(flat(bike));

export const frontV = ({ observer }: Asked, bike: Ridden, moment: Partial<Moment>): number => {
  const pairs = (['front-left', 'front-right'] as const).map((corner) =>
    probesAt(bike, ['unit-front-plus', 'unit-front-minus'], corner),
  );
  return Math.max(...pairs.map((pair) => (pair ? acAt(bike, moment, pair, observer.meter) : 0)));
};

/** All tones at one step of the volume; the optional ones where this meter can show them. */
export function tonesAt(asked: Asked, bike: Ridden, moment: Partial<Moment>, named?: readonly string[]): Answer {
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
export function firstUsable(
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

export const at400V = (asked: Asked, bike: Ridden) => (volumeRatio: number) =>
  frontV(asked, bike, { toneHz: 400, volumeRatio });
