/** Every flow of the site: where it lives and what it is called. Names only, so that a page loads no other flow. */
export const FLOWS = {
  'no-rear-sound': {
    path: 'find/no-rear-sound/',
    title: 'No sound from the rear',
    says: 'The lids don’t play · only the fairing plays · the passenger hears nothing',
  },
  'amp-wont-turn-on': {
    path: 'find/amp-wont-turn-on/',
    title: 'The amplifier stays off',
    says: 'No light on the amp · red light · goes into protect · only wakes when cranked up',
  },
  'is-a-reflash-needed': { path: 'plan/is-a-reflash-needed/', title: 'Does it need a reflash at all?' },
  'what-is-in-the-head-unit': { path: 'find/what-is-in-the-head-unit/', title: 'What is in this head unit now?' },
} as const;
export type FlowId = keyof typeof FLOWS;

export const isFlowId = (id: string): id is FlowId => Object.hasOwn(FLOWS, id);
