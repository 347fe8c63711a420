import { describe, expect, it } from 'vitest';
import { ampLoad, denseMusicA, drawFigures, fullBassA, gainTargets, outputInWords } from '../../src/causes/amp-load.ts';
import { assumedFor } from '../../src/causes/assumed.ts';
import { ampName } from '../../src/causes/the-amp.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { expectClose } from '../compute/close.ts';
import { found, KNOWN, TWO_AMPS, UNKNOWN } from './found.ts';

const FRONT = { 'which-amp': { option: 'front' } };

describe('the channels of an amplifier', () => {
  const channels = (rig: Rig, facts = {}) => ampLoad(found(rig, {}, facts)).channels;

  it('are four where it drives front and rear, and two where it drives one pair', () => {
    expect(channels(KNOWN)).toBe(4);
    expect(channels(TWO_AMPS)).toBe(2);
    expect(channels(TWO_AMPS, FRONT)).toBe(2);
  });
  it('are taken as four where “the rear, or everything” was all that was said, so that no lead is too thin', () => {
    expect(ampLoad(found(UNKNOWN))).toMatchObject({ channels: 4, assumed: true });
    expect(ampLoad(found({}))).toMatchObject({ channels: 4, assumed: true });
    expect(ampLoad(found({ amps: [{ drives: 'rear', powerW: 90 }] }))).toMatchObject({ channels: 4, assumed: true });
  });
  it('are not said to be assumed as two where four stand in for them', () => {
    expect(assumedFor((f) => ampLoad(f).channels, found({ amps: [{ drives: 'rear' }] }))).not.toContainEqual(
      expect.stringMatching(/^Channels/),
    );
  });
  it('are two once it is known that the head unit drives the front', () => {
    const rig: Rig = { frontFedBy: 'unit', amps: [{ drives: 'rear', powerW: 90 }] };
    expect(ampLoad(found(rig))).toMatchObject({ channels: 2, assumed: false });
  });
  it('are known where it is said to drive both, and its watts are', () => {
    expect(ampLoad(found(KNOWN)).assumed).toBe(false);
    expect(ampLoad(found({ amps: [{ drives: 'both' }] }))).toMatchObject({ channels: 4, assumed: true });
  });
});

// I = average × channels × P / (efficiency × U), with 0.72 and a third from memory, no published source. Worked by hand.
describe('what it draws', () => {
  it('is 35.2 A on full bass for four channels of 90 W, and a third of that with dense music', () => {
    expectClose(fullBassA(found(KNOWN)), 360 / (0.72 * 14.2));
    expectClose(denseMusicA(found(KNOWN)), 360 / (3 * 0.72 * 14.2));
  });
  it('is 29.3 A for two channels of 150 W', () => expectClose(fullBassA(found(TWO_AMPS)), 300 / (0.72 * 14.2)));
  it('names the channels that it was worked out with, and says where they are assumed', () => {
    const label = (rig: Rig) => drawFigures(found(rig)).at(-1)?.label;
    expect(label(KNOWN)).toBe('Full bass takes, 4 channels of 90 W');
    expect(label(TWO_AMPS)).toBe('Full bass takes, 2 channels of 150 W');
    expect(label(UNKNOWN)).toBe('Full bass takes, 4 channels of 90 W (assumed)');
  });
  it('is nothing on a bike without an amplifier', () => expect(drawFigures(found({ amps: [] }))).toEqual([]));
});

describe('the output that its gain is set to', () => {
  // √(75 W × 4 Ω) = 17.3 V under the √(90 W × 4 Ω) = 19.0 V at which it clips; √(125 × 2) and √(150 × 2).
  it('is the square root of watts × ohms, with a margin', () => {
    expectClose(gainTargets(found(KNOWN)).outputV, 17.32, 1e-3);
    expectClose(gainTargets(found(KNOWN)).clipsV, 18.97, 1e-3);
    expectClose(gainTargets(found(TWO_AMPS)).outputV, 15.81, 1e-3);
  });
  // √(75/90 · P · Z): Joule’s law, and a margin that is common practice, no published source.
  it('says how to work it out where nobody knows its rating, and not what another amplifier would be set to', () => {
    expect(outputInWords(found(KNOWN))).toBe('17.3 V');
    expect(outputInWords(found(UNKNOWN))).toBe('the square root of 5/6 × watts × ohms');
  });
});

describe('the name of an amplifier', () => {
  it('has its pair where the bike has two', () => {
    expect(ampName(found(KNOWN))).toBe('the amplifier');
    expect(ampName(found(TWO_AMPS))).toBe('the rear amplifier');
    expect(ampName(found(TWO_AMPS, {}, FRONT))).toBe('the front amplifier');
  });
});
