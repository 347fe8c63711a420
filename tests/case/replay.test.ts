import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../machines/amp-wont-turn-on.ts';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import {
  answered,
  back,
  canGoBack,
  confirmed,
  cured,
  noted,
  onBike,
  repaired,
  revised,
} from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { fold } from '../../src/case/fold.ts';
import { replay } from '../../src/case/replay.ts';
import type { Standing } from '../../src/case/standing.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import { type Answers, caseOn, give, LATE, openIn, stand as standIn } from '../journey.ts';
import { pump, pumpLate } from '../machines/pump.ts';
import { anyCase } from './any-case.ts';

/** A case of the throw-away pump: its routes are known by heart, whatever the site's flows learn. */
const stand = (it: Case): Standing => replay(pump, it, pumpLate);
const fresh = caseOn(pump);
const DEAD_WINDING: Answers = {
  outlet: 'lead',
  stood: 'used',
  hum: 'silent',
  float: 'no-change',
  'lead-look': 'whole',
  'tools-at-hand': 'meter',
  volts: { pumpV: '12.1' },
  winding: { windingOhm: 'OL' },
};
const ended = give(fresh, DEAD_WINDING);
const told = ({ terminals }: Standing) => terminals.map(({ step, outcome }) => `${step.id}: ${outcome}`);
const plain = ({ findings: _, decided: __, ...rest }: Standing) => rest;

describe('a case', () => {
  it('stands at its first open question, with what was answered in the order it was', () => {
    const standing = stand(give(fresh, { hum: 'silent', outlet: 'lead' }));
    expect(openIn(standing)).toBe('stood?');
    expect(told(standing)).toEqual(['hum: silent', 'outlet: lead']);
  });
  it('stands at an end once nothing is worth asking', () => {
    expect(openIn(stand(ended))).toBe('winding-open');
    expect(stand(ended).terminals.map(({ step }) => step.id)).toEqual(Object.keys(DEAD_WINDING));
  });
  it('lets every answer count, whatever would be asked first today, in whatever order they came', () => {
    const shuffled = fc.shuffledSubarray(Object.keys(DEAD_WINDING), { minLength: 8 });
    fc.assert(
      fc.property(shuffled, (order) => {
        const standing = stand(give(fresh, Object.fromEntries(order.map((id) => [id, DEAD_WINDING[id] ?? null]))));
        expect(openIn(standing)).toBe('winding-open');
        expect(standing.decided?.reckoning?.shares).toEqual(stand(ended).decided?.reckoning?.shares);
      }),
      { numRuns: 30 },
    );
  });
  it('skips what “my bike” says', () => {
    expect(openIn(stand(fresh))).toBe('outlet?');
    expect(openIn(stand(caseOn(pump, { unitKind: 'factory' })))).toBe('stood?');
    expect(stand(caseOn(pump, { unitKind: 'factory' })).terminals).toEqual([]);
  });
  it('learns about the bike from its answers', () => {
    const it_ = give(caseOn(noRearSound), { 'unit-kind': 'replaced', 'rear-drive': 'amp' });
    expect(standIn(noRearSound, it_).rig).toEqual({
      unitKind: 'replaced',
      rearFedBy: 'amp',
      amps: [{ drives: 'rear' }],
    });
  });
  it('is worked out again with the same answers when the bike is changed in the middle of it', () => {
    const onLead = give(caseOn(pump, { unitKind: 'replaced' }), { stood: 'used', hum: 'silent', float: 'no-change' });
    expect(openIn(stand(onLead))).toBe('lead-look?');
    const onWall = onBike(onLead, { unitKind: 'factory' });
    expect(openIn(stand(onWall))).toBe('tools-at-hand?');
    expect(plain(stand(back(onWall)))).toEqual(plain(stand(onLead)));
  });
  it('carries notes, whatever else happens', () => {
    const it_ = noted(repaired(noted(ended, 'step 14 of 30'), 'winding-open'), 'blue wire');
    expect(stand(it_).notes).toEqual(['step 14 of 30', 'blue wire']);
  });
  it('takes no notice of a repair of what is no cause, whatever a link calls it', () => {
    for (const name of ['no-such-cause', 'toString', 'constructor'])
      expect(plain(stand(repaired(fresh, name)))).toEqual(plain(stand(fresh)));
  });
  it('gives the same standing each time it is replayed, and is not changed by it', () => {
    fc.assert(
      fc.property(anyCase, (it_) => {
        const before = structuredClone(it_);
        const once = plain(standIn(noRearSound, it_));
        expect(plain(standIn(noRearSound, it_))).toEqual(once);
        expect(it_).toEqual(before);
      }),
    );
  });
});

