import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { ampWontTurnOn } from '../../../machines/amp-wont-turn-on.ts';
import { ForTheWorkshop } from '../../../src/components/fault/ForTheWorkshop.tsx';
import { listSections } from '../../../src/components/fault/list-sections.ts';
import { viewOf } from '../../../src/components/fault/view.ts';
import { asText } from '../../../src/components/flow/Sheet.tsx';
import { late } from '../../../src/likelihoods/amp-wont-turn-on.ts';
import { type Answers, caseOn, give, stand } from '../../journey.ts';
import { words } from './fan.ts';

/* Whoever works on a bike next has to know that a lead may burn. Common practice, no published source. */
describe('what the workshop is told', () => {
  const causes = ['amp-dead', 'remote-source-dead'];
  const view = (answers: Answers) =>
    viewOf(ampWontTurnOn, stand(ampWontTurnOn, give(caseOn(ampWontTurnOn), answers)), late);
  const shown = (answers: Answers) =>
    words(
      renderToString(
        <ForTheWorkshop view={view(answers)} causes={causes} title="For the workshop" onReopen={() => undefined} />,
      ),
    );
  const NONE = { 'which-amp': 'rear', 'fuse-look': 'none', 'tools-at-hand': 'none' };
  it('begins with a lead that has no fuse, and lists it among what was found, on screen and on paper', () => {
    expect(shown(NONE)).toMatch(
      /^For the workshop Before anything else: the amplifier’s lead has no fuse .*20 A on 3\.31 mm²/,
    );
    expect(shown(NONE)).toMatch(/Found so far: Main fuse, by eye : no fuse in its lead/);
    const paper = asText({ title: 'x', sections: listSections(view(NONE), causes, 'x') });
    expect(paper).toMatch(/DANGER: A battery lead without a fuse/);
    expect(paper).toMatch(/Main fuse, by eye: no fuse in its lead/);
  });
  it('says nothing of it where there is a fuse', () => {
    expect(shown({ ...NONE, 'fuse-look': 'whole' })).not.toMatch(/no fuse/);
  });
});
