import { curedEverywhere } from '../heard.ts';
import { toSpeakers } from '../left.ts';
import { happens, option, type Say } from '../observer.ts';

/** How often there is neither a headset about nor such a setting. An estimate. */
const NO_HEADSET_SHARE = 0.4;

export const sayAudioTarget: Say = ({ bike, observer }) => {
  const none = happens(observer, NO_HEADSET_SHARE);
  if (bike.world.settings.target === 'headset')
    return option(curedEverywhere(bike, toSpeakers(bike)) ? 'cured' : 'no-change');
  return option(none ? 'none' : 'no-change');
};
