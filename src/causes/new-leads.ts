import { type LeadChoice, plusLeadFor } from '../compute/lead-choice.ts';
import { formatQuantity } from '../compute/quantity.ts';
import { ampEstimate } from '../rig/rig.ts';
import type { Findings } from '../steps/outcome.ts';
import { ampLoad, channelsInWords, fullBassA } from './amp-load.ts';
import { carriesA, copper } from './copper.ts';
import type { Figure } from './figure.ts';
import { readsForLead } from './read-first.ts';
import { ampOf } from './the-amp.ts';

/** New power leads for the amplifier of a case. */

export const newPlusLead = (f: Findings): LeadChoice => leadAtFullBass(f, fullBassA(f));

function leadAtFullBass(f: Findings, currentA: number): LeadChoice {
  const amp = ampOf(f);
  return plusLeadFor({
    lengthM: ampEstimate(amp, 'plusLeadM').value,
    fullBassA: currentA,
    fittedM2: ampEstimate(amp, 'plusLeadM2').value,
    ...(amp.mainFuseA !== undefined && { fittedFuseA: amp.mainFuseA }),
  });
}

/** The ground carries the same current, and is as thick. */
export const groundLeadM2 = (f: Findings): number => newPlusLead(f).sectionM2;

export function plusLeadFigures(f: Findings): readonly Figure[] {
  const { sectionM2, fuseA } = newPlusLead(f);
  return [
    {
      id: 'plus-lead-section',
      label: `New positive lead, ${formatQuantity(ampEstimate(ampOf(f), 'plusLeadM').value, 'm')}`,
      value: sectionM2 / 1e-6,
      unit: 'mm²',
      limit: 'at least',
      digits: 3,
    },
    { id: 'plus-lead-fuse', label: 'Its fuse', value: fuseA, unit: 'A', digits: 3 },
  ];
}

/** “8.37 mm² of copper with a 40 A fuse” */
export const plusLeadInWords = (f: Findings): string => inWords(newPlusLead(f));

const inWords = ({ sectionM2, fuseA }: LeadChoice): string =>
  `${copper(sectionM2)} with a ${formatQuantity(fuseA, 'A')} fuse`;

export const plusLeadParts = (f: Findings): readonly string[] => [
  `Positive lead: ${formatQuantity(ampEstimate(ampOf(f), 'plusLeadM').value, 'm')} of ${plusLeadInWords(f)}`,
  'Crimp lugs, sleeve, grommets',
];
/** A thicker lead does not go into the holder of a thin one. */
export const SEALED_HOLDER = 'Sealed fuse holder for that section';

export const groundLeadParts = (f: Findings): readonly string[] => [
  `Ground lead: ${copper(groundLeadM2(f))}, as short as it can be, with two ring lugs`,
];

/** Said first where the lead that is there, or the watts of the amplifier, are only assumed. */
export const beforeTheLead = (f: Findings): readonly string[] =>
  readsForLead(f).map((read) => (read === 'rating' ? strongestInWords(f) : OLD_LEAD));

const OLD_LEAD =
  'Read the section off the old lead’s jacket, and measure its length: never go thinner, whatever it says here.';

/** The lead of the strongest amplifier that is usual. */
function strongestInWords(f: Findings): string {
  const { channels, powerW } = ampLoad(f);
  const mostW = Math.max(powerW, ampEstimate(ampOf(f), 'powerW').high);
  const lead = leadAtFullBass(f, (fullBassA(f) * mostW * 4) / (powerW * channels));
  return `Check its watts and channels: this assumes ${channelsInWords(f)}. Four of ${formatQuantity(mostW, 'W')} need ${inWords(lead)}.`;
}

/** A lead whose largest fuse full bass may open: said where a fuse alone is renewed. */
export function tooThinForFullBass(f: Findings): string | undefined {
  const { plusLeadM2 } = ampOf(f);
  if (plusLeadM2 === undefined || ampLoad(f).assumed || carriesA(plusLeadM2) >= fullBassA(f)) return undefined;
  return `Full bass takes more than ${copper(plusLeadM2)} carries. If it blows again when loud and nothing is shorted, fit a lead of ${plusLeadInWords(f)}.`;
}
