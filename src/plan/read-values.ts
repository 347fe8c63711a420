import { formatQuantity } from '../compute/quantity.ts';
import type { Findings } from '../steps/outcome.ts';
import { bassRatio } from '../steps/profile/bass-ratio.ts';
import { engineShifts } from '../steps/profile/engine-shifts.ts';
import { smallestDigitV } from '../steps/tools/smallest-digit.ts';
import type { Property } from './profile/profile.ts';

/** What was read of a property, with what the meter leaves possible, and no finer than that; empty where nothing was read. */

/** No finer than its band: whole numbers where the band is wider than 1. */
function ratioWithin(ratio: number, low: number, high: number): string {
  const digits = high - low > 2 ? 0 : 1;
  const [at, from, to] = [ratio, low, high].map((value) => (value === Infinity ? '∞' : value.toFixed(digits)));
  if (high === Infinity) return `${at} times, at least ${from}`;
  return from === to ? `${at} times` : `${at} times, ${from} to ${to} possible`;
}

function tonesRead(f: Findings): string {
  const values = f.values('tones-off');
  if (values['v400V'] === undefined) return '';
  const { ratio, lowRatio, highRatio } = bassRatio(values, f);
  return `80 Hz over 400 Hz is ${ratioWithin(ratio, lowRatio, highRatio)}`;
}

function engineRead(f: Findings): string {
  const running = f.values('tones-running');
  const [bass] = running['v400V'] === undefined ? [] : engineShifts(running, f);
  return bass
    ? `with the engine that ratio is ${ratioWithin(bass.shiftRatio, bass.lowRatio, bass.highRatio)} what it was`
    : '';
}

function rearRead(f: Findings): string {
  const { frontV, leftV = 0, rightV = 0 } = f.values('rear-pair');
  if (!frontV) return '';
  const parts = (
    [
      ['left', leftV],
      ['right', rightV],
    ] as const
  ).map(([side, volts]) =>
    volts <= 2 * smallestDigitV(f.facts) ? `${side} nothing` : `${side} ${(volts / frontV).toFixed(1)}`,
  );
  return `rear over front: ${parts.join(', ')}`;
}

function levelRead(f: Findings): string {
  const { topV } = f.values('top-step');
  return topV === undefined ? '' : `loudest clean step ${formatQuantity(topV, 'V', 2)}`;
}

const READ: Readonly<Record<Property, (f: Findings) => string>> = {
  boosted: tonesRead,
  sameEq: engineRead,
  rear: rearRead,
  lowered: levelRead,
};
export const readingBehind = (property: Property, f: Findings): string => READ[property](f);

/** A pair of the head unit that is silent beside one that plays is a fault of that pair, not of the profile. */
export const deadPair = (f: Findings): readonly string[] =>
  f.outcome('rear-pair') === 'one-only'
    ? [
        'One rear pair gives nothing while the other does: a fault of that pair. Take it on to “No sound from the rear”.',
      ]
    : f.outcome('rear-pair') === 'uneven'
      ? ['The rear pairs are not level with the front: look at fader and balance, then read them again.']
      : [];
