import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { AnyFlow } from '../case/any-flow.ts';
import { fromText, toText } from '../case/case-text.ts';
import { back, bikeOf, canGoBack, onBike } from '../case/change.ts';
import type { Case } from '../case/events.ts';
import { lastReadings, type ReadingsByStep } from '../case/last-time.ts';
import type { Standing } from '../case/standing.ts';
import type { Rig } from '../rig/rig.ts';
import { CASE_KEY } from './case-keys.ts';
import {
  begin,
  goOnWithOlder,
  isOvertaken,
  type Loaded,
  load,
  save,
  savedBike,
  takeBackAside,
  takeNewer,
} from './case-store.ts';
import { dropDrafts } from './drafts.ts';

const textOf = (state: unknown): string | undefined =>
  typeof state === 'object' && state !== null && 'case' in state && typeof state.case === 'string'
    ? state.case
    : undefined;

const saysOtherwise = (saved: Rig, known: Rig): boolean =>
  Object.entries(saved).some(
    ([field, value]) => field !== 'name' && JSON.stringify(known[field as keyof Rig]) !== JSON.stringify(value),
  );

/** The address without the fragment: what a link carried is in the case now, and a reload must not bring it back. */
const bareAddress = () => location.pathname + location.search;

/** What a page brings of its flow. */
export interface FlowOfPage {
  /** The flow, or as much of it as has arrived. */
  readonly flow: AnyFlow;
  /** All of it, once it is needed. */
  readonly whole: () => Promise<AnyFlow>;
  /** Where a case of it stands. */
  readonly stand: (it: Case) => Standing;
  /** The address of the site's root. */
  readonly root: string;
}

const NOT_ARRIVED = 'The rest of this page has not arrived. Find a signal and try it again.';

/**
 * The case of a page: opened from the link or from this device, kept at every step, and moved through with the
 * browser's own back and forward.
 */
