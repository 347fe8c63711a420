import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';
import { toLink } from '../../src/case/link.ts';
import { ALL_STEPS } from '../../src/steps/all.ts';
import type { Step } from '../../src/steps/step.ts';
import { CHROMIUM_FLAGS } from '../../src/tools/chromium.ts';
import { allWords, plainly } from '../steps/words.ts';

/** A phone held upright, the smallest that the site is made for. */
export const PHONE = { width: 360, height: 740 } as const;
/** The narrowest phone that is still in use. */
export const NARROWEST = { width: 320, height: 568 } as const;
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

/** What a rider says who has done what comes before a measurement. */
export const ALL_DONE = 'All of this is done';

/** Waits until the flow has its script and its saved case, and takes taps. What comes before a measurement is done. */
export async function flowIsAwake(page: Page): Promise<void> {
  const done = page.getByRole('button', { name: ALL_DONE });
  await page
    .locator('#flow[data-awake] :is(button.answer, input, .verdict):not([disabled])')
    .or(done)
    .first()
    .waitFor();
  // Looked at with every frame: a locator that waits for something to go looks twice a second, and rides take many answers.
  await page.waitForFunction(() => document.querySelector('.open-step div[inert]') === null);
  if (await done.isVisible()) await done.click();
}

/** Taps buttons one after the other, each by its visible words. */
export async function tap(page: Page, ...words: readonly string[]): Promise<void> {
  for (const one of words) await page.getByRole('button', { name: one, exact: true }).click();
}

/** Types the readings of a measurement, by their labels, and goes on. */
export async function read(page: Page, readings: Readonly<Record<string, string>>): Promise<void> {
  const done = page.getByRole('button', { name: ALL_DONE });
  // What has to be done first is a screen of its own, or stands there already.
  await done
    .or(page.getByRole('textbox', { name: Object.keys(readings)[0] ?? '', exact: true }))
    .first()
    .waitFor();
  if (await done.isVisible()) await done.click();
  for (const [label, text] of Object.entries(readings))
    await page.getByRole('textbox', { name: label, exact: true }).fill(text);
  await page.getByRole('button', { name: /^Go on/ }).click();
}

/*
 * What a page asks next is the inference's. So a rider in a test has answers by step, whatever the order, and rides on
 * until something is open or the flow ends.
 */

/** Answers by step, each an option or readings; what is not named the rider does not know, or cannot do. */
export type Answers = Readonly<Record<string, string | Readonly<Record<string, string>>>>;

const STEPS: readonly Step[] = Object.values(ALL_STEPS);
export const stepNamed = (id: string): Step => {
  const step = STEPS.find((one) => one.id === id);
  if (!step) throw new RangeError(`step must be one of the site's, got ${id}`);
  return step;
};

/** The heading of a question, as it is asked where nothing is known of its subject. */
export const headingOf = (page: Page, id: string, how: { readonly exact?: boolean } = {}) =>
  page.getByRole('heading', { name: plainly(stepNamed(id).ask), ...how });

/** The verdict, the list or the plan that a flow ended in, once all of it is drawn. */
export const theEnd = (page: Page) => page.getByRole('article').and(page.locator(':not([aria-busy])'));

const heading = (page: Page) => page.locator('.open-step h1').first();
/** The step that is open, or undefined at an end. */
export async function openStep(page: Page): Promise<Step | undefined> {
  await flowIsAwake(page);
  const asked = (await heading(page).innerText()).trim();
  return STEPS.find(({ ask }) => allWords(ask).includes(asked));
}

/** Answers the question that is open. */
export async function answer(page: Page, step: Step, given: Answers[string] | undefined): Promise<void> {
  if (given === undefined) {
    await page.getByRole('button', { name: /^I (can’t|don’t)/ }).click();
    const without = page.getByRole('button', { name: 'Go on without it' });
    if (await without.isVisible()) await without.click();
  } else if (typeof given === 'string') {
    if (step.kind === 'reading') throw new RangeError(`${step.id} is answered by readings, got ${given}`);
    await page
      .locator('.options')
      .getByRole('button', { name: step.options[given] ?? '', exact: true })
      .click();
  } else {
    if (step.kind !== 'reading') throw new RangeError(`${step.id} is answered by an option`);
    const byLabel = Object.entries(given).map(([name, text]) => [step.readings[name]?.label ?? name, text] as const);
    await read(page, Object.fromEntries(byLabel));
  }
}

