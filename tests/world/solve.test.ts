import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { real } from '../../src/world/complex.ts';
import { ampInput } from '../../src/world/elements/amp-input.ts';
import { battery } from '../../src/world/elements/battery.ts';
import { bridgeOutput } from '../../src/world/elements/bridge-output.ts';
import { capacitor } from '../../src/world/elements/capacitor.ts';
import { coil } from '../../src/world/elements/coil.ts';
import { contact } from '../../src/world/elements/contact.ts';
import { resistor } from '../../src/world/elements/resistor.ts';
import { currentSource, voltageSource } from '../../src/world/elements/source.ts';
import { wire } from '../../src/world/elements/wire.ts';
import type { Element } from '../../src/world/network.ts';
import { noBattery } from '../../src/world/rules/no-battery.ts';
import { solve } from '../../src/world/solve.ts';
import { evenly } from '../compute/evenly.ts';
import { expectConserved, network, solved } from './solved.ts';

const NODES = 8;
const node = (i: number) => (i === 0 ? 'ground' : `n${i}`);
const someNode = fc.integer({ min: 0, max: NODES - 1 }).map(node);
const ohms = evenly(-3, 4).map((exponent) => 10 ** exponent);

/** Any element between any nodes. Each node has a resistor to the one before it, so that none hangs in the air. */
const anyElement = (id: string): fc.Arbitrary<Element> =>
  fc
    .tuple(someNode, someNode, someNode, ohms, evenly(0.1, 15))
    .chain(([a, b, c, ohm, volts]) =>
      fc.constantFrom(
        resistor(id, [a, b], ohm),
        contact(id, [a, b], Infinity),
        wire(id, [a, b], { lengthM: volts, sectionM2: 2e-6, metal: 'clad' }),
        battery(id, [a, b], { openV: volts, internalOhm: ohm }),
        currentSource(id, [a, b], volts),
        capacitor(id, [a, b], 1e-6 * volts),
        coil(id, [a, b], { resistanceOhm: volts, inductanceH: 1e-3, motion: { peakOhm: 20, resonanceHz: 80, q: 3 } }),
        bridgeOutput(id, { plus: a, minus: b, ground: c }, { restV: volts, toneV: { re: volts, im: 1 }, legOhm: 0.05 }),
        ampInput(id, { plus: a, minus: b, ground: c }, 10e3),
      ),
    );
const anyNetwork = fc
  .tuple(
    fc.array(ohms, { minLength: NODES - 1, maxLength: NODES - 1 }),
    fc
      .array(fc.integer({ min: 0, max: 1e6 }), { minLength: 1, maxLength: 14 })
      .chain((all) => fc.tuple(...all.map((_, i) => anyElement(`e${i}`)))),
  )
  .map(([chain, elements]) => [
    ...chain.map((ohm, i) => resistor(`chain ${i}`, [node(i), node(i + 1)], ohm)),
    ...elements,
  ]);

describe('solve', () => {
  it('lets as much flow into every node as out of it, in any network at any frequency', () => {
    fc.assert(
      fc.property(anyNetwork, fc.constantFrom(0, 80, 400, 4000), (elements, frequencyHz) => {
        expectConserved(elements, solved(elements, frequencyHz));
      }),
      { numRuns: 300 },
    );
  });
  it('loses nothing where equations of the same pattern were solved for other values, far from these', () => {
    const ladder = (ohm: readonly number[], legOhm: number): readonly Element[] => [
      voltageSource('shift', ['a', 'ground'], 0.3),
      bridgeOutput('out', { plus: 'p', minus: 'm', ground: 'a' }, { restV: 6, toneV: real(2), legOhm }),
      ...ohm.flatMap((is, i) => [
        resistor(`positive ${i}`, [i === 0 ? 'p' : `p${i}`, `p${i + 1}`], is),
        resistor(`negative ${i}`, [i === 0 ? 'm' : `m${i}`, `m${i + 1}`], 1 / is),
        resistor(`across ${i}`, [`p${i + 1}`, `m${i + 1}`], is * is),
        contact(`leak ${i}`, [`m${i + 1}`, 'ground'], Infinity),
      ]),
    ];
    fc.assert(
      fc.property(fc.array(ohms, { minLength: 5, maxLength: 5 }), fc.constantFrom(0.01, 1e4), (ohm, legOhm) => {
        const elements = ladder(ohm, legOhm);
        expectConserved(elements, solved(elements));
      }),
      { numRuns: 300 },
    );
  });
  it('gives twice the volts for twice the sources', () => {
    fc.assert(
      fc.property(evenly(0.1, 20), evenly(0.1, 5), ohms, (driveV, drawnA, ohm) => {
        const at = (times: number) =>
          solved([
            voltageSource('s', ['a', 'ground'], times * driveV),
            resistor('r', ['a', 'b'], ohm),
            currentSource('i', ['b', 'ground'], times * drawnA),
          ]).voltageV('b').re;
        expect(Math.abs(at(2) - 2 * at(1))).toBeLessThanOrEqual(1e-9 * Math.abs(at(2)) + 1e-12);
      }),
    );
  });
  it('gives the sum of what each source gives alone', () => {
    const one = voltageSource('one', ['a', 'ground'], 12);
    const two = currentSource('two', ['ground', 'b'], 3);
    const rest = [resistor('r', ['a', 'b'], 2), resistor('q', ['b', 'ground'], 5)];
    const at = (...sources: Element[]) => solved([...sources, ...rest]).voltageV('b').re;
    const off = voltageSource('one', ['a', 'ground'], 0);
    expect(at(one, two)).toBeCloseTo(at(one) + at(off, two), 12);
  });
  it('changes nothing that it was given', () => {
    const elements = Object.freeze([voltageSource('s', ['a', 'ground'], 12), resistor('r', ['a', 'ground'], 2)]);
    expect(solved(elements).voltageV('a')).toEqual(solved(elements).voltageV('a'));
  });
  it('throws for a node or an element that is not there, since that is a slip of the caller', () => {
    const solution = solved([voltageSource('s', ['a', 'ground'], 12), resistor('r', ['a', 'ground'], 2)]);
    expect(() => solution.voltageV('b')).toThrow(/^node must be one of the network, got b$/);
    expect(() => solution.currentA('x')).toThrow(/^element must be one of the network, got x$/);
  });
});

