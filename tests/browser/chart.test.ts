import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { useBrowser, visit } from './browser.ts';

useBrowser();

const sheets = readdirSync('dist/chart', { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /^[^/]+\/[^/]+\/index\.html$/.test(file))
  .map((file) => `chart/${file.replace(/index\.html$/, '')}`)
  .sort();

describe('a chart for the wall', () => {
  it('is there', () => expect(sheets.length).toBeGreaterThanOrEqual(3));
  it.each(sheets)('%s is one sheet of A4', async (path) => {
    const { page, faults, close } = await visit(path);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
    // 210 by 297 mm in points of 1/72 inch: ISO 216.
    const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(pdf) ?? [];
    expect(Number(width)).toBeCloseTo(595.3, -1);
    expect(Number(height)).toBeCloseTo(841.9, -1);
    expect(faults).toEqual([]);
    await close();
  });
});
