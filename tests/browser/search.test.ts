import { describe, expect, it } from 'vitest';
import { flowIsAwake, NARROWEST, useBrowser, visit } from './browser.ts';

useBrowser();

describe('the search', () => {
  it('leads from a caller’s words into the flow, with what they said as terminals', async () => {
    const { page, faults, close } = await visit('');
    await page.getByRole('searchbox', { name: 'Say it in your words' }).fill('rear dead after reflash');
    const first = page.getByRole('link', {
      name: /No sound from the rear.*Takes along what you said: “A reflash of the head unit”/,
    });
    await first.click();
    await flowIsAwake(page);
    expect(await page.locator('.terminal').innerText()).toMatch(/Last change\s*a reflash/);
    expect(faults).toEqual([]);
    await close();
  });

  it('brings what was said along for whoever taps before the page has rested, too', async () => {
    const { page, close } = await visit('');
    const field = page.getByRole('searchbox', { name: 'Say it in your words' });
    await field.fill('rear dead');
    await page.getByRole('link', { name: /Find out No sound from the rear/ }).waitFor();
    // From now on it never rests.
    await page.evaluate(() => Object.assign(window, { requestIdleCallback: () => 0 }));
    await field.fill('rear dead after reflash');
    await page.getByRole('link', { name: /No sound from the rear.*Takes along what you said/ }).click();
    await flowIsAwake(page);
    expect(await page.locator('.terminal').innerText()).toMatch(/Last change\s*a reflash/);
    await close();
  });

  it('opens by a key on other pages, and goes through what it found by the arrows', async () => {
    const { page, close } = await visit('safety/');
    await page.keyboard.press('/');
    await page.getByRole('searchbox', { name: 'Say it in your words' }).waitFor();
    await page.keyboard.type('gain knob');
    await page.getByRole('link', { name: /To calculate\s*Set the gain/ }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page.keyboard.press('/');
    await page.getByRole('searchbox').waitFor();
    await page.keyboard.type('gain knob');
    await page.getByRole('link', { name: /To calculate\s*Set the gain/ }).waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Set the gain', level: 1 }).waitFor();
    await close();
  });

  it('lies over a case, which is there as it was when it is closed', async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/', { viewport: NARROWEST });
    await flowIsAwake(page);
    await page.locator('.answers .answer').first().click();
    await page.locator('.terminal').first().waitFor();
    const question = await page.locator('.open-step h1').innerText();
    await page.getByRole('link', { name: 'Search' }).click();
    await page.getByRole('searchbox', { name: 'Say it in your words' }).fill('what is gain');
    const word = page.getByRole('link', { name: /A word\s*gain/ });
    await word.waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth)).toBe(
      false,
    );
    await word.click();
    await page.getByRole('dialog', { name: 'gain' }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expect(await page.locator('.open-step h1').innerText()).toBe(question);
    expect(await page.locator('.terminal').count()).toBe(1);
    expect(faults).toEqual([]);
    await close();
  });

  it('takes no number for an answer of the case below it', async () => {
    const { page, close } = await visit('find/no-rear-sound/');
    await flowIsAwake(page);
    await page.getByRole('combobox').first().selectOption('phone');
    await page.keyboard.press('/');
    await page.getByRole('searchbox').waitFor();
    await page.getByRole('button', { name: 'Close' }).focus();
    await page.keyboard.press('1');
    expect(await page.locator('.terminal').count()).toBe(0);
    await close();
  });

  it.each([NARROWEST, { width: 1280, height: 800 }])(
    'lies over the start page, which stays as it is while somebody types, at %o',
    async (viewport) => {
      const { page, close } = await visit('', { viewport });
      const places = () =>
        page
          .locator('h2:visible, .seats, .bottom')
          .evaluateAll((all) => all.map((one) => Math.round(one.getBoundingClientRect().top + scrollY)));
      const before = await places();
      const field = page.getByRole('searchbox');
      for (const words of ['rear dead', 'rear dead after reflash', 'qqqqqq']) {
        await field.fill(words);
        await page
          .getByText(words === 'qqqqqq' ? 'Nothing fits.' : 'No sound from the rear')
          .first()
          .waitFor();
        expect(await places()).toEqual(before);
      }
      await close();
    },
  );

  it('goes away with Escape or a tap beside it, and comes back with the next word', async () => {
    const { page, close } = await visit('');
    const field = page.getByRole('searchbox');
    const first = page.locator('.found a').first();
    await field.fill('rear dead');
    await first.waitFor();
    await page.getByRole('heading', { level: 1 }).click();
    await first.waitFor({ state: 'hidden' });
    await field.fill('rear dead after');
    await first.waitFor();
    await field.press('Escape');
    await first.waitFor({ state: 'hidden' });
    await close();
  });

  it('says so of a complaint that has no questions yet, with what to read and to measure', async () => {
    const { page, close } = await visit('');
    await page.getByRole('searchbox').fill('battery drains overnight');
    const found = page.getByRole('link', {
      name: /No questions for this yet, but “The charging system” to read\. Measure first: /,
    });
    await found.first().click();
    await page.getByRole('heading', { name: 'The charging system', level: 1 }).waitFor();
    await close();
  });

  it('leads a complaint without questions of its own to those that are best at it', async () => {
    const { page, close } = await visit('');
    await page.getByRole('searchbox').fill('whine that follows the revs');
    await page
      .getByRole('link', { name: /Asked in “The tone changes with the engine”/ })
      .first()
      .click();
    await page.locator('.flow-title', { hasText: 'The tone changes with the engine' }).waitFor();
    await close();
  });

  it.each(['', 'z', '<img src=x onerror=alert(1)>', 'x'.repeat(500), 'qqqqqq'])(
    'takes “%s” without a fault',
    async (words) => {
      const { page, faults, close } = await visit('');
      await page.getByRole('searchbox').fill('rear');
      await page.locator('.found a').first().waitFor();
      await page.getByRole('searchbox').fill(words);
      await page.waitForFunction((typed) => {
        const field = document.querySelector<HTMLInputElement>('#search-words');
        return field !== null && (typed.length < 2 ? document.querySelectorAll('.found a').length === 0 : true);
      }, words);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth),
      ).toBe(false);
      expect(faults).toEqual([]);
      await close();
    },
  );
});

