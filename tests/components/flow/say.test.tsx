import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { answered } from '../../../src/case/change.ts';
import type { Case } from '../../../src/case/events.ts';
import { CONDITION_NAMES } from '../../../src/components/flow/condition-names.ts';
import { isEndedBy } from '../../../src/components/flow/ended-by.ts';
import { readyFor, toDoFor } from '../../../src/components/flow/ready.ts';
import { Say } from '../../../src/components/flow/Say.tsx';
import { spokenLines } from '../../../src/components/flow/spoken-lines.ts';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import { nameOf } from '../../../src/steps/conditions.ts';
import { offered } from '../../../src/steps/outcome.ts';
import { inWords, type Step } from '../../../src/steps/step.ts';
import { plainly } from '../../steps/words.ts';

const steps = new Map(Object.values(ALL_STEPS).map((step) => [step.id, step as Step]));
const situation = { rig: {}, facts: {} };
const begun: Case = { flow: '', events: [] };
const ready = (step: Step, it: Case = begun) => readyFor(step, it, steps, situation);
const lines = (step: Step, it: Case = begun) => spokenLines(step, situation, ready(step, it));

describe.each([...steps])('what is said to a caller of %s', (_, step) => {
  const said = lines(step);
  const phone = plainly(step.phone);
  const first = said.findIndex((line) => phone.startsWith(line));
  const answersAt = said.findIndex((line) => /^(The answers are|Is it one of these|Then read me):/.test(line));
  const answers = said.slice(answersAt);

  it('begins with what to be careful of and what has to be done, and only then asks', () => {
    const { care, phone: todo } = ready(step);
    expect(said.slice(0, first)).toEqual([...care, ...todo]);
    expect(said.slice(first, answersAt).join(' ')).toBe(phone);
  });
  it('ends with every answer that is offered, or with every reading that is wanted', () => {
    const wanted =
      step.kind === 'reading'
        ? Object.values(step.readings).map(({ label }) => inWords(label, situation))
        : offered(step, situation).map(([, label]) => label);
    expect(answersAt).toBeGreaterThan(first);
    for (const one of wanted) expect(answers.join(' ')).toContain(one);
    if (step.kind !== 'reading') expect(answers.at(-1)).toMatch(/Or: you don’t know\.$/);
  });
  // Nobody keeps more than about four things in mind that he hears. Common practice on the phone, no published source.
  it('reads out at most four answers at a time, and no more than a breath of them', () => {
    if (step.kind === 'reading') return;
    for (const line of answers) {
      const told = [...line.matchAll(/“/g)].length;
      expect(told, line).toBeLessThanOrEqual(4);
      if (told > 1) expect(line.split(/\s+/).length, line).toBeLessThanOrEqual(35);
    }
  });
  it('is a line at a time, and each of them short', () => {
    for (const line of said.slice(0, -1)) {
      expect(line).toMatch(/^[“A-Z0-9].*[.?!…:]$/);
      expect(line.split(/\s+/).length, line).toBeLessThanOrEqual(32);
    }
  });
  it('speaks of nothing that stands or that was done before without naming it', () => {
    for (const line of said.slice(0, -1))
      expect(line).not.toMatch(
        /\b(plugs?|probes?|black|red|meter|wires?|fuse|lid|grille|panel) (still|stays?)\b|\b(that|this) (plug|bulb|fuse|lamp|wire)\b|\bas (it was )?before\b/i,
      );
  });
  it('has what is easily misheard, and how to make sure', () => {
    const { misheard = '' } = ready(step);
    expect(misheard).toMatch(/[.”?] Have (him|each digit)/);
    if (step.kind === 'reading') expect(misheard).toMatch(/read each digit and the point/);
  });
});

