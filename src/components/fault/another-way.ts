import type { Step, Tool } from '../../steps/step.ts';

/* How the same answer is had in another way, by its kind. Common practice, no published source. */

/** By the range of the meter. */
const BY_RANGE: readonly (readonly [range: string, way: string])[] = [
  ['meter-on-ohms', 'With the probes swapped, on bare metal, or from the other end of the wire.'],
  ['meter-on-ac', 'On the next range up, with the probes on other points of the same two wires.'],
  ['meter-on-dc', 'With the black probe on another bare ground, or a second meter.'],
];
const BY_TOOL: Readonly<Partial<Record<Tool, string>>> = {
  ears: 'With another track, another ear, or somebody else at the grille.',
  cell: 'With a fresh cell, the wires swapped, or by looking at the cone instead of listening.',
  'test-lamp': 'With the lamp tried on the battery first, shaded by a hand.',
  jumper: 'Without the lead and with it, twice in a row.',
  'spare-fuse': 'With the fuse read from blade to blade, or tried where one works.',
  papers: 'By what is printed on the part itself.',
};
const BY_LIGHT = 'Shaded by a hand, or by ear: does it click, hiss or play?';
const BY_HAND = 'In better light, by touch as well as by eye, or by somebody else.';
const TOLD = 'Ask whoever was there, or look for a bill or a photograph.';

/** Another way to the answer of a step: with other probes, at another place, by another sense. */
export function anotherWay({ place, tool, conditions = [], options }: Step & { readonly options?: object }): string {
  const range = BY_RANGE.find(([id]) => (conditions as readonly string[]).includes(id));
  if (tool === 'meter' && range) return range[1];
  const byTool = BY_TOOL[tool];
  if (byTool !== undefined) return byTool;
  if (place === 'told' || place === 'fitted' || place === 'plan') return TOLD;
  return /\b(light|lit|lights)\b/i.test(Object.values(options ?? {}).join(' ')) ? BY_LIGHT : BY_HAND;
}
