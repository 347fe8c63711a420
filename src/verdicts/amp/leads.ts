import { formatQuantity } from '../../compute/quantity.ts';
import { sectionForDropM2 } from '../../compute/wire.ts';
import { ampEstimate } from '../../rig/rig.ts';
import { theAmp } from '../../steps/fitted/the-amp.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { mainFuseAtMost } from '../main-fuse.ts';
import type { Verdict } from '../verdict.ts';
import { FITTER, YOURSELF, YOURSELF_OR_FITTER } from '../who.ts';
import { HEAVY_LOAD, type Left, WEAK_BATTERY } from './left.ts';
import { ampName, cutOut, drawNumbers, fullDrawA, pathNumbers, readPath } from './numbers.ts';

/** Contacts and leads that let volts through, but not the current. */

const PROOF_TEN = 'The amplifier starts and stops with the head unit ten times in a row.';

const FUSE_OPEN_UNSEEN: Left[number] = {
  what: 'Main fuse open',
  split: 'Fuse out, meter on ohms across it: next to nothing? If not, it is open.',
};
const LEAD_TOO_THIN: Left[number] = {
  what: 'The plus lead too thin or half broken',
  split: 'Lamp on: which half of the way loses the volts?',
};
const LOOSE_RING: Left[number] = {
  what: 'A loose ring at the battery',
  split: 'Lamp on: battery post itself to its ring, in millivolts.',
};
const HOLDER_WITHOUT_CURRENT: Left[number] = {
  what: 'A fuse holder that passes volts but no current',
  split: 'Lamp on: across the holder, in millivolts. Press the fuse: does it change?',
};
/** Worn, and not so that it cuts off by itself: what else it may be is listed with it. */
const onlyWorn = (f: Findings) => is(f, 'supply-under-load', 'unclear', 'ok');

export const fuseHolderResistive: Verdict = {
  id: 'fuse-holder-resistive',
  title: 'The fuse holder makes no contact',
  faults: ['fuse-holder-resistive'],
  evidence: ['supply-wiggle', 'fuse-sides', 'fuse-look', 'supply-under-load', 'plus-path', 'temporary-leads'],
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => {
    const atHolder = (is(f, 'plus-path', 'holder') && !onlyWorn(f)) || is(f, 'supply-wiggle', 'holder');
    // A fuse can be open at its cap, where no eye sees it.
    const byElimination = !atHolder && is(f, 'fuse-sides', 'open') && is(f, 'fuse-look', 'whole');
    return {
      what: byElimination
        ? 'Volts go into the fuse holder and none come out: its contacts, or a fuse that is open where no eye sees it.'
        : !atHolder && onlyWorn(f)
          ? 'The plus way is worn, most of all at the fuse holder. By itself it would not switch the amplifier off: loud music and one more thing do.'
          : 'The fuse holder hardly makes contact: loose, softened by heat, or green.',
      certainty: atHolder ? 'proved' : onlyWorn(f) ? 'short list' : 'likely',
      howSure: atHolder
        ? is(f, 'plus-path', 'holder')
          ? 'The volts are lost across the holder itself.'
          : 'It reacts when the holder or the plus lead is pressed.'
        : byElimination
          ? 'One side of it carries the battery’s volts, the other none, and the strip of the fuse looks whole.'
          : 'They are lost on the plus way, and the holder is its weakest place.',
      numbers: [...pathNumbers(f, 'plus'), ...readPath(f, 'plusDropV'), cutOut],
      fix: [
        ...(atHolder
          ? []
          : [
              'Key off, fuse out, meter on ohms across it: next to nothing? Else it is the fuse: a lamp in its place first.',
            ]),
        'Battery minus off. Pull the fuse: brown blades, soft plastic or a green film are the holder.',
        'Fit a sealed holder with crimped lugs, out of the spray, within a hand’s width of the battery.',
        `The same fuse goes in, at most ${mainFuseAtMost(theAmp(f))}.`,
      ],
      tools: 'Crimp tool, sealed fuse holder',
      minutes: 40,
      who: FITTER,
      notBuy: ['An amplifier: it never got its current.', 'A bigger fuse: the holder is the trouble.'],
      cautions: ['minus-first', 'hot', 'fuse'],
      proof: 'With the lamp on, less than 25 mV across the holder. After ten loud minutes it is only hand-warm.',
      ...(!atHolder && {
        mayAlsoBe: byElimination
          ? [FUSE_OPEN_UNSEEN]
          : [LEAD_TOO_THIN, LOOSE_RING, ...(onlyWorn(f) ? [HEAVY_LOAD] : [])],
      }),
    };
  },
};

const wholeBikeOnBumps = (f: Findings) =>
  is(f, 'amp-goes-off', 'bumps') && is(f, 'what-else', 'bike') && !is(f, 'supply-wiggle', 'battery');

