import type { ReadFirst } from '../causes/read-first.ts';
import { type KnownAmp, type Rig, withAmpKnown } from '../rig/rig.ts';
import { ampPair } from '../steps/fitted/the-amp.ts';
import type { Findings } from '../steps/outcome.ts';
import type { World } from '../world/state.ts';

/** What a fix asks its rider to read off the bike before he begins. */

/** Aluminium under a copper skin counts as half: what a rider is told, and less than it really carries. */
const CLAD_COUNTS_RATIO = 0.5;

/** What is read off the amplifier that a case is about. */
function ofTheAmp({ amps, rig, about }: World, read: ReadFirst): KnownAmp {
  const [amp, made] = [amps[about ?? -1], rig.amps[about ?? -1]];
  if (!amp || !made) return {};
  switch (read) {
    case 'plus-lead': {
      const { sectionM2, lengthM, metal } = amp.plusLead;
      return { plusLeadM: lengthM, plusLeadM2: metal === 'clad' ? CLAD_COUNTS_RATIO * sectionM2 : sectionM2 };
    }
    case 'rating': {
      const { powerW, ratedOhm, channels } = made;
      return { powerW, ratedOhm, channels };
    }
    case 'turn-on':
      return { turnOn: made.turnOn };
    case 'made-for':
      return {};
  }
}

/** Papers of every amplifier on the bike, as far as they say what it was made for. */
const withPapers = (rig: Rig, { rig: { amps } }: World): Rig =>
  amps.reduce((so, { drives, needs }) => withAmpKnown(so, drives === 'front' ? 'front' : 'rear', { needs }), rig);

/** What is known once a rider has read what a fix asks him to read. Nothing of it is taken on trust. */
export function withRead(f: Findings, world: World, reads: readonly ReadFirst[] = []): Findings {
  if (reads.length === 0 || world.about === null) return f;
  const learnt = Object.assign({}, ...reads.map((read) => ofTheAmp(world, read))) as KnownAmp;
  const rig = withAmpKnown(f.rig, ampPair(f), learnt);
  return { ...f, rig: reads.includes('made-for') ? withPapers(rig, world) : rig };
}
