import { describe, expect, it } from 'vitest';
import { cautionsOfCheck, cautionsOfFix, cautionsOfProof } from '../../src/causes/action-cautions.ts';
import { CAUSES } from '../../src/causes/all.ts';
import { type Cause, type CheckNeeds, splitOf } from '../../src/causes/cause.ts';
import type { RepairAction } from '../../src/causes/repair-action.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { CAUTIONS, type CautionId } from '../../src/steps/cautions.ts';
import { concerns } from '../../src/steps/concerns.ts';
import type { ConditionId } from '../../src/steps/conditions.ts';
import { type Findings, is } from '../../src/steps/outcome.ts';
import { standsFor } from '../../src/survey/survey-of.ts';
import { FAULTS, severityAt } from '../../src/world/faults/index.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { repaired } from '../../src/world/repair.ts';
import type { World } from '../../src/world/state.ts';
import { TWENTY_RIGS } from '../observe/rigs.ts';
import { CONVERTER_RIGS, LITHIUM_RIGS } from '../world/bikes.ts';
import { changes, isSaid, LAID_ON } from './laid-on.ts';
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

/** The same amplifiers, made for any source, or for the unaltered output. */
const MADE_FOR: readonly Rig[] = (['any', 'unaltered'] as const).flatMap((needs) =>
  (['wire', 'signal'] as const).map((turnOn) => ({
    ...EXAMPLE_RIGS['frame-fairing'],
    amps: [{ ...EXAMPLE_RIGS['frame-fairing'].amps[0], needs, turnOn }],
  })),
);
/** What can have been found on the way, where a fix hangs on it. */
const FOUND: readonly Readonly<Record<string, string>>[] = [
  {},
  { 'fuse-lamp': 'bright' },
  { 'spare-fuse': 'wakes' },
  { 'fuse-sides': 'open' },
  { 'fuse-sides': 'open', 'fuse-lamp': 'dark' },
  { 'last-change': 'reflash' },
  { 'remote-lamp': 'dark', 'remote-start-lamp': 'lit' },
];
const METER = { 'tools-at-hand': 'meter' };
/** One speaker of this bike is silent. */
const ofOne = (corner: 'front-left' | 'rear-left'): Findings => ({
  ...onBike(EXAMPLE_RIGS['frame-fairing'], { ...METER, 'which-corner': corner }),
  facts: { 'which-corner': { option: corner } },
});
const BIKES: readonly Findings[] = [
  ofOne('front-left'),
  ofOne('rear-left'),
  ...[
    ...[{}, ...RIGS, ...MADE_FOR].map((rig) => [rig, {}] as const),
    ...FOUND.map((found) => [EXAMPLE_RIGS['frame-fairing'], found] as const),
  ].flatMap(([rig, found]) => [onBike(rig, found), onBike(rig, { ...found, ...METER })]),
];

const louder = (before: World, after: World) => before.unit.profile.levelDb < after.unit.profile.levelDb;

/** Each bike with each fault of a cause on it. */
const faulty = (cause: Cause, rig: Rig): readonly World[] => {
  const healthy = healthyWorld(rig);
  return FAULTS.filter((fault) => standsFor(cause, fault) && fault.fits(healthy)).map((fault) =>
    fault.apply(healthy, severityAt(fault, 0.5)),
  );
};

describe('what is done to a bike', () => {
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
        for (const [changed, says, where] of LAID_ON) {
          if (!paths.some((path) => changed.test(path)) || (where && !where(world))) continue;
          expect(isSaid(says, said), `${says} for ${changed} on ${rig.name}`).toBe(true);
        }
        if (louder(world, after) && rig.amps?.length !== 0) expect(said).toContain('back-to-full');
      }
    }
  });
});

