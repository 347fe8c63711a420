import { describe, expect, it } from 'vitest';
import { answered } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { SPOKEN } from '../../src/components/caution/spoken.ts';
import { readyFor, toDoFor } from '../../src/components/flow/ready.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import { CAUTIONS, type CautionId } from '../../src/steps/cautions.ts';
import { cautionsOfCondition, cautionsOfProbes } from '../../src/steps/cautions-of.ts';
import { CONDITIONS, type ConditionId, wordsOf } from '../../src/steps/conditions.ts';
import { probesOf } from '../../src/steps/probes-of.ts';
import type { Step } from '../../src/steps/step.ts';
import { TEST_POINTS, type TestPoint } from '../../src/steps/test-points.ts';
import { on } from './situation.ts';
import { plainly } from './words.ts';

/*
 * What hurts somebody or something, as the trade knows it. From memory, common practice, no published source; that hot
 * parts, batteries and exhaust gas are warned of where the hand is, is the practice of ISO 3864-2 and ANSI Z535.4.
 */

const STEPS: ReadonlyMap<string, Step> = new Map(Object.entries(ALL_STEPS));
/** The steps in the words of a bike of which nothing is known. */
type Plain = Step & { readonly ask: string; readonly phone: string; readonly short: string };
const all = [...STEPS.values()].map(
  (step) => ({ ...step, ask: plainly(step.ask), phone: plainly(step.phone), short: plainly(step.short) }) as Plain,
);
/** Those of a conversation, and those with a hand on the bike. */
const TOLD = ['told', 'fitted', 'plan'];
const atTheBike = all.filter(({ id, place }) => !TOLD.includes(place) || id === 'hidden-amp');
const IDS = Object.keys(CAUTIONS) as CautionId[];
const LINE: Rig = { rearFedBy: 'amp', amps: [{ drives: 'both', input: 'line' }] };
const NO_AMP: Rig = { amps: [], frontFedBy: 'unit', rearFedBy: 'unit' };
const RIGS: readonly Rig[] = [{}, LINE, ...Object.values(EXAMPLE_RIGS)];

const begun: Case = { flow: '', events: [{ type: 'rig', rig: {} }] };
/** What a step shows when nothing was done before it. */
const shown = (step: Step, rig: Rig = {}, it: Case = begun) => readyFor(step, it, STEPS, on(rig));
const firstTold = (step: Plain, rig: Rig = {}) => {
  const how = typeof step.how === 'function' ? step.how(on(rig)) : step.how;
  return [step.ask, ...shown(step, rig).bike, ...how];
};
/** Every probe of a step, on any bike. */
const pointsOf = (step: Step): ReadonlySet<TestPoint> =>
  new Set(
    step.kind === 'reading'
      ? RIGS.flatMap((rig) =>
          Object.values(step.readings).flatMap((reading) => {
            const at = probesOf(step, reading, on(rig));
            return at ? [at.red, at.black] : [];
          }),
        )
      : [],
  );
const needs = (step: Step, ...ids: readonly ConditionId[]) => ids.some((id) => step.conditions?.includes(id));
/** All that is said of a step at the bike and on the phone, what comes first included. */
const saidOf = (step: Plain): string => [step.phone, ...shown(step).phone, ...firstTold(step)].join(' ');

/** The steps that do something, and that there are some. */
function doing(what: (step: Plain) => boolean, atLeast: number): readonly Plain[] {
  const steps = atTheBike.filter(what);
  expect(steps.length).toBeGreaterThanOrEqual(atLeast);
  return steps;
}
const lacking = (steps: readonly Step[], caution: CautionId | readonly CautionId[], rig: Rig = {}) =>
  steps.filter((step) => ![caution].flat().some((one) => shown(step, rig).cautions.includes(one))).map(({ id }) => id);

const LIVE: readonly TestPoint[] = ['battery-plus', 'fuse-in', 'fuse-out', 'plus-copper', 'amp-plus'];

