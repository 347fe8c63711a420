import { ampIsOn, having } from '../bike.ts';
import { whileOff } from '../left.ts';
import { CANNOT, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

export const sayTemporaryLeads: Say = ofItsAmp((i, _, { bike, situation }) => {
  const sound = bike.healthy().world.amps[i];
  if (!sound) return CANNOT;
  const { groundRing, minusRing, ring, holder, plusLead, plusCopper, terminal } = sound;
  // What goes off only at times is made to fail with each lead.
  const moment = whileOff(bike, situation);
  const grounded = having(bike, 'temporary ground', { groundRing, minusRing });
  if (ampIsOn(grounded, moment)) return option('ground');
  const fed = having(bike, 'temporary positive', { ring, holder, plusLead, plusCopper, terminal, fuseOpen: false });
  if (ampIsOn(fed, moment)) return option('plus');
  const bypassed = having(fed, 'temporary ground as well', { groundRing, minusRing });
  return option(ampIsOn(bypassed, moment) ? 'both' : 'neither');
});
