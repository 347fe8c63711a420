import type { Corner } from '../rig/corner.ts';
import { cellMoves } from '../world/probe.ts';
import type { Ridden } from '../world/symptoms/symptom.ts';
import { lookAt } from './bike.ts';
import { type Probes, probesAt } from './probes.ts';

export const clicks = (bike: Ridden, plug: 'runs' | 'tabs', probes: Probes | null): boolean => {
  const look = lookAt(bike, { key: 'off', toneHz: null, apart: [plug] });
  return look !== null && probes !== null && cellMoves(look, ...probes);
};

export const runClicks = (bike: Ridden, corner: Corner) =>
  clicks(bike, 'runs', probesAt(bike, ['run-plus', 'run-minus'], corner));