/* What is misheard has to be one of the answers. Common sense, no published source. */
describe('what is easily misheard', () => {
  const SAID: readonly (readonly [RegExp, RegExp])[] = [
    [/^“Looks fine”/, /whole|burnt/i],
    [/^“Off”/, /off|out|dark|normal/i],
    [/^“It is in”/, /plug|\bpins?\b|connector|home|connected|come out|apart|empty/i],
    [/^“A wire”/, /wire|lead|remote|line-level/i],
    [/^Left and right/, /\bleft\b|\bright\b(?! now)|side|corner|other one|same speaker/i],
    [/^“It plays”/, /plays?|silent/i],
    [/^“Nothing” may be too/, /hiss|click|thump|crackle/i],
    [/^“Loud”/, /loud|quiet|volume/i],
  ];
  it.each([...steps].filter(([, step]) => step.kind !== 'reading'))('under %s is among its answers', (_, step) => {
    const { misheard: says = '' } = ready(step);
    const answers = offered(step, situation).map(([, label]) => label);
    const [, word] = SAID.find(([begins]) => begins.test(says)) ?? [];
    if (word) expect(answers.join(' ')).toMatch(word);
  });
  it('is no side under a gain that is turned right down, and no front under a tone', () => {
    const of = (id: string) => ready(steps.get(id) as Step).misheard;
    expect(of('gain-lowest')).not.toMatch(/Left and right/);
    expect(of('copper-look')).not.toMatch(/Left and right/);
    expect(of('stepped-tone')).not.toMatch(/It plays/);
    expect(of('which-silent')).toMatch(/Left and right/);
    expect(of('fader-centre')).toMatch(/may mean the front/);
  });
});

describe('what is said to a caller', () => {
  it('names what stands from the step before, so that he leaves it', () => {
    const kinds = [...new Map([...steps.values()].map((step) => [`${step.conditions}`, step])).values()];
    let named = 0;
    for (const one of kinds)
      for (const step of steps.values()) {
        const it_ = answered(begun, one.id, { option: 'any' });
        const { standing } = toDoFor(step, it_, steps, situation);
        for (const id of standing) {
          if (isEndedBy(nameOf(id), step, situation)) continue;
          expect(lines(step, it_).find((line) => line.startsWith('Leave as it is:'))).toContain(
            CONDITION_NAMES[nameOf(id)],
          );
          named++;
        }
      }
    expect(named).toBeGreaterThan(100);
  });
  it('is on the screen line by line, in its order', () => {
    const step = steps.get('run-ohms') as Step;
    expect(
      lines(steps.get('last-change') as Step).filter((line) => /^(Is it|Or) one of these:/.test(line)).length,
    ).toBe(Math.ceil(offered(steps.get('last-change') as Step, situation).length / 4));
    const html = renderToString(<Say step={step} situation={situation} ready={ready(step)} />);
    const shown = [...html.matchAll(/<p>(.*?)<\/p>/g)].map(([, line]) => line);
    expect(shown).toEqual([...lines(step)]);
    expect(html).toContain('Easily misheard:');
  });
});

/* Whoever hears nothing else must be able to do it. Harm that the trade knows, from memory; no published source. */
describe('alone, the lines of a step', () => {
  const text = (id: string) => lines(steps.get(id) as Step).join(' ');
  const inOrder = (id: string, one: RegExp, other: RegExp) => {
    const [a, b] = [text(id).search(one), text(id).search(other)];
    expect(a, `${id}: ${one}`).toBeGreaterThan(-1);
    expect(b, `${id}: ${other}`).toBeGreaterThan(a);
  };
  const all = [...steps.values()];
  it('say key off before anything is pulled, plugged or taken off', () => {
    const hands = /\b(pull|push (it|every)|unplug|plug one|put the thick|take the thick|fuse out|new fuse)\b/i;
    const doing = all.filter(
      ({ place, phone }) => !['told', 'fitted', 'plan'].includes(place) && hands.test(plainly(phone)),
    );
    expect(doing.length).toBeGreaterThan(8);
    for (const { id } of doing) inOrder(id, /key off|negative/i, hands);
  });
  it('set the meter to its range before a number is asked for', () => {
    const reading = all.filter((step) => step.kind === 'reading');
    for (const { id } of reading)
      inOrder(id, /meter to (AC volts|DC volts|ohms)|Meter on DC/, /number|volts\.|Numbers|numbers/);
  });
  it('say where both probes go', () => {
    for (const step of all.filter((one) => one.kind === 'reading'))
      expect(text(step.id), step.id).toMatch(
        /black probe on the battery negative|one probe on|wire to wire|screw to screw|two wires|probes held together|red on .*black on|post to post|each wire|one thin/i,
      );
  });
  it('start each tone from a volume of zero', () => {
    for (const step of all.filter((one) => one.kind === 'reading' && one.tones))
      inOrder(step.id, /Volume at zero first/, /then start the/);
  });
  it('say of the lamp which one, where its fuse is, and that it burns', () => {
    for (const step of all.filter(({ conditions }) => conditions?.includes('lamp-on')))
      expect(text(step.id), step.id).toMatch(/burns.*main fuse out.* 55 W lamp.* 10 A fuse/);
    for (const step of all.filter(({ conditions }) => conditions?.includes('lamp-for-fuse')))
      expect(text(step.id), step.id).toMatch(/burns.*main fuse out.* 21 to 55 W/);
  });
  it('start an engine only outdoors, in neutral', () => {
    for (const step of all.filter(({ conditions }) => conditions?.includes('engine-running')))
      inOrder(step.id, /outdoors.*kill/i, /in neutral, start the engine/);
  });
  it('have the plug pulled before somebody looks inside', () => {
    for (const step of all.filter(({ phone }) => /look inside/i.test(plainly(phone))))
      inOrder(step.id, /pull it/i, /look inside/i);
  });
  it('use a cell of 1.5 volt and no other', () => {
    for (const step of all.filter(({ tool }) => tool === 'cell'))
      expect(text(step.id)).toMatch(/1\.5 volt.*never 9 volt/);
  });
});

