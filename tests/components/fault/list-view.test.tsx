import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { repaired } from '../../../src/case/change.ts';
import { CAUSES } from '../../../src/causes/all.ts';
import { splitOf } from '../../../src/causes/cause.ts';
import { SPOKEN } from '../../../src/components/caution/spoken.ts';
import { ListView } from '../../../src/components/fault/ListView.tsx';
import { listSections } from '../../../src/components/fault/list-sections.ts';
import { tellList } from '../../../src/components/fault/say-verdict.ts';
import { asText } from '../../../src/components/flow/Sheet.tsx';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { CAUTIONS } from '../../../src/steps/cautions.ts';
import { onBike } from '../../causes/on-bike.ts';
import { given, view, words } from './fan.ts';

const nothing = () => undefined;
const shown = (answers: Parameters<typeof given>[0], causes: readonly string[], mayGo = true) =>
  words(
    renderToString(
      <ListView
        view={view(given(answers))}
        causes={causes}
        onReopen={nothing}
        onPick={nothing}
        onNotIt={nothing}
        onGo={mayGo ? nothing : undefined}
      />,
    ),
  );
const SILENT = { hum: 'silent', 'tools-at-hand': 'none' };

describe('the list of those who are left', () => {
  const text = shown(SILENT, ['breaker-off', 'motor-dead']);
  it('gives each its odds, the check that separates it without a meter, and both answers to that check', () => {
    expect(text).toMatch(/most likely one of these 2/);
    expect(text).toMatch(
      /Breaker off about 6 in 10 Breaker off: by eye\? This is it – Breaker off It is not this – Breaker off/,
    );
    expect(text).toMatch(/Motor dead about 4 in 10 Motor dead: by eye\? This is it/);
  });
  it('puts last who was ruled out, and does not offer to rule it out again', () => {
    const after = view(repaired(given(SILENT), 'breaker-off', 'not-it'));
    const list = words(
      renderToString(
        <ListView
          view={after}
          causes={['breaker-off', 'motor-dead']}
          onReopen={nothing}
          onPick={nothing}
          onNotIt={nothing}
          onGo={nothing}
        />,
      ),
    );
    expect(list).toMatch(/It is not this – Motor dead .*Breaker off .*You ruled it out\./);
    expect(list).not.toContain('It is not this – Breaker off');
  });
  it('says by meter what separates them to whoever has one', () => {
    expect(shown({ ...SILENT, 'tools-at-hand': 'meter' }, ['breaker-off'])).toContain('Breaker off: by meter?');
  });
  it('tells whoever has no meter what to tell the workshop', () => {
    expect(text).toMatch(/What to tell the workshop Found so far: .*Hum : silent/);
    expect(shown({ ...SILENT, 'tools-at-hand': 'meter' }, ['breaker-off'])).not.toContain('workshop');
  });
  it('sends on what another flow looks for, unless the case has just come from there', () => {
    const other = ['elsewhere: ducts'];
    expect(shown({ hum: 'hums' }, other)).toMatch(
      /It blows nowhere .*The fan is sound.* Go on with “It blows nowhere”/,
    );
    expect(shown({ hum: 'hums' }, other)).not.toContain('This is it');
    expect(shown({ hum: 'hums' }, other, false)).not.toContain('Go on with');
  });
});

describe('where nothing in the list explains all of it', () => {
  const text = shown({ hum: 'hums', shaft: 'free', socket: { socketV: '0' } }, []);
  it('says so, and what is known, instead of an empty list', () => {
    expect(text).toMatch(/^Nothing in this list explains all of it/);
    expect(text).toMatch(/Found so far:/);
    expect(text).not.toMatch(/one of these 0|still possible/i);
  });
});

describe('a list that is taken along', () => {
  const seen = view(given(SILENT));
  const text = asText({ title: 'Fan', sections: listSections(seen, ['breaker-off', 'motor-dead'], 'One of two') });
  it('has who is left with odds and check, and what was found, as text and on the sheet', () => {
    expect(text).toMatch(/One of two\. Not proved/);
    expect(text).toMatch(/1\. Breaker off, about 6 in 10\. Breaker off: by eye\?\n2\. Motor dead, about 4 in 10\./);
    expect(text).toMatch(/WHAT WAS FOUND\n- Hum: silent/);
    expect(shown(SILENT, ['breaker-off', 'motor-dead'])).toMatch(/Take it along Copy it as text Print it on one page/);
  });
  /** A view of real causes: only what the cautions of a list look at. */
  const real = (meter: boolean) => ({
    ...seen,
    standing: {
      ...seen.standing,
      findings: onBike(EXAMPLE_RIGS['frame-fairing'], meter ? { 'tools-at-hand': 'meter' } : {}),
    },
    causeOf: (id: string) => CAUSES.find((cause) => cause.id === id),
    splitOf: (id: string) => {
      const cause = CAUSES.find((one) => one.id === id);
      return cause && { text: splitOf(cause, onBike(EXAMPLE_RIGS['frame-fairing'])).byMeter, isDone: false };
    },
  });
  it('has each caution of its checks once: on the screen, on paper and on the phone', () => {
    const left = ['amp-ground-resistive', 'plus-lead-too-thin', 'coil-open'];
    const html = renderToString(
      <ListView view={real(true)} causes={left} onReopen={nothing} onPick={nothing} onNotIt={nothing} onGo={nothing} />,
    );
    const paper = asText({ title: 'x', sections: listSections(real(true), left, 'x') });
    const { mind } = tellList(real(true), left);
    for (const id of ['lamp-hot', 'live-clip', 'plus-probe', 'ohms-dead'] as const) {
      expect(words(html).split(CAUTIONS[id]).length - 1, id).toBe(2); // Once to read, and once on the sheet to print.
      expect(paper).toContain(CAUTIONS[id]);
      expect(mind.filter((line) => line === SPOKEN[id])).toHaveLength(1);
    }
    expect(tellList(real(false), ['coil-open']).mind).toContain(SPOKEN.cell);
  });
});
