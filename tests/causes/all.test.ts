import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CAUSE_FILES, CAUSES } from '../../src/causes/all.ts';
import { type Cause, type Remedy, splitOf, titleOf } from '../../src/causes/cause.ts';
import { figureText } from '../../src/causes/figure.ts';
import type { RepairAction } from '../../src/causes/repair-action.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { CautionId } from '../../src/steps/cautions.ts';
import { type Findings, is } from '../../src/steps/outcome.ts';
import { anyRig } from '../rig/any-rig.ts';
import { ON_UNIT, onBike } from './on-bike.ts';

/** Bikes on which remedies differ, with and without what is told first. */
const BIKES: readonly Findings[] = [
  onBike({}),
  onBike(ON_UNIT),
  onBike({ ...ON_UNIT, rearRatedOhm: 2 }),
  ...Object.values(EXAMPLE_RIGS).flatMap((rig) => [
    onBike(rig),
    onBike(rig, { 'which-amp': 'rear', 'last-change': 'reflash' }),
    onBike(rig, { 'tools-at-hand': 'meter' }),
  ]),
];

/** What needs a caution whatever a cause says of it. */
type Asks = readonly CautionId[];
const NONE: Asks = [];
const PLUG: Asks = ['key-off'];
const BRIDGE: Asks = ['key-off', 'bridge'];
const PLUS: Asks = ['minus-first'];
const ASKS: { readonly [K in RepairAction['do']]: (action: Extract<RepairAction, { readonly do: K }>) => Asks } = {
  'centre-fader': () => NONE,
  'turn-up-rear-control': () => NONE,
  'set-unit-menu': () => NONE,
  'select-profile': ({ level }) => (level === 'full' ? ['warranty', 'back-to-full'] : ['warranty']),
  'set-selector': () => PLUG,
  'set-gain': () => ['key-off', 'amp-output', 'loud-tone'],
  'seat-plug': () => PLUG,
  'clean-contacts': () => PLUG,
  'renew-pin': () => PLUG,
  'complete-adapter': ({ carries }) => (carries === 'rear-pairs' ? BRIDGE : PLUG),
  'renew-wire': ({ wire }) => (wire === 'remote' ? NONE : BRIDGE),
  'free-wire': ({ wire }) => (wire === 'plus-lead' ? PLUS : BRIDGE),
  'join-looms': () => BRIDGE,
  'uncross-pairs': () => BRIDGE,
  'renew-lead': ({ lead }) => (lead === 'plus' ? ['minus-first', 'fuse'] : PLUS),
  'renew-holder': () => ['minus-first', 'fuse'],
  'renew-fuse': () => ['fuse'],
  'tighten-joint': ({ at }) => (at === 'battery-plus' || at === 'amp-terminal' ? PLUS : NONE),
  'own-ground': () => PLUS,
  'move-remote': () => NONE,
  'fit-remote-relay': () => NONE,
  'wake-by-wire': () => ['wakes-loud'],
  'charge-battery': () => ['battery-gas'],
  'replace-battery': () => ['battery-gas'],
  'repair-charging': () => ['outdoors'],
  'take-off-load': () => NONE,
  'replace-speaker': () => ['key-off', 'cone'],
  'rewire-speakers': () => BRIDGE,
  'replace-converter': () => BRIDGE,
  'cool-amp': () => ['hot'],
  'dry-amp': () => PLUS,
  'repair-amp': () => NONE,
  'repair-unit': () => NONE,
};
const askedBy = <D extends RepairAction['do']>(action: Extract<RepairAction, { readonly do: D }>): Asks =>
  ASKS[action.do as D](action);

