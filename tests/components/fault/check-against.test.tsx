import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { oneSpeakerOrSideDead } from '../../../machines/one-speaker-or-side-dead.ts';
import { replay } from '../../../src/case/replay.ts';
import { ListView } from '../../../src/components/fault/ListView.tsx';
import { listSections } from '../../../src/components/fault/list-sections.ts';
import { viewOf } from '../../../src/components/fault/view.ts';
import { asText } from '../../../src/components/flow/Sheet.tsx';
import { late } from '../../../src/likelihoods/one-speaker-or-side-dead.ts';
import { EXAMPLE_RIGS } from '../../../src/rig/examples.ts';
import { caseOn, give } from '../../journey.ts';
import { words } from './fan.ts';

/* A coil that reads its ohms at its own tabs is whole, whatever led there: common practice, no published source. */
const TABS = { leadsOhm: '0.2', coilOhm: '3.6' };
const FOUND = {
  'which-corner': 'rear-left',
  'lid-check': 'no-effect',
  'contacts-look': 'clean',
  wiggle: 'no-effect',
  'pop-run': 'dead',
  'pop-speaker': 'dead',
  'tools-at-hand': 'meter',
};
const seenWith = (more: Parameters<typeof give>[1]) => {
  const it_ = give(caseOn(oneSpeakerOrSideDead, EXAMPLE_RIGS['frame-fairing']), { ...FOUND, ...more });
  return viewOf(oneSpeakerOrSideDead, replay(oneSpeakerOrSideDead, it_, late), late);
};
const nothing = () => undefined;
const listOf = (view: ReturnType<typeof seenWith>) =>
  words(
    renderToString(
      <ListView
        view={view}
        causes={['coil-open', 'speaker-wire-open']}
        onReopen={nothing}
        onPick={nothing}
        onNotIt={nothing}
        onGo={nothing}
      />,
    ),
  );

describe('a cause in a list whose own check came out against it', () => {
  const view = seenWith({ 'coil-ohms': TABS });
  it('has that said beside its odds, and what to do about it, with no bar over it', () => {
    const [row = ''] = /coil open.*?This is it/.exec(listOf(view)) ?? [];
    expect(row).toMatch(/(in 10|1 in \d+|1 in 100), although its check came out against it/);
    expect(row).toMatch(/You did its check: “The coil by itself.*”\. That speaks against it/);
    const [html = ''] =
      /coil open.*?<\/p>/.exec(
        renderToString(
          <ListView
            view={view}
            causes={['coil-open']}
            onReopen={nothing}
            onPick={nothing}
            onNotIt={nothing}
            onGo={nothing}
          />,
        ),
      ) ?? [];
    expect(html).not.toMatch(/<svg/);
  });
  it('is asked to do it once more where it leads all the same, since everything else fits worse', () => {
    const run = { leadsOhm: '0.2', leftOhm: 'OL', rightOhm: '3.6' };
    const leads = seenWith({ 'run-ohms': run, 'run-split': 'lid-side', 'coil-ohms': TABS });
    expect(leads.shares[0]?.cause).toBe('coil-open');
    expect(leads.checkOf('coil-open')).toMatch(/fits the others even less\. Do that check once more, another way/);
    expect(view.shares[0]?.cause).not.toBe('coil-open');
    expect(view.checkOf('coil-open')).toMatch(/That speaks against it\.$/);
  });
  it('has it on the sheet that is taken along', () => {
    const text = asText({ title: 'x', sections: listSections(view, ['coil-open'], 'x') });
    expect(text).toMatch(/although its check came out against it\. You did its check/);
  });
  it('is told nothing of it where its check has not been done, or came out for it', () => {
    expect(listOf(seenWith({}))).not.toMatch(/against it/);
    expect(listOf(seenWith({ 'coil-ohms': { leadsOhm: '0.2', coilOhm: 'OL' } }))).not.toMatch(/although its check/);
  });
});
