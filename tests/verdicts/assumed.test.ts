import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { replay } from '../../src/case/replay.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { KnownAmp, Rig } from '../../src/rig/rig.ts';
import type { Findings } from '../../src/steps/outcome.ts';
import { assumedFor } from '../../src/verdicts/assumed.ts';
import { ampOff, channelModeWrong } from '../../src/verdicts/rear/amplifier.ts';
import { rearChannelsDisabled } from '../../src/verdicts/rear/profile.ts';
import { coilOpen } from '../../src/verdicts/rear/run.ts';
import { rearControlOff } from '../../src/verdicts/rear/settings.ts';
import type { Verdict } from '../../src/verdicts/verdict.ts';
import { type Answers, ride } from '../case/ride.ts';

const on = (rig: Rig): Findings => ({ rig, facts: {}, outcome: () => undefined, values: () => ({}) });
const COIL = [
  'Rear speakers, rated: 4 Ω (usual 2 to 4 Ω)',
  'Rear speaker run, one way: 2.2 m (usual 1.5 to 3.5 m)',
  'Rear speaker run, wire section: 2.08 mm² (usual 0.82 to 2.5 mm²)',
];

/** What is shown as "assumed, because nobody knew" beside the numbers of a verdict. */
describe('what a remedy assumed', () => {
  it('is every number that it worked with and nobody knew, with its typical value, usual range and unit', () => {
    expect(assumedFor(coilOpen, on({}))).toEqual(COIL);
    expect(assumedFor(rearChannelsDisabled, on({}))).toEqual([
      'Supply, engine running: 14.2 V (usual 13.5 to 14.6 V)',
      'Front speakers, rated: 4 Ω (usual 2 to 4 Ω)',
      'Rear speakers on one channel: 1 speaker (usual 1 to 2 speakers)',
      'Rear speakers, rated: 4 Ω (usual 2 to 4 Ω)',
      'An amplified profile is lower by: 7 dB (usual 6 to 8 dB)',
    ]);
  });
  it('is less by each number that becomes known', () => {
    expect(assumedFor(coilOpen, on({ rearRatedOhm: 2 }))).toEqual(COIL.slice(1));
    expect(assumedFor(coilOpen, on({ rearRatedOhm: 2, rearRunM: 3 }))).toEqual(COIL.slice(2));
  });
  it.each(Object.entries(EXAMPLE_RIGS).filter(([, rig]) => rig.amps.length > 0))(
    'is nothing on the example %s, whose every value is known',
    (_, rig) => {
      for (const verdict of [coilOpen, rearChannelsDisabled, channelModeWrong, ampOff]) {
        expect(assumedFor(verdict, on(rig))).toEqual([]);
      }
    },
  );
  it('is nothing for a remedy that works with no number', () => expect(assumedFor(rearControlOff, on({}))).toEqual([]));
  it('leaves out what the remedy did not look at: no speaker run where only the head unit matters', () => {
    expect(assumedFor(rearChannelsDisabled, on({})).join()).not.toMatch(/speaker run|battery/i);
  });
  it('names the amplifier when there are several, and only its unknown numbers', () => {
    const front: KnownAmp = { ...EXAMPLE_RIGS.trunk.amps[0] };
    const { powerW: _, ...rear } = EXAMPLE_RIGS.trunk.amps[1];
    expect(assumedFor(channelModeWrong, on({ ...EXAMPLE_RIGS.trunk, amps: [front, rear] }))).toEqual([
      'Sine power of one channel, amplifier 2: 90 W (usual 40 to 150 W)',
    ]);
    expect(assumedFor(channelModeWrong, on({ ...EXAMPLE_RIGS.trunk, amps: [rear] }))).toEqual([
      'Sine power of one channel: 90 W (usual 40 to 150 W)',
    ]);
  });
  it('includes an amplifier of which nobody knows more than that it drives the rear', () => {
    const answers: Answers = {
      'rear-history': 'never',
      'last-change': 'fitted',
      'front-drive': null,
      'amp-light': 'normal',
      'rear-hiss': 'hiss',
      'rear-inputs': 'own',
      'fader-centre': 'no-change',
      'rear-control': 'none',
      'amp-switches': 'mode',
    };
    const { case: it_ } = ride(noRearSound, { unitKind: 'factory', rearFedBy: 'amp' }, answers);
    const { open, findings } = replay(noRearSound, it_);
    expect('verdict' in open && assumedFor(open.verdict, findings)).toEqual(
      expect.arrayContaining([
        'Sine power of one channel: 90 W (usual 40 to 150 W)',
        'Rated load of one channel: 4 Ω (usual 2 to 4 Ω)',
      ]),
    );
  });
  it('does not change the remedy by watching it', () => {
    const verdicts: readonly Verdict[] = [coilOpen, rearChannelsDisabled, channelModeWrong, ampOff];
    for (const verdict of verdicts) {
      const findings = on({ amps: [{ drives: 'rear' }] });
      const before = verdict.remedy(findings);
      assumedFor(verdict, findings);
      expect(verdict.remedy(findings)).toEqual(before);
    }
  });
});
