import { describe, expect, it } from 'vitest';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { AMP_FIELDS } from '../../src/rig/fields.ts';
import { ampKindStep } from '../../src/steps/plan/amp-kind.ts';
import { ampLayout } from '../../src/steps/plan/amp-layout.ts';
import { ampNeedsStep } from '../../src/steps/plan/amp-needs.ts';
import { ampTurnOnStep } from '../../src/steps/plan/amp-turn-on.ts';

describe('what several amplifiers drive', () => {
  it('is known of a bike on which each of them has its speakers, and asked of any other', () => {
    expect(ampLayout.known(EXAMPLE_RIGS.trunk)).toBe('front-rear');
    expect(ampLayout.known(EXAMPLE_RIGS['frame-fairing'])).toBeUndefined();
    expect(ampLayout.known({ amps: [{ drives: 'front' }, {}] })).toBeUndefined();
    expect(ampLayout.known({ amps: [{ drives: 'rear' }, { drives: 'rear' }] })).toBe('rear');
  });
  it('gives every amplifier its speakers, and every pair its driver', () => {
    expect(ampLayout.learn('front-rear', { amps: [{}, {}, {}] })).toEqual({
      amps: [{ drives: 'front' }, { drives: 'rear' }, { drives: 'rear' }],
      frontFedBy: 'amp',
      rearFitted: 'yes',
      rearFedBy: 'amp',
    });
    expect(ampLayout.learn('rear', { amps: [{}, {}] })).toMatchObject({ frontFedBy: 'unit', rearFedBy: 'amp' });
  });
  it('leaves an amplifier where it is known to be', () => {
    const { amps } = ampLayout.learn('front-rear', { amps: [{ drives: 'rear', kind: 'factory' }, {}] });
    expect(amps).toEqual([{ drives: 'rear', kind: 'factory' }, { drives: 'front' }]);
  });
  it('leaves open what drives the rear when all of them drive the front', () => {
    const rig = ampLayout.learn('front', { amps: [{}, {}], rearFitted: 'yes', rearFedBy: 'amp' });
    expect(rig.rearFedBy).toBeUndefined();
    expect(rig.frontFedBy).toBe('amp');
  });
});

describe('amplifiers that drive the same speakers', () => {
  const amps = [
    { drives: 'rear', kind: 'factory', turnOn: 'wire', needs: 'any' },
    { drives: 'rear', kind: 'add-on', turnOn: 'signal', needs: 'unaltered' },
    { drives: 'front', kind: 'factory' },
  ] as const;
  it('count as the one that is hardest to please', () => {
    expect(ampKindStep('rear').known({ amps })).toBe('add-on');
    expect(ampTurnOnStep('rear').known({ amps })).toBe('signal');
    expect(ampNeedsStep('rear').known({ amps })).toBe('unaltered');
  });
  it('are asked about while one of them is not known', () => {
    expect(ampTurnOnStep('only').known({ amps })).toBeUndefined();
    expect(ampTurnOnStep('front').known({ amps })).toBeUndefined();
  });
  it('learn together, and leave the others alone', () => {
    const learnt = ampNeedsStep('front').learn('any', { amps });
    expect(learnt.amps).toEqual([amps[0], amps[1], { ...amps[2], needs: 'any' }]);
  });
});

it('“any source” says nothing about a remote wire, which does not answer what an amplifier was made for', () => {
  expect(AMP_FIELDS.needs.options.any).toBe('Any source');
});