describe('a reading that cannot be used', () => {
  const before = give(fresh, Object.fromEntries(Object.entries(DEAD_WINDING).slice(0, 6)));
  it.each([
    ['more than there can be', { pumpV: '80' }],
    ['one that is missing', {}],
    ['one that is no number', { pumpV: 'nothing' }],
  ])('counts as not given and is shown again: %s', (_, readings) => {
    const standing = stand(give(before, { volts: readings }));
    expect(openIn(standing)).toBe('volts?');
    expect(standing.unusable).toEqual({ readings });
    expect(told(standing)).toEqual(told(stand(before)));
  });
  it('is forgotten with a usable one', () => {
    const standing = stand(give(give(before, { volts: { pumpV: '80' } }), { volts: { pumpV: '12' } }));
    expect(openIn(standing)).toBe('winding?');
    expect(standing.unusable).toBeUndefined();
  });
  it('becomes one when a better meter turns out to be a basic one', () => {
    const it_ = give(caseOn(noRearSound, EXAMPLE_RIGS['fork-fairing']), {
      'tools-at-hand': 'meter',
      'meter-digit': '0.01',
      'rear-pair': { frontV: '0.50', leftV: '0', rightV: '0' },
    });
    const outcomes = (at: Case) => standIn(noRearSound, at).findings.outcome('rear-pair');
    expect(outcomes(it_)).toBe('none');
    expect(outcomes(answered(it_, 'meter-digit', { option: '0.1' }))).toBeUndefined();
  });
});