describe('whatever a step does, it says what to be careful of', () => {
  it('a probe on a positive that is always live: not to the frame', () => {
    const steps = doing((step) => LIVE.some((point) => pointsOf(step).has(point)), 7);
    expect(lacking(steps, 'plus-probe')).toEqual([]);
    expect(CAUTIONS['plus-probe']).toMatch(/must not touch the frame.* 1 A fuse at its clip/);
  });
  it('a probe at the fuse holder: it may be hot', () => {
    const steps = doing((step) => pointsOf(step).has('fuse-in') || pointsOf(step).has('fuse-out'), 2);
    expect(lacking(steps, 'hot')).toEqual([]);
  });
  it('a probe anywhere: what the metal that it touches carries', () => {
    for (const point of Object.keys(TEST_POINTS) as TestPoint[]) {
      const live = /^(battery-plus|fuse-|plus-copper|amp-plus)/.test(point);
      const output = /^(unit|amp-in|amp-out)-/.test(point);
      expect(cautionsOfProbes([point]), point).toEqual(live ? ['plus-probe'] : output ? ['bridge'] : []);
    }
  });
  it('a probe on a wire of an output: not to the frame either', () => {
    const steps = doing((step) => [...pointsOf(step)].some((point) => /^(unit|amp-in|amp-out)-/.test(point)), 9);
    expect(lacking(steps, 'bridge')).toEqual([]);
    expect(CAUTIONS.bridge).toMatch(/Never .*speaker wire to the frame/);
  });
  it('a tone: from zero, step by step, with ears in mind', () => {
    const steps = doing((step) => step.kind === 'reading' && (step.tones?.length ?? 0) > 0, 8);
    expect(lacking(steps, ['loud-tone', 'full-tone'])).toEqual([]);
    expect(CAUTIONS['loud-tone']).toMatch(/volume at zero .* one step at a time.* ears/);
    expect(CAUTIONS['full-tone']).toMatch(/speakers.* ears.* under 5 seconds/);
  });
  it('music that is turned up: the same, or that it comes back loud', () => {
    const steps = doing((step) => /turn it up slowly|same loud song/i.test(step.ask + step.phone), 4);
    expect(
      lacking(
        steps.filter(({ id }) => id !== 'rear-control'),
        ['loud-tone', 'comes-back-loud'],
      ),
    ).toEqual([]);
    expect(CAUTIONS['comes-back-loud']).toMatch(/Volume right down first.* up slowly.* ears/);
  });
  it('a running engine: outdoors', () => {
    const steps = doing((step) => /engine (on\b|idling)|(?<!never )start the engine/i.test(step.ask + step.phone), 1);
    const running = [...steps, ...all.filter((step) => needs(step, 'engine-running'))];
    for (const caution of ['outdoors', 'hot'] as const) expect(lacking(running, caution)).toEqual([]);
    expect(CAUTIONS.outdoors).toMatch(/only outdoors: exhaust gas kills/);
  });
  it('ohms: on a dead circuit', () => {
    const read = (step: Step) =>
      step.kind === 'reading' && Object.values(step.readings).some(({ unit }) => unit === 'Ω');
    expect(
      lacking(
        doing((step) => read(step) || needs(step, 'meter-on-ohms'), 6),
        'ohms-dead',
      ),
    ).toEqual([]);
    expect(CAUTIONS['ohms-dead']).toMatch(/key off and the plug apart/);
  });
  it('a lamp as a load or for a fuse: it gets hot, and hangs on a fuse of 10 A where it hangs on a live positive', () => {
    const steps = doing((step) => needs(step, 'lamp-on', 'lamp-for-fuse'), 5);
    expect(lacking(steps, 'lamp-hot')).toEqual([]);
    expect(CAUTIONS['lamp-hot']).toMatch(/hundreds of degrees .* Hold it by its leads/);
    expect(CAUTIONS['live-clip']).toMatch(/lamp has a 10 A fuse in its lead/);
  });
  it('a clip on the positive of the amplifier: main fuse out while clipping', () => {
    const steps = doing(
      (step) => /(clip|lead|lamp)[^.]* (to|from) (the )?(amplifier’s )?positive\b/.test(saidOf(step)),
      6,
    );
    expect(lacking(steps, 'live-clip')).toEqual([]);
    expect(CAUTIONS['live-clip']).toMatch(/^Main fuse out while you clip on/);
    for (const step of steps) expect([step.phone, ...firstTold(step)].join(' '), step.id).toMatch(/main fuse out/i);
  });
  it('a clip in front of the main fuse, and a positive lead that comes off: battery negative first', () => {
    const steps = doing(
      (step) => /to battery positive|in its place/.test(saidOf(step)) || needs(step, 'minus-off', 'lamp-for-fuse'),
      5,
    );
    expect(lacking(steps, 'minus-first')).toEqual([]);
    const off = doing((step) => /positive lead off the amplifier|thick positive off/i.test(step.ask + step.phone), 1);
    expect(lacking(off, 'minus-first')).toEqual([]);
    expect(CAUTIONS['minus-first']).toMatch(/^Battery negative comes off first and goes back last/);
  });
  it('work at the battery: gas, no sparks, rings off, and no cranking on the ground of the amplifier', () => {
    const steps = doing((step) => needs(step, 'minus-off'), 4);
    for (const caution of ['battery-gas', 'minus-first', 'cranking'] as const)
      expect(lacking(steps, caution)).toEqual([]);
    expect(CAUTIONS['minus-first']).toMatch(/Ring and watch off/);
    expect(CAUTIONS['battery-gas']).toMatch(/explosive gas: no sparks/);
    expect(CAUTIONS.cranking).toMatch(/Never crank .*bike’s negative lead loose .*amplifier’s tight/);
  });
  it('a main fuse that goes out and in: the same rating, and the spark of the capacitors', () => {
    const steps = doing((step) => needs(step, 'fuse-out'), 2);
    expect(lacking(steps, 'fuse')).toEqual([]);
    expect(lacking([...steps, ...all.filter((step) => needs(step, 'lamp-on'))], 'capacitors')).toEqual([]);
    expect(CAUTIONS.fuse).toMatch(/Never a bigger fuse .*never a wire/);
    expect(CAUTIONS.capacitors).toMatch(/spark .*Not near a battery that has just been charged/);
  });
  it('any other fuse that is tried: the same rating', () => {
    const steps = doing(({ tool, ask }) => tool === 'spare-fuse' || /fuses of its own/.test(ask), 2);
    expect(lacking(steps, 'fuse')).toEqual([]);
  });
  it('a lamp, a jumper or another ground where line-level plugs are in: those out first', () => {
    const steps = doing((step) => needs(step, 'lamp-on') || step.tool === 'jumper', 5);
    expect(lacking(steps, 'ground-open', LINE)).toEqual([]);
    expect(CAUTIONS['ground-open']).toMatch(/^Line-level plugs out first/);
  });
  it('a jumper: which way round, and never to ground', () => {
    const steps = doing((step) => /its other end[^.]*remote terminal/i.test(saidOf(step)), 1);
    expect(lacking(steps, 'jumper')).toEqual([]);
    expect(CAUTIONS.jumper).toMatch(/amplifier positive to remote only, through a 1 A fuse\. Never to ground/);
  });
  it('a lead laid for the time: what has a fuse, and where', () => {
    const steps = doing((step) => /to battery positive/.test(saidOf(step)), 1);
    expect(lacking(steps, 'temporary-lead')).toEqual([]);
    expect(CAUTIONS['temporary-lead']).toMatch(/Only the positive lead gets a fuse, at the battery/);
  });
  it('a cell on a coil: 1.5 V, and no tweeter', () => {
    const steps = doing(({ tool }) => tool === 'cell', 3);
    expect(lacking(steps, 'cell')).toEqual([]);
    expect(CAUTIONS.cell).toMatch(/Never on a tweeter, never a 9 V battery/);
    for (const { id, phone } of steps) expect(phone, id).toMatch(/1\.5 volt.* never 9 volt/);
  });
  it('an amplifier that is made to wake: it may do so at full blast', () => {
    const steps = doing(
      (step) =>
        /does it wake|amplifier’s light come on|at switch-on|switches on|while it starts/i.test(step.ask + step.short),
      5,
    );
    expect(
      lacking(
        steps.filter(({ observes }) => observes.includes('amp') || observes.includes('amp-supply')),
        'wakes-loud',
      ),
    ).toEqual([]);
    expect(CAUTIONS['wakes-loud']).toMatch(/full blast.* Volume at zero and amplifier gain down/);
  });
  it('a hand on an amplifier or at its fuse: it may burn', () => {
    const steps = doing((step) => needs(step, 'amp-uncovered', 'fuse-out'), 20);
    expect(lacking(steps, 'hot')).toEqual([]);
    const felt = doing(
      (step) => /\b(warm|feel its case|nothing hot|near its case)\b/i.test(saidOf(step) + (step.ifCannot ?? '')),
      5,
    );
    expect(lacking(felt, 'hot')).toEqual([]);
    expect(CAUTIONS.hot).toMatch(/can burn your skin.* stop\.$/);
  });
  it('a head unit that plays with the engine off: the battery empties', () => {
    const playing = ['head-unit-playing', 'music-paused', 'tone-400', 'tone-80'] as const;
    const steps = doing((step) => needs(step, ...playing), 30);
    expect(lacking(steps, 'flat-battery')).toEqual([]);
    expect(CAUTIONS['flat-battery']).toMatch(/Twenty minutes at most/);
  });
  it('a panel off the dash, or the start of a wire in its loom: data wires and airbag alone', () => {
    const steps = doing((step) => needs(step, 'panel-off') || pointsOf(step).has('remote-start'), 8);
    expect(lacking(steps, 'data')).toEqual([]);
    expect(CAUTIONS.data).toMatch(/data-bus wires and any airbag plug alone/);
  });
  it('something taken apart that a dealer might ask about: warranty', () => {
    const steps = doing((step) => needs(step, 'panel-off', 'grille-off'), 8);
    expect(lacking(steps, 'warranty')).toEqual([]);
    expect(CAUTIONS.warranty).toMatch(/Under warranty\? Ask before you open anything/);
  });
  it('a grille off: no hand on the cone', () => {
    expect(
      lacking(
        doing((step) => needs(step, 'grille-off'), 2),
        'cone',
      ),
    ).toEqual([]);
    expect(CAUTIONS.cone).toMatch(/Never press a cone/);
  });
  it('an output that is tried where a short may be: not again and again, and no swap at all', () => {
    const waits = doing(({ ask }) => /brings the fault light|does the amplifier come back/.test(ask), 2);
    expect(lacking(waits, 'into-a-short')).toEqual([]);
    expect(
      lacking(
        doing(({ ask }) => /output onto the rear speaker/.test(ask), 1),
        'short-suspected',
      ),
    ).toEqual([]);
    expect(CAUTIONS['into-a-short']).toMatch(/Don’t keep restarting into a short/);
    expect(CAUTIONS['short-suspected']).toMatch(/Do not swap outputs while a short/);
  });
  it('a plug, a fuse or a wire in or out: key off before it, in what is done first or in the caution', () => {
    const opening =
      /unplug|plugs? (apart|off)|pull (each|the|every|that|one|all)|push every|wire off|fuse (pulled|out)|swap|plugs? into|plug the speakers back|onto the rear|new fuse|another connector/i;
    const steps = doing((step) => step.observes.length > 0 && opening.test(firstTold(step).join(' ')), 30);
    for (const step of steps) {
      const ready = shown(step);
      const said = ready.bike.some((line) => /^Key off/.test(line)) || ready.cautions.includes('key-off');
      expect(said, step.id).toBe(true);
    }
    // Where the key goes on again within the step, it is off before each plug.
    const onAndOff = /key on[\s\S]*\bkey off\b/i;
    const again = doing((step) => onAndOff.test(step.phone) || onAndOff.test(firstTold(step).join(' ')), 8);
    expect(
      lacking(
        again.filter((step) => !needs(step, 'head-unit-playing', 'music-paused')),
        'key-off',
      ),
    ).toEqual([]);
    expect(CAUTIONS['key-off']).toMatch(/Key off before any plug goes in or out/);
  });
  it('fingers on leads and lids of a bike that plays: not while riding', () => {
    const steps = doing(({ ask }) => /pressing a plug or a lead/.test(ask), 1);
    expect(lacking(steps, 'riding')).toEqual([]);
    expect(CAUTIONS.riding).toMatch(/^Never while riding/);
  });
});

