import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { openingFlow } from '../../../machines/opening.ts';
import { openingRows } from '../../../machines/rows.ts';
import { FLOW_LIST, isFlowId } from '../../../src/case/flows.ts';
import { replay } from '../../../src/case/replay.ts';
import { FlowPage } from '../../../src/components/flow/FlowPage.tsx';
import { offered } from '../../../src/steps/outcome.ts';

const never = () => new Promise<never>(() => undefined);

describe.each(FLOW_LIST)('the built page of %s', (id, row) => {
  it('shows the first question and its answers before anything is fetched', async () => {
    const flow =
      row.kind === 'fault' || row.kind === 'intake' ? openingFlow(await row.open()) : openingRows(await row.open());
    const it_ = { flow: id, events: [] };
    const { open, findings } = replay(flow, it_);
    const html = renderToString(
      <FlowPage opening={flow} root="/" stand={replay} load={never} links={{}} goesOnIn={[]} />,
    );
    if (open.kind !== 'step') throw new Error(`${id} must begin with a question, got ${open.kind}`);
    expect(html).toContain(`>${open.step.ask}</h1>`);
    for (const [, label] of offered(open.step, findings)) expect(html).toContain(label);
  });
  it('is titled and described, and leads only to flows that there are', () => {
    expect(row.title).not.toBe('');
    expect(row.description).toMatch(/^[A-Z].*\.$/);
    for (const other of row.goesOnIn ?? []) expect(isFlowId(other)).toBe(true);
  });
  it('is for the flow of its own id, whose other flows exist', async () => {
    const flow = await row.load();
    expect(flow.id).toBe(id);
    if (flow.kind === 'staged') for (const to of flow.handsOver) expect(isFlowId(to.flow)).toBe(true);
  });
});
