import { describe, expect, it } from 'vitest';
import { headersFor, parseHeaders } from '../../src/tools/headers-file.ts';

const rules = parseHeaders('/*\n  X-One: 1\n  X-Two: a: b\n/_astro/*\n  X-One: 2\n/sw.js\n  X-Three: 3\n');

describe('headersFor', () => {
  it('gives what stands under a star to every path below it', () => {
    expect(headersFor(rules, '/about/')).toEqual({ 'X-One': '1', 'X-Two': 'a: b' });
  });
  it('lets a later block win', () => {
    expect(headersFor(rules, '/_astro/a.js')).toEqual({ 'X-One': '2', 'X-Two': 'a: b' });
  });
  it('gives what stands under a path without a star to that path only', () => {
    expect(headersFor(rules, '/sw.js')).toHaveProperty('X-Three', '3');
    expect(headersFor(rules, '/sw.js.map')).not.toHaveProperty('X-Three');
  });
});
