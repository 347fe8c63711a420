import { COMPLAINTS, type Ridden, whenAmpGoesOff } from '../../world/symptoms/index.ts';
import { playing } from '../bike.ts';
import { pick } from '../draw.ts';
import { happens, option, type Say } from '../observer.ts';

type When = 'loud' | 'running' | 'times';

/** What is wrong at the stand and comes back at times: how often that is called wrong always. An estimate. */
const CALLED_ALWAYS_SHARE = 0.5;

const OF_A_FAILING = { loud: 'loud', running: 'running', hot: 'times', bumps: 'times', quiet: 'times' } as const;

/** What a rider of this bike could mean, whatever he came for. */
const timesOf = (bike: Ridden): readonly When[] => [
  ...(COMPLAINTS['distortion-at-volume'](bike) === 'yes' ? (['loud'] as const) : []),
  ...(COMPLAINTS['eq-changes-when-engine-starts'](bike) === 'yes' ? (['running'] as const) : []),
  ...(COMPLAINTS['cuts-out'](bike) === 'yes' ? (['times'] as const) : []),
  ...whenAmpGoesOff(bike).map(({ when }): When => OF_A_FAILING[when]),
];

/** Something is silent or weak at the stand, where all play on a sound bike. */
const isWrongNow = (bike: Ridden): boolean => bike.fitted.some((corner) => playing(bike, corner) !== 'plays');

export const sayWhenWrong: Say = ({ found, observer }) => {
  const wrongNow = isWrongNow(found);
  const comesAndGoes = COMPLAINTS['cuts-out'](found) === 'yes';
  if (wrongNow && (!comesAndGoes || happens(observer, CALLED_ALWAYS_SHARE))) return option('always');
  const sound = new Set(timesOf(found.healthy()));
  const all = timesOf(found);
  // What a sound bike of the build does as well is told only where nothing else is wrong.
  const own = all.filter((when) => !sound.has(when));
  const told = own.length > 0 ? own : all;
  return option(told.length > 0 ? pick(observer.draw, told) : wrongNow ? 'always' : 'times');
};
