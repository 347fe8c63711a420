import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultOf, isSaidWhileTyping } from '../../../src/components/flow/reading-fault.ts';
import { isPossible, valuesIn } from '../../../src/steps/outcome.ts';
import { tonesOff } from '../../../src/steps/profile/tones-off.ts';
import { runOhms } from '../../../src/steps/runs/run-ohms.ts';
import { rearPair } from '../../../src/steps/unit/rear-pair.ts';
import { anyStep } from '../../steps/situation.ts';

const [run, pair, tones] = [anyStep(runOhms), anyStep(rearPair), anyStep(tonesOff)];
const saidOf = (step: typeof run, name: string, text: string) => faultOf(step, name, text)?.message;

describe('a reading as typed', () => {
  it.each(['3.6', '3,6 Ω', '٣٫٦', 'OL', '∞', '1 Ω', '1.0'])('has nothing wrong when it is “%s” ohms', (text) => {
    expect(faultOf(run, 'leftOhm', text)).toBeNull();
  });
  it('is needed, unless the step goes without', () => {
    expect(saidOf(pair, 'frontV', ' ')).toMatch(/^This reading is needed\./);
    const [optional] = Object.entries(tones.readings).find(([, reading]) => reading.optional) ?? [''];
    expect(faultOf(tones, optional, '')).toBeNull();
  });
  it.each(['1', '1.', '١'])(
    'is asked about when it is “%s” ohms and nothing else, with a button for each meaning',
    (text) => {
      const fault = faultOf(run, 'leftOhm', text);
      expect(fault?.message).toMatch(/Is it 1 Ω, or over range\?$/);
      const meant = fault?.meanings?.map((meaning) => meaning.text) ?? [];
      expect(meant.map((one) => valuesIn({ readings: { leftOhm: one } }, run)['leftOhm'])).toEqual([1, Infinity]);
      for (const one of meant) expect(faultOf(run, 'leftOhm', one)).toBeNull();
    },
  );
  it('is 1 V when it is a 1 on volts', () => expect(faultOf(pair, 'frontV', '1')).toBeNull());
  it('is questioned when it cannot be here, and the way out is named', () => {
    expect(saidOf(pair, 'frontV', '80')).toMatch(/“I can’t do this”/);
    expect(saidOf(run, 'leadsOhm', 'OL')).toMatch(/Two probes held together/);
    expect(saidOf(run, 'leftOhm', '1e9')).toMatch(/^Type at most 100 MΩ\./);
    expect(saidOf(pair, 'frontV', '1e9')).toMatch(/^Type at most 1000 V\./);
  });
  it('has a sentence, or a value that can be here, whatever it is', () => {
    const text = fc.oneof(fc.string(), fc.string({ unit: fc.constantFrom(...'019.,- ekMVΩOL∞٣') }));
    fc.assert(
      fc.property(text, fc.constantFrom('leadsOhm', 'leftOhm'), (typed, name) => {
        const fault = faultOf(run, name, typed);
        if (fault) expect(fault.message).toMatch(/[.?]$/);
        else
          expect(isPossible(run, name, valuesIn({ readings: { [name]: typed } }, run)[name] ?? Number.NaN)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

describe('a fault', () => {
  const reading = run.readings['leadsOhm'];
  if (!reading) throw new Error('the step has no such reading');
  it.each(['9', '-2', 'OL'])('is said while “%s” is being typed: a number that cannot be', (text) => {
    expect(isSaidWhileTyping(text, reading)).toBe(true);
  });
  it.each(['', ' ', '-', '1', '3.', 'O', '3 oh', '1e9'])(
    'waits until the field is left while there is only “%s”',
    (text) => {
      expect(isSaidWhileTyping(text, reading)).toBe(false);
    },
  );
});