describe('a caution', () => {
  it('says where the law stands before the site does', () => {
    expect(CAUTIONS['local-rules']).toMatch(/come first\..* law calls for a licensed workshop, go to one/);
    expect(SPOKEN['local-rules']).toMatch(/Local rules/);
  });
  it('is short', () => {
    for (const id of IDS) {
      expect(CAUTIONS[id].split(/\s+/).length, id).toBeLessThanOrEqual(32);
      expect(CAUTIONS[id], id).toMatch(/^[A-Z].*[.]$/);
    }
  });
  it('is said to a caller in other words, short ones', () => {
    for (const id of IDS) {
      expect(SPOKEN[id].split(/\s+/).length, id).toBeLessThanOrEqual(26);
      expect(SPOKEN[id], id).toMatch(/^[A-Z].*[.]$/);
    }
    expect(new Set(Object.values(SPOKEN)).size).toBe(IDS.length);
  });
  it('says the same to a caller as to whoever reads', () => {
    const SAME: readonly (readonly [RegExp, RegExp])[] = [
      [/never while riding/i, /not while riding/i],
      [/only outdoors/i, /only outdoors/i],
      [/ears/i, /ears?\b/i],
      [/key off/i, /key off/i],
      [/Battery negative comes off first/, /negative comes off first/],
      [/Ring and watch off/, /ring and watch off/i],
      [/never crank/i, /do not start the bike/i],
      [/Main fuse out/, /main fuse .*out/i],
      [/hundreds of degrees/, /burns/],
      [/by its leads/, /by its leads/],
      [/1 A fuse\. Never to ground/, /1 amp fuse.* never to ground/i],
      [/never a 9 V battery/i, /never 9 volt/i],
      [/no sparks/i, /no sparks/i],
      [/bigger fuse/i, /bigger fuse/i],
      [/to the frame, not even with a probe/, /the bike’s metal/],
      [/must not touch the frame/, /must not touch the bike’s metal/],
      [/airbag/, /airbag/],
      [/tweeter/, /tweeter/],
      [/full blast/, /full blast/],
      [/Line-level plugs out/, /line plugs out/],
      [/spark when its fuse/, /spark as the amplifier’s fuse/],
      [/just been charged/, /just been charged/],
      [/Twenty minutes/, /Twenty minutes/],
      [/own charger/, /own charger/],
      [/acid: gloves and eye protection/, /acid: gloves, eye protection/],
      [/Don’t keep restarting/, /Don’t keep restarting/],
      [/Do not swap outputs/, /Not if a speaker wire may touch/],
      [/warranty/, /warranty/],
      [/cone/, /cone/],
      [/gain to minimum/, /gain right down/],
      [/set the amplifier gain again/, /Set the amplifier’s gain again/],
      [/gets a fuse, at the battery/, /fuse at the battery/],
      [/can burn your skin/, /may be hot/],
      [/Full output/, /full output/],
      [/fire kills/, /on fire/],
      [/Local rules/, /Local rules/],
    ];
    for (const id of IDS) {
      const asked = SAME.filter(([written]) => written.test(CAUTIONS[id]));
      expect(asked.length, id).toBeGreaterThan(0);
      for (const [, spoken] of asked) expect(SPOKEN[id], id).toMatch(spoken);
    }
  });
});