export const batteryLugLoose: Verdict = {
  id: 'battery-lug-loose',
  title: 'The amplifier’s ring at the battery is loose',
  faults: ['battery-lug-loose'],
  evidence: ['supply-wiggle', 'fuse-sides', 'rings-look', 'plus-path', 'what-else', 'last-change'],
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: wholeBikeOnBumps(f)
      ? 'A ring at the battery posts opens when the bike moves, and the whole bike goes weak with it.'
      : onlyWorn(f) && is(f, 'plus-path', 'ring')
        ? 'The plus way is worn, most of all at the ring on the battery post.'
        : 'A ring of the amplifier at the battery makes no contact.',
    certainty:
      is(f, 'supply-wiggle', 'battery') ||
      (is(f, 'plus-path', 'ring') && !onlyWorn(f)) ||
      is(f, 'rings-look', 'battery')
        ? 'proved'
        : 'likely',
    howSure: is(f, 'fuse-sides', 'no-feed')
      ? 'Not even the fuse gets the battery’s volts.'
      : wholeBikeOnBumps(f)
        ? 'The whole bike loses its volts at the same moment. What all of it shares is the battery posts.'
        : 'The contact gives way at the battery post.',
    numbers: [...pathNumbers(f, 'plus'), ...readPath(f, 'plusDropV'), cutOut],
    fix: [
      'Key off. Minus ring off first. Then look at all rings on both posts.',
      'Clean rings and posts bright. The largest ring goes lowest, the thin ones on top, the screw long enough for all.',
      'Plus tight, then minus. Neither ring may turn by hand.',
      'Tighten again after the first ride.',
    ],
    tools: 'Spanner, wire brush',
    minutes: 15,
    who: YOURSELF,
    notBuy: ['A battery, a fuse or an amplifier: a screw was loose.'],
    cautions: ['minus-first', 'battery-gas', 'plus-probe'],
    proof:
      'With the 55 W lamp on, each ring against its own post reads below 10 mV, and nothing flickers when you press.',
    mayAlsoBe: [
      {
        what: 'A crimp that pulled out behind the ring',
        split: 'Hold the ring still and pull gently at its lead: does it move in the crimp?',
      },
      ...(wholeBikeOnBumps(f) ? [WEAK_BATTERY] : []),
    ],
  }),
};

/** What full bass may lose on the plus lead. Common practice, no published source. */
const MOST_LOST_V = 0.25;

export const plusLeadTooThin: Verdict = {
  id: 'plus-lead-too-thin',
  title: 'The plus lead is too thin or not all copper',
  faults: ['plus-lead-too-thin'],
  evidence: ['supply-under-load', 'plus-path', 'amp-goes-off', 'recover'],
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => {
    const lengthM = ampEstimate(theAmp(f), 'plusLeadM').value;
    const sectionM2 = sectionForDropM2({ lengthM, currentA: fullDrawA(f), lossV: MOST_LOST_V });
    return {
      what: onlyWorn(f)
        ? 'The plus lead itself loses more than a sound one. By itself it would not switch the amplifier off: loud music and one more thing do.'
        : 'The plus lead itself loses too much: too thin, partly broken, or aluminium under a copper skin.',
      certainty: onlyWorn(f) ? 'short list' : 'proved',
      howSure: 'Neither the ring nor the fuse holder loses the volts. What is left is the lead.',
      numbers: [
        ...readPath(f, 'plusDropV'),
        {
          label: `Section for ${formatQuantity(lengthM, 'm')}, at least`,
          value: formatQuantity(sectionM2 * 1e6, 'mm²', 2),
        },
        ...drawNumbers(f),
        cutOut,
      ],
      fix: [
        'Battery minus off.',
        'One copper lead of at least that section, from the battery post straight to the amplifier.',
        `Its fuse within a hand’s width of the battery, no larger than the new lead carries. On the old one: ${mainFuseAtMost(theAmp(f))}.`,
        'Check the ground lead, too: it carries the same current.',
      ],
      tools: 'Crimp tool, lead, fuse holder',
      minutes: 60,
      who: FITTER,
      notBuy: ['A bigger fuse on the old lead.', 'Copper-clad aluminium: it loses about 1.6 times as much.'],
      cautions: ['minus-first', 'fuse'],
      proof: `With the 55 W lamp on: ${pathNumbers(f, 'plus')[0]?.value ?? ''} on the plus way, and less with a thicker lead.`,
      ...(onlyWorn(f) && { mayAlsoBe: [HOLDER_WITHOUT_CURRENT, LOOSE_RING, HEAVY_LOAD] }),
    };
  },
};

