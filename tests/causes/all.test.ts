import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CAUSE_FILES, CAUSES } from '../../src/causes/all.ts';
import { type Cause, splitOf, titleOf } from '../../src/causes/cause.ts';
import { figureText } from '../../src/causes/figure.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Findings } from '../../src/steps/outcome.ts';
import { FAULTS, keyOf } from '../../src/world/faults/index.ts';
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

/** All sentences of a remedy. */
const textsOf = (cause: Cause, findings: Findings): readonly string[] => {
  const { numbers, repair: _, cautions: __, minutes: ___, proofOfCure, ...rest } = cause.remedy(findings);
  const { byMeter, without } = splitOf(cause, findings);
  return [
    titleOf(cause, findings),
    byMeter,
    without,
    ...Object.values(rest)
      .flat()
      .filter((text) => typeof text === 'string'),
    proofOfCure.byEar,
    ...(proofOfCure.byMeter === undefined ? [] : [proofOfCure.byMeter]),
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
  it('is by design where its faults are, and nowhere else', () => {
    const isByDesign = (name: string) => {
      const own = FAULTS.filter((fault) => name === fault.id || name === keyOf(fault));
      return own.length > 0 && own.every(({ byDesign }) => byDesign === true);
    };
    for (const { id, faults, byDesign } of CAUSES) expect(faults.every(isByDesign), id).toBe(byDesign === true);
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
  it('warns of nothing that it has bought itself, but before something, or of another kind', () => {
    const PLAIN =
      /^(?!.*\b(before|alone|just|bigger|stronger|until|unless|as long as|only|while)\b)(?:An?|New)? ?(\w+)(?![-\w])/;
    const asWell = onEach((cause, findings) => {
      const { parts, notBuy } = cause.remedy(findings);
      const named = notBuy.flatMap((line) => PLAIN.exec(line)?.[2]?.toLowerCase() ?? []);
      return named.filter((thing) => parts.some((part) => new RegExp(`\\b${thing}\\b`, 'i').test(part)));
    });
    expect(asWell).toEqual([]);
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
