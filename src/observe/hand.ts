import { digitAt, type Kind, type Luck, shown } from '../world/meter.ts';
import type { Observer } from './observer.ts';

/** A meter in somebody's hand, for the time of one step. */
export interface Hand {
  /** What is typed of a value: the number that the meter shows, with its unit. */
  typed(kind: Kind, value: number): string;
}

const UNIT: Readonly<Record<Kind, string>> = { dc: 'V', ac: 'V', ohm: 'Ω', amp: 'A' };

/** A statement of accuracy is a limit: most meters lie well inside. The mean of three draws, from −1 to 1. */
const luckOf = ({ draw }: Observer): number => (2 * (draw() + draw() + draw())) / 3 - 1;

/** What it is off by in proportion is the same for all readings of a step, so it cancels in their ratios. */
export function hold(observer: Observer): Hand {
  const { meter } = observer;
  const ofReading = new Map<Kind, number>();
  const luck = (kind: Kind): Luck => {
    const known = ofReading.get(kind) ?? luckOf(observer);
    ofReading.set(kind, known);
    return { ofReading: known, digits: luckOf(observer) };
  };
  return {
    typed: (kind, value) => {
      const reads = shown(meter, kind, value, luck(kind));
      if (reads === Infinity) return 'OL';
      const decimals = Math.max(0, -Math.floor(Math.log10(digitAt(meter, kind, value)) + 1e-9));
      return `${reads.toFixed(decimals)} ${UNIT[kind]}`;
    },
  };
}
