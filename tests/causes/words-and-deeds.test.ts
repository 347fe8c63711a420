import { describe, expect, it } from 'vitest';
import { CAUSES } from '../../src/causes/all.ts';
import { figureText } from '../../src/causes/figure.ts';
import type { RepairAction } from '../../src/causes/repair-action.ts';
import { formatQuantity } from '../../src/compute/quantity.ts';
import { CORNERS } from '../../src/rig/corner.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { withRuns, withUnit } from '../../src/world/change.ts';
import { healthyWorld } from '../../src/world/healthy.ts';
import { withRepairs } from '../../src/world/repair.ts';
import type { Contact } from '../../src/world/state.ts';
import { changes } from './laid-on.ts';
import { ON_UNIT, onBike } from './on-bike.ts';

/*
 * A fix is told in words and done as data. Somebody reads the words, and the model of the bike does the data: whatever one
 * of them says the other one says as well, with the same numbers and at the same place.
 */

/** What tells one kind of an action from the other. */
function keyOf(action: RepairAction): string {
  const of = action as unknown as Readonly<Record<string, string | undefined>>;
  const kind = ['lead', 'wire', 'plug', 'fuse', 'at', 'selector', 'carries', 'of']
    .map((name) => of[name])
    .find(Boolean);
  return [action.do, kind, action.do === 'set-selector' || action.do === 'move-remote' ? of['to'] : undefined]
    .filter(Boolean)
    .join(' ');
}

/** The words of each action: they stand in a fix that has it, and in no other. */
const WORDS: Readonly<Record<string, RegExp>> = {
  'centre-fader': /Set fader and balance to 0/,
  'turn-up-rear-control': /Set the rear control to on/,
  'set-unit-menu': /own menu/,
  'play-here': /Press play|Every headset and helmet off/,
  'restart-unit': /give it five minutes: it is slow/,
  'select-profile': /\bAsk for(, in words:| (the rear|what was stored|full level))/,
  'set-selector turn-on wire': /Set it to wire/,
  'set-selector turn-on signal': /Set it to signal/,
  'set-selector turn-on dc': /Set it to DC/,
  'set-selector input-mode as-wired': /Set the input selector/,
  'set-selector range as-fed':
    /wrong range|Range switch, or the plug for it, to speaker level|^Input range on speaker level/m,
  'set-filter': /Filter switch to high-pass|^Input range .* high-pass on at/m,
  'flatten-tone phone': /equaliser, bass boost/i,
  'flatten-tone unit': /bass(, mid)? and treble (at|to) 0/i,
  'turn-down': /Go back one: that is the top/,
  'tune-for-riding': /outdoors with the engine running|for the road, with the engine running/,
  'part-from-noise phone-lead': /Charging lead off the phone: gone\?/,
  'part-from-noise converter': /ground to the amplifier’s ground terminal and nowhere else/,
  'part-from-noise signal-lead': /a hand’s width from charging/,
  'turn-polarity': /swap the two wires/i,
  'seal-mount': /foam tape all round under the frame/,
  'isolate-mute-line': /tape the end of the mute wire/i,
  'fasten-trim': /tighten what holds it/i,
  'set-gain': /no output above|turn the gain up to|turn the gain so that no output/,
  'seat-plug rear-dock':
    /^Key off\. Push the plug home until it locks\. Key on|look at it, push it home until it locks/m,
  'seat-plug front-speaker': /fairing part off\. Push the plug home until it locks\. Key on/,
  'seat-plug second': /Pull the plug you find there apart/,
  'seat-plug amp-input': /Pull the signal plug/,
  'seat-plug unit': /head unit’s plug straight out|Plug home until it locks, loom/,
  'clean-contacts rear-dock': /^Key off\. Push the plug home until it locks\. Key on[\s\S]*Contact cleaner/m,
  'clean-contacts front-speaker': /fairing part off\. Push the plug home[\s\S]*Contact cleaner/,
  'clean-contacts second': /Pull the plug you find there[\s\S]*Contact cleaner/,
  'clean-contacts unit': /head unit’s plug straight out[\s\S]*Contact cleaner/,
  'renew-pin unit': /(pushed forward|it forward) until it latches/,
  'renew-pin amp-input': /crimp a new pin on/,
  'complete-adapter rear-pairs': /Add the four wires/,
  'complete-adapter remote': /Fit the missing pin/,
  'complete-adapter pair': /Push it in until it latches.*Add the two wires/,
  'renew-wire remote': /New joint, or new wire past/,
  'renew-wire lid-lead': /new flexible lead/,
  'renew-wire speaker-run': /(pinched|worn) length: new wire/,
  'renew-wire signal': /Remake the joint: a sealed crimp/,
  'free-wire speaker-run': /Free the wire, insulate it/,
  'free-wire plus-lead': /Only the insulation: sleeve it/,
  'free-wire unit-output': /Undo the joint to ground/,
  'join-looms': /plug them together until they lock/,
  'uncross-pairs': /Rejoin them: left positive/,
  'renew-lead plus':
    /One lead of |New lead from the fuse|Positive: .* straight to the amplifier|none on .* A new lead first/,
  'renew-lead ground': /Run the ground to the battery negative post|Ground: .* straight/,
  'renew-holder': /Fit a sealed holder/,
  'renew-fuse main': /lamp away and fit the fuse|One new fuse: |The new fuse can stay in|Then the fuse: /,
  'renew-fuse amp-body': /rating printed next to its holder/,
  'renew-fuse unit': /one new fuse of the printed rating/,
  'tighten-joint battery-plus': /Positive tight, then negative\. No ring may turn by hand/,
  'tighten-joint battery-minus': /Positive tight, then negative\. No ring may turn by hand/,
  'tighten-joint bike-ring': /Positive tight, then negative\. No ring may turn by hand/,
  'tighten-joint amp-ground': /Screw tight with a toothed washer/,
  'tighten-joint amp-terminal': /Screw tight, tug it/,
  'own-ground': /Give it its own ground|amplifier’s ground straight to the battery negative post/,
  'move-remote switched-feed': /Run it to the head unit’s remote output/,
  'wake-by-wire': /Run a thin wire from a feed/,
  'charge-battery': /Charge it fully|Charge the battery with|it wakes the battery|Then charge the battery/,
  'replace-battery': /Fit the size and chemistry/,
  'repair-charging': /a new regulator|Replace that one/,
  'take-off-load': /Heated gear, extra lights and chargers off/,
  'replace-speaker': /Replace the open one|Replace just that one: same size/,
  'rewire-speakers': /wire them in series/,
  'replace-converter': /Fit another converter/,
  'cool-amp': /Clear its fins/,
  'dry-amp': /warm dry room/,
  'repair-amp': /what a repair costs/,
  'repair-unit': /head unit repaired,? or exchanged|Then to repair, or a used one/,
};

