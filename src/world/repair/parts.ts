import { withAmp, withSpeakers, withUnit } from '../change.ts';
import { COIL_RATIO, healthySpeaker, OPEN } from '../healthy.ts';
import { togetherOhm } from '../hear.ts';
import type { Speaker } from '../state.ts';
import type { Repairs } from './repairs.ts';
import { cornersAt, sound, soundAmp } from './sound.ts';

/** Coils of one rating differ by so much. */
const COILS_DIFFER_RATIO = 0.9;
/** How the speakers of a channel are joined so that they have, together, no less than the ohms that are wanted. */
function joinedAs(speaker: Speaker, wantedOhm: number): Speaker['wiring'] {
  if (speaker.count === 1) return 'single';
  const parallelOhm = togetherOhm({ ...speaker, wiring: 'parallel' }) / COIL_RATIO;
  return parallelOhm < COILS_DIFFER_RATIO * wantedOhm ? 'series' : 'parallel';
}

/** Speakers, amplifier, head unit and what stands between them, repaired or exchanged for a sound one of the same kind. */
export const PARTS: Repairs<
  | 'replace-speaker'
  | 'rewire-speakers'
  | 'seal-mount'
  | 'isolate-mute-line'
  | 'fasten-trim'
  | 'fit-tweeter-filter'
  | 'replace-converter'
  | 'cool-amp'
  | 'dry-amp'
  | 'repair-amp'
  | 'repair-unit'
> = {
  // As many as hung there, joined as they were.
  'replace-speaker': (world, { where, ratedOhm }) =>
    cornersAt(where).reduce((so, corner) => {
      const { count, wiring, bareTweeter } = world.speakers[corner];
      return withSpeakers(so, [corner], { ...healthySpeaker(world.rig, corner, ratedOhm), count, wiring, bareTweeter });
    }, world),
  // Speakers that are joined so already are left alone.
  'rewire-speakers': (world, { where, togetherOhm: wantedOhm }) => {
    const wrong = cornersAt(where).filter((corner) => {
      const speaker = world.speakers[corner];
      return joinedAs(speaker, wantedOhm) !== speaker.wiring;
    });
    return withSpeakers(world, wrong, (speaker) => ({ wiring: joinedAs(speaker, wantedOhm) }));
  },
  'seal-mount': (world, { where }) => withSpeakers(world, cornersAt(where), { leakDb: 0 }),
  'isolate-mute-line': (world) => withUnit(world, { mutedByLine: false }),
  'fasten-trim': (world) => ({ ...world, trimRattles: [] }),
  'fit-tweeter-filter': (world, { where }) => withSpeakers(world, cornersAt(where), { bareTweeter: false }),
  'replace-converter': (world) =>
    withAmp(world, ({ converter }) => ({ converter: converter === 'dead' ? 'works' : converter })),
  'cool-amp': (world) => withAmp(world, { coolsBadly: false }),
  'dry-amp': (world) => withAmp(world, { wet: 'no', shortInside: OPEN }),
  // Where it is mounted, how it is set, and the leads up to it stay as they are.
  'repair-amp': (world) =>
    withAmp(world, {
      alive: true,
      wet: 'no',
      shortInside: OPEN,
      bodyFuseOpen: false,
      deadChannels: [],
      roughChannels: [],
      outputDcV: 0,
      sleepsInQuiet: soundAmp(world)?.sleepsInQuiet ?? false,
    }),
  // The profile that is stored in it stays: whoever exchanges it has the same one put in.
  'repair-unit': (world) => {
    const { alive, hung, neverSleeps, fuseOpen, deadChannels, outputDcV } = sound(world).unit;
    return withUnit(world, { alive, hung, neverSleeps, fuseOpen, deadChannels, outputDcV });
  },
};
