import { describe, expect, it } from 'vitest';
import { cautionsOfCheck, cautionsOfFix, cautionsOfProof } from '../../src/causes/action-cautions.ts';
import { CAUSES } from '../../src/causes/all.ts';
import { type Cause, splitOf } from '../../src/causes/cause.ts';
import type { RepairAction } from '../../src/causes/repair-action.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { CAUTIONS, type CautionId } from '../../src/steps/cautions.ts';
import { type Findings, is } from '../../src/steps/outcome.ts';
import { FAULTS, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { repaired } from '../../src/world/repair.ts';
import type { World } from '../../src/world/state.ts';
import { TWENTY_RIGS } from '../observe/rigs.ts';
import { CONVERTER_RIGS, LITHIUM_RIGS } from '../world/bikes.ts';
import { ON_UNIT, onBike } from './on-bike.ts';

/*
 * What hurts, as the trade knows it: from memory, common practice, no published source. What a repair does to a bike is
 * not looked up by its name: it is done to the model, and what has changed there says what a hand was laid on.
 */

const LINE: Rig = {
  ...EXAMPLE_RIGS['frame-fairing'],
  amps: [{ ...EXAMPLE_RIGS['frame-fairing'].amps[0], input: 'line' }],
};
const NO_AMP: Rig = { ...ON_UNIT, amps: [] };
const RIGS: readonly Rig[] = [
  ...Object.values(EXAMPLE_RIGS),
  LINE,
  NO_AMP,
  ...Object.values(TWENTY_RIGS).filter((_, i) => i % 4 === 2),
  ...Object.values(CONVERTER_RIGS).slice(0, 1),
  ...Object.values(LITHIUM_RIGS).slice(0, 1),
];

const METER = { 'tools-at-hand': 'meter' };
const BIKES: readonly Findings[] = [{}, ...RIGS].flatMap((rig) => [onBike(rig), onBike(rig, METER)]);

/** The leaves of a bike that differ, as paths. Numbers stand for whichever amplifier it is. */
function changes(before: unknown, after: unknown, path = ''): readonly string[] {
  if (Object.is(before, after)) return [];
  if (typeof before !== 'object' || typeof after !== 'object' || before === null || after === null) return [path];
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key) =>
    changes((before as Record<string, unknown>)[key], (after as Record<string, unknown>)[key], `${path}/${key}`),
  );
}

