import type { CautionId } from '../../src/steps/cautions.ts';
import type { World } from '../../src/world/state.ts';

/** The leaves of a bike that differ, as paths. Numbers stand for whichever amplifier it is. */
export function changes(before: unknown, after: unknown, path = ''): readonly string[] {
  if (Object.is(before, after)) return [];
  if (typeof before !== 'object' || typeof after !== 'object' || before === null || after === null) return [path];
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key) =>
    changes((before as Record<string, unknown>)[key], (after as Record<string, unknown>)[key], `${path}/${key}`),
  );
}

/** What was changed on a bike, and what has to be said before a hand is laid on it: all of several lines, any of one. */
export const LAID_ON: readonly (readonly [
  changed: RegExp,
  says: CautionId | readonly CautionId[],
  on?: (world: World) => boolean,
])[] = [
  [/^\/amps\/\d\/(groundLead|groundRing)\b/, 'temporary-lead'],
  [/^\/settings\/(fader|balance|rearControl)/, 'riding'],
  [/^\/unit\/profile\//, 'warranty', ({ rig }) => rig.unitKind !== 'replaced'],
  [/^\/amps\/\d\/(plusLead|plusCopper|ring|holder|terminal|leadToFrame)\b/, 'minus-first'],
  [/^\/amps\/\d\/(plusLead|plusCopper|ring|holder|terminal|leadToFrame)\b/, 'battery-gas'],
  [/^\/amps\/\d\/(plusLead|plusCopper|holder|terminal|fuseOpen|fuseRatedA)\b/, 'capacitors'],
  [/^\/amps\/\d\/(plusLead|holder|fuseOpen|fuseRatedA)\b/, 'fuse'],
  [/^\/amps\/\d\/bodyFuseOpen\b|^\/unit\/fuseOpen/, ['fuse', 'warranty']],
  [/^\/amps\/\d\/(fuseOpen|fuseRatedA|bodyFuseOpen)\b|^\/unit\/fuseOpen/, ['key-off', 'minus-first']],
  [/^\/amps\/\d\/(groundLead|groundRing|minusRing)\b|^\/supply\/(sharedScrew|bikeRing)/, 'minus-first'],
  [/^\/amps\/\d\/(groundLead|groundRing|minusRing)\b|^\/supply\/bikeRing/, 'battery-gas'],
  [/^\/amps\/\d\/(groundLead|groundRing|minusRing)\b|^\/supply\/bikeRing/, 'cranking', ({ amps }) => amps.length > 0],
  [
    /^\/amps\/\d\/(groundLead|groundRing)\b/,
    'ground-open',
    ({ rig }) => rig.amps.some(({ input }) => input === 'line'),
  ],
  [/^\/supply\/(openV|internalOhm|capacityRatio|acceptOhm)/, 'battery-gas'],
  [/^\/supply\/openV/, 'own-charger', ({ rig, supply }) => rig.batteryKind === 'lithium' && supply.capacityRatio === 1],
  [/^\/supply\/(regulatorV|idleA|cruiseA)/, 'outdoors'],
  [/^\/supply\/(regulatorV|idleA|cruiseA)/, 'hot'],
  [/^\/amps\/\d\/gainRatio/, 'amp-output'],
  [/^\/amps\/\d\/gainRatio/, 'loud-tone'],
  [/^\/amps\/\d\/gainRatio/, 'bridge'],
  [/^\/amps\/\d\/(turnOn|remoteWire|remoteSource|remotePin|inputMode|inputLimitV|inputPlug|converter)\b/, 'key-off'],
  [/^\/amps\/\d\/(remoteSource|remotePin)\b/, 'data'],
  [/^\/amps\/\d\/turnOn\b/, 'wakes-loud'],
  [/^\/amps\/\d\/(inputPlug|converter)\b|^\/unit\/(plug|toGround|rearPairs)|^\/(runs|speakers)\//, 'key-off'],
  [/^\/amps\/\d\/(inputPlug|converter)\b|^\/unit\/(plug|toGround|rearPairs)|^\/(runs|speakers)\//, 'bridge'],
  [/^\/speakers\//, 'cone'],
  [/^\/unit\/toGround|^\/runs\/[^/]+\/(toFrame)/, 'into-a-short'],
  [/^\/unit\/(plug|permanent|switched|ground)\b/, 'data'],
  [/^\/amps\/\d\/(alive|deadChannels|outputDcV|wet|shortInside)\b/, 'minus-first'],
  [/^\/amps\/\d\/(alive|deadChannels|outputDcV|wet|shortInside)\b/, 'capacitors'],
  [/^\/amps\/\d\/(alive|deadChannels|outputDcV|wet|shortInside)\b/, 'warranty'],
  [/^\/amps\/\d\/(coolsBadly)\b/, 'hot'],
  [/^\/unit\/(alive|deadChannels|outputDcV)\b/, 'warranty'],
  [/^\/unit\/(alive|deadChannels|outputDcV)\b/, 'data'],
  [/^\/unit\/(alive|deadChannels|outputDcV)\b/, 'key-off'],
  [/^\/unit\/hung\b/, 'key-off'],
  [/^\/unit\/hung\b|^\/settings\/(paused|muted|target)\b/, 'comes-back-loud'],
  [/^\/amps\/\d\/(coolsBadly|highpassHz|bassBoostDb)\b|^\/supply\/(baseA|regulatorV|idleA|cruiseA)/, 'key-off'],
  [/^\/amps\/\d\/(plusLead|plusCopper|holder|terminal|leadToFrame|groundLead|groundRing)\b/, 'hot'],
  [/^\/amps\/\d\/bodyFuseOpen\b/, ['hot', 'warranty']],
  [/^\/amps\/\d\/(groundLead|groundRing)\b/, 'capacitors'],
  [/^\/amps\/\d\/(remoteWire|remoteSource|remotePin)\b/, 'fuse'],
  [/^\/amps\/\d\/(remoteWire|remoteSource|remotePin)\b/, 'data'],
  [/^\/unit\/toGround|^\/runs\/[^/]+\/(toFrame)/, 'hot'],
  [/^\/settings\/(paused|muted|target|bassDb|speedVolumeDb)/, 'riding'],
  [/^\/phone\/(permitted|callMode|softwareAgrees)/, 'riding'],
  [/^\/phone\/(cableHasData|port)/, 'key-off'],
  [/^\/phone\/needsHeadset/, 'warranty'],
  [/^\/noises/, ['key-off', 'minus-first']],
  // Sparks are only there, and only gone, while the engine runs.
  [/^\/noises/, 'outdoors', ({ noises }) => noises.some(({ kind }) => kind === 'ticks')],
  [/^\/noises/, 'hot', ({ noises }) => noises.some(({ kind }) => kind === 'ticks')],
  [/^\/unit\/fuseOpen/, 'data'],
];

/** Whether that is said. */
export const isSaid = (says: CautionId | readonly CautionId[], said: readonly CautionId[]): boolean =>
  [says].flat().some((one) => said.includes(one));
