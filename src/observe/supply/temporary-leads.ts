import { ampIsOn, having } from '../bike.ts';
import { whileOff } from '../left.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

export const sayTemporaryLeads: Say = ofItsAmp((i, _, { bike, situation }) => {
  const sound = bike.healthy().world.amps[i];
  if (!sound) return CANNOT;
  const { groundRing, minusRing, ring, holder, plusLead } = sound;
  // What goes off only at times is made to fail with each lead.
  const moment = whileOff(bike, situation);
  const grounded = having(bike, 'temporary ground', { groundRing, minusRing });
  if (ampIsOn(grounded, moment)) return option('ground');
  const fed = having(bike, 'temporary plus', { ring, holder, plusLead, fuseOpen: false });
  return option(ampIsOn(fed, moment) ? 'plus' : 'neither');
});
