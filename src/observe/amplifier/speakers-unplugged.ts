import { offered } from '../../steps/outcome.ts';
import { ampOf, lampOf } from '../bike.ts';
import { whenToLook } from '../left.ts';
import { CANNOT, option, type Say } from '../observer.ts';

export const saySpeakersUnplugged: Say = ({ bike, step, situation }) => {
  if (ampOf(bike) === null) return CANNOT;
  const lamp = lampOf(bike, { ...whenToLook(bike), apart: ['amp-outputs'] });
  if (lamp === 'normal') return option('clears');
  return option(lamp === 'off' && offered(step, situation).some(([name]) => name === 'dark') ? 'dark' : 'stays');
};
