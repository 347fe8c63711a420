import type { PlugName, RepairAction, Where } from '../../causes/repair-action.ts';
import { axleOf, type PerCorner, perCorner } from '../../rig/corner.ts';
import { withAmp, withRuns, withUnit } from '../change.ts';
import { CLAMP, OPEN, SOUND, WHOLE } from '../healthy.ts';
import type { Contact, Noise, PairOf, World } from '../state.ts';
import type { Repairs } from './repairs.ts';
import { bothOf, cleaned, cornersAt, type Mend, pinned, seated, sound, wired } from './sound.ts';

const pairsAt = (pairs: PerCorner<PairOf<Contact>>, where: Where | undefined, mend: Mend) =>
  perCorner((corner) => (cornersAt(where).includes(corner) ? bothOf(mend, pairs[corner]) : pairs[corner]));

/** The second connector of a run, where there is one. */
const atSecond = (world: World, where: Where | undefined, mend: Mend): World =>
  withRuns(world, cornersAt(where), ({ second }) => ({ second: second === WHOLE ? WHOLE : mend(second) }));

/** Where these plugs are. */
const AXLE_OF = { 'rear-dock': 'rear', 'front-speaker': 'front' } as const;

/** One of the plugs, with a hand at all its contacts, or at those of some pairs. */
function atPlug(world: World, plug: PlugName, where: Where | undefined, mend: Mend): World {
  switch (plug) {
    case 'unit':
      return withUnit(world, ({ plug: pairs, toGround, permanent, switched, ground }) => ({
        plug: pairsAt(pairs, where, mend),
        // Water in it, or a green bridge between its pins: whatever was cleaned off joins nothing any more.
        toGround: perCorner((corner) =>
          toGround[corner].wants && cornersAt(where).includes(corner) && mend(toGround[corner]) === SOUND
            ? OPEN
            : toGround[corner],
        ),
        permanent: mend(permanent),
        switched: mend(switched),
        ground: mend(ground),
      }));
    case 'amp-input':
      return withAmp(world, ({ inputPlug }) => ({ inputPlug: pairsAt(inputPlug, where, mend) }));
    case 'rear-dock':
    case 'front-speaker':
      return withRuns(
        world,
        cornersAt(where).filter((corner) => axleOf(corner) === AXLE_OF[plug]),
        ({ dock }) => ({ dock: mend(dock) }),
      );
    case 'amp-power':
      return withAmp(world, ({ terminal }) => ({ terminal: terminal.wants ? mend(terminal) : CLAMP }));
    case 'second':
      return atSecond(world, where, mend);
  }
}

/** Whether a noise is picked up there. */
function comesBy({ kind, enters }: Noise, of: Extract<RepairAction, { do: 'part-from-noise' }>['of']): boolean {
  switch (of) {
    case 'phone-lead':
      return enters === 'source-lead';
    case 'converter':
      return enters === 'converter';
    case 'sparks':
      return kind === 'ticks';
    case 'other-device':
      return kind === 'steady';
    case 'signal-lead':
      return kind === 'follows' && enters === 'amp-input';
  }
}

/** Plugs, contacts and the wires of signals and speakers. */
export const WIRES: Repairs<
  | 'seat-plug'
  | 'clean-contacts'
  | 'renew-pin'
  | 'complete-adapter'
  | 'renew-wire'
  | 'free-wire'
  | 'join-looms'
  | 'uncross-pairs'
  | 'turn-polarity'
  | 'part-from-noise'
> = {
  'seat-plug': (world, { plug, where }) => atPlug(world, plug, where, seated),
  'clean-contacts': (world, { plug, where }) => atPlug(world, plug, where, cleaned),
  'renew-pin': (world, { plug, where }) => atPlug(world, plug, where, pinned),
  'complete-adapter': (world, action) => {
    switch (action.carries) {
      case 'remote':
        return withAmp(world, ({ remotePin }) => ({ remotePin: wired(remotePin) }));
      case 'rear-pairs':
        return withUnit(world, ({ plug }) => ({ plug: pairsAt(plug, 'rear', wired) }));
      // A pin where its place was empty, with a wire where there was none.
      case 'pair':
        return withUnit(world, ({ plug }) => ({
          plug: pairsAt(plug, action.where, (contact) => (contact.wants === 'pin' ? SOUND : wired(contact))),
        }));
    }
  },
  'renew-wire': (world, { wire, where }) => {
    switch (wire) {
      case 'lid-lead':
        return withRuns(world, cornersAt(where), { lidLead: SOUND });
      case 'speaker-run':
        return cornersAt(where).reduce((so, corner) => {
          const { wire: made, joint } = sound(world).runs[corner];
          return withRuns(so, [corner], { wire: made, joint, second: WHOLE, toFrame: OPEN, acrossPair: OPEN });
        }, world);
      case 'remote':
        return withAmp(world, { remoteWire: SOUND });
      case 'signal':
        return withAmp(world, ({ inputPlug }) => ({ inputPlug: pairsAt(inputPlug, where, wired) }));
    }
  },
  'free-wire': (world, { wire, where }) => {
    switch (wire) {
      case 'speaker-run':
        return withRuns(world, cornersAt(where), { toFrame: OPEN, acrossPair: OPEN });
      case 'plus-lead':
        return withAmp(world, { leadToFrame: OPEN });
      case 'unit-output':
        return withUnit(world, ({ toGround }) => ({
          toGround: perCorner((corner) => (cornersAt(where).includes(corner) ? OPEN : toGround[corner])),
        }));
    }
  },
  'join-looms': (world, { where }) => atSecond(world, where, seated),
  'uncross-pairs': (world) => withUnit(world, { rearPairs: 'own' }),
  // Swapped at one end, where it is the wrong way round: a wire that is right stays.
  'turn-polarity': (world, { where }) => withRuns(world, cornersAt(where), { reversed: false }),
  'part-from-noise': (world, { of }) => ({ ...world, noises: world.noises.filter((noise) => !comesBy(noise, of)) }),
};
