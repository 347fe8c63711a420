import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { voltageRatio } from '../../src/compute/decibel.ts';
import { awgSectionM2, copperResistanceOhm } from '../../src/compute/wire.ts';
import { magnitude, real } from '../../src/world/complex.ts';
import { ampInput } from '../../src/world/elements/amp-input.ts';
import { battery, restV } from '../../src/world/elements/battery.ts';
import { bridgeOff, bridgeOutput } from '../../src/world/elements/bridge-output.ts';
import { capacitor } from '../../src/world/elements/capacitor.ts';
import { coil, coilImpedanceOhm } from '../../src/world/elements/coil.ts';
import { contact } from '../../src/world/elements/contact.ts';
import { fuse, fuseOhm } from '../../src/world/elements/fuse.ts';
import { isolator } from '../../src/world/elements/isolator.ts';
import { voltmeter } from '../../src/world/elements/meter.ts';
import { resistor } from '../../src/world/elements/resistor.ts';
import { currentSource, voltageSource } from '../../src/world/elements/source.ts';
import { wire } from '../../src/world/elements/wire.ts';
import { expectClose } from '../compute/close.ts';
import { evenly } from '../compute/evenly.ts';
import { solved } from './solved.ts';

const supply = (driveV: number, onlyHz?: number) => voltageSource('supply', ['top', 'ground'], driveV, onlyHz);

describe('resistor', () => {
  // Lessons In Electric Circuits, DC vol., "Voltage divider circuits": 45 V over 5, 10 and 7.5 kΩ.
  it('divides 45 V over 5, 10 and 7.5 kΩ into 10, 20 and 15 V at 2 mA', () => {
    const chain = [
      resistor('a', ['top', 'x'], 5e3),
      resistor('b', ['x', 'y'], 10e3),
      resistor('c', ['y', 'ground'], 7.5e3),
    ];
    const { acrossV, currentA } = solved([supply(45), ...chain]);
    expectClose(acrossV(['top', 'x']).re, 10);
    expectClose(acrossV(['x', 'y']).re, 20);
    expectClose(acrossV(['y', 'ground']).re, 15);
    expectClose(currentA('b').re, 2e-3);
  });
  // Closed form: 14.4 × 6 / 6.05 and 14.4 × 4 / 6.05.
  it('gives 14.281 and 9.521 V behind 0.05 Ω with 2 Ω and 4 Ω after it', () => {
    const chain = [resistor('a', ['top', 'x'], 0.05), resistor('b', ['x', 'y'], 2), resistor('c', ['y', 'ground'], 4)];
    const { voltageV } = solved([supply(14.4), ...chain]);
    expectClose(voltageV('x').re, (14.4 * 6) / 6.05);
    expectClose(voltageV('y').re, (14.4 * 4) / 6.05);
  });
});

describe('voltmeter', () => {
  // Lessons In Electric Circuits, DC vol., "Voltmeter impact on measured circuit".
  it('reads 0.8889 V of 12 V on a divider of 250 and 250 MΩ: it is part of the circuit', () => {
    const divider = [resistor('upper', ['top', 'mid'], 250e6), resistor('lower', ['mid', 'ground'], 250e6)];
    const { voltageV } = solved([supply(24), ...divider, voltmeter('meter', ['mid', 'ground'])]);
    expectClose(voltageV('mid').re, 0.8889, 1e-4);
  });
  it.each([
    [10e3, 5.997],
    [100e3, 5.97015],
    [1e6, 5.71429],
  ])('reads a divider of two times %d Ω on 12 V as %d V, not 6', (ohm, readsV) => {
    const divider = [resistor('upper', ['top', 'mid'], ohm), resistor('lower', ['mid', 'ground'], ohm)];
    const { voltageV } = solved([supply(12), ...divider, voltmeter('meter', ['mid', 'ground'])]);
    expectClose(voltageV('mid').re, readsV, 1e-5);
  });
  it('hardly sees 1 MΩ of corrosion that starves a lamp of 12 Ω: 11.45 V against 0.15 mV', () => {
    const seen = (load: ReturnType<typeof resistor>) =>
      solved([supply(12.6), contact('corroded', ['top', 'end'], 1e6), load]).voltageV('end').re;
    expectClose(seen(voltmeter('meter', ['end', 'ground'])), 11.4545, 1e-5);
    expectClose(seen(resistor('lamp', ['end', 'ground'], 12)), 12.6 * (12 / 1_000_012));
  });
});