describe('a word of the trade', () => {
  it('opens its entry over an article, by the keyboard, and gives the keyboard back', async () => {
    const { page, faults, close } = await visit('read/gain-structure/', { viewport: NARROWEST });
    const word = page.locator('article a.term').first();
    const name = (await word.innerText()).toLowerCase();
    await word.focus();
    await page.keyboard.press('Enter');
    const entry = page.getByRole('dialog');
    await entry.waitFor();
    expect(name.startsWith((await entry.getByRole('heading').innerText()).toLowerCase())).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth)).toBe(
      false,
    );
    await page.keyboard.press('Escape');
    await entry.waitFor({ state: 'detached' });
    expect(await word.evaluate((link) => link === document.activeElement)).toBe(true);
    expect(page.url()).toMatch(/read\/gain-structure\/$/);
    expect(faults).toEqual([]);
    await close();
  });

  it('opens its entry in the text of a question, and fetches it only then', async () => {
    const { page, faults, close } = await visit('find/no-rear-sound/');
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(new URL(request.url()).pathname));
    await flowIsAwake(page);
    const word = page.locator('.open-step a.term').first();
    await word.waitFor({ state: 'attached' });
    expect(fetched.some((path) => path.endsWith('/words.json'))).toBe(false);
    await page.getByText('Why this question?').click();
    await word.click();
    const entry = page.getByRole('dialog');
    await entry.waitFor();
    expect((await entry.innerText()).length).toBeGreaterThan(40);
    await entry.getByRole('button', { name: 'Close' }).click();
    await entry.waitFor({ state: 'detached' });
    expect(page.url()).toMatch(/find\/no-rear-sound\//);
    expect(faults).toEqual([]);
    await close();
  });
});
