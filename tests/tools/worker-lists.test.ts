import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fillWorker, workerLists } from '../../src/tools/worker-lists.ts';

const file = (path: string, text = path) => ({ path, bytes: new TextEncoder().encode(text) });

describe('workerLists', () => {
  it('lists pages by their address, with a slash, and the start page as nothing', () => {
    const { first } = workerLists([file('index.html'), file('about/index.html'), file('_astro/a.js')]);
    expect(Object.keys(first)).toEqual(['_astro/a.js', 'about/', '']);
  });
  it('leaves out the worker, the host’s settings, the page for an unknown address, and source maps', () => {
    const { first, later } = workerLists([file('sw.js'), file('_headers'), file('404.html'), file('_astro/a.js.map')]);
    expect([first, later]).toEqual([{}, {}]);
  });
  it('keeps the tones for later, so that the first visit is quick', () => {
    const { first, later } = workerLists([file('tones/80hz.wav'), file('tones/index.html')]);
    expect(Object.keys(first)).toEqual(['tones/']);
    expect(Object.keys(later)).toEqual(['tones/80hz.wav']);
  });
  it('gives another hash to another content, and the same to the same', () => {
    const hash = (text: string) => workerLists([file('a.js', text)]).first['a.js'];
    expect(hash('1')).toBe(hash('1'));
    expect(hash('1')).not.toBe(hash('2'));
  });
});

describe('fillWorker', () => {
  it('fills both lists into the worker', () => {
    const source = readFileSync('src/sw/sw.js', 'utf8');
    const filled = fillWorker(source, { first: { 'about/': 'abc' }, later: { 'tones/80hz.wav': 'def' } });
    expect(filled).toContain('const FIRST = {"about/":"abc"};');
    expect(filled).toContain('const LATER = {"tones/80hz.wav":"def"};');
  });
  it('refuses a worker in which a list has no place or two', () => {
    expect(() => fillWorker('/*LATER*/ {}', { first: {}, later: {} })).toThrow(
      'The worker must hold “/*FIRST*/ {}” exactly once.',
    );
  });
});
