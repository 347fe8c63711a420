import { describe, expect, it } from 'vitest';
import { noRearSound } from '../../machines/no-rear-sound.ts';
import { type Ahead, ahead } from '../../src/case/ahead.ts';
import { EXAMPLE_RIGS } from '../../src/rig/examples.ts';
import type { Rig } from '../../src/rig/rig.ts';
import { rearTable } from '../../src/verdicts/rear/suspects.ts';
import { rank } from '../../src/verdicts/suspects.ts';
import { type Short, after as standingAfter } from '../journey.ts';

/** Minutes of each step: estimates of the trade, no published source; they are added up by hand here. */
const ON_UNIT: Rig = { ...EXAMPLE_RIGS['fork-fairing'], rearFitted: 'yes', rearFedBy: 'unit', rearRatedOhm: 4 };
const BEFORE: Readonly<Record<string, Short>> = {
  'rear-history': 'never',
  'last-change': 'fitted',
  'fader-centre': 'no-change',
  'rear-control': 'none',
  'lid-check': 'no-effect',
};
const of = (verdict: string, rig: Rig) => {
  const suspect = REAR_SUSPECTS.find((one) => one.verdict === verdict && fits(one.signs['rear-drive'], rig));
  if (!suspect) throw new Error(`no suspect ${verdict}`);
  return suspect;
};
const fits = (drives: readonly string[] | undefined, rig: Rig) =>
  drives === undefined || drives.includes(rig.rearFedBy ?? 'unit');
const { suspects: REAR_SUSPECTS } = rearTable({ rig: {}, facts: {} });
const idsOf = ({ steps }: Ahead) => steps.map(({ id }) => id);

/** On a bike without an amplifier the run is cleared before the head unit is accused. */
const UP_TO_THE_PLACE = ['tools-at-hand', 'run-ohms', 'wire-to-frame', 'meter-digit', 'rear-pair', 'rear-pair-place'];

describe('what a proof would take', () => {
  it('is 20 minutes and a meter for the likeliest suspect of speakers that were added and never played', () => {
    const standing = standingAfter(noRearSound, ON_UNIT, BEFORE);
    const [likeliest] = rank(REAR_SUSPECTS, standing.findings);
    expect(likeliest?.suspect.verdict).toBe('rear-channels-disabled');
    const proof = ahead(noRearSound, standing, of('rear-channels-disabled', ON_UNIT));
    expect(idsOf(proof)).toEqual(UP_TO_THE_PLACE);
    expect(proof.minutes).toBeCloseTo(0.2 + 5 + 6 + 1 + 8 + 0.2, 9);
    expect(proof.tools).toEqual(['none', 'meter']);
  });
  it('ends at the half of the plug for open coils: the coil itself is the first thing to mend', () => {
    const standing = standingAfter(noRearSound, ON_UNIT, BEFORE);
    const proof = ahead(noRearSound, standing, of('coil-open', ON_UNIT));
    expect(idsOf(proof)).toEqual(['tools-at-hand', 'run-ohms', 'run-split']);
    expect(proof.minutes).toBeCloseTo(0.2 + 5 + 5, 9);
  });
  it('goes by the questions about the bike that are still open', () => {
    const { deliveredWith: _, ...unknown } = ON_UNIT;
    const proof = ahead(
      noRearSound,
      standingAfter(noRearSound, unknown, BEFORE),
      of('rear-channels-disabled', unknown),
    );
    expect(idsOf(proof)).toEqual([...UP_TO_THE_PLACE, 'delivered-with']);
  });
  it('gets shorter with each answer, and is nothing at a verdict', () => {
    const suspect = of('rear-channels-disabled', ON_UNIT);
    const left = ({ minutes }: Ahead) => minutes;
    const answers: [string, Short][] = [
      ...Object.entries(BEFORE),
      ['tools-at-hand', 'meter'],
      ['run-ohms', { leadsOhm: '0.2', leftOhm: '3.6', rightOhm: '3.7' }],
      ['wire-to-frame', { lowestOhm: 'OL' }],
      ['meter-digit', '0.01'],
      ['rear-pair', { frontV: '2', leftV: '0', rightV: '0' }],
      ['rear-pair-place', 'unit'],
    ];
    const minutes = answers.map((_, i) =>
      left(
        ahead(noRearSound, standingAfter(noRearSound, ON_UNIT, Object.fromEntries(answers.slice(0, i + 1))), suspect),
      ),
    );
    expect(minutes).toEqual(minutes.toSorted((a, b) => b - a));
    expect(minutes.at(-1)).toBe(0);
    expect(ahead(noRearSound, standingAfter(noRearSound, ON_UNIT, Object.fromEntries(answers)), suspect)).toEqual({
      steps: [],
      minutes: 0,
      tools: [],
    });
  });
  it('asks for no meter where the rider has none', () => {
    const answers = { ...BEFORE, 'tools-at-hand': 'none' };
    const proof = ahead(noRearSound, standingAfter(noRearSound, ON_UNIT, answers), of('coil-open', ON_UNIT));
    expect(idsOf(proof)).toEqual(['four-corners', 'pop-run', 'pop-speaker']);
    expect(proof.tools).toEqual(['ears', 'cell']);
  });

  const amplified: Rig = EXAMPLE_RIGS['frame-fairing'];
  const cases = REAR_SUSPECTS.flatMap((suspect) =>
    (suspect.signs['unit-kind']?.includes('factory') ?? true)
      ? [ON_UNIT, amplified]
          .filter((rig) => fits(suspect.signs['rear-drive'], rig))
          .map((rig) => [suspect.verdict, rig.rearFedBy, suspect, rig] as const)
      : [],
  );
  it.each(cases)('asks each step once from the start, for %s on a rear driven by the %s', (_, __, suspect, rig) => {
    const standing = standingAfter(noRearSound, rig, {});
    const { steps, minutes } = ahead(noRearSound, standing, suspect);
    expect(new Set(steps).size).toBe(steps.length);
    expect('step' in standing.open && steps[0]).toBe('step' in standing.open && standing.open.step);
    expect(minutes).toBeCloseTo(
      steps.reduce((sum, step) => sum + step.minutes, 0),
      9,
    );
    expect(steps.length).toBeLessThan(20);
  });
});