describe('a network that cannot be is refused by name', () => {
  const loop = resistor('r', ['a', 'ground'], 1);
  it.each<[string, readonly Element[], object]>([
    ['a node that hangs in the air', [resistor('r', ['a', 'b'], 1)], { reason: 'floating-node', node: 'a' }],
    [
      'a node that is only driven by a current',
      [loop, currentSource('i', ['a', 'b'], 1)],
      { reason: 'floating-node', node: 'b' },
    ],
    [
      'two sources side by side',
      [voltageSource('one', ['a', 'ground'], 12), voltageSource('two', ['a', 'ground'], 12)],
      { reason: 'source-loop', element: 'two' },
    ],
    [
      'three sources in a ring',
      [
        voltageSource('one', ['a', 'ground'], 12),
        voltageSource('two', ['b', 'a'], 1),
        voltageSource('three', ['b', 'ground'], 13),
      ],
      { reason: 'source-loop', element: 'three' },
    ],
    ['a source short-circuited', [loop, voltageSource('s', ['a', 'a'], 1)], { reason: 'source-loop', element: 's' }],
    [
      'a load below zero',
      [resistor('load', ['a', 'ground'], -4)],
      { reason: 'bad-value', element: 'load', value: 'resistanceOhm -4' },
    ],
    [
      'a wire without length',
      [wire('lead', ['a', 'ground'], { lengthM: 0, sectionM2: 2e-6 })],
      { reason: 'bad-value', element: 'lead', value: 'lengthM 0' },
    ],
    [
      'a wire without section',
      [wire('lead', ['a', 'ground'], { lengthM: 1, sectionM2: 0 })],
      { reason: 'bad-value', element: 'lead', value: 'sectionM2 0' },
    ],
    [
      'a battery of no number',
      [battery('b', ['a', 'ground'], { openV: Number.NaN, internalOhm: 0.02 })],
      { reason: 'bad-value', element: 'b', value: 'openV NaN' },
    ],
    [
      'a coil without resistance',
      [coil('c', ['a', 'ground'], { resistanceOhm: 0 })],
      { reason: 'bad-value', element: 'c', value: 'resistanceOhm 0' },
    ],
    [
      'an output that rests below ground',
      [loop, bridgeOutput('o', { plus: 'a', minus: 'b', ground: 'ground' }, { restV: -1, toneV: real(0), legOhm: 1 })],
      { reason: 'bad-value', element: 'o', value: 'restV -1' },
    ],
    ['two elements of one name', [loop, loop], { reason: 'same-name', element: 'r' }],
  ])('%s', (_, elements, refusal) => expect(solve(network(elements))).toEqual({ ok: false, ...refusal }));

  it('a bike without a battery', () => {
    expect(noBattery({ elements: [loop] })).toEqual({ reason: 'no-battery' });
    expect(noBattery({ elements: [battery('b', ['a', 'ground'], { openV: 12, internalOhm: 0.02 })] })).toBeNull();
  });
});