/** Words of a check, and the caution that each of them asks for by itself. */
const CHECK_ASKS: readonly (readonly [CautionId, RegExp])[] = [
  ['lamp-hot', /\b55 W lamp/],
  ['live-clip', /55 W lamp (clipped to|on its positive)/],
  ['ground-open', /55 W lamp (clipped to|on its positive)|(?<!and )line-level plugs out|its ground ring off/i],
  ['outdoors', /3000 rpm|engine (on|running)\b|\bidling\b/i],
  ['hot', /3000 rpm|engine (on|running)\b|\bidling\b/i],
  [
    'loud-tone',
    /\b400 Hz tone|\bat one low step|80 Hz tone, (step by step|up from zero)|one step at a time well above|80 Hz tone, low/,
  ],
  ['bridge', /across (one|each|its|each of its) outputs?\b|no output above|wire (to|touching) the frame, /i],
  [
    'bridge',
    /across (its inputs|the (rear )?pairs?|that input pair|a pair)|each (rear pair|input) reads|on each wire/i,
  ],
  ['bridge', /between the two wires|channels of its output|no DC between/i],
  ['bridge', /each (of its input wires|wire of the input pair)/i],
  ['ohms-dead', /Ω to the frame|\bruns? reads?\b.*coil|\b(in|on) ohms\b|ohms across/i],
  ['minus-first', /negative (rings )?off|battery posts tight|leads from the battery|lead off (it|the amplifier)/i],
  [
    'battery-gas',
    /\bcharge (it|the)\b|(with a|its own) charger|charge it overnight|negative (rings )?off|leads from the battery/i,
  ],
  ['own-charger', /\bcharge (it|the)\b|(with a|its own) charger|charge it overnight|charger on\?/i],
  ['acid', /may have boiled/i],
  ['cranking', /negative (rings )?off/i],
  ['capacitors', /plugs out, a 55 W lamp.* fuse back in/],
  ['fuse', /one new fuse|1 A fuse where it starts|with a 10 A fuse|in the fuse’s place/i],
  ['data', /remote output|its plug apart: a pin|panel off/i],
  ['jumper', /jumper|1 A fuse from the amplifier’s positive to its remote/],
  ['cell', /1\.5 V cell/],
  ['wakes-loud', /gain down[.,]/i],
  ['temporary-lead', /no fuse in it|leads from the battery/i],
  ['key-off', /silent speaker’s run for a short, then move/i],
  ['short-suspected', /move it to an output/],
];
/** And, of a check by meter, whose tone is as loud as it is played. */
const METER_ASKS: typeof CHECK_ASKS = [
  ...CHECK_ASKS,
  ['full-tone', /\b80 Hz tone(?!, low)|test tones from|\b(one|usual top) step(:|, two tones)/],
  [
    'flat-battery',
    /^(?!.*(idling|3000 rpm|engine)).*(\btones?\b|\bkey on\b|head unit on|music (paused|loud|playing))/i,
  ],
  ['data', /at the head unit’s plug/],
  // A tone is read on the wires of an output, and so is what rests on them.
  ['bridge', /^(?!A meter won’t).*\btones?\b|music paused.*\b(wires?|outputs?)\b/i],
  [
    'plus-probe',
    /ends? of (it|the fuse)|positive to ground\b|lamp clipped to|battery posts?\b(?! itself)|at the posts/i,
  ],
];
/** How a check says in its words what has to be so meanwhile. */
const NEED_IN_WORDS: Readonly<Partial<Record<ConditionId, RegExp>>> = {
  'key-on': /\bkey on\b(?!, music)/i,
  'head-unit-playing': /head unit on(?!, music paused)|music (loud|playing)|^the same, with/i,
  'music-paused': /music paused/i,
  'tone-400': /400 Hz tone|two tones/i,
  'tone-80': /^(?!.*\bat one low step).*(80 Hz|(two|both) tones)/i,
  'engine-running': /idling|rpm/i,
  'meter-on-ohms': /\bohms\b|Ω/,
  'lamp-on': /55 W lamp clipped to/,
  'line-leads-out': /line-level plugs out/,
  'minus-off': /battery negative off/i,
  'lamp-for-fuse': /lamp in (the fuse’s|its) place/,
  'fuse-out': /one new fuse/i,
  'panel-off': /at the head unit’s plug|the adapter/,
};