/** What in the words of a step asks for a caution that follows from nothing else. */
const STEP_ASKS: Readonly<Partial<Record<CautionId, RegExp>>> = {
  'key-off': /key on/i,
  'wakes-loud': /light (come on|flicker)|does it wake|lowest|hiss|key on/i,
  'loud-tone': /low volume|turn it up|same (loud song|passage)/i,
  'loud-listening': /ears covered/i,
  outdoors: /idle, outdoors/i,
  bridge: /plugs? (of that pair )?(swapped|off the amplifier)/i,
  hot: /\b(warm|near its case|nothing hot|burn|fuse)\b/i,
  riding: /pressing a plug|speed volume/i,
  'into-a-short': /brings the fault light|fault light back at once/,
  'short-suspected':
    /[Ll]eft and right plugs of that pair|output onto the rear speaker|Swap .*speaker plugs at the amplifier/,
  data: /remote wire|data wires/,
  fuse: /coloured fuses|fuse box/,
  'comes-back-loud': /turn it up slowly|start screen/i,
  'temporary-lead': /own 10 amp fuse/,
  'ground-open': /amplifier’s ground to/,
};

/** And what in them asks for one whatever follows from anything: the other way round. Any of several will do. */
const MUST_SAY: readonly (readonly [RegExp, CautionId | readonly CautionId[]])[] = [
  [/\b(coloured fuses|fuse box|new fuse|main fuse out)\b/i, ['fuse', 'jumper', 'live-clip']],
  [/\b(warm to|warmer than|near its case|nothing hot)\b/i, 'hot'],
  [/adapter’s plug|adapter behind|data wires|twisted pair|where the remote wire starts/, 'data'],
  [/own 10 amp fuse/, 'temporary-lead'],
  [/ears covered/i, ['loud-listening', 'full-tone']],
  [/where music distorts/, 'loud-listening'],
  [/idle, outdoors|outdoors, idling|idling outdoors|engine on again/i, 'outdoors'],
  [
    /key on, low volume|turn it up slowly|same (loud song|passage)/i,
    ['loud-tone', 'comes-back-loud', 'short-suspected', 'into-a-short'],
  ],
  [/start screen|turn it up slowly[.:] (sound|does)/i, 'comes-back-loud'],
  [/brings the fault light|fault light back at once/, 'into-a-short'],
  [
    /[Ll]eft and right plugs of that pair|output onto the rear speaker|Swap .*speaker plugs at the amplifier/,
    'short-suspected',
  ],
  [/plugs of that pair swapped|plug off the amplifier/i, 'bridge'],
  [/^speed volume/im, 'riding'],
  [/does it wake|light come on/i, 'wakes-loud'],
  [/plug and unplug it|unplug it, (try|and do) the next|pull .*push it (in|home)[\s\S]*key on/i, 'key-off'],
];