/** What was changed on a bike, and what has to be said before a hand is laid on it. */
const LAID_ON: readonly (readonly [changed: RegExp, says: CautionId, on?: (world: World) => boolean])[] = [
  [/^\/amps\/\d\/(groundLead|groundRing)\b/, 'temporary-lead'],
  [/^\/settings\/(fader|balance|rearControl)/, 'riding'],
  [/^\/unit\/profile\//, 'warranty'],
  [/^\/amps\/\d\/(plusLead|plusCopper|ring|holder|terminal|leadToFrame)\b/, 'minus-first'],
  [/^\/amps\/\d\/(plusLead|plusCopper|ring|holder|terminal|leadToFrame)\b/, 'battery-gas'],
  [/^\/amps\/\d\/(plusLead|plusCopper|holder|terminal|fuseOpen|fuseRatedA)\b/, 'capacitors'],
  [/^\/amps\/\d\/(plusLead|holder|fuseOpen|fuseRatedA|bodyFuseOpen)\b|^\/unit\/fuseOpen/, 'fuse'],
  [/^\/amps\/\d\/(fuseOpen|fuseRatedA|bodyFuseOpen)\b|^\/unit\/fuseOpen/, 'key-off'],
  [/^\/amps\/\d\/(groundLead|groundRing|minusRing)\b|^\/supply\/(sharedScrew|bikeRing)/, 'minus-first'],
  [/^\/amps\/\d\/(groundLead|groundRing|minusRing)\b|^\/supply\/bikeRing/, 'battery-gas'],
  [/^\/amps\/\d\/(groundLead|groundRing|minusRing)\b|^\/supply\/bikeRing/, 'cranking', ({ amps }) => amps.length > 0],
  [
    /^\/amps\/\d\/(groundLead|groundRing)\b/,
    'ground-open',
    ({ rig }) => rig.amps.some(({ input }) => input === 'line'),
  ],
  [/^\/supply\/(openV|internalOhm|capacityRatio|acceptOhm)/, 'battery-gas'],
  [/^\/supply\/openV/, 'own-charger', ({ rig, supply }) => rig.batteryKind === 'lithium' && supply.capacityRatio === 1],
  [/^\/supply\/(regulatorV|idleA|cruiseA)/, 'outdoors'],
  [/^\/supply\/(regulatorV|idleA|cruiseA)/, 'hot'],
  [/^\/amps\/\d\/gainRatio/, 'amp-output'],
  [/^\/amps\/\d\/gainRatio/, 'loud-tone'],
  [/^\/amps\/\d\/gainRatio/, 'bridge'],
  [/^\/amps\/\d\/(turnOn|remoteWire|remoteSource|remotePin|inputMode|inputLimitV|inputPlug|converter)\b/, 'key-off'],
  [/^\/amps\/\d\/(remoteSource|remotePin)\b/, 'data'],
  [/^\/amps\/\d\/turnOn\b/, 'wakes-loud'],
  [/^\/amps\/\d\/(inputPlug|converter)\b|^\/unit\/(plug|toGround|rearPairs)|^\/(runs|speakers)\//, 'key-off'],
  [/^\/amps\/\d\/(inputPlug|converter)\b|^\/unit\/(plug|toGround|rearPairs)|^\/(runs|speakers)\//, 'bridge'],
  [/^\/speakers\//, 'cone'],
  [/^\/unit\/toGround|^\/runs\/[^/]+\/(toFrame)/, 'into-a-short'],
  [/^\/unit\/(plug|permanent|switched|ground)\b/, 'data'],
  [/^\/amps\/\d\/(alive|deadChannels|outputDcV|wet|shortInside)\b/, 'minus-first'],
  [/^\/amps\/\d\/(alive|deadChannels|outputDcV|wet|shortInside)\b/, 'capacitors'],
  [/^\/amps\/\d\/(alive|deadChannels|outputDcV|wet|shortInside)\b/, 'warranty'],
  [/^\/amps\/\d\/(coolsBadly)\b/, 'hot'],
  [/^\/unit\/(alive|hung|deadChannels|outputDcV)\b/, 'warranty'],
];
const louder = (before: World, after: World) => before.unit.profile.levelDb < after.unit.profile.levelDb;

/** Each bike with each fault of a cause on it. */
const faulty = (cause: Cause, rig: Rig): readonly World[] => {
  const healthy = healthyWorld(rig);
  return FAULTS.filter(
    ({ id, variant = '', fits }) => [id, `${id}@${variant}`].some((key) => cause.faults.includes(key)) && fits(healthy),
  ).map((fault) => fault.apply(healthy, severityAt(fault, 0.5)));
};

describe('what is done to a bike', () => {
  const laidOn = new Set<number>();
  it.each(CAUSES.map((cause) => [cause.id, cause] as const))('by the fix of %s is warned of', (_, cause) => {
    for (const rig of RIGS) {
      const f = onBike(rig);
      const remedy = cause.remedy(f);
      const said = cautionsOfFix(remedy, f);
      for (const world of faulty(cause, rig)) {
        const done: World[] = [world];
        for (const action of remedy.repair) done.push(repaired(done.at(-1) as World, action as RepairAction));
        const after = done.at(-1) as World;
        // A fuse that is fitted and opens at once on a short was fitted all the same.
        const paths = [
          ...changes(world, after),
          ...(remedy.repair.some((action) => action.do === 'renew-fuse' && action.fuse === 'main')
            ? ['/amps/0/fuseOpen']
            : []),
        ];
        LAID_ON.forEach(([changed, says, where], i) => {
          if (!paths.some((path) => changed.test(path)) || (where && !where(world))) return;
          laidOn.add(i);
          expect(said, `${changed} on ${JSON.stringify(rig)}`).toContain(says);
        });
        if (louder(world, after) && rig.amps?.length !== 0) expect(said).toContain('back-to-full');
      }
    }
  });
  it('is most of what these rules speak of', () => {
    expect(LAID_ON.filter((_, i) => !laidOn.has(i)).map(([changed, says]) => `${says} for ${changed}`)).toEqual([]);
  });
});

/** Words of a fix or a check, and what belongs to them. */
const WORDS: readonly (readonly [words: RegExp, ...any: CautionId[]])[] = [
  [/\b55 W lamp|21 to 55 W lamp/, 'lamp-hot'],
  [/55 W lamp (clipped to|on its plus)/, 'live-clip'],
  [/3000 rpm|engine (on|running)\b|engine on\b/i, 'outdoors'],
  [/\b400 Hz tone/, 'loud-tone'],
  [/\b80 Hz tone/, 'full-tone', 'loud-tone'],
  [/Ω to the frame|\bruns? reads?\b.*coil/i, 'ohms-dead'],
  [/across (one|each|its) outputs?\b/i, 'amp-output', 'bridge'],
  [/minus off|minus rings off|minus on\b/i, 'minus-first'],
  [/new fuse|a \d+ A fuse|fuse goes|1 A fuse at its start/i, 'fuse', 'data', 'temporary-lead', 'live-clip'],
  [
    /across (its inputs|the (rear )?pairs?|that input pair)|each (rear pair|input) reads|on each wire|channels of its output/i,
    'bridge',
  ],
  [/jumper/, 'jumper'],
  [/remote output|its plug apart: a pin|head unit’s (back|own plug)/i, 'data', 'bridge'],
  [/with a charger|its own charger|charge the battery/i, 'battery-gas'],
  [/\b(in|on) ohms|ohms across|own tabs/i, 'ohms-dead'],
  [/ground of (an|the) amplifier is never fused|ground is never fused/i, 'temporary-lead'],
];
/** What a check that begins with the key off says in its own words, a fix is warned of. */
const KEY: typeof WORDS = [
  [
    /\bkey off\b(?! and on)/i,
    'key-off',
    'minus-first',
    'ohms-dead',
    'amp-output',
    'battery-gas',
    'ground-open',
    'bridge',
    'fuse',
  ],
];
/** The bikes that can have it, and one that nobody knows. */
const bikesOf = (cause: Cause) =>
  BIKES.filter(({ rig }) => Object.keys(rig).length === 0 || faulty(cause, rig).length > 0);
const bare = ({ rig }: Findings) => rig.amps?.length === 0;
const lacking = (text: string, said: readonly CautionId[], words = WORDS): readonly string[] =>
  words
    .filter(([words, ...any]) => words.test(text) && !any.some((one) => said.includes(one)))
    .map(([words, ...any]) => `${any} for ${words}: ${text}`);

describe.each(CAUSES.map((cause) => [cause.id, cause] as const))('the cautions of %s', (_, cause) => {
  it('cover what its fix says', () => {
    for (const f of bikesOf(cause)) {
      const remedy = cause.remedy(f);
      const said = cautionsOfFix(remedy, f);
      expect(
        [...remedy.fix, remedy.proofOfCure.byEar].flatMap((line) => lacking(line, said, [...WORDS, ...KEY])),
      ).toEqual([]);
    }
  });
  it('cover what its checks by meter say', () => {
    for (const f of bikesOf(cause).filter((one) => is(one, 'tools-at-hand', 'meter') && !bare(one))) {
      const remedy = cause.remedy(f);
      const { byMeter = '' } = remedy.proofOfCure;
      const proof = [...cautionsOfFix(remedy, f), ...cautionsOfProof(remedy, f)];
      expect(lacking(byMeter, proof)).toEqual([]);
      expect(lacking(splitOf(cause, f).byMeter, cautionsOfCheck(cause, f))).toEqual([]);
    }
  });
  it('are few, each once, and none of the check is said of the fix already', () => {
    for (const f of BIKES) {
      const remedy = cause.remedy(f);
      const [fix, proof] = [cautionsOfFix(remedy, f), cautionsOfProof(remedy, f)];
      expect(fix).toEqual([...new Set(fix)]);
      expect(proof).toEqual([...new Set(proof)]);
      expect(fix.length, fix.join()).toBeLessThanOrEqual(10);
      expect(proof.length, proof.join()).toBeLessThanOrEqual(6);
      expect(proof.filter((id) => fix.includes(id))).toEqual([]);
    }
  });
  it('speak of no amplifier on a bike without one', () => {
    for (const f of BIKES.filter(bare)) {
      const remedy = cause.remedy(f);
      for (const id of [...cautionsOfFix(remedy, f), ...cautionsOfProof(remedy, f), ...cautionsOfCheck(cause, f)])
        expect(CAUTIONS[id]).not.toMatch(/amplifier/i);
    }
  });
  it('hold no work with a meter against somebody who has none', () => {
    for (const f of BIKES.filter((one) => !is(one, 'tools-at-hand', 'meter'))) {
      expect(cautionsOfProof(cause.remedy(f), f)).toEqual([]);
      expect(cautionsOfCheck(cause, f)).toEqual([]);
    }
  });
  it('are not written down where they follow from an action', () => {
    for (const f of BIKES) {
      const remedy = cause.remedy(f);
      const follow = cautionsOfFix({ repair: remedy.repair }, f);
      expect((remedy.cautions ?? []).filter((id) => follow.includes(id))).toEqual([]);
    }
  });
});
