import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { whenIdle } from '../../browser/when-idle.ts';

/** What nobody waits for: drawn anew once the page rests. Until then it stands there as it was, for the question before. */
export function Later({ children }: { readonly children: ComponentChildren }) {
  const newest = useRef(children);
  newest.current = children;
  const [drawn, draw] = useState(children);
  useEffect(() => {
    if (drawn !== newest.current) return whenIdle(() => draw(newest.current), 200);
    return undefined;
  });
  return <>{drawn}</>;
}
