import { describe, expect, it } from 'vitest';
import { whatIsInTheHeadUnit } from '../../machines/what-is-in-the-head-unit.ts';
import { SPOKEN } from '../../src/components/caution/spoken.ts';
import { tellPlan } from '../../src/components/fault/say-verdict.ts';
import { cautionsOfActs, reads } from '../../src/plan/acts.ts';
import type { PlanRemedy } from '../../src/plan/verdict.ts';
import { PLAN_VERDICTS } from '../../src/plan/verdicts.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { CAUTIONS, type CautionId } from '../../src/steps/cautions.ts';
import { ride } from '../case/ride.ts';
import { on } from '../steps/situation.ts';
import { SAMPLE, walk } from './routes.ts';

/*
 * What hurts, as the trade knows it: from memory, common practice, no published source. What a verdict has somebody do is
 * read off its words, so that a caution that is lost with its act is missed by whoever reads them.
 */

/** Words of a verdict, and what belongs to them: one of these. */
const WORDS: readonly (readonly [words: RegExp, ...any: CautionId[]])[] = [
  [
    /^(Bass boost: |EQ: |Level: |Rear channels: )|\b(the two|two|same|these) tones\b.*again|(read|take) .*tones/i,
    'loud-tone',
    'full-tone',
  ],
  [/\b80 Hz and 400 Hz\b|\b80 and 400 Hz\b|400 Hz tone/, 'loud-tone'],
  [/\b80 Hz and 400 Hz\b|on a front pair|on the rear pairs/, 'bridge'],
  [/loudest clean step at 80 Hz|loudest clean step of the loud 80 Hz/, 'full-tone'],
  [/tones.*engine (off and )?running|set bass and treble with the engine|engine (off and )?idling/i, 'outdoors'],
  [/tones.*engine (off and )?running|set bass and treble with the engine|engine (off and )?idling/i, 'hot'],
  [/^Set the gain|set the gain again|gain .* to minimum\. .*Set the gain/i, 'amp-output'],
  [/^Set the gain|set the gain again|gain .* to minimum\. .*Set the gain/i, 'loud-tone'],
  [/^Change: (rear channels on|level lowered|same EQ|full level)/, 'warranty'],
  [/remote (input|wire) (of|to)|run a remote wire/i, 'data'],
  [/remote (input|wire) (of|to)|run a remote wire/i, 'fuse'],
  [/fit and wire the amplifier|Fit the new amplifier|take the amplifier out|Exchange the amplifier/, 'minus-first'],
  [/fit and wire the amplifier|Fit the new amplifier|take the amplifier out|Exchange the amplifier/, 'battery-gas'],
  [/speaker-level (input )?range/i, 'wakes-loud'],
  [/move the (front|rear) pair/i, 'bridge'],
  [
    /both speakers of each pair are wired the same way|both wired the same way round|Insulate rear wires|put its speakers on/,
    'bridge',
  ],
  [/fit and wire the rear speakers|speakers of 4 Ω or more\./, 'key-off', 'bridge'],
  [/sound menu|in the menu|its own menu|bass control down|Set bass and treble on the road/i, 'riding'],
  [/under the seat, in the lids|thick output wires|Look at (it|its fuse)/, 'hot'],
  [/data-bus/i, 'data'],
  [/headset module’s setting|setting of the headset module changed/, 'warranty'],
];
/** Words that speak of what is done without having it done. */
const NOT_DONE =
  /^(Better still|Either keep|Or keep|Keep:|Or leave|Then answer|It holds none)|stays as it is|comes back|gets? (there|used)/;

const lacking = (
  lines: readonly string[],
  said: readonly CautionId[],
  on_: readonly CautionId[] = [],
): readonly string[] =>
  lines
    .filter((line) => !NOT_DONE.test(line))
    .flatMap((line) =>
      WORDS.filter(
        ([words, ...any]) => words.test(line) && !any.some((one) => said.includes(one) || on_.includes(one)),
      ).map(([, ...any]) => `${any.join(' or ')} for: ${line}`),
    );

const METER = { 'tools-at-hand': 'meter', 'meter-digit': '0.01' };
const READ = [
  ride(whatIsInTheHeadUnit, EXAMPLE_RIGS['fork-fairing'], { 'tools-at-hand': 'none' }),
  ride(whatIsInTheHeadUnit, EXAMPLE_RIGS['frame-fairing'], {
    ...METER,
    'tones-off': { v400V: '0.50', v80V: '0.51' },
    'rear-pair': null,
    'top-step': null,
    'tones-running': null,
  }),
  ride(whatIsInTheHeadUnit, { unitKind: 'replaced' }, {}),
].map(({ verdict, remedy }) => ({ verdict, remedy, noAmp: verdict !== 'profile-read' }));
interface End {
  readonly verdict: string;
  readonly remedy: PlanRemedy;
  /** Whether it is known that there is no amplifier. */
  readonly noAmp: boolean;
}
const ENDS: readonly End[] = [
  ...SAMPLE.flatMap(({ verdict, remedy, rig }) =>
    verdict && remedy ? [{ verdict, remedy, noAmp: rig.amps?.length === 0 }] : [],
  ),
  ...READ,
];

