import { readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';

const SITE = 'https://example.org/bikes/';
const SOURCE = readFileSync('src/sw/sw.js', 'utf8').replace('/*FIRST*/ {}', '{ "": "1", "offline/": "2", "tö/": "3" }');

/** What the worker answers a page that asks for an address while there is no signal: a text, or nothing of its own. */
function answerOffline(address: string, mode: 'navigate' | 'no-cors' = 'navigate'): Promise<string> | undefined {
  const on = new Map<string, (event: unknown) => void>();
  const caches = {
    match: async (key: string) => ({ headers: new Headers(), text: async () => key }),
  };
  const self = {
    registration: { scope: SITE },
    location: new URL(SITE),
    addEventListener: (type: string, listener: (event: unknown) => void) => void on.set(type, listener),
  };
  const fetch = async () => {
    throw new TypeError('no signal');
  };
  runInNewContext(SOURCE, { self, caches, fetch, URL, Response });
  let given: Promise<Response> | undefined;
  on.get('fetch')?.({
    request: { url: new URL(address, SITE).href, method: 'GET', mode, headers: new Headers() },
    respondWith: (response: Promise<Response>) => {
      given = Promise.resolve(response);
    },
  });
  return given?.then((response) => response.text());
}

describe('the worker without a signal', () => {
  it.each(['', 'index.html', 't%C3%B6/'])('answers “%s” from what it keeps', async (address) => {
    expect(await answerOffline(address, 'no-cors')).toMatch(/^\/bikes\/(t.+)?\?h=/);
  });
  it.each(['nowhere/', '%', '%E0%A4%A', 'a%zz/b', '%FF'])(
    'shows the offline page for “%s”, which it does not know, and does not fail on a malformed %%',
    async (address) => expect(await answerOffline(address)).toBe('/bikes/offline/?h=2'),
  );
  it('leaves the rest of the net alone', () => {
    expect(answerOffline('https://elsewhere.example/%')).toBeUndefined();
    expect(answerOffline('../outside/')).toBeUndefined();
    expect(answerOffline('nowhere.png', 'no-cors')).toBeUndefined();
  });
});
