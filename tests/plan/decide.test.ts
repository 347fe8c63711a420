import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AMP_NEEDS, type AmpNeed } from '../../src/plan/amp-need.ts';
import { ANSWER_CLASHES } from '../../src/plan/answer-clash.ts';
import { decide, rowOf, separators } from '../../src/plan/decide.ts';
import type { Answer, CertainFacts, PlanFacts } from '../../src/plan/decision.ts';
import { planCase } from '../../src/plan/facts.ts';
import {
  candidates,
  EVERY_PROFILE,
  PROPERTIES,
  type ProfileNow,
  STORED_PROFILES,
  type StoredProfile,
} from '../../src/plan/profile/profile.ts';
import { EARLY_ROWS, PROFILE_ROWS } from '../../src/plan/rows.ts';
import { AMP_OF, known } from './known.ts';

const UNITS = ['factory', 'replaced', 'unknown'] as const;
const FRONTS = ['unit', 'amp'] as const;
const REARS = ['none', 'unit', 'amp'] as const;
const INPUTS = ['own', 'front'] as const;
const PROFILES = [...EVERY_PROFILE, 'unknown'] as const;
const YES_NO = [true, false];

type Build = {
  unit: (typeof UNITS)[number];
  profile: (typeof PROFILES)[number];
  amp: AmpNeed;
  front: (typeof FRONTS)[number];
  rear: (typeof REARS)[number];
  inputs: (typeof INPUTS)[number];
  sameEq: boolean;
  mirroring: boolean;
  /** Whether the bike was built with an amplifier. */
  fromNew?: boolean;
};

/** Every build of which everything but the head unit, the profile and the amplifier must be known. */
const BUILDS: readonly Build[] = UNITS.flatMap((unit) =>
  PROFILES.flatMap((profile) =>
    AMP_NEEDS.flatMap((amp) =>
      FRONTS.flatMap((front) =>
        REARS.flatMap((rear) =>
          YES_NO.flatMap((sameEq) =>
            YES_NO.flatMap((mirroring) =>
              INPUTS.map((inputs) => ({ unit, profile, amp, front, rear, inputs, sameEq, mirroring })),
            ),
          ),
        ),
      ),
    ),
  ),
);

/** The answers written down by hand, read from the top. Common practice, no published source. */
function expected({ unit, profile, amp, front, rear, inputs, sameEq, fromNew = false }: Build): Answer {
  if (unit === 'unknown') return 'find-the-unit';
  if (unit === 'replaced') return 'replaced-unit';
  if (amp === 'none' && (front === 'amp' || rear === 'amp')) return 'on-no-amp';
  if (amp !== 'none' && front === 'unit' && rear !== 'amp') return 'amp-feeds-nothing';
  if (amp === 'unknown') return 'find-the-amp';
  if (profile === 'unknown') return 'measure-first';

  const amplified = profile === 'amplified-same' || profile === 'amplified-changes';
  // Nobody has promised a full level in the head unit of a bike that was built with an amplifier.
  if (fromNew && amplified && (amp === 'none' || amp === 'unaltered')) return 'back-if-stored';
  if (amp === 'none' && rear === 'none') return amplified ? 'back-to-unaltered' : 'stay';
  if (amp === 'none') {
    if (profile === 'unaltered') return 'enable-rear';
    return profile === 'rear-on' ? 'stay' : 'back-to-rear-on';
  }
  if (amp === 'unaltered' && rear !== 'unit') {
    const needsRearOutputs = rear === 'amp' && inputs === 'own';
    if (profile === 'unaltered') return needsRearOutputs ? 'enable-rear' : 'stay';
    if (profile === 'rear-on') return 'stay';
    return needsRearOutputs ? 'back-to-rear-on' : 'back-to-unaltered';
  }
  if (amp === 'unaltered') {
    if (profile === 'unaltered') return 'enable-rear';
    return profile === 'rear-on' ? 'stay' : 'back-to-rear-on';
  }
  if (front === 'amp' && rear !== 'unit') {
    if (!amplified) return sameEq ? 'amplified-same' : 'amplified-any';
    if (profile === 'amplified-same') return 'stay';
    return sameEq ? 'amplified-same' : 'stay';
  }
  if (front === 'unit') {
    if (profile === 'unaltered') return inputs === 'own' ? 'enable-rear' : 'stay';
    return profile === 'rear-on' ? 'stay' : 'move-or-back';
  }
  if (profile === 'unaltered') return 'enable-rear';
  return profile === 'rear-on' ? 'stay' : 'move-or-back';
}

/** What the meter says when a profile is stored. */
function readings(profile: Build['profile']) {
  if (profile === 'unknown') return {};
  const does = STORED_PROFILES[profile];
  return {
    'tones-off': does.boosted ? 'boosted' : 'flat',
    'rear-pair': does.rear ? 'ok' : 'none',
    'tones-running': does.sameEq ? 'same' : 'changes',
    'top-step': does.lowered ? 'lowered' : 'full',
  };
}