/** Rides on, answering what is asked, until a step is open or the flow has come to an end. Gives the steps on the way. */
export async function rideOn(page: Page, answers: Answers, until?: string): Promise<readonly string[]> {
  const asked: string[] = [];
  for (let i = 0; i < 60; i++) {
    const step = await openStep(page);
    if (!step || step.id === until) return asked;
    asked.push(step.id);
    const before = await stateOf(page);
    await answer(page, step, answers[step.id]);
    await expect.poll(() => stateOf(page)).not.toBe(before);
  }
  throw new Error(`the flow did not come to an end within 60 answers: ${asked.join(', ')}`);
}
/** What is open, and how much was answered: both stay as they are until an answer is taken. */
const stateOf = async (page: Page): Promise<string> => JSON.stringify(await page.evaluate(() => history.state));

/** Opens a question of a fault flow before its turn. */
export async function openByHand(page: Page, id: string): Promise<void> {
  await page.getByText('I already measured that').click();
  await page
    .locator('.out-of-turn')
    .getByRole('button', { name: plainly(stepNamed(id).short), exact: true })
    .click();
  await headingOf(page, id, { exact: true }).waitFor();
  await flowIsAwake(page);
}

/** A rider whose rear channels are off, who has no amplifier and a meter. */
export const REAR_OFF: Answers = {
  'unit-kind': 'factory',
  'rear-drive': 'unit',
  'which-silent': 'both',
  'rear-history': 'never',
  'when-silent': 'always',
  'last-change': 'fitted',
  'tried-already': 'nothing',
  'fader-centre': 'no-change',
  'rear-control': 'none',
  'four-corners': 'no-rear',
  'lid-check': 'no-effect',
  'delivered-with': 'two',
  'tools-at-hand': 'meter',
  'rear-rating': '4',
  'run-ohms': { leadsOhm: '0.2', leftOhm: '3.7', rightOhm: '3.8' },
  'wire-to-frame': { lowestOhm: 'OL' },
  'meter-digit': '0.01',
  'rear-pair': { frontV: '1.0', leftV: '0,02', rightV: '0 V' },
  'rear-pair-place': 'unit',
  'unit-plug-look': 'dry',
};
export const REAR_IS_OFF = /^The rear channels are switched off/;

/** The reading of the rear pairs is open, on a meter that shows so much. */
export async function toTheRearPair(page: Page, digit = '0.01'): Promise<void> {
  const { 'rear-pair': _, 'rear-pair-place': __, ...before } = REAR_OFF;
  await openWith(page, { ...before, 'meter-digit': digit });
  if ((await openStep(page))?.id !== 'rear-pair') await openByHand(page, 'rear-pair');
}

/** Opens a case with these answers by a link, as somebody does to whom it was sent. */
export async function openWith(page: Page, answers: Answers, path = 'find/no-rear-sound/'): Promise<void> {
  const events = Object.entries(answers).map(([step, given]) => ({
    type: 'answer' as const,
    step,
    answer: typeof given === 'string' ? { option: given } : { readings: given },
  }));
  const link = await toLink({ flow: path.split('/').at(-2) ?? '', events: [{ type: 'rig', rig: {} }, ...events] });
  const root = (await page.locator('.top .home').getAttribute('href')) ?? '/';
  await page.goto(new URL(`${root}${path}#${link}`, page.url()).href, { waitUntil: 'load' });
  // On the page of the flow itself only the fragment changes, and what stood there stays until the link is read.
  await page.locator(`#terminal-${Object.keys(answers)[0]}`).waitFor();
  await flowIsAwake(page);
}

/** The verdict of a rider whose rear channels are off. */
export async function toTheVerdict(page: Page): Promise<void> {
  await openWith(page, REAR_OFF);
  await rideOn(page, REAR_OFF);
  await theEnd(page).waitFor();
}
