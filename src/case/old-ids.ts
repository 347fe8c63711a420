/**
 * Verdicts that earlier versions named otherwise, and the one cause whose fix is theirs. All others that are still there
 * kept their name. A verdict that is now several causes stands for none of them.
 */
const CAUSE_NOW: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'no-rear-sound': { 'replaced-unit-adapter-gap': 'adapter-without-rear' },
  'amp-wont-turn-on': {
    'replaced-unit-adapter-gap': 'adapter-without-remote',
    'sense-starved-by-profile': 'sense-starved',
    'sense-sleeps-in-quiet': 'sleeps-in-quiet',
    'fuse-holder-resistive': 'fuse-holder-bad',
    'amp-heat-protect': 'amp-too-hot',
    'amp-load-too-low': 'load-too-low',
    'regulator-out-of-range': 'charging-too-high',
    'head-unit-dark': 'unit-feed-missing',
  },
};

/** What a verdict of an event is called in a flow of today. */
export function verdictNow(flow: string, id: string): string {
  const renamed = Object.hasOwn(CAUSE_NOW, flow) ? CAUSE_NOW[flow] : undefined;
  return (renamed && Object.hasOwn(renamed, id) && renamed[id]) || id;
}