describe('the cautions of a step', () => {
  it('are none forgotten, whatever its words have somebody do', () => {
    const asked = new Set<RegExp>();
    const forgotten = atTheBike.flatMap((step) => {
      const words = [step.short, step.ask, step.phone, ...firstTold(step)].join('\n');
      const said = [...shown(step).cautions, ...shown(step, LINE).cautions];
      return MUST_SAY.filter(([does]) => does.test(words)).flatMap(([does, says]) => {
        asked.add(does);
        return [says].flat().some((id) => said.includes(id)) ? [] : [`${step.id}: ${says} for ${does}`];
      });
    });
    expect(forgotten).toEqual([]);
    expect(MUST_SAY.filter(([does]) => !asked.has(does)).map(([does]) => `${does}`)).toEqual([]);
  });
  it('are few, each once', () => {
    for (const rig of RIGS)
      for (const step of all) {
        const { cautions } = shown(step, rig);
        expect(new Set(cautions).size, step.id).toBe(cautions.length);
        expect(cautions.length, `${step.id}: ${cautions}`).toBeLessThanOrEqual(7);
      }
  });
  it('are all said to a caller as well', () => {
    for (const step of all) {
      const { cautions, care } = shown(step);
      expect(care.toSorted(), step.id).toEqual(cautions.map((id) => SPOKEN[id]).toSorted());
    }
  });
  it('come once while the condition stands that says them, and however the bike stands none is left out', () => {
    // What a step leaves behind is its conditions, so one step of each kind stands for all of them.
    const kinds = [...new Map(all.map((step) => [`${step.conditions}`, step])).values()];
    for (const first of kinds) {
      const done = answered(begun, first.id, { option: 'any' });
      for (const then of all) {
        const { stood } = toDoFor(then, done, STEPS, on({}));
        const said = stood.flatMap(cautionsOfCondition);
        const { cautions } = shown(then, {}, done);
        const both = `${first.id}, ${then.id}`;
        expect(
          cautions.filter((id) => said.includes(id)),
          both,
        ).toEqual([]);
        const fresh = shown(then).cautions;
        expect(
          fresh.filter((id) => !cautions.includes(id) && !said.includes(id)),
          both,
        ).toEqual([]);
      }
    }
  });
  it('speak of no amplifier on a bike without one, and of no line-level plug on speaker wires', () => {
    for (const step of all)
      for (const id of shown(step, NO_AMP).cautions) expect(CAUTIONS[id], step.id).not.toMatch(/amplifier/i);
    const SPEAKER: Rig = { rearFedBy: 'amp', amps: [{ drives: 'both', input: 'speaker' }] };
    for (const step of all)
      for (const id of shown(step, SPEAKER).cautions) expect(CAUTIONS[id], step.id).not.toMatch(/line-level plugs/i);
  });
  it('are none where nobody lays a hand on the bike', () => {
    for (const step of all.filter((one) => !atTheBike.includes(one))) expect(shown(step).cautions, step.id).toEqual([]);
  });
  it('are written down only where something in its words asks for them', () => {
    for (const step of all) {
      const words = [step.ask, step.phone, ...firstTold(step), step.ifCannot ?? ''].join(' ');
      for (const id of step.cautions ?? []) expect(STEP_ASKS[id]?.test(words), `${step.id}: ${id}`).toBe(true);
    }
  });
  it('are not written down where they follow from something', () => {
    for (const step of all) {
      const bare = { ...step, cautions: [] } as Step;
      const follows = readyFor(bare, begun, STEPS, on({})).cautions;
      expect(
        (step.cautions ?? []).filter((id) => follows.includes(id)),
        step.id,
      ).toEqual([]);
    }
  });
});

