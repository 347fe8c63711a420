import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { answered, back, canGoBack, cured, noted, onBike, repaired, revised } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { factsAfterRepair, replay, type Standing, withoutWhatDependedOn } from '../../src/case/replay.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import type { Verdict } from '../../src/verdicts/verdict.ts';
import { caseOn, type Short, toAnswer } from '../journey.ts';
import { anyCase } from './any-case.ts';
import { type Answers, ride } from './ride.ts';

const ON_UNIT: Rig = { ...EXAMPLE_RIGS['fork-fairing'], rearFitted: 'yes', rearFedBy: 'unit', rearRatedOhm: 4 };
const REAR_SILENT: Short = { frontV: '2.00', leftV: '0', rightV: '0' };
/** A rider whose rear stopped after workshop work: the head unit sends nothing, and there is no short. */
const REVERTED: Answers = {
  'rear-history': 'stopped',
  'last-change': 'workshop',
  'fader-centre': 'no-change',
  'rear-control': 'none',
  'lid-check': 'no-effect',
  'tools-at-hand': 'meter',
  'run-ohms': { leadsOhm: '0.2', leftOhm: '3.6', rightOhm: '3.7' },
  'wire-to-frame': { lowestOhm: 'OL' },
  'meter-digit': '0.01',
  'rear-pair': REAR_SILENT,
  'rear-pair-place': 'loaded',
};
const give = (it: Case, answers: Answers): Case =>
  Object.entries(answers).reduce((so, [step, short]) => answered(so, step, toAnswer(short)), it);
const stand = (it: Case): Standing => replay(noRearSound, it);
const openIn = ({ open }: Standing): string => ('step' in open ? `${open.step.id}?` : open.verdict.id);
const askedIn = ({ terminals }: Standing): readonly string[] => terminals.map(({ step }) => step.id);

const ended = give(caseOn(noRearSound, ON_UNIT), REVERTED);
const fresh = caseOn(noRearSound, {});

describe('a case', () => {
  it('stands at its first open question, with what was answered before it in the order it was asked', () => {
    const standing = stand(give(fresh, { 'rear-drive': 'unit', 'unit-kind': 'factory', 'four-corners': 'no-rear' }));
    expect(openIn(standing)).toBe('rear-history?');
    expect(standing.terminals.map(({ step, outcome }) => `${step.id}: ${outcome}`)).toEqual([
      'unit-kind: factory',
      'rear-drive: unit',
    ]);
  });
  it('stands at a verdict once everything on the way is answered', () => {
    expect(openIn(stand(ended))).toBe('profile-reverted');
    expect(askedIn(stand(ended))).toEqual(Object.keys(REVERTED));
  });
  it('skips what “my bike” says', () => {
    expect(openIn(stand(fresh))).toBe('unit-kind?');
    expect(openIn(stand(caseOn(noRearSound, { unitKind: 'factory' })))).toBe('rear-drive?');
    expect(openIn(stand(caseOn(noRearSound, ON_UNIT)))).toBe('rear-history?');
    expect(stand(caseOn(noRearSound, ON_UNIT)).terminals).toEqual([]);
  });
  it('learns about the bike from its answers', () => {
    expect(stand(give(fresh, { 'unit-kind': 'replaced', 'rear-drive': 'amp' })).rig).toEqual({
      unitKind: 'replaced',
      rearFedBy: 'amp',
      amps: [{ drives: 'rear' }],
    });
  });
  it('is worked out again with the same answers when the bike is changed in the middle of it', () => {
    expect(openIn(stand(onBike(ended, { ...ON_UNIT, unitKind: 'replaced' })))).toBe('replaced-unit-setting');
    expect(openIn(stand(onBike(ended, EXAMPLE_RIGS['frame-fairing'])))).toBe('rear-hiss?');
    expect(openIn(stand(back(onBike(ended, EXAMPLE_RIGS['frame-fairing']))))).toBe('profile-reverted');
  });
  it('lets an answer from a way that is no longer taken say nothing', () => {
    const onAmp = give(fresh, {
      'unit-kind': 'factory',
      'rear-drive': 'amp',
      ...Object.fromEntries(Object.entries(REVERTED).slice(0, 5)),
      'front-drive': 'unit',
      'amp-light': 'off',
      'rear-amp-turn-on': 'signal',
      'rear-inputs': 'own',
    });
    expect(openIn(stand(onAmp))).toBe('tools-at-hand?');
    const onUnit = stand(
      give(revised(onAmp, 'rear-drive', { option: 'unit' }), { 'tools-at-hand': 'none', 'four-corners': 'no-rear' }),
    );
    expect(openIn(onUnit)).toBe('pop-run?');
    expect(onUnit.facts).not.toHaveProperty('amp-light');
    expect(onUnit.rig.amps).toBeUndefined();
  });
  it('carries notes, whatever else happens', () => {
    const it_ = noted(repaired(noted(ended, 'step 14 of 30'), 'profile-reverted'), 'blue wire');
    expect(stand(it_).notes).toEqual(['step 14 of 30', 'blue wire']);
  });
  it('gives the same standing each time it is replayed, and is not changed by it', () => {
    fc.assert(
      fc.property(anyCase, (it_) => {
        const before = structuredClone(it_);
        const { findings: _, ...once } = stand(it_);
        const { findings: __, ...twice } = stand(it_);
        expect(twice).toEqual(once);
        expect(it_).toEqual(before);
      }),
    );
  });
});

