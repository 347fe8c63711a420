import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assumedFor } from '../../src/causes/assumed.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { fullLevel, rearLoadOhm } from '../../src/rig/levels.ts';
import { ampEstimate, estimate, type KnownAmp, type Rig } from '../../src/rig/rig.ts';
import type { Findings } from '../../src/steps/outcome.ts';
import { anyRig } from '../rig/any-rig.ts';

const on = (rig: Rig): Findings => ({ rig, facts: {}, outcome: () => undefined, values: () => ({}) });

const lead = ({ rig }: Findings) => estimate(rig, 'rearRunM').value / estimate(rig, 'rearRunM2').value;
const power = ({ rig }: Findings) => (rig.amps ?? []).map((amp) => ampEstimate(amp, 'powerW').value);
const LEAD = [
  'Rear speaker run, one way: 2.2 m (usual 1.5 to 3.5 m)',
  'Rear speaker run, wire section: 2.08 mm² (usual 0.82 to 2.5 mm²)',
];

/** What is shown as "assumed, because nobody knew" beside the numbers of a verdict. */
describe('what a computation assumed', () => {
  it('is every number that it worked with and nobody knew, with its typical value, usual range and unit', () => {
    expect(assumedFor(lead, on({}))).toEqual(LEAD);
    expect(assumedFor(({ rig }) => fullLevel(rig, 'rear'), on({}))).toEqual([
      'Rear speakers on one channel: 1 speaker (usual 1 to 2 speakers)',
      'Rear speakers, rated: 4 Ω (usual 2 to 4 Ω)',
      'Supply, engine running: 14.2 V (usual 13.5 to 14.6 V)',
    ]);
  });
  it('is less by each number that becomes known', () => {
    expect(assumedFor(lead, on({ rearRunM: 3 }))).toEqual(LEAD.slice(1));
    expect(assumedFor(lead, on({ rearRunM: 3, rearRunM2: 2e-6 }))).toEqual([]);
  });
  it('is said once, however often it is looked at', () => {
    expect(assumedFor((f) => [lead(f), lead(f)], on({}))).toEqual(LEAD);
  });
  it('is nothing where only choices were looked at: those are asked in words', () => {
    expect(assumedFor(({ rig }) => [rig.unitKind, rig.rearWiring, rig.name], on({}))).toEqual([]);
  });
  it('is no amplifier that nobody has counted', () => expect(assumedFor(power, on({}))).toEqual([]));
  it('names the amplifier when there are several, and only its unknown numbers', () => {
    const front: KnownAmp = { ...EXAMPLE_RIGS.trunk.amps[0] };
    const { powerW: _, ...rear } = EXAMPLE_RIGS.trunk.amps[1];
    expect(assumedFor(power, on({ amps: [front, rear] }))).toEqual([
      'Sine power of one channel, amplifier 2: 90 W (usual 40 to 150 W)',
    ]);
    expect(assumedFor(power, on({ amps: [rear] }))).toEqual(['Sine power of one channel: 90 W (usual 40 to 150 W)']);
  });
  it('leaves the result as it is without being watched', () => {
    fc.assert(
      fc.property(anyRig, (rig) => {
        const work = (f: Findings) => [lead(f), power(f), rearLoadOhm(f.rig), { ...f.rig }];
        let watched: unknown;
        assumedFor((f) => {
          watched = work(f);
        }, on(rig));
        expect(watched).toEqual(work(on(rig)));
      }),
    );
  });
});