/* What ten riders and callers stumbled over. Common sense, no published source. */
describe('whoever hears it', () => {
  const all = [...steps.values()];
  const heard = (step: Step) => lines(step).join(' ');

  it('is told to undo a cure before anything else where it is done once more', () => {
    const undo =
      'Undo it, and do it once more: that brought it back, and if the sound goes and comes with it, that is the proof.';
    const step = steps.get('fader-centre') as Step;
    const [first, ...rest] = spokenLines(step, situation, ready(step), undo);
    expect(first).toBe(undo);
    expect(rest).toEqual(lines(step));
    const html = renderToString(<Say step={step} situation={situation} ready={ready(step)} doubt={undo} />);
    expect(html).toContain('Undo it, and do it once more');
  });
  it('is given one answer as one, and several as several', () => {
    let ones = 0;
    for (const step of all)
      for (const line of lines(step)) {
        const told = [...line.matchAll(/“/g)].length;
        if (/one of these:/.test(line)) expect(told, line).toBeGreaterThan(1);
        if (/^(Is it|Or) this:/.test(line)) {
          expect(told, line).toBe(1);
          ones++;
        }
      }
    expect(ones).toBeGreaterThan(0);
  });
  it('is warned of boxes that are called amplifiers only where an amplifier is spoken of', () => {
    const boxes = all.filter((step) => /call any box an amplifier/.test(ready(step).misheard ?? ''));
    expect(boxes.length).toBeGreaterThan(5);
    for (const step of boxes) {
      const answers = offered(step, situation).map(([, label]) => label);
      expect([inWords(step.ask, situation), plainly(step.phone), ...answers].join(' '), step.id).toMatch(/amplifier/i);
    }
    for (const id of ['unit-kind', 'source-plays'])
      expect(ready(steps.get(id) as Step).misheard).not.toMatch(/call any box an amplifier/);
  });
  it('is told once to have the music on, not loud', () => {
    for (const step of all)
      expect([...heard(step).matchAll(/music on,? (but )?not loud/gi)].length, step.id).toBeLessThan(2);
  });
  it('notes how things are set before he sets them in another way, in both seats', () => {
    const sets =
      /(\b(fader|balance|bass|treble|loudness|equaliser|compensation)\b[^.?,]{0,30}\b(off|flat|middle|zero|at 0|to 0|fully)\b)|\bgain\b[^.?]*\b(down|up)\b|switch to high-pass|Filter to high-pass/i;
    const notes = /\b(note|mark|write down)\b/i;
    const setting = all.filter(({ place }) => ['settings', 'ears', 'amplifier'].includes(place));
    let found = 0;
    for (const step of setting) {
      const { bike } = ready(step);
      const how = typeof step.how === 'function' ? step.how(situation) : step.how;
      for (const text of [
        heard(step).split(/The answers are|Is it (one of these|this):/)[0] ?? '',
        [...bike, ...how].join(' '),
      ]) {
        const at = text.search(sets);
        if (at < 0) continue;
        found++;
        expect(text.slice(0, at + 80), `${step.id}: ${text}`).toMatch(notes);
        expect(text.search(notes), `${step.id}: ${text}`).toBeLessThan(at + 40);
      }
    }
    expect(found).toBeGreaterThan(15);
  });
});
