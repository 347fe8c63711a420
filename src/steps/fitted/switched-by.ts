import { type Findings, is } from '../outcome.ts';
import { ampMayBeThere } from './amp-there.ts';
import { ampPair } from './the-amp.ts';

/** What switches the amplifier on; undefined when nobody said, or of two amplifiers nobody knows which one it is. */
export function switchedBy(f: Findings): 'wire' | 'signal' | 'dc' | undefined {
  if (is(f, 'which-amp', 'cannot')) return undefined;
  const said = f.outcome(ampPair(f) === 'front' ? 'front-amp-turn-on' : 'rear-amp-turn-on');
  return said === 'cannot' ? undefined : said;
}

/** Whether it has a remote wire, or may. One that is known to listen has none. */
export const mayHaveRemote = (f: Findings): boolean =>
  ampMayBeThere(f) && (switchedBy(f) ?? 'wire') === 'wire' && !is(f, 'remote-jumper', 'no-terminal');