describe('going back', () => {
  it('gives the standing before, whatever happened last', () => {
    const ways: readonly ((it: Case) => Case)[] = [
      (it) => answered(it, 'winding', { readings: { windingOhm: '5' } }),
      (it) => revised(it, 'stood', { option: 'winter' }),
      (it) => confirmed(it, 'winding'),
      (it) => repaired(it, 'winding-open'),
      (it) => repaired(it, 'winding-open', 'not-it'),
      (it) => cured(it, 'winding-open'),
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
    expect(opens).toHaveLength(Object.keys(DEAD_WINDING).length);
    expect([opens[0], opens.at(-1)]).toEqual(['winding-open', 'stood?']);
    expect(opens.slice(1).every((open) => open.endsWith('?'))).toBe(true);
    expect(it_).toEqual(fresh);
  });
  it('has nothing to go back to in a case that only has its bike, or nothing at all', () => {
    expect(canGoBack(fresh)).toBe(false);
    expect(canGoBack({ flow: pump.id, events: [] })).toBe(false);
  });
});

describe('changing an earlier answer', () => {
  it('asks again what was given under it, and keeps everything else', () => {
    const standing = stand(revised(ended, 'tools-at-hand', { option: 'meter' }));
    expect(Object.keys(standing.facts)).toEqual(Object.keys(DEAD_WINDING).filter((id) => id !== 'volts'));
    expect(standing.facts['winding']).toEqual({ readings: { windingOhm: 'OL' } });
  });
  it('changes nothing when the same is said again of something that nothing was given under', () => {
    const again = plain(stand(revised(ended, 'float', { option: 'no-change' })));
    expect(again).toEqual({ ...plain(stand(ended)), checked: new Set(['float']) });
  });
  it('takes the case another way and keeps what that way asks too', () => {
    const standing = stand(revised(ended, 'winding', { readings: { windingOhm: '5' } }));
    expect(openIn(standing)).not.toBe('winding-open');
    expect(Object.keys(standing.facts)).toEqual(Object.keys(DEAD_WINDING));
  });
  it('leads back where it was when it is changed back', () => {
    const there = revised(revised(ended, 'stood', { option: 'winter' }), 'stood', { option: 'used' });
    expect(plain(stand(there))).toEqual({ ...plain(stand(ended)), checked: new Set(['stood']) });
  });

  describe.each([noRearSound, ampWontTurnOn].map((flow) => [flow.id, flow] as const))('of %s', (_, { steps }) => {
    const under = (id: string): ReadonlySet<string> => {
      const all = new Set<string>();
      const add = (of: string) => {
        for (const [other, { givenUnder = [] }] of steps) {
          if (givenUnder.some((one) => one === of) && !all.has(other)) {
            all.add(other);
            add(other);
          }
        }
      };
      add(id);
      return all;
    };
    it('takes away what hangs on it, in turn, and nothing else', () => {
      const everything = [...steps.keys()].map((step) => ({ type: 'answer', step, answer: { cannot: true } }) as const);
      for (const id of steps.keys()) {
        const { facts } = fold(
          [...everything, { type: 'revise', step: id, answer: { cannot: true } }],
          steps,
          undefined,
        );
        expect(Object.keys(facts), id).toEqual([...steps.keys()].filter((step) => !under(id).has(step)));
      }
    });
  });
  // Written by hand: a run is measured through the plug that it hangs on, and its halves only where it is open.
  it('takes away exactly these', () => {
    const facts = (changed: string) => {
      const all = [...noRearSound.steps.keys()];
      const events = all.map((step) => ({ type: 'answer', step, answer: { cannot: true } }) as const);
      const left = fold(
        [...events, { type: 'revise', step: changed, answer: { cannot: true } }],
        noRearSound.steps,
        undefined,
      ).facts;
      return all.filter((id) => !Object.hasOwn(left, id));
    };
    expect(facts('tools-at-hand')).toEqual(['meter-digit', 'rear-pair', 'rear-pair-again', 'amp-in', 'amp-out']);
    expect(facts('rear-drive')).toEqual([
      'front-drive',
      'rear-inputs',
      'rear-amp-turn-on',
      'run-ohms',
      'run-split',
      'rear-amp-input',
      'amp-in',
      'half-supply',
      'amp-out',
    ]);
    expect(facts('lid-check')).toEqual(['contacts-look']);
    expect(facts('rear-amp-input')).toEqual(['amp-in', 'amp-out']);
    expect(facts('fader-centre')).toEqual([]);
  });
});

describe('a repair that did not help', () => {
  it('keeps the past, the bike and what the fix cannot have altered, and asks the rest again', () => {
    const standing = stand(repaired(ended, 'winding-open'));
    // The pump's winding and whatever hums are what a new motor alters.
    expect(Object.keys(standing.facts)).toEqual(
      Object.keys(DEAD_WINDING).filter((id) => id !== 'hum' && id !== 'winding'),
    );
    expect(standing.repairs).toEqual(['winding-open']);
  });
  it('speaks against its cause, and does not strike it off', () => {
    const share = (it_: Case) =>
      stand(it_).decided?.reckoning?.shares.find(({ cause }) => cause === 'winding-open')?.shareRatio ?? 0;
    const before = give(fresh, { outlet: 'wall', stood: 'used' });
    expect(share(repaired(before, 'winding-open'))).toBeLessThan(0.1 * share(before));
    expect(share(repaired(before, 'winding-open'))).toBeGreaterThan(0);
    expect(share(repaired(before, 'winding-open', 'not-it'))).toBeLessThan(0.2 * share(before));
  });
  it('finds a second fault after the first was mended', () => {
    const second = give(repaired(ended, 'winding-open'), { hum: 'hums', winding: { windingOhm: '5' } });
    expect(openIn(stand(second))).toBe('jammed');
    expect(stand(second).repairs).toEqual(['winding-open']);
  });
  it('that was only a check keeps every answer', () => {
    const checked = stand(repaired(ended, 'winding-open', 'not-it'));
    expect(checked.facts).toEqual(stand(ended).facts);
    expect(openIn(checked)).not.toBe('winding-open');
  });
  it('of a verdict that no flow has is left out', () => {
    expect(plain(stand(repaired(ended, 'horn-broken')))).toEqual(plain(stand(ended)));
  });

  describe.each([noRearSound, ampWontTurnOn].map((flow) => [flow.id, flow] as const))(
    'of %s',
    (id, { steps, causes }) => {
      const late = LATE[id] ?? expect.fail(`nothing late for ${id}`);
      const everything = [...steps.keys()].map((step) => ({ type: 'answer', step, answer: { cannot: true } }) as const);
      const kept = (verdict: string) =>
        Object.keys(fold([...everything, { type: 'repair', verdict }], steps, late).facts);

      it('keeps the past, the bike and the tools, whichever cause it was', () => {
        const stay = [...steps.values()].filter((step) => step.kind === 'rig' || step.place === 'tools');
        const past = ['rear-history', 'amp-history', 'last-change'].filter((step) => steps.has(step));
        for (const cause of causes)
          expect(kept(cause), cause).toEqual(expect.arrayContaining([...stay.map((step) => step.id), ...past]));
      });
      it('drops what was observed of the parts that the fix touches, and nothing else', () => {
        for (const cause of causes) {
          const mends = late.causes[cause]?.mends ?? [];
          expect(mends.length, cause).toBeGreaterThan(0);
          const stay = [...steps.values()].filter(({ observes }) => !observes.some((part) => mends.includes(part)));
          expect(kept(cause), cause).toEqual(stay.map((step) => step.id));
        }
      });
      it('drops the answers with which it is heard or seen whether the complaint is still there', () => {
        const shows = {
          'no-rear-sound': ['fader-centre', 'four-corners', 'lid-check'],
          'amp-wont-turn-on': ['amp-goes-off'],
        };
        for (const cause of causes)
          for (const step of shows[id as keyof typeof shows] ?? []) expect(kept(cause), cause).not.toContain(step);
      });
    },
  );
  it('keeps what observes other parts only, written by hand', () => {
    const late = LATE['no-rear-sound'];
    const everything = [...noRearSound.steps.keys()].map(
      (step) => ({ type: 'answer', step, answer: { cannot: true } }) as const,
    );
    const kept = (verdict: string) =>
      Object.keys(fold([...everything, { type: 'repair', verdict }], noRearSound.steps, late).facts);
    expect(kept('coil-open')).toEqual(expect.arrayContaining(['rear-pair', 'amp-in', 'amp-out', 'wire-to-frame']));
    expect(kept('coil-open')).not.toContain('run-ohms');
    expect(kept('amp-channel-dead')).toEqual(expect.arrayContaining(['rear-pair', 'run-ohms', 'coil-ohms']));
    expect(kept('amp-channel-dead')).not.toContain('amp-out');
    expect(kept('rear-channels-disabled')).toEqual(expect.arrayContaining(['run-ohms', 'swap-outputs', 'pop-run']));
    expect(kept('rear-channels-disabled')).not.toContain('rear-pair');
  });
});

describe('a cure', () => {
  const healed = cured(ended, 'winding-open');
  it('is noted on the verdict that it belongs to, and leaves it standing', () => {
    expect(stand(healed).cured).toBe('winding-open');
    expect(openIn(stand(healed))).toBe('winding-open');
    expect(stand(noted(healed, 'ran for an hour')).cured).toBe('winding-open');
  });
  it('is gone when an answer is changed or given anew', () => {
    expect(stand(revised(healed, 'stood', { option: 'winter' })).cured).toBeUndefined();
    expect(stand(answered(healed, 'hum', { option: 'hums' })).cured).toBeUndefined();
  });
  it('is gone when it turns out to be still wrong', () => {
    expect(stand(repaired(healed, 'winding-open')).cured).toBeUndefined();
  });
});
