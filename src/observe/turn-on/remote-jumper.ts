import { ampOf, changed, lampOf, withAmp } from '../bike.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const sayRemoteJumper: Say = ({ bike }) => {
  if (ampOf(bike) === null) return CANNOT;
  // The selector is set to wire for this, as the step says.
  const set = changed(bike, 'selector on wire', withAmp({ turnOn: 'wire' }));
  const lamp = lampOf(set, { jumper: true, toneHz: null, apart: ['remote'] });
  return option(lamp === 'normal' ? 'wakes' : lamp === 'off' ? 'dead' : lamp);
};