export const ampGroundOpen: Verdict = {
  id: 'amp-ground-open',
  title: 'The amplifier’s ground is open',
  faults: ['amp-ground-open'],
  evidence: ['amp-terminals', 'rings-look', 'supply-wiggle', 'temporary-leads'],
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => {
    const { groundV } = f.values('amp-terminals');
    return {
      what: `${ampName(f)} has its plus, and no way back: its ground is open.`,
      certainty: 'proved',
      howSure: 'Its ground terminal hangs up at the battery’s volts instead of lying at zero.',
      numbers: [
        ...(groundV === undefined
          ? []
          : [{ label: 'Its ground against battery minus, as read', value: formatQuantity(groundV, 'V', 3) }]),
        ...pathNumbers(f, 'ground'),
      ],
      fix: [
        'Key off, battery minus off. Follow the ground lead: the ring fell off, the crimp pulled out, or it sits on paint.',
        'Take the ground to the battery minus post, with a lead as thick as the plus lead.',
        'Line-level leads: look at their shields and plugs. They may have carried the current, and burnt.',
      ],
      tools: 'Crimp tool, spanner',
      minutes: 30,
      who: FITTER,
      notBuy: ['An amplifier, a fuse or a reflash.'],
      ifDoneAnyway:
        'A fuse in the ground lead hides the fault: when it opens, the shields of the signal leads carry the current.',
      cautions: ['minus-first', 'ground-open', 'temporary-lead'],
      proof: `Amplifier ground against battery minus with the lamp on: ${pathNumbers(f, 'ground')[0]?.value ?? ''}. ${PROOF_TEN}`,
      mayAlsoBe: [
        {
          what: 'Its ground ring loose at the battery minus post',
          split: 'Red on the ring, black on the post itself: volts between the two?',
        },
      ],
    };
  },
};

/** Without the lamp and with no contact at all, the ground terminal hangs up at the battery’s volts. */
const groundWasRead = (f: Findings) => is(f, 'amp-terminals', 'ok', 'unclear');

/** Read to be worn, and not told by a finger or a second lead. */
const groundOnlyWorn = (f: Findings) =>
  onlyWorn(f) &&
  !is(f, 'supply-wiggle', 'ground') &&
  !is(f, 'temporary-leads', 'ground') &&
  !is(f, 'rings-look', 'ground');

export const ampGroundResistive: Verdict = {
  id: 'amp-ground-resistive',
  title: 'The amplifier’s ground makes poor contact',
  faults: ['amp-ground-resistive'],
  evidence: ['supply-under-load', 'supply-wiggle', 'temporary-leads', 'amp-goes-off', 'recover'],
  mends: ['amp-supply'],
  article: 'voltage-drop-under-load',
  remedy: (f) => ({
    what: groundOnlyWorn(f)
      ? 'The way back from the amplifier is worn. By itself it would not switch the amplifier off: loud music and one more thing do.'
      : `The way back from the amplifier makes poor contact: ${ampName(f).toLowerCase()} loses its volts there as soon as it draws current.`,
    certainty: groundOnlyWorn(f)
      ? 'short list'
      : is(f, 'supply-under-load', 'ground-drop') && groundWasRead(f)
        ? 'proved'
        : 'likely',
    howSure: groundOnlyWorn(f)
      ? 'Of battery, plus and ground, the ground way loses the most over a sound one.'
      : is(f, 'supply-under-load', 'ground-drop')
        ? 'With a known current through it, the ground way loses more than the amplifier can spare.'
        : is(f, 'temporary-leads', 'ground')
          ? 'It comes on with a second ground lead beside the old one.'
          : is(f, 'supply-wiggle', 'input')
            ? 'A wire switches it, and its line-level plug moves its lamp: the shields carry its current, so its own ground is lost.'
            : 'It reacts when the ground lead is moved.',
    background: 'Paint or anodising under a ring reads fine with no current. It gives way with ten amperes.',
    numbers: [...pathNumbers(f, 'ground'), ...readPath(f, 'groundDropV'), cutOut],
    fix: [
      'Key off, battery minus off.',
      'Take the ground to the battery minus post, or to bare bright metal on the engine cradle. Scrape paint away.',
      'Lead as thick as the plus lead, ring crimped and sealed, screw tight.',
      'Front and rear amplifier and head unit on one point: that keeps noise out, too.',
    ],
    tools: 'Crimp tool, scraper, spanner',
    minutes: 30,
    who: YOURSELF_OR_FITTER,
    notBuy: ['An amplifier or a battery.', 'A capacitor on the supply: it does not mend a contact.'],
    cautions: is(f, 'supply-wiggle', 'input')
      ? ['minus-first', 'ground-open', 'temporary-lead']
      : ['minus-first', 'temporary-lead'],
    proof: `Amplifier ground against battery minus with the lamp on: ${pathNumbers(f, 'ground')[0]?.value ?? ''}. ${PROOF_TEN}`,
    mayAlsoBe: [
      ...(groundOnlyWorn(f) ? [HEAVY_LOAD] : []),
      {
        what: 'Its ring loose at the battery minus post',
        split: groundWasRead(f)
          ? 'Lamp on: ring against the post itself, in millivolts.'
          : 'Key off: does its ring on the minus post turn by hand?',
      },
      ...(groundWasRead(f) && theAmp(f).input !== 'line'
        ? []
        : [
            {
              what: 'Ground open',
              split:
                theAmp(f).input === 'line'
                  ? 'Key off, battery minus off: pull gently at both ends of its ground lead. With it open the shields of the signal leads carry the current.'
                  : 'Key off, battery minus off: pull gently at both ends of its ground lead. Does one come out?',
            },
          ]),
    ],
  }),
};
