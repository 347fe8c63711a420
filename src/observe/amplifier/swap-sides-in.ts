import { type Corner, inFrontOf } from '../../rig/corner.ts';
import { beside } from '../../world/mirror.ts';
import type { Ridden } from '../../world/symptoms/symptom.ts';
import { changed, inputNotHome } from '../bike.ts';
import { signalHome } from '../left.ts';
import { CANNOT, happens, option, type Say } from '../observer.ts';
import { cornerOnAmp, over, playsAt } from '../sides-over.ts';

/** How often whoever changes plugs over pushes one home that was not. An estimate. */
const PUSHES_HOME_SHARE = 0.7;

/** The left and right inputs that feed a corner, each in the place of the other. */
const inputsOver = (bike: Ridden, at: number, corner: Corner): Ridden =>
  changed(bike, `inputs over ${corner}`, (world) => ({
    ...world,
    amps: world.amps.map((amp, i) => {
      if (i !== at) return amp;
      const fed = amp.inputs[corner] ? corner : inFrontOf(corner);
      return { ...amp, inputs: over(amp.inputs, fed), inputPlug: over(amp.inputPlug, fed) };
    }),
  }));

export const saySwapSidesIn: Say = (asked) => {
  const { bike, observer } = asked;
  const it = cornerOnAmp(asked);
  if (!it) return CANNOT;
  const [corner, at] = it;
  const pushed = inputNotHome(bike) && happens(observer, PUSHES_HOME_SHARE) ? signalHome(bike) : bike;
  const after = inputsOver(pushed, at, corner);
  if (!playsAt(after, corner)) return option('stays');
  return option(playsAt(after, beside(corner)) ? 'plays' : 'moves');
};