/** What says how something is done, not only what else to think of. */
const OF_A_MANNER: readonly CautionId[] = [
  'loud-listening',
  'loud-tone',
  'full-tone',
  'outdoors',
  'ohms-dead',
  'wakes-loud',
  'lamp-hot',
  'live-clip',
  'ground-open',
  'jumper',
  'cell',
  'cone',
];
/** And words of a fix. */
const ASKS: typeof CHECK_ASKS = [
  ...CHECK_ASKS,
  ['amp-output', /across (one|each|its|each of its) outputs?\b|no output above/i],
  ['capacitors', /main fuse last|fit the fuse:|one new fuse:|the fuse: /i],
  ['fuse', /fit the fuse:|one new fuse|the fuse: |1 A fuse where it starts/i],
  ['data', /head unit’s (back|own plug)|live only with the ignition|not the speaker loom/i],
  ['loud-listening', /the first that distorts/],
  ['warranty', /panel off|grille off/i],
  ['cone', /grille off/i],
  ['wakes-loud', /gain back (as|to where) it was/i],
  ['into-a-short', /keep restarting into|speakers go back on|while it is wet/i],
  ['short-suspected', /spare channel|kills the next output/],
  ['flat-battery', /music with the engine off|engine off: twenty/i],
  ['hot', /hand-warm|let it cool|regulator cool|melted|runs hot|the amplifier can drive/i],
  ['key-off', /key off, rear plug apart/i],
];
/** The key is off before a hand is laid on anything: said by itself, or by what says it as well. */
const KEY_OFF = /\bkey off\b(?! and on)/i;
const SAYS_KEY_OFF: readonly CautionId[] = [
  'key-off',
  'minus-first',
  'ohms-dead',
  'amp-output',
  'ground-open',
  'battery-gas',
];
/** The bikes that can have it, and one that nobody knows. */
const bikesOf = (cause: Cause) =>
  BIKES.filter(({ rig }) => Object.keys(rig).length === 0 || faulty(cause, rig).length > 0);
const bare = ({ rig }: Findings) => rig.amps?.length === 0;
const lacking = (text: string, said: readonly CautionId[], { rig }: Findings, asks = CHECK_ASKS): readonly string[] =>
  asks
    .filter(([id, words]) => words.test(text) && concerns(id, rig) && !said.includes(id))
    .map(([id, words]) => `${id} for ${words}: ${text}`);

