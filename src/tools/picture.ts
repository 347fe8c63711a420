import { writeFile } from 'node:fs/promises';
import { chromium, type Page } from 'playwright-core';
import { CHROMIUM_FLAGS, findChromium } from './chromium.ts';
import { serveFolder } from './serve.ts';
import { siteBase, siteFolder } from './site.ts';

/** Takes the picture of the README from the built site: the start page, a measurement and a verdict, side by side. */

const SIZE = { width: 360, height: 740 } as const;
const PICTURE = 'src/assets/site.png';

const UP_TO_THE_METER = [
  'Yes, the factory one',
  'The head unit, no amplifier',
  'Never',
  'Rear speakers or an amplifier were fitted',
  'No, still silent, on one side or both',
  'There is no such control',
  'The front plays, the rear never',
  'No, nothing changes',
  'Yes, a meter',
  '0.01 V',
] as const;

const tap = async (page: Page, ...answers: readonly string[]) => {
  for (const answer of answers) await page.getByRole('button', { name: answer, exact: true }).click();
};

const server = await serveFolder({ folder: siteFolder(), base: siteBase() });
const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_FLAGS });
const context = await browser.newContext({ viewport: SIZE, colorScheme: 'light' });
const page = await context.newPage();
const shots: Buffer[] = [];
const shoot = async () => shots.push(await page.screenshot());

await page.goto(server.url, { waitUntil: 'load' });
await shoot();
await page.goto(`${server.url}find/no-rear-sound/`, { waitUntil: 'load' });
await tap(page, ...UP_TO_THE_METER);
await tap(page, 'All of this is done');
for (const [label, text] of [
  ['Front pair', '1.0'],
  ['Rear left pair', '0.02'],
  ['Rear right pair', '0.01'],
] as const) {
  await page.getByRole('textbox', { name: label }).fill(text);
}
await page
  .locator('.reading')
  .first()
  .evaluate((reading) => reading.scrollIntoView({ block: 'start' }));
await shoot();
await page.getByRole('button', { name: /^Go on/ }).click();
await tap(page, 'At the head unit’s own plug, rear unplugged', 'No, front only');
await page.locator('article:not([aria-busy])').waitFor();
await shoot();

const images = shots.map(
  (shot) => `<img src="data:image/png;base64,${shot.toString('base64')}" width="${SIZE.width}">`,
);
const sheet = await browser.newPage({ viewport: { width: 3 * SIZE.width + 80, height: SIZE.height + 40 } });
await sheet.setContent(
  `<body style="margin:0;padding:20px;display:flex;gap:20px;background:#cdc6b6">${images.join('')}</body>`,
);
await writeFile(PICTURE, await sheet.screenshot());
await browser.close();
await server.stop();
console.log(`Wrote ${PICTURE}`);
