import type { Corner } from '../../rig/corner.ts';
import type { Moment } from '../../world/moment.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { HARSH_DB } from '../../world/symptoms/tone.ts';

/* How a rider says that it got worse, by what he hears before and after. */

export type Worse = 'rear-silent' | 'quiet-thin' | 'harsh' | 'bass-with-engine';

/** So much less power is heard as quieter. An estimate: 4 dB. */
const QUIETER_RATIO = 10 ** -0.4;
/** A tone that moves so far against the rest is heard: 2 dB. An estimate. */
const MOVES_RATIO = 10 ** 0.1;
/** A loud step, 6 dB under the loudest: bass is heard to break up there. */
const LOUD: Partial<Moment> = { toneHz: 80, volumeRatio: 0.5, averageRatio: 1 / 8 };

const powers = (bike: Ridden, moment: Partial<Moment>): readonly number[] => {
  const { heard } = bike.at(moment);
  return bike.fitted.map((corner: Corner) => heard?.[corner].powerW ?? 0);
};
const plays = (bike: Ridden, rear: boolean): boolean => {
  const { heard } = bike.at({});
  return bike.fitted.some((corner) => corner.startsWith('rear') === rear && heard?.[corner].plays);
};
const harsh = (bike: Ridden): boolean => {
  const { heard } = bike.at(LOUD);
  return bike.fitted.some((corner) => (heard?.[corner].overdriveDb ?? 0) > HARSH_DB);
};
/** How the bass stands to the middle in one state of the engine. */
const bassShare = (bike: Ridden, engine: Moment['engine']): number => {
  const [bass = 0, middle = 0] = [80, 400].map((toneHz) => Math.max(0, ...powers(bike, { toneHz, engine })));
  return middle > 0 ? bass / middle : 0;
};
const moves = (bike: Ridden): boolean => {
  const [off, idle] = [bassShare(bike, 'off'), bassShare(bike, 'idle')];
  return off > 0 && idle > 0 && (idle / off > MOVES_RATIO || off / idle > MOVES_RATIO);
};

/** Everything that got worse, the plainest first. Empty where nothing did. */
export function gotWorse(before: Ridden, after: Ridden): readonly Worse[] {
  const [was, is] = [powers(before, {}), powers(after, {})];
  const quieter = was.some((power, i) => power > 0 && (is[i] ?? 0) > 0 && (is[i] ?? 0) / power < QUIETER_RATIO);
  return [
    ...(plays(before, true) && !plays(after, true) ? (['rear-silent'] as const) : []),
    ...(quieter || (plays(before, false) && !plays(after, false)) ? (['quiet-thin'] as const) : []),
    ...(harsh(after) && !harsh(before) ? (['harsh'] as const) : []),
    ...(moves(after) && !moves(before) ? (['bass-with-engine'] as const) : []),
  ];
}
