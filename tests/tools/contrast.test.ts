import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync('src/styles/site.css', 'utf8');
const [light = '', dark = ''] = [...css.matchAll(/:root \{([^}]*--paper:[^}]*)\}/g)].map(([, rules]) => rules);

/** Relative luminance by WCAG 2.2. */
function luminance(hex: string): number {
  const channels = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  const [r = 0, g = 0, b = 0] = channels.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(rules: string, ...names: readonly [string, string]): number {
  const [a = 0, b = 0] = names.map((name) =>
    luminance(new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(rules)?.[1] ?? ''),
  );
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

const TEXT = [
  ['ink', 'paper'],
  ['ink', 'sheet'],
  ['ink', 'copper-tint'],
  ['ink', 'good-tint'],
  ['ink', 'bad-tint'],
  ['soft', 'paper'],
  ['soft', 'sheet'],
  ['soft', 'copper-tint'],
  ['copper', 'paper'],
  ['copper', 'sheet'],
  ['on-copper', 'copper'],
  ['good', 'good-tint'],
  ['bad', 'paper'],
  ['bad', 'sheet'],
  ['bad', 'bad-tint'],
  ['warn', 'warn-tint'],
  // The signal word and what a sign shows in reverse.
  ['warn-tint', 'warn'],
  ['bad-tint', 'bad'],
  ['copper-tint', 'ink'],
  ['copper', 'copper-tint'],
  ['soft', 'good-tint'],
  ['copper', 'good-tint'],
] as const;

const EDGES = [
  ['edge', 'paper'],
  ['edge', 'sheet'],
  ['good', 'sheet'],
  ['focus', 'paper'],
  ['focus', 'sheet'],
] as const;

describe.each([
  ['light', light],
  ['dark', dark],
])('the %s colours', (_, rules) => {
  it.each(TEXT)('keep %s readable on %s in bright sun: at least 7 to 1', (ink, ground) => {
    expect(contrast(rules, ink, ground)).toBeGreaterThanOrEqual(7);
  });
  it.each(EDGES)('keep %s visible on %s: at least 4.5 to 1', (edge, ground) => {
    expect(contrast(rules, edge, ground)).toBeGreaterThanOrEqual(4.5);
  });
});