export function useCase({ flow, whole, stand, root }: FlowOfPage) {
  const [it, setCase] = useState<Case>({ flow: flow.id, events: [] });
  const [ready, setReady] = useState(false);
  const [notices, setNotices] = useState<readonly string[]>([]);
  const [keptAside, setKeptAside] = useState(false);
  const [myBike, setMyBike] = useState<Rig>({});
  /** The case as this tab last kept it. */
  const lastKept = useRef<string>();
  /** How often something was not kept since another tab went on, or was seen to have; 0 while it has not. */
  const [overtaken, setOvertaken] = useState(0);
  /** Back takes an answer out of the case. Its readings are kept here, for when the step is asked again. */
  const readBefore = useRef<ReadingsByStep>({});

  /** What the page has gone on to and has not kept yet. */
  const unkept = useRef<Case>();

  const keep = (next: Case) => {
    const unsaved = save(next);
    if (unsaved === undefined) lastKept.current = toText(next);
    return unsaved;
  };
  const look = (): boolean => {
    const is = isOvertaken(flow.id, lastKept.current);
    setOvertaken((times) => (is ? times + 1 : 0));
    return is;
  };
  /** Does what would keep a case here, unless another tab has gone on meanwhile. Gives whether it was done. */
  const unlessOvertaken = (act: () => void): boolean => {
    const done = !look();
    if (done) act();
    return done;
  };

  const show = (loaded: Loaded) => {
    if (loaded.elsewhere) {
      location.replace(root + loaded.elsewhere + location.hash);
      return;
    }
    readBefore.current = {};
    const unsaved = keep(loaded.case);
    setOvertaken(0);
    history.replaceState({ case: toText(loaded.case) }, '', bareAddress());
    setCase(loaded.case);
    setNotices(unsaved ? [...loaded.notices, unsaved] : loaded.notices);
    setKeptAside(loaded.keptAside);
    setMyBike(savedBike([]));
    // Together with the case: what is drawn of it at first is drawn with what was typed in it.
    setReady(true);
  };

  useEffect(() => {
    const open = () => load({ flow, whole }, location.hash.slice(1)).then(show);
    open();
    const onPop = (event: PopStateEvent) => {
      unkept.current = undefined;
      const text = textOf(event.state);
      const opened = text === undefined ? undefined : fromText(text);
      if (!opened?.ok) return;
      const before = opened.case;
      unlessOvertaken(() => {
        keep(before);
        setCase(before);
      });
    };
    const onHash = () => location.hash.length > 1 && open();
    const onStorage = ({ key }: StorageEvent) => key === CASE_KEY + flow.id && look();
    window.addEventListener('popstate', onPop);
    window.addEventListener('hashchange', onHash);
    window.addEventListener('storage', onStorage);
    // A tab that the browser had put to sleep has missed what happened meanwhile.
    window.addEventListener('pageshow', look);
    window.addEventListener('pagehide', keepNow);
    return () => {
      window.removeEventListener('popstate', onPop);
      window.removeEventListener('hashchange', onHash);
      window.removeEventListener('storage', onStorage);
      window.removeEventListener('pageshow', look);
      window.removeEventListener('pagehide', keepNow);
    };
  }, []);

  const standing = useMemo(() => stand(it), [stand, it]);
  const read = useMemo(() => {
    readBefore.current = { ...readBefore.current, ...lastReadings(it.events) };
    return readBefore.current;
  }, [it]);

  const keepNow = () => {
    const next = unkept.current;
    if (!next) return;
    unkept.current = undefined;
    const unsaved = keep(next);
    history.pushState({ case: toText(next) }, '', bareAddress());
    if (unsaved) setNotices((told) => [...told, unsaved]);
  };
  // Saving takes as long as a part of the drawing does, so what was asked for is drawn first.
  useEffect(() => {
    const timer = setTimeout(keepNow);
    return () => clearTimeout(timer);
  }, [it]);
  const goOn = (next: Case) => {
    keepNow();
    unkept.current = next;
    setCase(next);
    setNotices([]);
  };
  /** Goes on to the next case. Gives whether it did. */
  const move = (next: Case): boolean => unlessOvertaken(() => goOn(next));
  const change = (loaded: Loaded) => {
    readBefore.current = {};
    goOn(loaded.case);
    setNotices(loaded.notices);
    setKeptAside(loaded.keptAside);
  };
  /** What an earlier case can be used for is known once all of the flow is there. */
  const withWhole = (act: (all: AnyFlow) => void) => {
    whole().then(act, () => setNotices([NOT_ARRIVED]));
  };
  return {
    case: it,
    ready,
    standing,
    notices,
    keptAside,
    /** What was last read in each measurement, whether it still counts or not. */
    read,
    move,
    /** Whether the bike saved here says something that this case does not know, or knows otherwise. */
    bikeChanged: ready && saysOtherwise(myBike, bikeOf(it)),
    takeMyBike: () => move(onBike(it, { ...bikeOf(it), ...myBike })),
    /** Says something at the top of the page. */
    tell: (sentence: string) => setNotices([sentence]),
    goBack: canGoBack(it) ? () => move(back(it)) : undefined,
    startAgain: () => unlessOvertaken(() => change(begin(flow, it))),
    reopenAside: () =>
      withWhole((all) =>
        unlessOvertaken(() => {
          const aside = takeBackAside(all, it);
          if (aside) change(aside);
        }),
      ),
    /**
     * Above 0 when another tab has gone on with this flow, and more each time something is not done for it: nothing is
     * kept until it is said which of the two cases counts.
     */
    overtaken,
    unlessOvertaken,
    takeNewer: () =>
      withWhole((all) => {
        dropDrafts(all.id);
        show(takeNewer(all));
      }),
    goOnWithThis: () =>
      withWhole((all) => {
        const older = goOnWithOlder(all, it);
        if ('noRoom' in older) setNotices([older.noRoom]);
        else show(older);
      }),
  };
}
