import { USUAL_LEADS_M2 } from '../compute/fuse.ts';
import { sectionForFuseM2 } from '../compute/lead-choice.ts';
import { formatQuantity } from '../compute/quantity.ts';
import type { Findings } from '../steps/outcome.ts';
import { carriesA, copper, THINNEST_FUSED_M2 } from './copper.ts';
import type { Figure } from './figure.ts';
import { newPlusLead, plusLeadFigures, plusLeadInWords, plusLeadParts } from './new-leads.ts';
import type { ReadFirst } from './read-first.ts';
import type { MainFuse, RepairAction } from './repair-action.ts';
import { ampOf } from './the-amp.ts';
import { FITTER } from './who.ts';

/** The fuse in the positive lead of an amplifier, and the lead that it is for: one is never named without the other. */

const amperes = (fuseA: number): string => formatQuantity(fuseA, 'A');

/** Whoever fits a fuse looks at its lead first, whatever was said of it: it is the lead that burns. */
export const FUSE_READS: readonly ReadFirst[] = ['plus-lead'];
export const READ_THE_LEAD = `Read the section off the positive lead’s jacket, and look at a strand: silver inside is aluminium, and counts as half. Not the section given here? The numbers below give its fuse. Below ${formatQuantity(THINNEST_FUSED_M2 / 1e-6, 'mm²', 2)} there is none: a new lead first.`;

/** The lead that is there is known, and no fuse protects it. */
const wantsNewLead = (f: Findings): boolean => {
  const { plusLeadM2 } = ampOf(f);
  return plusLeadM2 !== undefined && carriesA(plusLeadM2) === 0;
};

const atMost = (sectionM2: number): Figure => ({
  id: `main-fuse-on-${formatQuantity(sectionM2 / 1e-6, 'mm²', 3).replace(' mm²', '')}`,
  label: `Main fuse on ${copper(sectionM2)}`,
  value: carriesA(sectionM2),
  unit: 'A',
  limit: 'at most',
  digits: 3,
});

/** What its lead carries, and what each usual one does: the lead may turn out to be another. */
export function fuseFigures(f: Findings): readonly Figure[] {
  const { plusLeadM2 } = ampOf(f);
  const usual = USUAL_LEADS_M2.map(atMost);
  if (plusLeadM2 === undefined) return usual;
  if (wantsNewLead(f)) return [...plusLeadFigures(f), ...usual];
  const own = atMost(plusLeadM2);
  return [own, ...usual.filter(({ id }) => id !== own.id)];
}

/** The fuse to fit on the lead that is there, in words. */
export function fuseInWords(f: Findings): string {
  const { mainFuseA, plusLeadM2 } = ampOf(f);
  if (plusLeadM2 === undefined)
    return mainFuseA === undefined
      ? `the old rating, and no more than its lead carries: ${USUAL_LEADS_M2.map((sectionM2) => `${amperes(carriesA(sectionM2))} on ${copper(sectionM2)}`).join(', ')}`
      : `${amperes(mainFuseA)}, as before, if its lead has ${copper(sectionForFuseM2({ fuseA: mainFuseA }))} or more`;
  const mostA = carriesA(plusLeadM2);
  if (mostA === 0) return `none on ${copper(plusLeadM2)}. A new lead first: ${plusLeadInWords(f)}`;
  if (mainFuseA === undefined) return `the old rating, at most ${amperes(mostA)} on ${copper(plusLeadM2)}`;
  return mainFuseA > mostA
    ? `${amperes(mostA)}. ${copper(plusLeadM2)} carries no more than that, whatever was in it`
    : `${amperes(mainFuseA)}, as before, on ${copper(plusLeadM2)}`;
}

/** How a fix ends: the lead is read, a lamp shows that nothing is shorted, and only then the fuse goes in. */
export const fuseLast = (f: Findings): readonly string[] => [
  READ_THE_LEAD,
  'Remote wire and speakers off, battery negative on. A 21 to 55 W lamp in the fuse’s place: a brief glow, then out? Bright: no fuse. Something after it is still shorted.',
  `It goes out: take the lamp away and fit the fuse: ${fuseInWords(f)}. A small spark as its capacitors charge is normal: not near a battery that has just been charged.`,
  'Key off: remote wire and speakers back on.',
];

/** The lead to buy where no fuse protects the one that is there. */
const newLeadParts = (f: Findings): readonly string[] => (wantsNewLead(f) ? plusLeadParts(f) : []);

/** What to buy. */
export function fuseParts(f: Findings): readonly string[] {
  if (wantsNewLead(f)) return newLeadParts(f);
  const { fuseA, atMostA } = fuseOnLead(f);
  if (fuseA !== undefined) return [`One main fuse, ${amperes(fuseA)}`];
  return [`One main fuse of the old rating${atMostA === undefined ? '' : `, at most ${amperes(atMostA)}`}`];
}

/** The rating that was there, and no more than its lead carries. */
function fuseOnLead(f: Findings): Pick<MainFuse, 'fuseA' | 'atMostA'> {
  const { mainFuseA, plusLeadM2 } = ampOf(f);
  const mostA = plusLeadM2 === undefined ? undefined : carriesA(plusLeadM2);
  if (mainFuseA !== undefined) return { fuseA: Math.min(mainFuseA, mostA ?? mainFuseA) };
  return mostA === undefined ? {} : { atMostA: mostA };
}

const newLead = (f: Findings): RepairAction => ({
  do: 'renew-lead',
  lead: 'plus',
  ...newPlusLead(f),
  onceLampIsDark: true,
});

/** A fuse for the lead that is there. On one that no fuse protects there is none: it gets a new lead with its own. */
export const renewMainFuse = (f: Findings): RepairAction =>
  wantsNewLead(f) ? newLead(f) : { do: 'renew-fuse', fuse: 'main', ...fuseOnLead(f), onceLampIsDark: true };

/** The same with a new holder for it. */
export const renewHolder = (f: Findings): readonly RepairAction[] =>
  wantsNewLead(f)
    ? [{ do: 'renew-holder', fuseA: newPlusLead(f).fuseA, onceLampIsDark: true }, newLead(f)]
    : [{ do: 'renew-holder', ...fuseOnLead(f), onceLampIsDark: true }];

/** What a new holder takes, whatever is cut out for it. */
export const newHolder = (f: Findings) => ({
  readFirst: FUSE_READS,
  repair: renewHolder(f),
  tools: 'Crimp tool, spanner, a 21 to 55 W lamp on two leads',
  minutes: 40,
  who: FITTER,
  parts: ['Sealed fuse holder for the section of the lead, two crimp lugs', ...newLeadParts(f)],
});