/** Words that mean a danger, wherever a remedy says them. */
const WORDS: readonly (readonly [words: RegExp, asks: CautionId])[] = [
  [/\b\d+ Hz tone\b/, 'loud-tone'],
  [/\brpm\b|engine running|start the engine/i, 'outdoors'],
];
/** What is said of a fix to somebody with or without a meter: the proof by meter is only for whoever has one. */
const asked = ({ repair, fix, proofOfCure }: Remedy, hasMeter: boolean): readonly CautionId[] => {
  const said = [...fix, proofOfCure.byEar, (hasMeter && proofOfCure.byMeter) || ''].join(' ');
  return [...repair.flatMap(askedBy), ...WORDS.flatMap(([words, asks]) => (words.test(said) ? [asks] : []))];
};

/** All sentences of a remedy. */
const textsOf = (cause: Cause, findings: Findings): readonly string[] => {
  const { numbers, repair: _, cautions: __, minutes: ___, proofOfCure, ...rest } = cause.remedy(findings);
  const { byMeter, without } = splitOf(cause, findings);
  return [
    titleOf(cause, findings),
    byMeter,
    without,
    ...Object.values(rest).flat(),
    ...Object.values(proofOfCure),
    ...numbers.map(({ label }) => label),
  ];
};

const onEach = <T>(of: (cause: Cause, findings: Findings) => readonly T[]): readonly string[] =>
  CAUSES.flatMap((cause) => BIKES.flatMap((findings) => of(cause, findings).map((found) => `${cause.id}: ${found}`)));

describe('every cause', () => {
  it('stands alone in a file of its name, with an id that no other has', () => {
    expect(CAUSE_FILES.length).toBeGreaterThan(25);
    expect(CAUSE_FILES.filter(([file, { id }]) => basename(file, '.ts') !== id)).toEqual([]);
    expect(new Set(CAUSES.map(({ id }) => id)).size).toBe(CAUSES.length);
  });
  it('owns its faults alone: a fault without a variant is owned with all of them', () => {
    const owned = CAUSES.flatMap(({ id, faults }) => faults.map((fault) => ({ id, fault })));
    const overlap = (one: string, other: string) => one === other || other.startsWith(`${one}@`);
    const twice = owned.flatMap((one, i) =>
      owned.filter((other, k) => i !== k && overlap(one.fault, other.fault)).map((other) => [one, other]),
    );
    expect(twice).toEqual([]);
    expect(CAUSES.filter(({ faults }) => faults.length === 0)).toEqual([]);
  });
  it('says what it mends, how it is told from the rest, and names an article that there is', () => {
    for (const cause of CAUSES) {
      const { id, mends, article } = cause;
      expect(mends, id).not.toEqual([]);
      const [split] = BIKES.map((findings) => splitOf(cause, findings));
      if (!split) expect.fail('no bike');
      expect(split.byMeter, id).toMatch(/[?.]$/);
      expect(split.without, id).toMatch(/[?.]$/);
      if (article === undefined) continue;
      const places = ['explanation', 'how-to'].map((kind) => `content/${kind}/${article}.mdx`);
      expect(places.some(existsSync), `${id}: ${article}`).toBe(true);
    }
  });
});