describe.each(CAUSES.map((cause) => [cause.id, cause] as const))('the cautions of %s', (_, cause) => {
  it('cover what its fix says', () => {
    for (const f of bikesOf(cause)) {
      const remedy = cause.remedy(f);
      const said = cautionsOfFix(remedy, f);
      const lines = [...remedy.fix, remedy.proofOfCure.byEar];
      expect(lines.flatMap((line) => lacking(line, said, f, ASKS))).toEqual([]);
      if (lines.some((line) => KEY_OFF.test(line))) expect(said.some((id) => SAYS_KEY_OFF.includes(id))).toBe(true);
    }
  });
  it('cover what its checks by meter say', () => {
    for (const f of bikesOf(cause).filter((one) => is(one, 'tools-at-hand', 'meter') && !bare(one))) {
      const remedy = cause.remedy(f);
      const { byMeter = '' } = remedy.proofOfCure;
      const proof = [...cautionsOfFix(remedy, f), ...cautionsOfProof(remedy, f)];
      expect(lacking(byMeter, proof, f, METER_ASKS)).toEqual([]);
      expect(lacking(splitOf(cause, f).byMeter, cautionsOfCheck(cause, f), f, METER_ASKS)).toEqual([]);
    }
  });
  it('say of a check by meter nothing that its words do not ask for', () => {
    for (const f of bikesOf(cause).filter((one) => is(one, 'tools-at-hand', 'meter') && !bare(one))) {
      const { byMeter } = splitOf(cause, f);
      const asked = METER_ASKS.filter(([, words]) => words.test(byMeter)).map(([id]) => id);
      const inVain = cautionsOfCheck(cause, f).filter((id) => OF_A_MANNER.includes(id) && !asked.includes(id));
      expect(inVain, byMeter).toEqual([]);
    }
  });
  it('come of nothing that its checks do not say in words', () => {
    for (const f of bikesOf(cause).filter((one) => is(one, 'tools-at-hand', 'meter'))) {
      const checks = [splitOf(cause, f), cause.remedy(f).proofOfCure];
      for (const { needs = [], byMeter = '' } of checks)
        for (const need of needs) expect(byMeter, need).toMatch(NEED_IN_WORDS[need] ?? `what ${need} says`);
    }
  });
  it('cover what its check without a meter says', () => {
    for (const f of bikesOf(cause).filter((one) => !is(one, 'tools-at-hand', 'meter') && !bare(one)))
      expect(lacking(splitOf(cause, f).without, cautionsOfCheck(cause, f), f)).toEqual([]);
  });
  it('are written down only where something in its words asks for them', () => {
    const asked = (...lines: readonly string[]) =>
      ASKS.filter(([, words]) => lines.some((line) => words.test(line))).map(([id]) => id);
    for (const f of BIKES) {
      const { fix, proofOfCure, cautions = [] } = cause.remedy(f);
      const split = splitOf(cause, f);
      const ofFix = asked(...fix, proofOfCure.byEar);
      expect(cautions.filter((id) => !ofFix.includes(id))).toEqual([]);
      const ofCheck = asked(split.without);
      expect((split.cautions ?? []).filter((id) => !ofCheck.includes(id))).toEqual([]);
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
    for (const f of BIKES.filter((one) => !is(one, 'tools-at-hand', 'meter')))
      expect(cautionsOfProof(cause.remedy(f), f)).toEqual([]);
  });
  it('are not written down where they follow from an action', () => {
    for (const f of BIKES) {
      const remedy = cause.remedy(f);
      const follow = cautionsOfFix({ repair: remedy.repair }, f);
      expect((remedy.cautions ?? []).filter((id) => follow.includes(id))).toEqual([]);
    }
  });
});

/** What a check needs or touches, and whether leaving it out would leave out a caution anywhere. What several share is one. */
function idleNeeds(): readonly string[] {
  const idle = new Map<unknown, Map<string, boolean>>();
  const names = new Map<unknown, string>();
  const note = (list: unknown, name: string, one: string, says: readonly CautionId[], less: readonly CautionId[]) => {
    const of = idle.get(list) ?? new Map<string, boolean>();
    idle.set(list, of.set(one, (of.get(one) ?? true) && says.length === less.length));
    names.set(list, names.get(list) ?? name);
  };
  const without = <T extends CheckNeeds>(check: T, key: 'needs' | 'touches', left: unknown): T => ({
    ...check,
    [key]: check[key]?.filter((one) => one !== left),
  });
  for (const cause of CAUSES)
    for (const f of BIKES.filter((one) => is(one, 'tools-at-hand', 'meter'))) {
      const [split, remedy] = [splitOf(cause, f), cause.remedy(f)];
      const [splitAgain, remedyAgain] = [splitOf(cause, f), cause.remedy(f)];
      for (const key of ['needs', 'touches'] as const) {
        const ofCheck = split[key] === splitAgain[key] ? split[key] : `the check of ${cause.id}`;
        for (const one of split[key] ?? []) {
          const less = { ...cause, split: without(split, key, one) };
          note(ofCheck, `the check of ${cause.id}`, one, cautionsOfCheck(cause, f), cautionsOfCheck(less, f));
        }
        const proof = remedy.proofOfCure;
        const ofProof = proof[key] === remedyAgain.proofOfCure[key] ? proof[key] : `the proof of ${cause.id}`;
        for (const one of proof[key] ?? []) {
          const less = { ...remedy, proofOfCure: without(proof, key, one) };
          note(ofProof, `the proof of ${cause.id}`, one, cautionsOfProof(remedy, f), cautionsOfProof(less, f));
        }
      }
    }
  return [...idle].flatMap(([list, of]) =>
    [...of].filter(([, is]) => is).map(([one]) => `${one} in ${names.get(list)}`),
  );
}
describe('what a check needs, and where its probes go', () => {
  it('each adds a caution on some bike: what adds none is written down in vain', () => expect(idleNeeds()).toEqual([]));
});
