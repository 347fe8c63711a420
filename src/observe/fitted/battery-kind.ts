import { option, type Say } from '../observer.ts';

/** Only a battery with a circuit of its own can switch itself off. */
export const sayBatteryKind: Say = ({ bike: { world } }) =>
  option(world.supply.cutOffV === null ? world.rig.batteryKind : 'lithium');
