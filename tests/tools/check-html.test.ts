import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { faultsOf, tagsOf } from '../../src/tools/check-html.ts';

const hashOf = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const page = (body: string, allowed = '') =>
  `<!doctype html><meta http-equiv="content-security-policy" content="default-src 'none'; script-src 'self' ${allowed}">${body}`;

describe('faultsOf', () => {
  it('passes a page with links, images and scripts of its own', () => {
    expect(
      faultsOf(page('<a href="/about/">About</a><img src="data:image/png,x" alt=""><script src="/a.js"></script>')),
    ).toEqual([]);
  });
  it.each([
    '<a href="https://example.org/">out</a>',
    '<img src="//example.org/a.png" alt="">',
    '<img srcset="/a.png 1x, https://example.org/b.png 2x" alt="">',
  ])('names an address on another origin: %s', (tag) => {
    expect(faultsOf(page(tag))).toEqual([expect.stringMatching(/leads to another origin$/)]);
  });
  it('leaves the name of the SVG vocabulary alone, which nobody fetches', () => {
    expect(faultsOf(page('<svg xmlns="http://www.w3.org/2000/svg"></svg>'))).toEqual([]);
  });
  it('names a style attribute and a handler, which the policy would block in silence', () => {
    expect(faultsOf(page('<p style="color:red">a</p><button onclick="go()">b</button>'))).toEqual([
      '<p style="color:red"> is blocked by the policy',
      '<button onclick="go()"> is blocked by the policy',
    ]);
  });
  it('does not take text for an attribute', () => {
    expect(faultsOf(page('<p title="a style=b">style="c" onclick="d"</p>'))).toEqual([]);
  });
  it('passes an inline script whose hash is in the policy, and names one whose hash is not', () => {
    expect(faultsOf(page('<script>go()</script>', hashOf('go()')))).toEqual([]);
    expect(faultsOf(page('<script>gone()</script>', hashOf('go()')))).toEqual([
      'the inline <script> that begins “gone()” is not in the policy',
    ]);
  });
  it('passes data in a script, which is not run', () => {
    expect(faultsOf(page('<script type="application/json">{"a":"<p style=1>"}</script>'))).toEqual([]);
  });
  it('names a page without a policy', () => {
    expect(faultsOf('<p>a</p>')).toEqual(['there is no content security policy']);
  });
});

describe('tagsOf', () => {
  it('reads attributes in double quotes, single quotes, none, and without a value', () => {
    const [tag] = tagsOf(`<input type="text" value='a > b' data-x=1 disabled>`);
    expect(Object.fromEntries(tag?.attributes ?? [])).toEqual({
      type: 'text',
      value: 'a > b',
      'data-x': '1',
      disabled: '',
    });
  });
});
