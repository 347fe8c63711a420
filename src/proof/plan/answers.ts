import { drawFrom } from '../../observe/draw.ts';
import { OBSERVED, observe } from '../../observe/index.ts';
import { option } from '../../observe/observer.ts';
import { gotWorse } from '../../observe/plan/worse-how.ts';
import type { Answer, Step } from '../../steps/step.ts';
import { isLowered, type Stored, withGainsSet, withStored } from '../../world/stored-profiles.ts';
import { ridden } from '../../world/symptoms/index.ts';
import type { Observe } from '../observe.ts';
import type { Owner } from './owners.ts';
import type { Truth } from './truth.ts';

/* What an owner answers to the questions of the plan: what he wants, what is fitted, what he reads and hears. */

const yesNo = (is: boolean): Answer => option(is ? 'yes' : 'no');

const PAPER: Readonly<Record<string, (stored: Stored) => boolean>> = {
  'paper-rear': (stored) => stored !== 'unaltered',
  'paper-lowered': isLowered,
  'paper-boosted': (stored) => !isLowered(stored),
  'paper-same-eq': (stored) => stored === 'amplified-same',
};

/** What got worse, to his ears, when what is stored now took the place of what was delivered. */
function worse({ world, delivered, stored }: Owner): string {
  const [was, is] = [withGainsSet(withStored(world, delivered)), withStored(world, stored)];
  const after = ridden({ ...was, unit: is.unit });
  return gotWorse(ridden(was), after)[0] ?? 'other';
}

function rearIsSilent({ world, stored }: Owner): boolean {
  const bike = ridden(withGainsSet(withStored(world, stored)));
  return bike.fitted.some((corner) => corner.startsWith('rear') && !bike.at({}).heard?.[corner].plays);
}

export function answersOf(owner: Owner, truth: Truth, hasMeter: boolean): Observe {
  const told = (step: Step): Answer | undefined => {
    switch (step.id) {
      case 'planned-change':
        return option(owner.plan);
      case 'wrong-now':
        if (truth.best.includes(owner.stored)) return option('no');
        return option(rearIsSilent(owner) ? 'rear-silent' : 'other');
      case 'bass-gone-when':
        return option('at-start');
      case 'worse-how':
        return option(worse(owner));
      case 'wish-mirroring':
        return option('no');
      case 'wish-same-eq':
        return yesNo(owner.sameEq);
      case 'profile-source':
        return option(hasMeter ? 'measure' : owner.says);
      case 'told-or-read':
        return option('read');
      case 'hidden-amp':
        return option('no');
      case 'factory-amp-answers':
        return option('yes');
      case 'paper-by':
        return option('specialist');
      default:
        return PAPER[step.id] ? yesNo(PAPER[step.id]?.(owner.paperOf) ?? false) : undefined;
    }
  };
  let looks = 0;
  return (step, bike, situation) => {
    const said = told(step);
    if (said) return said;
    if (step.kind === 'rig') {
      const known = step.known(bike.world.rig);
      return known === undefined ? { cannot: true } : option(known);
    }
    if (step.tool === 'meter' && !hasMeter) return { cannot: true };
    if (!OBSERVED.includes(step.id)) return { cannot: true };
    looks += 1;
    return observe(step, bike, situation, {
      meter: owner.meter,
      draw: drawFrom('plan meter', owner.name, step.id, looks),
    });
  };
}