const FRAME = EXAMPLE_RIGS['frame-fairing'];
const amp = (part: object): Rig => ({ ...FRAME, amps: [{ ...FRAME.amps[0], ...part }] });
const RIGS: readonly Rig[] = [
  ...Object.values(EXAMPLE_RIGS),
  ON_UNIT,
  {},
  amp({ needs: 'any' }),
  amp({ needs: 'unaltered' }),
  amp({ turnOn: 'signal' }),
  amp({ turnOn: 'dc' }),
  amp({ plusLeadM2: 0.5e-6 }),
  amp({ plusLeadM2: 3.31e-6, mainFuseA: 60 }),
  amp({ plusLeadM2: 5.26e-6, mainFuseA: undefined }),
];
const FOUND: readonly Readonly<Record<string, string>>[] = [
  {},
  { 'fuse-lamp': 'bright' },
  { 'spare-fuse': 'wakes' },
  { 'fuse-sides': 'open' },
  { 'last-change': 'reflash' },
];
const BIKES = RIGS.flatMap((rig) => FOUND.map((found) => onBike(rig, found)));

/** A number of an action, as its words write it. */
function numbersOf(action: RepairAction): readonly string[] {
  const of = action as unknown as Readonly<Record<string, number | undefined>>;
  const written = (name: string, unit: 'mm²' | 'A', per = 1) =>
    of[name] === undefined ? [] : [formatQuantity(of[name] / per, unit, 3)];
  return [...written('sectionM2', 'mm²', 1e-6), ...written('fuseA', 'A'), ...written('atMostA', 'A')];
}

