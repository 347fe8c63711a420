import { bodyFuse, fuseLamp, fuseLook, leadOffAmp, ringsLook, spareFuse, temporaryLeads } from '../../steps/fuse.ts';
import type { Answer } from '../../steps/step.ts';
import { ampNodes } from '../../world/bike/nodes.ts';
import { powerV } from '../../world/bike/operate.ts';
import { LAMP_OHM } from '../../world/bike/power.ts';
import { FUSE_CARRIES_RATIO } from '../../world/elements/fuse.ts';
import { OPEN } from '../../world/healthy.ts';
import type { Moment } from '../../world/moment.ts';
import type { Amp } from '../../world/state.ts';
import type { Ridden } from '../../world/symptoms/index.ts';
import { ampIsOn, ampOf, changed, withAmp } from './bike.ts';
import { whileOff } from './left.ts';
import { type Asked, CANNOT, happens, option, type Say, type Says } from './observer.ts';

/* The fuses of the amplifier, its rings, and leads that stand in for others. */

const UNPLUGGED = { toneHz: null, apart: ['remote', 'amp-outputs'] } as const satisfies Partial<Moment>;

/** Above this share of the battery a bulb in the place of the fuse is bright. */
const BRIGHT_RATIO = 0.5;
/** A joint of more than this shows: loose, green, or with paint under it. An estimate. */
const SEEN_OHM = 0.02;
/** How many amplifiers have fuses of their own. An estimate. */
const HAS_OWN_FUSES_SHARE = 0.8;

const having = (bike: Ridden, name: string, part: Partial<Amp>) => changed(bike, name, withAmp(part));

function bulbIsBright(bike: Ridden, i: number): boolean {
  const { now } = having(bike, 'bulb for a fuse', { fuseOpen: false, holder: { ohm: LAMP_OHM } }).at(UNPLUGGED);
  if (!now.ok) return true;
  const { fuseIn, holder } = ampNodes(i);
  return powerV(now, fuseIn, holder) > BRIGHT_RATIO * powerV(now, fuseIn);
}

/** What a fuse of the same rating does with everything unplugged, and then with the remote wire back. */
function newFuse(bike: Ridden, i: number): 'opens' | 'wakes' | 'holds' {
  const fitted = having(bike, 'new fuse', { fuseOpen: false });
  const { now } = fitted.at(UNPLUGGED);
  const ratedA = bike.world.rig.amps[i]?.mainFuseA ?? 0;
  if (!now.ok || now.power.currentA(`fuse ${i}`).re > FUSE_CARRIES_RATIO * ratedA) return 'opens';
  return ampIsOn(fitted) ? 'wakes' : 'holds';
}

const ofAmp =
  (say: (i: number, amp: Amp, asked: Asked) => Answer): Say =>
  (asked) => {
    const i = ampOf(asked.bike);
    const amp = i === null ? undefined : asked.bike.world.amps[i];
    return i === null || !amp ? CANNOT : say(i, amp, asked);
  };

export const FUSE: Says = {
  [fuseLook.id]: ofAmp((_, amp) => option(amp.fuseOpen ? 'blown' : 'whole')),
  [fuseLamp.id]: ofAmp((i, _, { bike }) => option(bulbIsBright(bike, i) ? 'bright' : 'dark')),
  [leadOffAmp.id]: ofAmp((i, _, { bike }) => {
    const off = having(bike, 'plus lead off', { alive: false, shortInside: OPEN });
    return option(bulbIsBright(off, i) ? 'bright' : 'dark');
  }),
  [spareFuse.id]: ofAmp((i, _, { bike }) => option(newFuse(bike, i))),
  [bodyFuse.id]: ofAmp((_, amp, { observer }) =>
    option(amp.bodyFuseOpen ? 'blown' : happens(observer, HAS_OWN_FUSES_SHARE) ? 'whole' : 'none'),
  ),
  [ringsLook.id]: ofAmp((_, { minusRing, groundRing }) =>
    option(minusRing.ohm > SEEN_OHM ? 'battery' : groundRing.ohm > SEEN_OHM ? 'ground' : 'tight'),
  ),
  [temporaryLeads.id]: ofAmp((i, _, { bike, situation }) => {
    const sound = bike.healthy().world.amps[i];
    if (!sound) return CANNOT;
    const { groundRing, minusRing, ring, holder, plusLead } = sound;
    // What goes off only at times is made to fail with each lead.
    const moment = whileOff(bike, situation);
    const grounded = having(bike, 'temporary ground', { groundRing, minusRing });
    if (ampIsOn(grounded, moment)) return option('ground');
    const fed = having(bike, 'temporary plus', { ring, holder, plusLead, fuseOpen: false });
    return option(ampIsOn(fed, moment) ? 'plus' : 'neither');
  }),
};