describe('the remedy of every cause', () => {
  it('does something to the bike, in words and as data, by somebody, with a check that proves the cure', () => {
    const lacking = onEach((cause, findings) => {
      const { what, repair, fix, who, tools, minutes, notBuy, proofOfCure } = cause.remedy(findings);
      return [
        ...(repair.length === 0 ? ['no action'] : []),
        ...(fix.length === 0 ? ['no fix'] : []),
        ...(notBuy.length === 0 ? ['nothing not to buy'] : []),
        ...([what, who, tools, proofOfCure.byEar].includes('') ? ['an empty text'] : []),
        ...(minutes > 0 ? [] : ['no minutes']),
      ];
    });
    expect(lacking).toEqual([]);
  });
  it('names what to buy where a part is exchanged', () => {
    const bought: readonly string[] = ['replace-speaker', 'replace-converter', 'replace-battery'];
    const lacking = onEach((cause, findings) => {
      const { repair, parts } = cause.remedy(findings);
      return parts.length === 0 ? repair.map((action) => action.do).filter((name) => bought.includes(name)) : [];
    });
    expect(lacking).toEqual([]);
  });
  it('has the cautions that its actions and its words ask for', () => {
    const lacking = onEach((cause, findings) => {
      const remedy = cause.remedy(findings);
      return asked(remedy, is(findings, 'tools-at-hand', 'meter')).filter(
        (caution) => !remedy.cautions.includes(caution),
      );
    });
    expect(lacking).toEqual([]);
  });
  it('warns of nothing that its fix has no use for', () => {
    const cautionsOf = (id: string, tools: string) =>
      CAUSES.find((cause) => cause.id === id)?.remedy(onBike({}, { 'tools-at-hand': tools })).cautions;
    expect(cautionsOf('fader-or-balance-off', 'none')).toEqual(['riding']);
    expect(cautionsOf('fader-or-balance-off', 'meter')).toEqual(['riding', 'bridge', 'loud-tone']);
    expect(cautionsOf('battery-lug-loose', 'none')).toEqual(['minus-first', 'battery-gas']);
    expect(cautionsOf('battery-lug-loose', 'meter')).toContain('lamp-hot');
    expect(cautionsOf('coil-open', 'none')).toContain('cell');
    expect(cautionsOf('coil-open', 'meter')).not.toContain('cell');
    expect(cautionsOf('coil-open', 'meter')).not.toContain('loud-tone');
  });
  it('says each caution once', () => {
    const twice = onEach((cause, findings) => {
      const { cautions } = cause.remedy(findings);
      return cautions.filter((caution, i) => cautions.indexOf(caution) !== i);
    });
    expect(twice).toEqual([]);
  });
  it('says nowhere how sure it is, and nothing that it may also be', () => {
    const SURE = /\b(proved|proven|likel(y|iest)|probabl[ey]|certain(ly)?|perhaps|may also be)\b/i;
    expect(onEach((cause, findings) => textsOf(cause, findings).filter((text) => SURE.test(text)))).toEqual([]);
  });
  it('has figures of different ids, each of which can be written', () => {
    const wrong = onEach((cause, findings) => {
      const { numbers } = cause.remedy(findings);
      const ids = numbers.map(({ id }) => id);
      return [
        ...ids.filter((id, i) => ids.indexOf(id) !== i),
        ...numbers.filter((figure) => figureText(figure) === '').map(({ id }) => id),
      ];
    });
    expect(wrong).toEqual([]);
  });
  it('can be worked out on any bike, whatever its readings are', () => {
    // Ohms may be open; volts are those of a bike, since a step asks again about others.
    const ohms = fc.oneof(fc.constantFrom(undefined, 0, Infinity), fc.double({ min: 0, max: 1e9, noNaN: true }));
    const volts = fc.oneof(fc.constantFrom(undefined, 0), fc.double({ min: 1e-3, max: 16, noNaN: true }));
    fc.assert(
      fc.property(
        anyRig,
        fc.infiniteStream(ohms),
        fc.infiniteStream(volts),
        fc.constantFrom('rear', 'front', undefined),
        (rig, ohm, volt, amp) => {
          const answers = amp === undefined ? {} : { 'which-amp': amp };
          // Every reading that a step may have is the next of its stream.
          const known = new Map<string, number | undefined>();
          const values = new Proxy(
            {},
            {
              get: (_, name: string) => {
                if (!known.has(name)) known.set(name, (name.endsWith('Ohm') ? ohm : volt).next().value);
                return known.get(name);
              },
            },
          );
          const findings: Findings = { ...onBike(rig, answers), values: () => values };
          for (const cause of CAUSES) {
            expect(titleOf(cause, findings)).not.toBe('');
            for (const figure of cause.remedy(findings).numbers) expect(figureText(figure)).toMatch(/\d/);
          }
        },
      ),
    );
  });
});
