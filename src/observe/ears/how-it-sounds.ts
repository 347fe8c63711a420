import { COMPLAINTS, type ComplaintId, type Ridden, whenAmpGoesOff } from '../../world/symptoms/index.ts';
import { engineMoves, isMasked, isMoved, noiseComes } from '../../world/symptoms/tone.ts';
import { pick } from '../draw.ts';
import { CANNOT, option, type Say } from '../observer.ts';

type Sounds = 'rough' | 'changes' | 'thin' | 'noise' | 'gaps';

const has = (complaint: ComplaintId, bike: Ridden): boolean => COMPLAINTS[complaint](bike) === 'yes';

/** Everything that its rider could call wrong. What cuts out at the top with the beat is called rough as often. */
function soundsOf(bike: Ridden): readonly Sounds[] {
  const goesOff = whenAmpGoesOff(bike);
  const noisy = has('whine-or-ticking', bike) || noiseComes(bike);
  const changes = engineMoves(bike).some(({ ratio }) => isMoved(ratio)) || isMasked(bike);
  return [
    ...(has('distortion-at-volume', bike) ? (['rough'] as const) : []),
    ...(changes ? (['changes'] as const) : []),
    ...(noisy ? (['noise'] as const) : []),
    ...(has('cuts-out', bike) || goesOff.length > 0 ? (['gaps'] as const) : []),
    ...(goesOff.some(({ when }) => when === 'loud') ? (['rough'] as const) : []),
    ...(has('thin-no-bass', bike) && !isMasked(bike) ? (['thin'] as const) : []),
  ];
}

export const sayHowItSounds: Say = ({ found, observer }) => {
  const sound = new Set(soundsOf(found.healthy()));
  const all = soundsOf(found);
  // What a sound bike of the build does as well is told only where nothing else is wrong.
  const own = all.filter((one) => !sound.has(one));
  const told = own.length > 0 ? own : all;
  return told.length > 0 ? option(pick(observer.draw, told)) : CANNOT;
};