/** The build as a case: a plan that wishes for something, and every answer given. */
const caseOf = (build: Build) =>
  planCase(
    known(
      {
        'planned-change': 'louder',
        'unit-kind': build.unit === 'unknown' ? 'cannot' : build.unit,
        'front-build': build.front,
        'rear-build': build.rear,
        'rear-inputs': build.inputs,
        'wish-same-eq': build.sameEq ? 'yes' : 'no',
        'wish-mirroring': build.mirroring ? 'yes' : 'no',
        ...readings(build.profile),
      },
      { amps: AMP_OF[build.amp], deliveredWith: 'two', deliveredAmp: build.fromNew ? 'yes' : 'no' },
    ),
  );

const FACTS: PlanFacts = {
  nothingToDo: false,
  bassGone: null,
  unit: 'factory',
  fromNew: false,
  profiles: EVERY_PROFILE,
  toldAgainstMeter: false,
  clashes: [],
  amp: 'none',
  front: 'unit',
  rear: 'none',
  inputs: 'own',
  sameEqWanted: false,
  rearMissed: false,
};
const decideFor = (facts: Partial<PlanFacts>) => decide({ ...FACTS, ...facts });

const tri = fc.constantFrom('yes' as const, 'no' as const, 'unknown' as const);
const anyProfileNow: fc.Arbitrary<ProfileNow> = fc.record({ rear: tri, lowered: tri, boosted: tri, sameEq: tri });
const delivered = fc.constantFrom(undefined, 'two' as const, 'four' as const);
const anyFacts: fc.Arbitrary<PlanFacts> = fc
  .record({
    nothingToDo: fc.boolean(),
    bassGone: fc.constantFrom(null, null, null, 'riding' as const, 'with-speed' as const),
    fromNew: fc.boolean(),
    unit: fc.constantFrom(...UNITS),
    now: anyProfileNow,
    delivered,
    toldAgainstMeter: fc.boolean(),
    clashes: fc.subarray([...ANSWER_CLASHES]),
    amp: fc.constantFrom(...AMP_NEEDS),
    front: fc.constantFrom(...FRONTS, 'unknown' as const),
    rear: fc.constantFrom(...REARS, 'unknown' as const),
    inputs: fc.constantFrom(...INPUTS, 'unknown' as const),
    sameEqWanted: fc.boolean(),
    rearMissed: fc.boolean(),
  })
  .map(({ now, delivered: with_, ...facts }) => ({ ...facts, profiles: candidates(now, with_) }));
const openFacts = anyFacts.map(
  (facts): PlanFacts => ({ ...facts, nothingToDo: false, bassGone: null, unit: 'factory' }),
);