describe.each(CAUSES.map((cause) => [cause.id, cause] as const))('the fix of %s', (_, cause) => {
  it('does what its words say, all of it and nothing else', () => {
    for (const f of BIKES) {
      const { what, fix, repair, readFirst = [] } = cause.remedy(f);
      const text = [what, ...fix].join('\n');
      // Where papers or the bike itself say which, the words name each, and the action the usual one.
      if (readFirst.includes('turn-on')) continue;
      const done = repair.map(keyOf);
      // A new holder and a new lead come with their fuse.
      const withFuse = done.includes('renew-holder') || done.includes('renew-lead plus');
      const told = Object.keys(WORDS).filter(
        (key) => WORDS[key]?.test(text) && !(withFuse && key === 'renew-fuse main'),
      );
      expect(told.toSorted(), text).toEqual([...new Set(done)].toSorted());
    }
  });
  it('has the same numbers in words, in what is bought and in what is done', () => {
    for (const f of BIKES) {
      const { fix, parts, repair, numbers } = cause.remedy(f);
      const text = [...fix, ...parts].join('\n');
      for (const action of repair) {
        for (const number of numbersOf(action)) expect(text, `${keyOf(action)}`).toContain(number);
        if (action.do === 'set-gain' || action.do === 'rewire-speakers') {
          const value = action.do === 'set-gain' ? action.outputV : action.togetherOhm;
          expect(numbers.map((figure) => figure.value)).toContain(value);
        }
      }
    }
  });
  it('lets somebody read the positive lead before a ground is chosen only where its words ask for it', () => {
    for (const f of BIKES) {
      const { fix, repair } = cause.remedy(f);
      const ground = repair.find((one) => one.do === 'renew-lead' && one.lead === 'ground');
      const asked = fix.some((line) => /never thinner than the section on the jacket of the positive lead/.test(line));
      expect(ground !== undefined && 'noThinnerThan' in ground).toBe(asked);
    }
  });
  it('asks for the profile that its words name', () => {
    for (const f of BIKES) {
      const { fix, repair } = cause.remedy(f);
      const action = repair.find((one) => one.do === 'select-profile');
      if (!action) continue;
      const asks = fix.find((line) => WORDS['select-profile']?.test(line)) ?? expect.fail('no such line');
      expect(/rear (channels )?(to be )?(enabled|put back on|on\b)/.test(asks), asks).toBe(action.rear === 'on');
      // Somebody who has to read papers first is told both.
      if (/papers/.test(asks)) continue;
      expect({ ...action, rear: undefined }).toEqual({
        do: 'select-profile',
        level: /level lowered/.test(asks) ? 'lowered' : /full level/.test(asks) ? 'full' : undefined,
        boost: /no bass boost/.test(asks) ? 'none' : /the factory bass boost/.test(asks) ? 'as-delivered' : undefined,
        eq: /EQ that stays the same/.test(asks) ? 'same' : undefined,
      });
    }
  });
});

/** All contacts of all speakers and pairs are bad: whatever a hand is laid on gets better. */
const BAD: Contact = { ohm: Infinity };
const FILM: Contact = { ohm: Infinity, wants: 'cleaning' };
const JOINED: Contact = { ohm: 0 };
const worn = [BAD, FILM].map((contact) => {
  const pair = { plus: contact, minus: contact };
  const pairs = { 'front-left': pair, 'front-right': pair, 'rear-left': pair, 'rear-right': pair };
  const runs = withRuns(healthyWorld(FRAME), CORNERS, {
    dock: contact,
    second: contact,
    lidLead: contact,
    joint: pair,
    toFrame: JOINED,
    acrossPair: JOINED,
  });
  return withUnit(runs, { plug: pairs });
});

describe('the fix of a rear speaker', () => {
  const LEFT_OPEN = { 'run-ohms': { leadsOhm: 0.2, leftOhm: Infinity, rightOhm: 3.8 } };
  const LEFT_SHORTED = { 'run-ohms': { leadsOhm: 0.2, leftOhm: 0.4, rightOhm: 3.8 } };
  const touched = (id: string, read: Parameters<typeof onBike>[2]) => {
    const cause = CAUSES.find((one) => one.id === id) ?? expect.fail(id);
    const paths = worn.flatMap((world) =>
      changes(world, withRepairs(world, cause.remedy(onBike(FRAME, {}, read)).repair)),
    );
    return CORNERS.filter((corner) => paths.some((path) => path.includes(`/${corner}`)));
  };
  it.each([
    'lid-contacts-dirty',
    'rear-plug-off',
    'second-connector-dirty',
    'looms-unjoined',
    'lid-lead-broken',
    'speaker-wire-open',
    'speaker-pair-shorted',
    'speaker-wire-to-frame',
    'unit-plug-dirty',
  ])('%s leaves the front alone', (id) => {
    expect(touched(id, {})).toEqual(['rear-left', 'rear-right']);
  });
  it.each([
    ['lid-contacts-dirty', LEFT_OPEN],
    ['rear-plug-off', LEFT_OPEN],
    ['second-connector-dirty', LEFT_OPEN],
    ['lid-lead-broken', LEFT_OPEN],
    ['speaker-wire-open', LEFT_OPEN],
    ['speaker-pair-shorted', LEFT_SHORTED],
  ])('%s is done on the side that was read', (id, read) => {
    expect(touched(id, read)).toEqual(['rear-left']);
  });
});

describe('the speakers that are wired anew', () => {
  it('have together no less than the amplifier is rated into, and read what is said', () => {
    const cause = CAUSES.find(({ id }) => id === 'load-too-low') ?? expect.fail('load-too-low');
    for (const f of RIGS.filter(({ amps }) => amps?.[0]?.ratedOhm).map((rig) => onBike(rig))) {
      const { repair, numbers } = cause.remedy(f);
      const [action] = repair;
      if (action?.do !== 'rewire-speakers') expect.fail('rewire-speakers');
      expect(action.togetherOhm).toBeGreaterThanOrEqual(f.rig.amps?.[0]?.ratedOhm ?? Infinity);
      const inARow = numbers.find(({ id }) => id === 'in-a-row') ?? expect.fail('in-a-row');
      expect(figureText(inARow)).toBe(formatQuantity(action.togetherOhm, 'Ω', 2));
    }
  });
});
