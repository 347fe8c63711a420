import type { ConditionId } from '../../steps/conditions.ts';
import { type Findings, is } from '../../steps/outcome.ts';
import { fuseIsOpen, fuseStaysOut } from '../../steps/supply/may-fail.ts';
import { drawFigures } from '../amp-load.ts';
import type { Cause, Remedy, Split } from '../cause.ts';
import { FUSE_READS, fuseFigures, fuseInWords, fuseParts, READ_THE_LEAD, renewMainFuse } from '../main-fuse.ts';
import { tooThinForFullBass } from '../new-leads.ts';
import { AmpName, ampName } from '../the-amp.ts';
import { YOURSELF } from '../who.ts';

const newFuseHolds = (f: Findings): boolean => is(f, 'spare-fuse', 'wakes', 'holds', 'fault');

const REASONS =
  'A fuse blows for a reason: too small for the bass, a short while something was being fitted, or a lead that chafes now and then.';
const LOOK_ALONG = 'Check the whole positive lead for chafing: at the seat, the frame, the steering.';
const LAMP =
  'Remote wire and speaker plugs off the amplifier, bare ends taped. A 21 to 55 W lamp in the fuse’s place: a brief glow, then out?';

/** The check that was not done yet. */
function split(f: Findings): Split {
  const same = (check: string, ...needs: readonly ConditionId[]): Split => ({ byMeter: check, without: check, needs });
  if (fuseStaysOut(f))
    return same(
      'The fuse stays out. Battery negative off, positive lead off the amplifier and taped, negative on, a 21 to 55 W lamp in the fuse’s place: out now?',
      'minus-off',
      'lamp-for-fuse',
    );
  if (newFuseHolds(f)) return same('Ten loud minutes on the new fuse, then key off: is its strip still whole?');
  if (fuseIsOpen(f) && is(f, 'fuse-lamp', 'dark', 'dim'))
    return same('One new fuse of the old rating, remote wire and speakers off at first: does it hold?', 'fuse-out');
  if (fuseIsOpen(f)) return same(LAMP, 'lamp-for-fuse');
  return {
    byMeter: 'Fuse in, both ends of it in turn against the battery negative post: volts on one end, none on the other?',
    touches: ['fuse-in'],
    without: 'Key off, pull the main fuse near the battery: is its strip burnt through?',
  };
}

type Work = Pick<Remedy, 'what' | 'fix' | 'tools' | 'minutes' | 'parts' | 'alreadyDone'>;

/** A short is there: no fuse before it is found. */
const stayingOut = (f: Findings): Work => ({
  what: `The main fuse of ${ampName(f)} is blown, and something after it is shorted.`,
  fix: [
    'Key off. The fuse stays out: another one tells you nothing new.',
    'Battery negative off, the positive lead off the amplifier, its end taped. A 21 to 55 W lamp in the fuse’s place, negative on.',
    'Still bright: the lead is touching metal. Battery negative off, and follow it: seat, frame edges, steering, under the tank.',
    'Out now: the amplifier, or something plugged into it. Measure each speaker wire to the frame in ohms: above 100 kΩ is good.',
    'Mend what you found. No fuse until that lamp goes out with everything back on.',
    READ_THE_LEAD,
    `Then the fuse: ${fuseInWords(f)}.`,
  ],
  tools: 'A 21 to 55 W lamp on two leads',
  minutes: 30,
  parts: [],
});

/** The test was the repair. */
const alreadyIn = (f: Findings): Work => ({
  what: is(f, 'spare-fuse', 'wakes')
    ? `The main fuse of ${ampName(f)} had blown. The new one holds, and ${ampName(f)} comes on.`
    : `The main fuse of ${ampName(f)} had blown. The new one holds.`,
  fix: [
    READ_THE_LEAD,
    `The new fuse can stay in if this is its rating: ${fuseInWords(f)}.`,
    `Now find out why the old one blew. Key off. ${LOOK_ALONG}`,
    'Ten loud minutes. Key off: is the strip still whole, and the holder only hand-warm?',
    'If it blows: stop, and leave it out. A second one tells you nothing new.',
  ],
  tools: 'None',
  minutes: 15,
  parts: [],
  alreadyDone: true,
});

const toDo = (f: Findings): Work => ({
  what: `${AmpName(f)} gets no supply: the main fuse in its positive lead is blown.`,
  fix: [
    `Key off, fuse out. ${LOOK_ALONG}`,
    `${LAMP} Bright: stop, something is shorted.`,
    READ_THE_LEAD,
    `Lamp out. One new fuse: ${fuseInWords(f)}.`,
    'Remote wire and speakers back, key off for each. Key on at low volume, then ten loud minutes.',
    'It blows again: stop. A second one tells you nothing new.',
  ],
  tools: 'A 21 to 55 W lamp on two leads',
  minutes: 15,
  parts: fuseParts(f),
});

export const mainFuseOpen: Cause = {
  id: 'main-fuse-open',
  title: (f) => `The main fuse of ${ampName(f)} is blown`,
  faults: ['main-fuse-open'],
  split,
  mends: ['amp-supply'],
  article: 'wire-fuse-and-ground',
  remedy: (f) => {
    const tooThin = tooThinForFullBass(f);
    const work = fuseStaysOut(f) ? stayingOut(f) : newFuseHolds(f) ? alreadyIn(f) : toDo(f);
    return {
      ...work,
      background: [REASONS, ...(tooThin === undefined ? [] : [tooThin])].join(' '),
      numbers: [...fuseFigures(f), ...drawFigures(f)],
      readFirst: FUSE_READS,
      repair: [renewMainFuse(f)],
      who: YOURSELF,
      notBuy: [
        'A bigger fuse: it protects the lead, not the amplifier, and the lead would burn.',
        ...(fuseStaysOut(f)
          ? ['A second new fuse: the short will blow that too.', 'An amplifier, before the lead has been checked.']
          : ['An amplifier or a reflash: all it lacked was power.']),
      ],
      ifDoneAnyway: 'With a bigger fuse the lead itself becomes the fuse, right next to the fuel tank.',
      cautions: fuseStaysOut(f) ? ['minus-first', 'battery-gas', 'cranking', 'ohms-dead'] : [],
      proofOfCure: {
        byEar:
          'The amplifier comes on, and the same fuse is still whole after ten minutes of loud music, its holder only hand-warm.',
        byMeter: 'Both ends of the fuse within 0.5 V of the battery posts, and still after ten minutes of loud music.',
        touches: ['fuse-out'],
      },
    };
  },
};
