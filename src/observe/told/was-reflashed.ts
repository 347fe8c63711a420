import { CANNOT, oneOf, option, type Say } from '../observer.ts';

/** What is told of a profile for amplifiers, and of one that was never changed: how often. Estimates. */
const TOLD = { lowered: { yes: 8, no: 0.5, unknown: 2 }, full: { yes: 0.5, no: 7, unknown: 3 } } as const;

export const sayWasReflashed: Say = ({ bike: { world }, observer }) => {
  if (world.rig.unitKind === 'replaced') return CANNOT;
  const told = oneOf<string>(observer, world.unit.profile.levelDb < 0 ? TOLD.lowered : TOLD.full);
  return told === 'unknown' ? CANNOT : option(told);
};