describe('wire', () => {
  // Worked by hand and in a circuit simulator: 12.6 / (0.02 + 0.002 + 2 × 0.00983111 + 0.25).
  it('leaves 10.8002 V of 12.6 V across 0.25 Ω behind 20 mΩ, a 2 mΩ fuse and 3 m of 10 gauge out and back', () => {
    const lead = { lengthM: 3, sectionM2: awgSectionM2(10) };
    const { voltageV, acrossV, currentA } = solved([
      battery('battery', ['plus', 'ground'], { openV: 12.6, internalOhm: 0.02 }),
      contact('fuse', ['plus', 'fused'], 0.002),
      wire('out', ['fused', 'load +'], lead),
      resistor('load', ['load +', 'load −'], 0.25),
      wire('back', ['load −', 'ground'], lead),
    ]);
    expectClose(currentA('load').re, 43.2007, 1e-5);
    expectClose(voltageV('plus').re, 11.736, 1e-5);
    expectClose(voltageV('fused').re, 11.6496, 1e-5);
    expectClose(acrossV(['load +', 'load −']).re, 10.8002, 1e-5);
  });
  it('drops what the formula for copper says, and 1.6 times as much when it only looks like copper', () => {
    fc.assert(
      fc.property(evenly(0.1, 10), evenly(0.3e-6, 60e-6), evenly(-20, 120), (lengthM, sectionM2, temperatureC) => {
        const made = { lengthM, sectionM2, temperatureC };
        const drop = (metal: 'copper' | 'clad') =>
          solved([
            currentSource('load', ['ground', 'end'], 10),
            wire('lead', ['end', 'ground'], { ...made, metal }),
          ]).voltageV('end').re;
        expectClose(drop('copper'), 10 * copperResistanceOhm(made));
        expectClose(drop('clad'), 16 * copperResistanceOhm(made));
      }),
    );
  });
});

describe('contact', () => {
  it('takes 2.88 V and 16.6 W of 14.4 V at 0.5 Ω before a load of 2 Ω', () => {
    const { acrossV, currentA } = solved([
      supply(14.4),
      contact('bad', ['top', 'x'], 0.5),
      resistor('load', ['x', 'ground'], 2),
    ]);
    expectClose(acrossV(['top', 'x']).re, 2.88);
    expectClose(acrossV(['top', 'x']).re * currentA('bad').re, 16.5888);
  });
  it('lets 144 nA by when it is open, so that what hangs behind it still has volts', () => {
    expectClose(solved([supply(14.4), contact('open', ['top', 'ground'], Infinity)]).currentA('open').re, 144e-9);
  });
});

describe('fuse', () => {
  // From memory: about 3 mΩ for a blade fuse of 30 to 40 A, 7 to 8 mΩ at 10 A.
  it('has 2.5 mΩ at 40 A and 10 mΩ at 10 A', () => {
    expectClose(fuseOhm(40), 2.5e-3);
    expectClose(fuseOhm(10), 10e-3);
  });
  it('stands under the whole supply when it is open', () => {
    const load = resistor('load', ['x', 'ground'], 1);
    const { acrossV } = solved([supply(12.6), fuse('main', ['top', 'x'], { ratedA: 40, open: true }), load]);
    expectClose(acrossV(['top', 'x']).re, 12.6, 1e-6);
  });
});

describe('battery', () => {
  it('sags from 12.6 to 11.4 V at 60 A through 20 mΩ', () => {
    const load = currentSource('load', ['plus', 'ground'], 60);
    const { voltageV } = solved([battery('b', ['plus', 'ground'], { openV: 12.6, internalOhm: 0.02 }), load]);
    expectClose(voltageV('plus').re, 11.4);
  });
  // A public chart of absorbed-glass-mat batteries: 12.9, 12.6, 12.3, 12.0 V for 100, 75, 50 and 25 %.
  it.each([
    [1, 12.9],
    [0.75, 12.6],
    [0.5, 12.3],
    [0.25, 12],
  ])('rests at %d of its charge at %d V', (charge, volts) => expectClose(restV(charge), volts));
  it('rests the higher the fuller it is', () => {
    const rising = [0, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 1].map(restV);
    expect(rising).toEqual([...new Set(rising)].toSorted((a, b) => a - b));
  });
});