/** Words of a condition, and the caution that each of them asks for. */
const CONDITION_ASKS: readonly (readonly [CautionId, RegExp])[] = [
  ['minus-first', /negative off|in its place/],
  ['battery-gas', /negative off/],
  ['cranking', /negative off/],
  ['flat-battery', /engine off|tone and come up/],
  ['loud-tone', /400 Hz tone/],
  ['full-tone', /80 Hz tone/],
  ['wakes-loud', /gain of .* down/],
  ['outdoors', /engine on/],
  ['hot', /engine on|over the amplifier|main fuse of .* out/i],
  ['ohms-dead', /on ohms/],
  ['data', /hides the head unit|feeds the front speakers/],
  ['warranty', /take off the panel|grille off/i],
  [
    'bridge',
    /speaker plugs|head unit’s plug straight out|unplug the rear speakers|feeds the (rear|front) speakers|signal plug/i,
  ],
  ['cone', /speaker’s tabs|the worst speaker/],
  ['loud-listening', /starts to distort/],
  ['ground-open', /^Key off\. Pull any line-level leads/],
  ['fuse', /main fuse of .* out|in its place/i],
  ['capacitors', /main fuse of .* out|fuse back/i],
  ['lamp-hot', /gets very hot/],
  ['live-clip', /from the positive of/],
];

describe('a condition', () => {
  it.each(Object.keys(CONDITIONS) as ConditionId[])('%s says what its words ask for, and nothing else', (id) => {
    const { bike } = wordsOf(id, on({}));
    const asked = CONDITION_ASKS.filter(([, words]) => words.test(bike)).map(([caution]) => caution);
    expect(cautionsOfCondition(id).toSorted()).toEqual(asked.toSorted());
  });
  it.each(Object.keys(CONDITIONS) as ConditionId[])('%s has each of its cautions once', (id) => {
    const cautions = cautionsOfCondition(id);
    expect(new Set(cautions).size).toBe(cautions.length);
  });
});
