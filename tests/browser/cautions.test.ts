import { describe, expect, it } from 'vitest';
import { answered, confirmed } from '../../src/case/change.ts';
import type { Case } from '../../src/case/events.ts';
import { FLOWS } from '../../src/case/flows.ts';
import { toLink } from '../../src/case/link.ts';
import { replayStaged } from '../../src/case/replay-staged.ts';
import { cautionsOfFix } from '../../src/causes/action-cautions.ts';
import { SHORT_NAMES } from '../../src/components/caution/short-names.ts';
import { readyFor } from '../../src/components/flow/ready.ts';
import { CAUTIONS } from '../../src/steps/cautions.ts';
import { headingOf, REAR_OFF, stepNamed, theEnd, useBrowser, visit } from './browser.ts';

useBrowser();

const PATH = FLOWS['no-rear-sound'].path;
const [flow, late] = await Promise.all([FLOWS['no-rear-sound'].load(), FLOWS['no-rear-sound'].late()]);

/** A case with these answers, some of them given twice. */
function caseOf(answers: typeof REAR_OFF, ...twice: readonly string[]): Case {
  const begun: Case = { flow: flow.id, events: [{ type: 'rig', rig: {} }] };
  const all = Object.entries(answers).reduce(
    (it, [step, given]) => answered(it, step, typeof given === 'string' ? { option: given } : { readings: given }),
    begun,
  );
  return twice.reduce((so, id) => confirmed(so, id), all);
}
async function open(it: Case) {
  const visited = await visit('');
  const { page } = visited;
  const root = (await page.locator('.top .home').getAttribute('href')) ?? '/';
  await page.goto(new URL(`${root}${PATH}#${await toLink(it)}`, page.url()).href, { waitUntil: 'load' });
  await theEnd(page).waitFor();
  return visited;
}

const SETTINGS: typeof REAR_OFF = {
  ...REAR_OFF,
  'tools-at-hand': 'none',
  'rear-control': 'cured',
  'rear-history': 'stopped',
};
for (const id of ['run-ohms', 'wire-to-frame', 'meter-digit', 'rear-pair', 'rear-pair-place', 'rear-rating'])
  delete (SETTINGS as Record<string, unknown>)[id];

/** Two ends of which the one is proved and the other is not. */
const ENDS = [caseOf(REAR_OFF), caseOf(SETTINGS, 'rear-control')].map((it) => {
  const standing = replayStaged(flow, it, late);
  if (standing.open.kind !== 'cause') throw new Error(`no cause: ${standing.open.kind}`);
  return { it, standing, ...standing.open };
});

describe('a verdict on the screen', () => {
  it('has every caution of its fix in sight, and none that a phone line says for it', async () => {
    for (const { it: one, standing, cause } of ENDS) {
      const { page, close } = await open(one);
      const text = await theEnd(page).innerText();
      const remedy = late.causes[cause]?.remedy(standing.findings);
      const cautions = remedy ? cautionsOfFix(remedy, standing.findings) : [];
      expect(cautions.length).toBeGreaterThan(0);
      for (const id of cautions) expect(text).toContain(CAUTIONS[id]);
      expect(text).not.toContain('Tell the caller');
      await close();
    }
  });
  it('says Proved of what is proved and Likely of what is likely, with another sign beside it', async () => {
    expect(new Set(ENDS.map(({ certainty }) => certainty))).toEqual(new Set(['likely', 'proved']));
    const signs = new Set<string>();
    for (const { it: one, certainty } of ENDS) {
      const { page, close } = await open(one);
      const sure = page.locator('.how-sure');
      expect(await sure.innerText()).toMatch(certainty === 'proved' ? /^Proved\./ : /^Likely\./);
      signs.add(await sure.locator('svg').innerHTML());
      await close();
    }
    expect(signs.size).toBe(2);
  });
  it('is told to a caller in the seat for that: what it is, what to mind, what to bring', async () => {
    const [end] = ENDS;
    if (!end) throw new Error('no end');
    const { page, close } = await open(end.it);
    await page.getByRole('combobox', { name: 'Where you are' }).selectOption('On the phone');
    const said = await theEnd(page).locator('.say').innerText();
    expect(said).toMatch(/Tell the caller[\s\S]*What he has to mind:[\s\S]*To bring:[\s\S]*What he does, one line/);
    await close();
  });
});

describe('a question on the screen', () => {
  it('has its cautions in sight, and says them first to a caller', async () => {
    const it_ = caseOf(REAR_OFF);
    const { page, close } = await open(it_);
    const step = stepNamed('lid-check');
    await page
      .locator('.terminal')
      .filter({ hasText: `${step.short}` })
      .getByRole('button')
      .click();
    await headingOf(page, 'lid-check').waitFor();
    const { cautions, care, readBefore } = readyFor(step, it_, flow.steps, replayStaged(flow, it_, late));
    expect(cautions.length).toBeGreaterThan(0);
    const text = await page.locator('.open-step').innerText();
    for (const id of cautions) expect(text).toContain(readBefore.includes(id) ? SHORT_NAMES[id] : CAUTIONS[id]);
    await page.getByRole('combobox', { name: 'Where you are' }).selectOption('On the phone');
    const said = (await page.locator('.open-step .say').innerText()).split('\n').filter((line) => line !== '');
    expect(said.slice(1, 1 + care.length)).toEqual([...care]);
    await close();
  });
});