describe('capacitor', () => {
  it('with a resistor passes 0.7071 of a tone at 1 / (2π R C) and next to nothing of DC', () => {
    const cornerHz = 1 / (2 * Math.PI * 10e3 * 1e-6);
    const [input, load] = [voltageSource('in', ['top', 'ground'], 1), resistor('r', ['x', 'ground'], 10e3)];
    const at = (hz: number) => magnitude(solved([input, capacitor('c', ['top', 'x'], 1e-6), load], hz).voltageV('x'));
    expectClose(at(cornerHz), Math.SQRT1_2, 1e-4);
    expect(at(0)).toBeLessThan(2e-4);
  });
});

describe('coil', () => {
  const made = { resistanceOhm: 3.4, inductanceH: 0.4e-3, motion: { peakOhm: 20, resonanceHz: 90, q: 4 } };
  it('is 3.4 Ω to a meter, 23.4 Ω and its inductance at resonance, and 3.47 Ω at 400 Hz (worked by hand)', () => {
    expect(coilImpedanceOhm(made, 0)).toEqual({ re: 3.4, im: 0 });
    expectClose(coilImpedanceOhm(made, 90).re, 23.4);
    expectClose(magnitude(coilImpedanceOhm(made, 400)), 3.4745, 1e-4);
  });
  it('takes its volts over its impedance', () => {
    const { currentA } = solved([supply(4), coil('c', ['top', 'ground'], made)], 90);
    expectClose(magnitude(currentA('c')), 4 / magnitude(coilImpedanceOhm(made, 90)));
  });
});

describe('bridgeOutput', () => {
  const terminals = { plus: '+', minus: '−', ground: 'ground' };
  const made = { restV: 6.6, toneV: real(2), legOhm: 0.02 };
  const out = bridgeOutput('out', terminals, made);
  it('rests both its wires at half the supply, with nothing between them', () => {
    const { voltageV, acrossV } = solved([out, resistor('load', ['+', '−'], 4)]);
    expectClose(voltageV('+').re, 6.6);
    expect(acrossV(['+', '−']).re).toBeCloseTo(0, 12);
  });
  it('puts the tone across the pair and half of it, opposed, on each wire', () => {
    const { voltageV, acrossV } = solved([out, resistor('load', ['+', '−'], 4)], 400);
    expectClose(acrossV(['+', '−']).re, (2 * 4) / 4.04);
    expectClose(voltageV('+').re, -voltageV('−').re);
  });
  it('drives 330 A through a wire that touches ground: why it must protect itself', () => {
    const { currentA } = solved([out, contact('touch', ['+', 'ground'], 1e-6), resistor('load', ['+', '−'], 4)]);
    expectClose(currentA('touch').re, 330, 1e-2);
  });
  it('holds its wires near ground when it is off', () => {
    const { voltageV } = solved([bridgeOff('out', terminals), resistor('load', ['+', '−'], 4)]);
    expect(voltageV('+').re).toBe(0);
  });
});

describe('ampInput', () => {
  const input = ampInput('in', { plus: '+', minus: '−', ground: 'ground' }, 10e3);
  const sourceV = bridgeOutput(
    'out',
    { plus: 'a', minus: 'b', ground: 'ground' },
    { restV: 6, toneV: real(2), legOhm: 0.02 },
  );
  const across = (plusOhm: number, minusOhm: number) =>
    magnitude(
      solved([sourceV, contact('p', ['a', '+'], plusOhm), contact('m', ['b', '−'], minusOhm), input], 400).acrossV([
        '+',
        '−',
      ]),
    );
  it('gets all of a signal through two sound wires', () => expectClose(across(0.01, 0.01), 2, 1e-5));
  it('gets half of it, 6 dB less, when one wire is open', () => {
    expectClose(across(Infinity, 0.01), 2 * voltageRatio({ gainDb: -6.0206 }), 2e-4);
  });
  it('gets nothing when both are', () => expect(across(Infinity, Infinity)).toBeLessThan(1e-3));
});

describe('isolator', () => {
  const through = (driveV: number, frequencyHz: number) =>
    magnitude(
      solved(
        [
          supply(driveV, frequencyHz),
          resistor('tie', ['−', 'ground'], 1e6),
          isolator('line', ['top', 'ground'], ['+', '−'], { gainRatio: 0.5, sourceOhm: 100 }),
          resistor('load', ['+', '−'], 9900),
        ],
        frequencyHz,
      ).acrossV(['+', '−']),
    );
  it('passes half of a tone, less what its own ohms take', () => expectClose(through(4, 400), 2 * 0.99));
  it('passes no DC', () => expect(through(6.6, 0)).toBe(0));
});