describe('decide', () => {
  it('agrees with the table written by hand for all 2160 builds, with the rear inputs taken from either end', () => {
    expect(BUILDS).toHaveLength(2 * 2160);
    const differing = BUILDS.filter((build) => caseOf(build).decision.answer !== expected(build));
    expect(differing).toEqual([]);
  });

  it('agrees with it for as many bikes that were built with an amplifier', () => {
    const builds = BUILDS.filter(({ mirroring }) => !mirroring).map((build) => ({ ...build, fromNew: true }));
    const differing = builds.filter((build) => caseOf(build).decision.answer !== expected(build));
    expect(differing).toEqual([]);
  });

  it('gives the same answer whether phone mirroring is wanted or not', () => {
    for (const build of BUILDS) {
      expect(caseOf({ ...build, mirroring: true }).answer).toBe(caseOf({ ...build, mirroring: false }).answer);
    }
  });

  it('has one answer for every set of facts, whatever is unknown', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const { answer, row, rows, separators: apart, open } = decide(facts);
        expect(rows.length + apart.length + open.length).toBeGreaterThan(0);
        expect(row).not.toBe('');
        expect(apart.length > 0).toBe(answer === 'measure-first');
        expect(open.length > 0).toBe(answer === 'follow-the-wires');
      }),
      { numRuns: 2000 },
    );
  });

  it('has an answer for every yes, no and unknown of the four properties, on every build', () => {
    const tris = ['yes', 'no', 'unknown'] as const;
    for (const rear of tris) {
      for (const lowered of tris) {
        for (const boosted of tris) {
          for (const sameEq of tris) {
            const profiles = candidates({ rear, lowered, boosted, sameEq }, 'two');
            for (const { amp, front, rear: pair, inputs } of BUILDS) {
              const { answer } = decideFor({ profiles, amp, front, rear: pair, inputs });
              if (amp === 'wire' && front === 'amp') expect(answer === 'no-such-profile').toBe(profiles.length === 0);
            }
          }
        }
      }
    }
  });

  it('says that there is nothing to do when nothing is wrong and nothing wished, whatever else is known', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        expect(decide({ ...facts, nothingToDo: true }).answer).toBe('nothing-to-do');
      }),
    );
  });

  it('answers with what is still unknown only if every bike that it can be has that answer', () => {
    fc.assert(
      fc.property(openFacts, (facts) => {
        const { answer } = decide(facts);
        if (!PROFILE_ROWS.some((row) => row.answer === answer)) return;
        for (const profile of facts.profiles) {
          expect(decide({ ...facts, profiles: [profile] }).answer).toBe(answer);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('names exactly the readings that leave one answer', () => {
    fc.assert(
      fc.property(openFacts, (facts) => {
        const { answer, separators: apart } = decide(facts);
        if (answer !== 'measure-first') return;
        for (const truth of facts.profiles) {
          const agreeing = facts.profiles.filter((profile) =>
            apart.every((property) => STORED_PROFILES[profile][property] === STORED_PROFILES[truth][property]),
          );
          expect(decide({ ...facts, profiles: agreeing }).answer).not.toBe('measure-first');
        }
      }),
      { numRuns: 2000 },
    );
  });

  it.each([
    ['boosted, for new front speakers without an amplifier', {}, ['boosted']],
    ['boosted and rear, for rear speakers on the head unit', { rear: 'unit' }, ['boosted', 'rear']],
    ['boosted, with every speaker on an amplifier', { amp: 'wire', front: 'amp' }, ['boosted']],
    ['the EQ alone, when it must not change', { amp: 'wire', front: 'amp', sameEqWanted: true }, ['sameEq']],
  ] as const)('asks for %s', (_, facts, apart) => {
    expect(decideFor(facts).separators).toEqual(apart);
  });

  it('asks for the level when the boost cannot be read', () => {
    expect(separators(FACTS, ['rear', 'sameEq', 'lowered'])).toEqual(['lowered']);
  });

  it('keeps all readings that still tell bikes apart when no set of them settles it', () => {
    expect(separators({ ...FACTS, rear: 'unit' }, ['rear', 'sameEq'])).toEqual(['rear', 'sameEq']);
  });

  it('leaves new front speakers alone on a full level, whether or not the rear is on', () => {
    const { answer, rows } = decideFor({ profiles: ['unaltered', 'rear-on'] });
    expect({ answer, rows }).toEqual({ answer: 'stay', rows: ['front-only-rear-closed', 'front-only-rear-open'] });
  });

  it('asks what drives the front before it asks for readings', () => {
    expect(decideFor({ amp: 'wire', front: 'unknown', rear: 'amp' })).toMatchObject({
      answer: 'follow-the-wires',
      open: ['front'],
    });
  });

  it('does not ask what drives the front when only the amplifier can', () => {
    expect(decideFor({ amp: 'wire', front: 'unknown', rear: 'none', profiles: ['unaltered'] }).answer).toBe(
      'amplified-any',
    );
  });

  it.each([
    ['without an amplifier', {}, 'without-amp'],
    ['with an amplifier that needs the unaltered output', { amp: 'unaltered', front: 'amp' }, 'unaltered-amp'],
    ['with one pair left on the head unit', { amp: 'wire', front: 'amp', rear: 'unit' }, 'mixed'],
    ['with every speaker on an amplifier', { amp: 'wire', front: 'amp' }, null],
  ] as const)('says whether the same EQ can be had %s', (_, facts, clash) => {
    expect(decideFor({ ...facts, sameEqWanted: true }).sameEqClash).toBe(clash);
    expect(decideFor({ ...facts, sameEqWanted: false }).sameEqClash).toBeNull();
  });
});

describe('the rows', () => {
  const certain: readonly CertainFacts[] = BUILDS.filter(
    ({ amp, front, rear }) => amp !== 'unknown' && (amp !== 'none') === (front === 'amp' || rear === 'amp'),
  ).flatMap(({ profile, amp, front, rear, inputs, sameEq }) =>
    profile === 'unknown'
      ? []
      : YES_NO.map((fromNew) => ({
          profile: profile as StoredProfile,
          fromNew,
          amp,
          front,
          rear,
          inputs,
          sameEqWanted: sameEq,
        })),
  );

  it('are each met by some bike', () => {
    const met = new Set(certain.map((facts) => rowOf(facts).id));
    expect(PROFILE_ROWS.map((row) => row.id).filter((id) => !met.has(id))).toEqual([]);
  });

  it.each(EARLY_ROWS.map((row) => [row.id]))('reach %s', (id) => {
    const found = fc.sample(anyFacts, 5000).some((facts) => decide(facts).row === id);
    expect(found).toBe(true);
  });

  it('have names of their own', () => {
    const ids = [...EARLY_ROWS, ...PROFILE_ROWS].map((row) => row.id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('never lower the level under a speaker on the head unit, or under an amplifier that needs it', () => {
    for (const facts of certain) {
      const starves = facts.front === 'unit' || facts.rear === 'unit' || facts.amp === 'unaltered';
      if (starves) expect(rowOf(facts).answer).not.toMatch(/^amplified/);
    }
  });

  it('never leave a silent rear output under speakers or inputs that need it', () => {
    for (const facts of certain) {
      const needsRear = facts.rear === 'unit' || (facts.rear === 'amp' && facts.inputs === 'own');
      if (needsRear && facts.profile === 'unaltered') {
        expect(rowOf(facts).answer).toMatch(/^enable-rear$|^amplified/);
      }
    }
  });

  it('know every property that a profile is told by', () => {
    expect(Object.keys(STORED_PROFILES.unaltered).toSorted()).toEqual([...PROPERTIES].toSorted());
  });
});
