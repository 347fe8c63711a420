import { describe, expect, it } from 'vitest';
import { ODDITIES, oddRider } from '../../../../src/proof/strange/index.ts';
import { ridden } from '../../../../src/world/symptoms/index.ts';
import { careful, rigOf, STEPS, soundWorld } from '../bikes.ts';

const BUILD = ODDITIES.filter((one) => one.class === 'build');
const ABOUT_THE_BUILD = STEPS.filter(({ kind }) => kind === 'rig');

describe('a build that is told wrong', () => {
  it.each(BUILD.map((one) => [one.id, one] as const))(
    'is put down as it is told, and nothing else of it: %s',
    (_, one) => {
      let wrong = 0;
      for (let i = 0; i < 20; i++) {
        const [rig, world] = [rigOf(i), soundWorld(i)];
        if (!one.fits(world)) continue;
        const believed = one.believed?.(rig) ?? rig;
        const sees = oddRider(careful, [one], 'build');
        for (const step of ABOUT_THE_BUILD) {
          if (step.kind !== 'rig') continue;
          const situation = { rig, facts: {} };
          const [honest, told] = [careful, sees].map((person) => person(step, ridden(world), situation));
          const isWrong = JSON.stringify(told) !== JSON.stringify(honest);
          const known = isWrong && told && 'option' in told ? told.option : step.known(rig);
          expect([step.id, step.known(believed)]).toEqual([step.id, known]);
          if (isWrong) wrong++;
        }
      }
      expect(wrong).toBeGreaterThan(0);
    },
  );
});
