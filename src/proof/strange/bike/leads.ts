import { hasAmp, withAmp } from '../../../world/faults/kit.ts';
import type { World } from '../../../world/state.ts';
import { between, type Oddity } from '../oddity.ts';
import { type Change, harmless } from './harmless.ts';

/* Power leads that nobody would choose, and that work on this bike. */

const parts = ({ amps, about }: World) =>
  amps.flatMap(({ plusLead, groundLead }, i) => (i === about ? [plusLead, groundLead] : []));
const lead = (id: string, says: string, change: Change): Oddity => {
  const works = harmless(parts, change);
  return { id, says, class: 'leads', fits: (world) => hasAmp(world) && works(world), bike: change };
};

export const LEADS: readonly Oddity[] = [
  lead('leads-long', 'leads twice as long as anybody would lay them', (world, draw) =>
    withAmp(world, ({ plusLead, groundLead }) => ({
      plusLead: { ...plusLead, lengthM: plusLead.lengthM * between(draw, 1.5, 2.5) },
      groundLead: { ...groundLead, lengthM: groundLead.lengthM * between(draw, 1, 3) },
    })),
  ),
  lead('leads-thin', 'a positive lead thinner than its papers say, which is enough for this amplifier', (world, draw) =>
    withAmp(world, ({ plusLead }) => ({
      plusLead: { ...plusLead, sectionM2: plusLead.sectionM2 * between(draw, 0.5, 0.8) },
    })),
  ),
  lead('ground-thin', 'a ground lead thinner than the positive lead', (world, draw) =>
    withAmp(world, ({ groundLead }) => ({
      groundLead: { ...groundLead, sectionM2: groundLead.sectionM2 * between(draw, 0.3, 0.6) },
    })),
  ),
];
