import type { OutcomeOf } from '../../steps/step.ts';
import type { fusesBlown } from '../../steps/told/fuses-blown.ts';
import type { Amp } from '../../world/state.ts';
import { isOpen } from '../bike.ts';
import { oneOf, option, type Say } from '../observer.ts';
import { ofItsAmp } from '../of-amp.ts';

type Odds = Readonly<Partial<Record<OutcomeOf<typeof fusesBlown>, number>>>;

/** What is told of fuses, by what became of them: how often. Estimates of the trade. */
const TOLD = {
  /** The lead lies on the frame, or the amplifier is shorted: a fuse opens as it goes in, or as it is switched on. */
  leadShorted: { 'at-once': 6, 'switch-on': 1, some: 1, unknown: 1.5, none: 0.5 },
  ampShorted: { 'at-once': 2, 'switch-on': 5, some: 1, unknown: 1.5, none: 0.5 },
  /** One that opened by itself, from age or from a loud evening. */
  open: { loud: 3, 'switch-on': 0.7, some: 2, unknown: 2.5, none: 2 },
  whole: { none: 7, unknown: 2, some: 0.4, loud: 0.2 },
} as const satisfies Record<string, Odds>;

/** Less than this across the positive of an amplifier is a short. */
const SHORTED_OHM = 1;

function fateOf({ leadToFrame, shortInside, fuseOpen, bodyFuseOpen, holder }: Amp): keyof typeof TOLD {
  if (leadToFrame.ohm < SHORTED_OHM) return 'leadShorted';
  if (shortInside.ohm < SHORTED_OHM) return 'ampShorted';
  return fuseOpen || bodyFuseOpen || isOpen(holder) ? 'open' : 'whole';
}

export const sayFusesBlown: Say = ofItsAmp((_, amp, { observer }) =>
  option(oneOf<string>(observer, TOLD[fateOf(amp)])),
);
