import { upperFirst } from '../compute/first-letter.ts';
import { gainTargetV } from '../compute/gain.ts';
import { ampEstimate, type KnownAmp } from '../rig/rig.ts';
import type { Drives } from '../steps/plan/amp-layout.ts';
import type { PlanAct } from './acts.ts';
import { assumedNeedOf, needOf } from './amp-need.ts';
import type { PlanCase } from './facts.ts';

/** Amplifiers by what they drive, which is how a verdict names them. */
export interface NamedAmps {
  readonly name: string;
  readonly amps: readonly KnownAmp[];
}

const KINDS: Readonly<Record<Drives, string>> = {
  both: 'amplifier for all four',
  front: 'front amplifier',
  rear: 'rear amplifier',
};

/** What an amplifier drives. A single one drives every pair that is not on the head unit. */
function drivesOf(amp: KnownAmp, { findings, facts }: PlanCase): Drives | undefined {
  if ((findings.rig.amps?.length ?? 0) > 1) return amp.drives;
  if (facts.front === 'amp' && facts.rear === 'amp') return 'both';
  if (facts.front === 'amp') return 'front';
  return facts.rear === 'amp' ? 'rear' : amp.drives;
}

/** The amplifiers of the build. With three or more nobody has said which of them is there twice: then it is "every". */
export function namedAmps(c: PlanCase): readonly NamedAmps[] {
  const amps = c.findings.rig.amps ?? [];
  const byPair = Map.groupBy(amps, (amp) => drivesOf(amp, c));
  return [...byPair].map(([drives, same]) => {
    const kind = drives ? KINDS[drives] : 'amplifier';
    return { name: `${same.length > 1 || amps.length > 2 ? 'every' : 'the'} ${kind}`, amps: same };
  });
}

const AND = new Intl.ListFormat('en-GB', { type: 'conjunction' });
export const list = (words: readonly string[]): string => AND.format(words);

/** The names of the amplifiers of which something holds, or "the amplifier" where nobody has counted them. */
export function namesOf(c: PlanCase, holds: (amp: KnownAmp) => boolean = () => true): string {
  const names = namedAmps(c)
    .filter(({ amps }) => amps.some(holds))
    .map(({ name }) => name);
  return names.length > 0 ? list(names) : 'the amplifier';
}

export const needsUnaltered = (amp: KnownAmp): boolean => needOf(amp) === 'unaltered';

const FOR_BOOST = 'speaker-level input range, high-pass at 80 to 100 Hz, its bass control at zero.';

/**
 * How each amplifier is protected from the full level with its bass boost: all but those that are known to be made for
 * it. One of which that is only assumed, or was never asked, is set so as well unless its papers say otherwise.
 */
export function settingsForBoost(c: PlanCase): readonly string[] {
  return namedAmps(c).flatMap(({ name, amps }) => {
    // A factory amplifier has no range to set, and often no controls at all: it is made for what its bike sends.
    const open = amps.filter((amp) => amp.needs !== 'unaltered' && amp.kind !== 'factory');
    if (open.length === 0) return [];
    const unsure = open.some((amp) => assumedNeedOf(amp) === 'unaltered' || needOf(amp) === 'unknown');
    const unless = unsure ? ', unless its papers say that it takes the boost out itself' : '';
    return [`${upperFirst(name)}${unless}: ${FOR_BOOST} The bass boost reaches it.`];
  });
}

/** The same as data, for whatever amplifier has a range and a filter to set. */
export const FOR_FULL_LEVEL: readonly PlanAct[] = [
  { do: 'set-selector', selector: 'range', to: 'as-fed' },
  { do: 'set-filter', highpassHz: 90, bassBoostDb: 0 },
];

export const hasKnobs = (amp: KnownAmp): boolean => amp.kind !== 'factory';

/** Whether anybody can turn a gain on this bike. Where nobody knows the amplifiers, somebody may. */
export const someKnobs = ({ findings: { rig } }: PlanCase): boolean =>
  rig.amps === undefined || rig.amps.some(hasKnobs);

/** The gains that are set, each to the volts at which its amplifier gives what it is rated for. */
export const setGains = ({ findings: { rig } }: PlanCase): readonly PlanAct[] =>
  (rig.amps ?? []).filter(hasKnobs).map((amp) => ({
    do: 'set-gain',
    axle: amp.drives ?? 'both',
    outputV: gainTargetV({
      powerW: ampEstimate(amp, 'powerW').value,
      loadOhm: ampEstimate(amp, 'ratedOhm').value,
    }),
  }));

/** The same, for as long as an amplifier that wants the lowered output still gets the full one. */
export const untilThen = (c: PlanCase): string =>
  someKnobs(c)
    ? `Until then, on ${namesOf(c, hasKnobs)}: speaker-level range, high-pass 80–100 Hz, bass control at zero, volume low.`
    : 'Until then volume low and the bass control at zero: the boost clips first.';

/** What is done about the gain around a visit. A factory amplifier mostly has none to turn. */
export const gainDown = (c: PlanCase): readonly string[] =>
  someKnobs(c)
    ? [`Before the visit: gain of ${namesOf(c, hasKnobs)} to minimum. Set the gain again after it.`]
    : [
        'Before the visit: volume at zero. A factory amplifier mostly has no controls, so the first loud song is the check.',
      ];
