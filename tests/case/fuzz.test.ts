import { deflateRawSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Late } from '../../machines/machine.ts';
import { adopt } from '../../src/case/adopt.ts';
import { fromText, toText } from '../../src/case/case-text.ts';
import { FLOW_LIST } from '../../src/case/flows.ts';
import { MOST_BYTES, MOST_EVENTS } from '../../src/case/limits.ts';
import { fromLink, LINK_VERSION } from '../../src/case/link.ts';
import { type AnyFlow, replay } from '../../src/case/replay.ts';
import { type Draw, drawFrom, pick } from '../../src/observe/draw.ts';

/*
 * 100,000 cases and links of all kinds, from a seed: sensible, broken, of another version, and made to keep a page busy.
 * None throws, and none takes more than the blink that a person does not notice. What is counted is the time of the
 * processor, not that of the clock, and of a slow one the best of several tries: other work on the machine changes nothing.
 */

const [CASES, LINKS] = [80_000, 20_000];
/** One in so many is also replayed, and so is every one that is made to be slow. */
const REPLAYED = 4;
const MOST_CPU_MS = 50;
const TRIES = 3;

interface Fuzzed {
  readonly flow: AnyFlow;
  readonly late: Late | undefined;
}
let flows: readonly Fuzzed[] = [];
beforeAll(async () => {
  flows = await Promise.all(
    FLOW_LIST.map(async ([, entry]) => ({
      flow: (await entry.load()) as AnyFlow,
      late: entry.kind === 'fault' || entry.kind === 'intake' ? await entry.late() : undefined,
    })),
  );
  // The first case of a flow reads its table and its machine: that is the opening of a page, not of a case.
  for (const { flow, late } of flows) for (let i = 0; i < 50; i++) replay(flow, { flow: flow.id, events: [] }, late);
});

const TEXTS = ['0', '3.6', 'OL', '12,4', '−0.3 V', '1e9', '∞', '１２', 'x'.repeat(60), '', 'constructor', '__proto__'];
const KINDS = ['a', 'r', 'k', 'l', 'f', 'c', 'n', 'h', 'b', 't', 'o', 'z', '', 7, null];

function anyValue(draw: Draw, depth = 3): unknown {
  switch (Math.floor(draw() * (depth > 0 ? 8 : 5))) {
    case 0:
      return Math.floor(draw() * 1e6) / 100;
    case 1:
      return null;
    case 2:
      return draw() < 0.5;
    case 5:
      return Array.from({ length: Math.floor(draw() * 4) }, () => anyValue(draw, depth - 1));
    case 6:
    case 7:
      return Object.fromEntries([0, 1, 2].map(() => [pick(draw, TEXTS), anyValue(draw, depth - 1)]));
    default:
      return pick(draw, TEXTS);
  }
}

function anyEntry(draw: Draw, { flow }: Fuzzed): unknown {
  if (draw() < 0.1) return anyValue(draw);
  const step = pick(draw, [...flow.steps.values()]);
  const id = draw() < 0.9 ? step.id : pick(draw, TEXTS);
  const answer =
    draw() < 0.1
      ? anyValue(draw)
      : step.kind === 'reading'
        ? Object.fromEntries(Object.keys(step.readings).map((name) => [name, pick(draw, TEXTS)]))
        : pick(draw, Object.keys(step.options));
  const kind = draw() < 0.6 ? 'a' : pick(draw, KINDS);
  switch (kind) {
    case 'b':
      return ['b', draw() < 0.5 ? { unitKind: 'factory', amps: [{ drives: 'both' }] } : anyValue(draw)];
    case 'f':
    case 'c':
      return [kind, 'ends' in flow ? pick(draw, flow.ends) : id, pick(draw, ['better', 'still', 'not-it', 1])];
    case 'h':
      return ['h', pick(draw, flows).flow.id];
    case 't':
      return ['t', id, [pick(draw, TEXTS)]];
    default:
      return [kind, id, draw() < 0.8 ? answer : 0];
  }
}

/** The text of a case, and perhaps a slip of the pen in it. */
function anyText(draw: Draw, fuzzed: Fuzzed): string {
  const count = Math.floor(30 * draw() ** 2);
  const text = JSON.stringify([fuzzed.flow.id, ...Array.from({ length: count }, () => anyEntry(draw, fuzzed))]);
  if (draw() < 0.9) return text;
  const at = Math.floor(draw() * text.length);
  return text.slice(0, at) + pick(draw, ['', '"', ']', ',', '\\', '9', ' ']) + text.slice(at + 1);
}

const linkOf = (text: string): string => `${LINK_VERSION}.${deflateRawSync(text).toString('base64url')}`;

