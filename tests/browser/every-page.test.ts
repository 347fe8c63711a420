import { readdirSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { DESKTOP, flowIsAwake, PHONE, tap, toTheVerdict, UP_TO_THE_METER, useBrowser, visit } from './browser.ts';

useBrowser();

const pages = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map((file) => file.replaceAll('\\', '/').replace(/index\.html$/, ''))
  .sort();

async function complaints(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}
const isWiderThanTheScreen = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);

describe('every page', () => {
  it.each(pages)(
    '/%s is accessible in light and dark, fits a phone, and asks nobody else for anything',
    async (path) => {
      const { page, faults, close } = await visit(path, { colorScheme: 'light' });
      const elsewhere: string[] = [];
      page.on(
        'request',
        (request) => new URL(request.url()).origin === new URL(page.url()).origin || elsewhere.push(request.url()),
      );
      await page.reload({ waitUntil: 'load' });
      expect(await complaints(page)).toEqual([]);
      expect(await isWiderThanTheScreen(page)).toBe(false);
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await complaints(page)).toEqual([]);
      expect(elsewhere).toEqual([]);
      expect(faults).toEqual([]);
      await close();
    },
  );
});

describe('a flow page on the way', () => {
  it.each([
    ['a phone', PHONE],
    ['a wide screen', DESKTOP],
  ])('is accessible at a measurement and at the verdict on %s', async (_, viewport) => {
    const { page, faults, close } = await visit('find/no-rear-sound/', { viewport });
    await flowIsAwake(page);
    await tap(page, ...UP_TO_THE_METER, 'Yes, a meter', '0.01 V');
    await page.getByRole('textbox', { name: 'Front pair' }).fill('1.0');
    await page.getByRole('textbox', { name: 'Rear left pair' }).fill('eighty');
    await page.getByRole('button', { name: /^Go on/ }).click();
    await page.getByText('Still possible').click();
    expect(await complaints(page)).toEqual([]);
    expect(await isWiderThanTheScreen(page)).toBe(false);
    await page.getByText('Still possible').click();
    await tap(page, 'Start a new case');
    await toTheVerdict(page);
    expect(await complaints(page)).toEqual([]);
    expect(await isWiderThanTheScreen(page)).toBe(false);
    expect(faults).toEqual([]);
    await close();
  });

  it('keeps everything in reach when the text is twice as large', async () => {
    const { page, close } = await visit('find/no-rear-sound/');
    await flowIsAwake(page);
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '225%'));
    expect(await isWiderThanTheScreen(page)).toBe(false);
    await tap(page, 'Yes, the factory one');
    await page.getByRole('heading', { name: /What drives the rear speakers/ }).waitFor();
    await close();
  });
});