describe('a reading that cannot be used', () => {
  const before = give(caseOn(noRearSound, ON_UNIT), Object.fromEntries(Object.entries(REVERTED).slice(0, 9)));
  it.each([
    ['80 V across a pair', { frontV: '80', leftV: '0', rightV: '0' }],
    ['a front too weak for the meter', { frontV: '0.3', leftV: '0', rightV: '0' }],
    ['one that is missing', { frontV: '2', leftV: '0' }],
    ['one that is no number', { frontV: '2', leftV: 'nothing', rightV: '0' }],
  ])('counts as not given and is shown again: %s', (_, readings) => {
    const standing = stand(give(before, { 'rear-pair': readings }));
    expect(openIn(standing)).toBe('rear-pair?');
    expect(standing.unusable).toEqual({ readings });
    expect(standing.facts).not.toHaveProperty('rear-pair');
  });
  it('is forgotten with a usable one', () => {
    const standing = stand(give(give(before, { 'rear-pair': { frontV: '80' } }), { 'rear-pair': REAR_SILENT }));
    expect(openIn(standing)).toBe('rear-pair-place?');
    expect(standing.unusable).toBeUndefined();
  });
  it('becomes one when a better meter turns out to be a basic one', () => {
    const standing = stand(answered(ended, 'meter-digit', { option: '0.1' }));
    expect(openIn(standing)).toBe('rear-pair?');
    expect(standing.unusable).toEqual(toAnswer(REAR_SILENT));
  });
});

describe('going back', () => {
  it('gives the standing before, whatever happened last', () => {
    const step = { readings: { lowestOhm: '5' } };
    const ways: readonly ((it: Case) => Case)[] = [
      (it) => answered(it, 'wire-to-frame', step),
      (it) => revised(it, 'rear-history', { option: 'never' }),
      (it) => repaired(it, 'profile-reverted'),
      (it) => cured(it, 'profile-reverted'),
      (it) => onBike(it, {}),
    ];
    for (const way of ways) {
      expect(way(ended)).not.toEqual(ended);
      expect(back(way(ended))).toEqual(ended);
    }
  });
  it('keeps what was noted, and goes back over the answer before it', () => {
    const [first, ...rest] = ended.events;
    const noteTaken = noted(ended, 'warm amplifier');
    expect(back(noteTaken).events).toEqual([first, ...rest.slice(0, -1), { type: 'note', text: 'warm amplifier' }]);
  });
  it('goes answer by answer through a whole ride, down to the bike it began with', () => {
    const opens: string[] = [];
    let it_ = ended;
    for (; canGoBack(it_); it_ = back(it_)) opens.push(openIn(stand(it_)));
    expect(opens).toEqual([
      'profile-reverted',
      ...Object.keys(REVERTED)
        .slice(1)
        .reverse()
        .map((id) => `${id}?`),
    ]);
    expect(it_).toEqual(caseOn(noRearSound, ON_UNIT));
  });
  it('has nothing to go back to in a case that only has its bike, or nothing at all', () => {
    expect(canGoBack(fresh)).toBe(false);
    expect(canGoBack({ flow: noRearSound.id, events: [] })).toBe(false);
  });
});