describe('the cautions of a plan', () => {
  it('are tried on every verdict of it, and on what a reading ends in', () => {
    const ids = new Set(ENDS.map(({ verdict }) => verdict));
    for (const { id } of Object.values(PLAN_VERDICTS)) expect(ids).toContain(id);
    expect(ids).toContain('profile-read');
  });
  it('cover what it has somebody do', () => {
    const missed = ENDS.flatMap(({ verdict, remedy, noAmp }) =>
      lacking(remedy.fix, remedy.cautions, noAmp ? ['wakes-loud', 'amp-output'] : []).map(
        (line) => `${verdict}: ${line}`,
      ),
    );
    expect([...new Set(missed)]).toEqual([]);
  });
  it('cover what it has somebody check, on the page and on the paper for the counter', () => {
    const missed = ENDS.flatMap(({ verdict, remedy, noAmp }) =>
      lacking(
        [remedy.proof, ...(remedy.sheet?.parts.flatMap(({ lines }) => lines) ?? [])],
        [...remedy.cautions, ...remedy.proofCautions],
        noAmp ? ['wakes-loud', 'amp-output'] : [],
      ).map((line) => `${verdict}: ${line}`),
    );
    expect([...new Set(missed)]).toEqual([]);
  });
  it('are each said once, at the first thing that needs it, and are not too many to be read', () => {
    for (const { verdict, remedy } of ENDS) {
      const all = [...remedy.cautions, ...remedy.proofCautions];
      expect(all).toEqual([...new Set(all)]);
      expect(remedy.cautions.length, `${verdict}: ${remedy.cautions.join()}`).toBeLessThanOrEqual(13);
      expect(remedy.proofCautions.length, `${verdict}: ${remedy.proofCautions.join()}`).toBeLessThanOrEqual(8);
    }
  });
  it('speak of no amplifier where there is none and none is to come off', () => {
    const plain = ENDS.filter(({ noAmp, remedy }) => noAmp && !remedy.acts.some((act) => act.do === 'take-out-amp'));
    expect(plain.length).toBeGreaterThan(100);
    for (const { remedy } of plain)
      for (const id of [...remedy.cautions, ...remedy.proofCautions]) expect(CAUTIONS[id]).not.toMatch(/amplifier/i);
  });
  it('are said to a caller, those of the check as well', () => {
    const end = ENDS.find(({ remedy }) => remedy.proofCautions.length > 0 && remedy.cautions.length > 0);
    if (!end) throw new Error('no such verdict');
    const { mind } = tellPlan(end.remedy, []);
    for (const id of [...end.remedy.cautions, ...end.remedy.proofCautions]) expect(mind).toContain(SPOKEN[id]);
  });
});

describe('what is done to a head unit and its amplifiers', () => {
  const amp = {
    'wish-mirroring': 'no',
    'unit-kind': 'factory',
    'amp-count': '1',
    'amp-kind': 'add-on',
    'amp-turn-on': 'wire',
    'amp-needs': 'any',
    'front-build': 'amp',
    'rear-build': 'amp',
    'wish-same-eq': 'no',
    'profile-source': 'never',
  };
  it('is the profile that is selected and the gain that is set after it, to the volts of √(W × Ω)', () => {
    const { remedy } = walk({ 'planned-change': 'amp-added', ...amp });
    expect(remedy.acts).toContainEqual({ do: 'select-profile', rear: 'on', level: 'lowered', boost: 'none' });
    const gain = remedy.acts.find((act) => act.do === 'set-gain');
    // 90 W into 4 Ω where nobody knows: √(90 × 4) = 18.97 V (power law).
    expect(gain).toMatchObject({ axle: 'both', outputV: expect.closeTo(18.97, 1) });
    expect(remedy.cautions).toEqual(
      expect.arrayContaining(['warranty', 'set-gain-again', 'amp-output', 'minus-first']),
    );
  });
  it('warns of the full level wherever it comes back in front of an amplifier', () => {
    for (const { remedy, noAmp } of ENDS)
      if (!noAmp && remedy.acts.some((act) => act.do === 'select-profile' && act.level === 'full'))
        expect(remedy.cautions).toContain('back-to-full');
  });
  it('is nothing where the plan needs nothing selected', () => {
    for (const { remedy } of ENDS)
      expect(remedy.acts.some((act) => act.do === 'select-profile')).toBe(remedy.demand?.kind === 'select');
  });
});

describe('a reading that a plan asks for', () => {
  it.each([
    ['boosted', ['loud-tone', 'bridge', 'flat-battery', 'data', 'warranty']],
    ['rear', ['loud-tone', 'bridge', 'flat-battery']],
    ['lowered', ['full-tone', 'bridge', 'flat-battery']],
    ['sameEq', ['outdoors', 'hot', 'loud-tone', 'bridge']],
  ] as const)('of %s has the cautions of its step and of all that the step needs', (property, ids) => {
    expect(cautionsOfActs(reads(property), on(EXAMPLE_RIGS['frame-fairing']))).toEqual(
      expect.arrayContaining([...ids]),
    );
  });
});
