import { fromText } from '../case/case-text.ts';
import { FLOW_LIST, type FlowId } from '../case/flows.ts';
import { asideOf, openText } from './case-store.ts';

/** What this device keeps of a flow: the answers of the case that is open, and how many earlier cases there are. */
export interface KeptCases {
  readonly flow: FlowId;
  readonly answers: number;
  readonly earlier: number;
}

/** The flows of which this device keeps a case. */
export const keptCases = (): readonly KeptCases[] =>
  FLOW_LIST.flatMap(([flow]) => {
    const text = openText(flow);
    const opened = text ? fromText(text) : undefined;
    const answers = opened?.ok ? opened.case.events.filter(({ type }) => type === 'answer').length : 0;
    const earlier = asideOf(flow).length;
    return answers + earlier > 0 ? [{ flow, answers, earlier }] : [];
  });