describe('changing an earlier answer', () => {
  it('asks again what was given under it, and keeps everything else', () => {
    const standing = stand(revised(ended, 'meter-digit', { option: '0.001' }));
    expect(openIn(standing)).toBe('rear-pair?');
    const kept = stand(
      answered(revised(ended, 'meter-digit', { option: '0.001' }), 'rear-pair', toAnswer(REAR_SILENT)),
    );
    expect(openIn(kept)).toBe('rear-pair-place?');
    const placed = stand(
      answered(
        answered(revised(ended, 'meter-digit', { option: '0.001' }), 'rear-pair', toAnswer(REAR_SILENT)),
        'rear-pair-place',
        toAnswer('loaded'),
      ),
    );
    expect(openIn(placed)).toBe('profile-reverted');
  });
  it('asks again what was given under that in turn', () => {
    const standing = stand(revised(ended, 'tools-at-hand', { option: 'meter' }));
    expect(openIn(standing)).toBe('meter-digit?');
    const { open } = stand(give(revised(ended, 'tools-at-hand', { option: 'meter' }), { 'meter-digit': '0.01' }));
    expect('step' in open && open.step.id).toBe('rear-pair');
  });
  it('changes nothing when the same is said again of something that nothing was given under', () => {
    const again = stand(revised(ended, 'fader-centre', { option: 'no-change' }));
    const checked = new Set(['fader-centre']);
    expect({ ...again, findings: null }).toEqual({ ...stand(ended), findings: null, checked });
  });
  it('takes the case another way and keeps what that way asks too', () => {
    const standing = stand(revised(ended, 'rear-history', { option: 'never' }));
    expect(openIn(standing)).toBe('rear-channels-disabled');
    expect(askedIn(standing)).toEqual(Object.keys(REVERTED));
  });
  it('leads back where it was when it is changed back', () => {
    const there = revised(revised(ended, 'rear-history', { option: 'never' }), 'rear-history', { option: 'stopped' });
    const checked = new Set(['rear-history']);
    expect({ ...stand(there), findings: null }).toEqual({ ...stand(ended), findings: null, checked });
  });

  const { steps } = noRearSound;
  const under = (id: string): ReadonlySet<string> => {
    const all = new Set<string>();
    const add = (of: string) => {
      for (const [other, { givenUnder = [] }] of steps) {
        if (givenUnder.some((id) => id === of) && !all.has(other)) {
          all.add(other);
          add(other);
        }
      }
    };
    add(id);
    return all;
  };
  it.each([...steps.keys()])('%s takes away itself and what hangs on it, and nothing else', (id) => {
    const facts = Object.fromEntries([...steps.keys()].map((step) => [step, { cannot: true } as const]));
    const gone = [...steps.keys()].filter((step) => step === id || under(id).has(step));
    const left = Object.keys(withoutWhatDependedOn(id, facts, steps));
    expect(left).toEqual([...steps.keys()].filter((step) => !gone.includes(step)));
  });
  it('takes away exactly these, written by hand', () => {
    expect([...under('tools-at-hand')].toSorted()).toEqual([
      'amp-in',
      'amp-out',
      'meter-digit',
      'rear-pair',
      'rear-pair-again',
      'rear-pair-place',
    ]);
    expect([...under('rear-drive')].toSorted()).toEqual(['amp-in', 'amp-out', 'half-supply', 'run-ohms', 'run-split']);
    expect([...under('lid-check')]).toEqual(['contacts-look']);
    expect([...under('rear-amp-input')]).toEqual(['amp-in', 'amp-out']);
    expect([...under('fader-centre')]).toEqual([]);
  });
});