/** Made to keep a page busy, each as large as a case may be. */
const busy = (entries: (i: number) => unknown, most = MOST_BYTES) => {
  const list: unknown[] = ['no-rear-sound'];
  for (let bytes = 20, i = 0; bytes < most - 200; i++) {
    const entry = entries(i);
    bytes += JSON.stringify(entry).length + 1;
    list.push(entry);
  }
  return JSON.stringify(list);
};
const HOSTILE: Readonly<Record<string, string>> = {
  'unknown answers': busy((i) => ['a', `s${i}`, 0]),
  'changes of one answer': busy((i) => ['r', 'fader-centre', i % 2 ? 'no-change' : 'cured']),
  'answers and confirmations': busy((i) => (i % 2 ? ['a', 'unit-kind', 'factory'] : ['k', 'unit-kind'])),
  repairs: busy(() => ['f', 'coil-open']),
  'bikes that cannot be': busy((i) => ['b', { supplyOffV: i }]),
  'bikes with many amplifiers': busy(() => ['b', { amps: Array.from({ length: 30 }, () => ({ powerW: 90 })) }]),
  'entries of no kind': busy(() => 0),
  'entries of a newer kind': busy((i) => ['z', i]),
  'entries that were kept': busy((i) => ['o', ['a', `s${i}`, 0]]),
  'hand-overs': busy(() => ['h', 'no-rear-sound']),
  notes: busy(() => ['n', 'n'.repeat(900)]),
  'lines that are done': busy((i) => ['t', `fix${i}`, ['a', 'b']]),
  'a deep nest': `["no-rear-sound",${'['.repeat(90_000)}${']'.repeat(90_000)}]`,
  'readings without end': busy(() => [
    'a',
    'run-ohms',
    Object.fromEntries(TEXTS.map((text, i) => [`${text}${i}`, '1'])),
  ]),
};

interface Tried {
  readonly cpuMs: number;
  readonly events: number;
}
/** Opens, adopts and maybe replays; gives what that took of the processor. */
async function opened(what: string, isLink: boolean, fuzzed: Fuzzed, replays: boolean): Promise<Tried> {
  const begun = process.cpuUsage();
  const read = isLink ? await fromLink(what) : fromText(what);
  let events = 0;
  if (read.ok) {
    const { case: usable } = adopt(fuzzed.flow, read.case);
    events = usable.events.length;
    if (replays && replay(fuzzed.flow, usable, fuzzed.late).state === '')
      throw new Error('a case must stand somewhere');
  } else if (!/^(This|What) .*\.$/.test(read.message)) throw new Error(`not a sentence: ${read.message}`);
  const { user, system } = process.cpuUsage(begun);
  return { cpuMs: (user + system) / 1000, events };
}
/** The least of some tries, where the first was slow. */
async function bestOf(what: string, isLink: boolean, fuzzed: Fuzzed, replays: boolean): Promise<Tried> {
  let best = await opened(what, isLink, fuzzed, replays);
  for (let tries = 1; tries < TRIES && best.cpuMs > MOST_CPU_MS; tries++) {
    const next = await opened(what, isLink, fuzzed, replays);
    if (next.cpuMs < best.cpuMs) best = next;
  }
  return best;
}

describe('any case and any link', () => {
  it.each(Object.keys(HOSTILE))('that holds %s is opened in a blink, or refused in a sentence', async (name) => {
    const text = HOSTILE[name] ?? '';
    const [fuzzed] = flows;
    if (!fuzzed) expect.fail('no flow');
    for (const [what, isLink] of [
      [text, false],
      [linkOf(text), true],
    ] as const) {
      const { cpuMs, events } = await bestOf(what, isLink, fuzzed, true);
      expect(events).toBeLessThanOrEqual(MOST_EVENTS);
      expect(cpuMs, `${name}, ${isLink ? 'as a link' : 'as text'}`).toBeLessThan(MOST_CPU_MS);
    }
  });
  it(`of ${CASES + LINKS} from a seed throws nothing, holds no more than a case can, and takes no more than ${MOST_CPU_MS} ms`, async () => {
    const draw = drawFrom('fuzz', 1);
    const slow: string[] = [];
    let [readable, most] = [0, 0];
    for (let i = 0; i < CASES + LINKS; i++) {
      const isLink = i % 5 === 4;
      const fuzzed = pick(draw, flows);
      const text = anyText(draw, fuzzed);
      const link = isLink ? linkOf(text) : text;
      const at = Math.floor(draw() * link.length);
      const what =
        isLink && draw() < 0.2 ? link.slice(0, at) + pick(draw, ['', 'A', '%', 'é']) + link.slice(at + 1) : link;
      const { cpuMs, events } = await bestOf(what, isLink, fuzzed, i % REPLAYED === 0);
      if (cpuMs > MOST_CPU_MS) slow.push(`${cpuMs} ms: ${what}`);
      if (events > 0) readable++;
      most = Math.max(most, events);
    }
    expect(slow).toEqual([]);
    expect(most).toBeLessThanOrEqual(MOST_EVENTS);
    expect(readable).toBeGreaterThan((CASES + LINKS) / 2);
  }, 300_000);
  it('that is opened is the same once it was saved and opened again', () => {
    const draw = drawFrom('again', 1);
    for (let i = 0; i < 3000; i++) {
      const fuzzed = pick(draw, flows);
      const read = fromText(anyText(draw, fuzzed));
      if (!read.ok) continue;
      const { case: usable } = adopt(fuzzed.flow, read.case);
      const again = fromText(toText(usable));
      expect(again).toEqual({ ok: true, case: usable, refused: [] });
      if (again.ok) expect(adopt(fuzzed.flow, again.case)).toEqual({ case: usable, refused: [] });
    }
  });
});
