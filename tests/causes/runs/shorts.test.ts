import { describe, expect, it } from 'vitest';
import { splitOf, titleOf } from '../../../src/causes/cause.ts';
import { loadTooLow } from '../../../src/causes/runs/load-too-low.ts';
import { speakerPairShorted } from '../../../src/causes/runs/speaker-pair-shorted.ts';
import { speakerWireToFrame } from '../../../src/causes/runs/speaker-wire-to-frame.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { answered } from '../found.ts';
import { figuresOf, ON_AMP, onBike } from '../on-bike.ts';

const AMP_OF_ALL = onBike(ON_AMP, { 'which-amp': 'rear' });
const RUNS_READ = { 'amp-runs': { lowestOhm: 0.5, leadsOhm: 0.3 } };

// Above 100 kΩ clear, below 100 Ω touching: common practice, no published source.
describe('a speaker wire on the frame', () => {
  it('shows the lowest reading beside what is clear and what touches', () => {
    const read = { 'wire-to-frame': { lowestOhm: 0.4 } };
    expect(figuresOf(speakerWireToFrame, onBike(ON_AMP, {}, read))).toEqual({
      'wire-to-frame': '0.4 Ω',
      'wire-to-frame-healthy': 'above 100 kΩ',
      'wire-to-frame-touching': 'below 100 Ω',
    });
  });
  it('is one of the rear where the rear is silent, and any of an amplifier that drives everything', () => {
    expect(titleOf(speakerWireToFrame, onBike(ON_AMP))).toBe('Rear speaker wire on the frame');
    expect(titleOf(speakerWireToFrame, AMP_OF_ALL)).toBe('Speaker wire on the frame');
    expect(speakerWireToFrame.remedy(AMP_OF_ALL).repair).toEqual([
      { do: 'free-wire', wire: 'speaker-run', where: 'all' },
    ]);
  });
  it('is any of them while nobody said what drives the front, and the fix begins with finding which', () => {
    const rear = { amps: [{ drives: 'rear' }] } as const;
    const unsaid = onBike(rear, { 'which-amp': 'rear' });
    expect(titleOf(speakerWireToFrame, unsaid)).toBe('Speaker wire on the frame');
    expect(speakerWireToFrame.remedy(unsaid).what).toMatch(/^A speaker wire touches metal/);
    expect(speakerWireToFrame.remedy(unsaid).fix[0]).toMatch(/^Find out which run it is/);
    expect(titleOf(speakerPairShorted, unsaid)).toBe('Speaker run shorted');
    expect(speakerPairShorted.remedy(unsaid).fix[0]).toMatch(/^Find out which run it is/);
    const frontOnUnit = onBike({ ...rear, frontFedBy: 'unit' }, { 'which-amp': 'rear' });
    expect(titleOf(speakerWireToFrame, frontOnUnit)).toBe('Rear speaker wire on the frame');
    expect(speakerWireToFrame.remedy(frontOnUnit).fix[0]).toMatch(/^Leave that run unplugged/);
  });
  it('is one of the rear where a rear wire read to the frame, whatever else hangs on the amplifier', () => {
    const read = onBike(ON_AMP, { 'which-amp': 'rear', 'wire-to-frame': 'shorted' });
    expect(titleOf(speakerWireToFrame, read)).toBe('Rear speaker wire on the frame');
  });
  it('is told by unplugging the runs in turn, which is not the reading that named it', () => {
    for (const check of Object.values(speakerWireToFrame.split)) expect(check).toMatch(/unplug one run at a time/);
  });
  it('is one of the front where the amplifier of the front trips', () => {
    const front = {
      ...onBike(EXAMPLE_RIGS.trunk, { 'which-amp': 'front' }),
      facts: { 'which-amp': { option: 'front' } },
    };
    expect(titleOf(speakerWireToFrame, front)).toBe('Front speaker wire on the frame');
  });
  it('is not told apart by reading all wires to the frame once one read low', () => {
    const before = splitOf(speakerWireToFrame, answered({})).byMeter;
    expect(before).toMatch(/a speaker wire below 100 Ω/);
    for (const known of [{ 'wire-to-frame': 'shorted' }, { 'amp-wires-to-frame': 'shorted' }] as const)
      expect(splitOf(speakerWireToFrame, answered(known)).byMeter).not.toBe(before);
  });
});

describe('a speaker run that is shorted', () => {
  it('is the one that reads far fewer ohms than its twin', () => {
    const read = { 'run-ohms': { leadsOhm: 0.2, leftOhm: 3.4, rightOhm: 0.3 } };
    const findings = onBike(ON_AMP, {}, read);
    expect(titleOf(speakerPairShorted, findings)).toBe('Rear right speaker run shorted');
    expect(speakerPairShorted.remedy(findings).repair).toEqual([
      { do: 'renew-wire', wire: 'speaker-run', where: 'rear-right' },
    ]);
  });
  it('is the lowest of its runs, less the leads, where an amplifier trips', () => {
    const findings = onBike(ON_AMP, { 'which-amp': 'rear' }, RUNS_READ);
    expect(figuresOf(speakerPairShorted, findings)).toEqual({ 'lowest-run': '0.2 Ω', 'coil-cold': '2.8 to 3.8 Ω' });
  });
});

// Loads side by side and in a row: Lessons In Electric Circuits, DC vol.; 0.7 to 0.95 of the rated ohms from memory.
describe('too few ohms for an amplifier', () => {
  it('are 2 Ω of two times 4 Ω side by side, and 8 Ω in a row, which reads 5.6 to 7.6 Ω', () => {
    expect(figuresOf(loadTooLow, onBike(ON_AMP, { 'which-amp': 'rear' }, RUNS_READ))).toEqual({
      'lowest-run': '0.2 Ω',
      'amp-rated-load': 'at least 4 Ω',
      'side-by-side': '2 Ω',
      'in-a-row': '8 Ω',
      'run-afterwards': '5.6 to 7.6 Ω',
    });
  });
  it('go by what was read, where two of the rating that is known cannot read that', () => {
    // Two of 2 Ω side by side are 1 Ω and read 0.7 to 0.95 Ω; in a row they are 4 Ω.
    const read = { 'amp-runs': { leadsOhm: 0.1, lowestOhm: 0.9 } };
    expect(figuresOf(loadTooLow, onBike(ON_AMP, { 'which-amp': 'rear' }, read))).toMatchObject({
      'lowest-run': '0.8 Ω',
      'side-by-side': '1 Ω',
      'in-a-row': '4 Ω',
      'run-afterwards': '2.8 to 3.8 Ω',
    });
  });
  it('end above what the amplifier is rated into', () => {
    for (const rig of [ON_AMP, EXAMPLE_RIGS.trunk]) {
      const [action] = loadTooLow.remedy(onBike(rig)).repair;
      expect(action).toMatchObject({ do: 'rewire-speakers', togetherOhm: 2 * rig.rearRatedOhm });
    }
  });
});