describe('a repair that did not help', () => {
  const standing = stand(repaired(ended, 'profile-reverted'));
  it('keeps history, bike and tools, and asks everything again that the fix can have changed', () => {
    expect(openIn(standing)).toBe('fader-centre?');
    expect(Object.keys(standing.facts)).toEqual(['rear-history', 'last-change']);
    expect(standing.repairs).toEqual(['profile-reverted']);
    const { facts, open } = stand(
      give(repaired(ended, 'profile-reverted'), Object.fromEntries(Object.entries(REVERTED).slice(2, 5))),
    );
    expect(facts).toHaveProperty('tools-at-hand', { option: 'meter' });
    expect(facts).toHaveProperty('meter-digit', { option: '0.01' });
    expect('step' in open && open.step.id).toBe('rear-pair');
  });
  it('keeps the readings that it cannot have changed: a profile alters neither wire nor coil', () => {
    const again = give(repaired(ended, 'profile-reverted'), {
      ...Object.fromEntries(Object.entries(REVERTED).slice(2, 5)),
      'rear-pair': REAR_SILENT,
      'rear-pair-place': 'loaded',
    });
    expect(openIn(stand(again))).toBe('profile-reverted');
    expect(stand(again).repairs.at(-1)).toBe('profile-reverted');
  });
  it('finds a second fault after the first was mended', () => {
    const plug = ride(noRearSound, ON_UNIT, {
      'rear-history': 'stopped',
      'last-change': 'opened',
      'fader-centre': 'no-change',
      'rear-control': 'none',
      'lid-check': 'cured',
      'contacts-look': 'apart',
    });
    const second = give(repaired(plug.case, 'rear-plug-off'), {
      ...Object.fromEntries(Object.entries(REVERTED).slice(2)),
      'rear-pair': { frontV: '2', leftV: '2', rightV: '2' },
      'run-ohms': { leadsOhm: '0.2', leftOhm: 'OL', rightOhm: 'OL' },
      'run-split': null,
      'coil-ohms': { leadsOhm: '0.2', coilOhm: 'OL' },
    });
    expect(openIn(stand(second))).toBe('coil-open');
    expect(stand(second).repairs).toEqual(['rear-plug-off']);
  });
  it('of a verdict that no flow has is left out', () => {
    const { findings: _, ...before } = stand(ended);
    expect(stand(repaired(ended, 'horn-broken'))).toMatchObject(before);
  });

  const verdicts = Object.values(noRearSound.states).flatMap((state) => ('verdict' in state ? [state.verdict] : []));
  const facts = Object.fromEntries([...noRearSound.steps.keys()].map((id) => [id, { cannot: true } as const]));
  const kept = (verdict: Verdict) => Object.keys(factsAfterRepair(verdict, facts, noRearSound.steps));
  it.each(verdicts.map((verdict) => [verdict.id, verdict] as const))(
    'after %s keeps history, bike and tools',
    (_, verdict) => {
      expect(kept(verdict)).toEqual(
        expect.arrayContaining(['rear-history', 'last-change', 'unit-kind', 'rear-drive', 'delivered-with']),
      );
      expect(kept(verdict)).toEqual(expect.arrayContaining(['tools-at-hand', 'meter-digit', 'rear-rating']));
    },
  );
  it.each(verdicts.map((verdict) => [verdict.id, verdict] as const))(
    'after %s asks again whether the rear plays, since every fix is made to change that',
    (_, verdict) => {
      for (const id of ['fader-centre', 'four-corners', 'lid-check']) expect(kept(verdict)).not.toContain(id);
    },
  );
  it('keeps what observes other parts only, written by hand', () => {
    const byId = new Map(verdicts.map((verdict) => [verdict.id, verdict]));
    const keeps = (id: string) => kept(byId.get(id) as Verdict);
    expect(keeps('coil-open')).toEqual(expect.arrayContaining(['rear-pair', 'amp-in', 'amp-out', 'wire-to-frame']));
    expect(keeps('coil-open')).not.toContain('run-ohms');
    expect(keeps('amp-channel-dead')).toEqual(expect.arrayContaining(['rear-pair', 'run-ohms', 'coil-ohms']));
    expect(keeps('amp-channel-dead')).not.toContain('amp-out');
    expect(keeps('rear-channels-disabled')).toEqual(expect.arrayContaining(['run-ohms', 'swap-outputs', 'pop-run']));
    expect(keeps('rear-channels-disabled')).not.toContain('rear-pair');
  });
});

describe('a cure', () => {
  const healed = cured(ended, 'profile-reverted');
  it('is noted on the verdict that it belongs to, and leaves it standing', () => {
    expect(stand(healed).cured).toBe('profile-reverted');
    expect(openIn(stand(healed))).toBe('profile-reverted');
    expect(stand(noted(healed, 'rode 40 km')).cured).toBe('profile-reverted');
  });
  it('is gone when an answer is changed or given anew', () => {
    expect(stand(revised(healed, 'rear-history', { option: 'never' })).cured).toBeUndefined();
    expect(stand(answered(healed, 'last-change', { option: 'battery' })).cured).toBeUndefined();
  });
  it('is gone when it turns out to be still wrong', () => {
    expect(stand(repaired(healed, 'profile-reverted')).cured).toBeUndefined();
  });
});
