import { type Axle, cornersOf } from '../../rig/corner.ts';
import { repaired } from '../../world/repair.ts';
import type { World } from '../../world/state.ts';
import { type Ridden, whenAmpGoesOff } from '../../world/symptoms/index.ts';
import { ampIsOn, axleOfConcern, changed, isOpen, playing } from '../bike.ts';
import { oneOf, option, type Say } from '../observer.ts';

/** A repair that the bike can have done to it. */
type Action = Parameters<typeof repaired>[1];

/** What riders try first, whatever it is: how often. Estimates of the trade. */
const TRIED = { nothing: 5, plugs: 2, lead: 0.7, fuse: 1, speakers: 0.6, amp: 0.5, reflash: 0.4 };
type Tried = keyof typeof TRIED;

/** What would have cured it was hardly done, or the rider would not be here: it was done badly. An estimate. */
const DONE_BADLY_RATIO = 0.05;
/** A reflash can also have put in the profile that is the trouble now. An estimate. */
const REFLASH_WRONG_RATIO = 0.3;

/** What is done to the bike, each kind of trial in each of its forms: nobody knows which lead it was. */
const TRIALS: Readonly<
  Record<Exclude<Tried, 'nothing'>, (world: World, axle: Axle) => readonly (readonly Action[])[]>
> = {
  plugs: () => [
    (['unit', 'amp-input', 'amp-power', 'rear-dock', 'front-speaker', 'second'] as const).map((plug) => ({
      do: 'seat-plug',
      plug,
    })),
  ],
  lead: ({ rig, about }, axle) => {
    const { plusLeadM2: sectionM2 = 0, mainFuseA: fuseA = 0 } = rig.amps[about ?? -1] ?? {};
    const power: Action[][] = [
      [{ do: 'renew-lead', lead: 'plus', sectionM2, fuseA }],
      [{ do: 'renew-lead', lead: 'ground', sectionM2 }],
      [{ do: 'renew-wire', wire: 'signal' }],
    ];
    return [...(about === null ? [] : power), [{ do: 'renew-wire', wire: 'speaker-run', where: axle }]];
  },
  fuse: () => [[{ do: 'renew-fuse', fuse: 'main' }]],
  speakers: ({ rig }, axle) => [
    [{ do: 'replace-speaker', where: axle, ratedOhm: axle === 'rear' ? rig.rearRatedOhm : rig.frontRatedOhm }],
  ],
  amp: () => [[{ do: 'repair-amp' }]],
  reflash: () => [[{ do: 'select-profile', rear: 'on', eq: 'same' }]],
};

const fitted = ({ rig, about }: World, axle: Axle): readonly Tried[] => [
  'nothing',
  'plugs',
  'lead',
  ...(rig.rearFitted === 'yes' || axle === 'front' ? (['speakers'] as const) : []),
  ...(about === null ? [] : (['fuse', 'amp'] as const)),
  ...(rig.unitKind === 'factory' ? (['reflash'] as const) : []),
];

/** Whether somebody who came because of a silence, or of an amplifier, would still come. */
function isCured(bike: Ridden, before: Ridden): boolean {
  const moment = whenAmpGoesOff(before)[0]?.moment ?? {};
  const sound = bike.healthy();
  const plays = cornersOf(axleOfConcern(before)).every(
    (corner) => playing(bike, corner, moment) === playing(sound, corner, moment),
  );
  return plays && (bike.world.about === null || ampIsOn(bike, moment) || !ampIsOn(sound, moment));
}

/** How often it was tried, where that is known to have changed nothing. */
function oddsOf(found: Ridden, tried: Exclude<Tried, 'nothing'>): number {
  const forms = TRIALS[tried](found.world, axleOfConcern(found));
  const cures = forms.filter((actions, i) => {
    const after = changed(found, `${tried} ${i}`, (world) => actions.reduce(repaired, world));
    return isCured(after, found);
  });
  const left = tried === 'reflash' ? REFLASH_WRONG_RATIO : DONE_BADLY_RATIO;
  return TRIED[tried] * (1 - (1 - left) * (cures.length / forms.length));
}

/** Whoever found a fuse blown has put one in. */
const FUSE_WAS_OPEN_TIMES = 3;

export const sayTriedAlready: Say = ({ found, observer }) => {
  const { world } = found;
  const amp = world.amps[world.about ?? -1];
  const fuseTimes = amp && (amp.fuseOpen || isOpen(amp.holder)) ? FUSE_WAS_OPEN_TIMES : 1;
  const odds = fitted(world, axleOfConcern(found)).map((tried) => [
    tried,
    tried === 'nothing' ? TRIED.nothing : oddsOf(found, tried) * (tried === 'fuse' ? fuseTimes : 1),
  ]);
  return option(oneOf(observer, Object.fromEntries(odds) as Record<Tried, number>));
};
