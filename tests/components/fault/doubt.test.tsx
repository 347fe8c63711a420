import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { distortionAtVolume } from '../../../machines/distortion-at-volume.ts';
import { replay } from '../../../src/case/replay.ts';
import { anotherWay } from '../../../src/components/fault/another-way.ts';
import { doubtInWords } from '../../../src/components/fault/doubt.ts';
import { Evidence } from '../../../src/components/fault/Evidence.tsx';
import { viewOf } from '../../../src/components/fault/view.ts';
import { late } from '../../../src/likelihoods/distortion-at-volume.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { ALL_STEPS } from '../../../src/steps/all.ts';
import type { Step } from '../../../src/steps/step.ts';
import { caseOn, give } from '../../journey.ts';
import { given, hum, shaft, view, words } from './fan.ts';

const steps = [hum, shaft].map((step) => step as Parameters<typeof doubtInWords>[1]);
const [humStep, shaftStep] = steps as [(typeof steps)[0], (typeof steps)[0]];

describe('an answer in doubt', () => {
  it('that does not fit: which, and what the likeliest cause would show instead', () => {
    const it_ = given({ hum: 'hums', shaft: 'free', socket: { socketV: '0' } });
    const says = doubtInWords(view(it_), humStep, 'misfit');
    expect(says).toBe(
      '“Hum: hums” does not fit the rest: “Breaker off” would show “silent”. Look once more, another way if you can: with another track, another ear, or somebody else at the grille.',
    );
  });
  it('that does not fit what another flow looks for: nothing is typical of all that it looks for', () => {
    expect(doubtInWords(view(given({ hum: 'hums', shaft: 'free' })), humStep, 'misfit')).toBe(
      '“Hum: hums” does not fit the rest. Look once more, another way if you can: with another track, another ear, or somebody else at the grille.',
    );
  });
  it('on which all hangs: that it does', () => {
    const says = doubtInWords(view(given({ shaft: 'stuck' })), shaftStep, 'pivotal');
    expect(says).toBe(
      'Everything rests on this answer: “Shaft: stuck”. Take it once more, another way if you can: in better light, by touch as well as by eye, or by somebody else.',
    );
  });
  it('is never called wrong', () => {
    for (const because of ['misfit', 'pivotal'] as const)
      expect(doubtInWords(view(given({ hum: 'hums' })), humStep, because)).not.toMatch(/wrong|slip|mistake|error/i);
  });
  it('names another way that fits what the answer was taken with', () => {
    const way = (id: keyof typeof ALL_STEPS) => anotherWay(ALL_STEPS[id] as Step);
    expect(way('run-ohms')).toMatch(/probes swapped/);
    expect(way('rear-pair')).toMatch(/range up/);
    expect(way('amp-terminals')).toMatch(/another bare ground/);
    expect(way('amp-light')).toMatch(/by ear/);
    expect(way('pin-look')).toMatch(/better light/);
    expect(way('last-change')).toMatch(/whoever was there/);
    for (const step of Object.values(ALL_STEPS) as readonly Step[]) {
      expect(anotherWay(step), step.id).toMatch(/^[A-Z].*[.?]$/);
      if (step.tool === 'meter') expect(anotherWay(step), step.id).toMatch(/probe/);
      else expect(anotherWay(step), step.id).not.toMatch(/probe/);
    }
  });
});

describe('an answer that does not fit a damaged cone', () => {
  // One cone of several is torn, on either side alike: common practice, no published source.
  const torn = give(caseOn(distortionAtVolume, EXAMPLE_RIGS['fork-fairing']), {
    'where-harsh': 'front',
    'cone-press': 'scrapes',
    'tools-at-hand': 'none',
  });
  const seen = viewOf(distortionAtVolume, replay(distortionAtVolume, torn, late), late);
  it('is held against no corner that nothing points to, and the cause is called as the other answers have it', () => {
    const says = doubtInWords(seen, distortionAtVolume.steps.get('where-harsh') as Step, 'misfit');
    expect(says).toMatch(
      /^“Where it distorts: front pair” does not fit the rest: “Speaker: coil rubs or cone torn” seldom shows this\. /,
    );
  });
  it('is not listed as what speaks for the cause that it does not fit', () => {
    const html = words(renderToString(<Evidence view={seen} cause="coil-rubbing" onReopen={() => undefined} />));
    expect(html).toMatch(/How we know [^:]*: scrapes or torn/);
    expect(html).toMatch(/(What speaks against it|What it does not explain) Where it distorts : front pair/);
  });
});
