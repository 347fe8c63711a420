import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, inject } from 'vitest';
import { CHROMIUM_FLAGS } from '../../src/tools/chromium.ts';

/** A phone held upright, the smallest that the site is made for. */
export const PHONE = { width: 360, height: 740 } as const;
export const DESKTOP = { width: 1280, height: 900 } as const;

let browser: Browser;

/** Starts Chromium for a file of tests. */
export function useBrowser(): void {
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: inject('chromium'), headless: true, args: CHROMIUM_FLAGS });
  });
  afterAll(() => browser.close());
}

export interface Visit {
  readonly page: Page;
  /** Everything that went wrong on the page: console errors and warnings, exceptions, security policy reports. */
  readonly faults: string[];
  readonly close: () => Promise<void>;
}

/** Opens a page in a profile of its own. */
export async function visit(path: string, options: BrowserContextOptions = {}, site = inject('site')): Promise<Visit> {
  const context = await browser.newContext({ viewport: PHONE, ...options });
  const page = await context.newPage();
  const faults = watch(page);
  await page.addInitScript(() =>
    addEventListener('securitypolicyviolation', (event) =>
      console.error(`CSP ${event.effectiveDirective} ${event.blockedURI}`),
    ),
  );
  await page.goto(site + path, { waitUntil: 'load' });
  return { page, faults, close: () => context.close() };
}

/** Collects what goes wrong on a page. */
export function watch(page: Page): string[] {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
  });
  page.on('pageerror', (error) => faults.push(String(error)));
  return faults;
}

/** Waits until the flow has its script and its saved case. */
export const flowIsAwake = (page: Page) =>
  page.locator('#flow button.answer:not([disabled]), #flow input:not([disabled]), #flow .verdict').first().waitFor();

/** Taps answers one after the other, each by its visible words. */
export async function tap(page: Page, ...answers: readonly string[]): Promise<void> {
  for (const answer of answers) await page.getByRole('button', { name: answer, exact: true }).click();
}

/** Types the readings of a measurement, by their labels, and goes on. */
export async function read(page: Page, readings: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(readings))
    await page.getByRole('textbox', { name: label, exact: true }).fill(text);
  await page.getByRole('button', { name: /^Go on/ }).click();
}

/** The way of a rider whose rear channels are off and who has no amplifier, up to the readings. */
export const UP_TO_THE_METER = [
  'Yes, the factory one',
  'The head unit, no amplifier',
  'Never',
  'Rear speakers or an amplifier were fitted',
  'No, still silent',
  'There is no such control',
  'No, nothing changes',
] as const;

/** The run and the frame read healthy, and the meter shows this much: then the rear pairs are asked for. */
export async function toTheRearPair(page: Page, digit = '0.01 V'): Promise<void> {
  await flowIsAwake(page);
  await tap(page, ...UP_TO_THE_METER, 'Yes, a meter', '4 Ω');
  await read(page, { 'Probes held together': '0.2', 'Rear left run': '3.7', 'Rear right run': '3.8' });
  await read(page, { 'Lowest of the four wires': 'OL' });
  await tap(page, digit);
}

export async function toTheVerdict(page: Page): Promise<void> {
  await toTheRearPair(page);
  await read(page, { 'Front pair': '1.0', 'Rear left pair': '0,02', 'Rear right pair': '0 V' });
  await tap(page, 'At the head unit’s own plug, rear unplugged', 'No, front only');
}
export const REAR_IS_OFF = 'The rear channels are switched off in the head unit.';
