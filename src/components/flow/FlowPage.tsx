import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Late } from '../../../machines/machine.ts';
import { handOver } from '../../browser/case-store.ts';
import { draftOf, dropDraft, keepDraft } from '../../browser/drafts.ts';
import { takeFirstTap } from '../../browser/first-tap.ts';
import { useCase } from '../../browser/use-case.ts';
import { useSeat } from '../../browser/use-seat.ts';
import { oneByOne } from '../../browser/when-idle.ts';
import { type AnyFlow, isStaged } from '../../case/any-flow.ts';
import { answered, confirmed, leftAsItIs, noted, revised } from '../../case/change.ts';
import type { Case } from '../../case/events.ts';
import type { Open, Standing } from '../../case/standing.ts';
import { offered, outcomeOf } from '../../steps/outcome.ts';
import { RIDING } from '../../steps/riding.ts';
import type { Answer, Facts, Step } from '../../steps/step.ts';
import { Signed } from '../caution/Signed.tsx';
import { ahead } from './ahead.ts';
import { CaseTools } from './CaseTools.tsx';
import { Later } from './Later.tsx';
import { Notices } from './Notices.tsx';
import { OpenStep } from './OpenStep.tsx';
import { Overtaken } from './Overtaken.tsx';
import type { PageData } from './page-data.ts';
import type { Ready } from './ready.ts';
import { type LoadParts, type Parts, useParts } from './use-parts.ts';
import { fromMyBike, Wire } from './Wire.tsx';

export interface FlowPageProps extends PageData {
  /** The flow as far as its first questions need it. */
  readonly opening: AnyFlow;
  /** Where a case of this flow stands, given as much of it as is there. */
  readonly stand: (flow: AnyFlow, it: Case, late: Late | undefined) => Standing;
  /** The address of the site's root, with a slash at its end. */
  readonly root: string;
  readonly load: LoadParts;
}

/** A question that was opened by hand: one that was answered before, or one whose turn has not come. */
interface ByHand {
  readonly step: Step;
  readonly why: 'again' | 'out of turn';
}

/** What is fitted and told needs nothing done first; what is looked at and measured comes with the parts that say it. */
const NOTHING_TO_DO: Ready = {
  bike: [],
  phone: [],
  standing: [],
  brought: [],
  cautions: [],
  own: [],
  readBefore: [],
  care: [],
};

const sameAnswer = (a: Answer, b: Answer | undefined): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Taken once more, a number is never quite the same. What counts is what it means. */
function sameOutcome(step: Step, given: Answer, { rig, facts, findings }: Standing): boolean {
  const outcome = (answer: Answer) => outcomeOf(step, { rig, facts: { ...facts, [step.id]: answer } });
  const before = facts[step.id];
  return outcome(given) === (before ? outcome(before) : outcomeOf(step, findings));
}

/** What a second answer does to a case, where the first one is in doubt. */
function afterDoubt(it: Case, step: Step, given: Answer, standing: Standing): Case {
  if ('cannot' in given) return leftAsItIs(it, step.id);
  if (!sameOutcome(step, given, standing)) return revised(it, step.id, given);
  return sameAnswer(given, standing.facts[step.id]) ? confirmed(it, step.id) : confirmed(it, step.id, given);
}

/** Names what is open: as long as it stays, nothing is brought into view anew. */
function nameOf(open: Open): string {
  switch (open.kind) {
    case 'step':
      return open.step.id;
    case 'doubt':
      return `${open.step.id} again`;
    case 'cause':
      return open.cause;
    case 'verdict':
      return open.verdict.id;
    case 'onward':
      return `onward to ${open.to.flow}`;
    default:
      return open.kind;
  }
}

/** All of the flow, where it has arrived. */
const wholeIn = (parts: Parts | undefined): AnyFlow | undefined => (parts?.fault ?? parts?.plan)?.flow;

/** Everything of a flow on one page: the wire of what was answered, the open question or the verdict, what is left. */
export function FlowPage({ opening, stand, root, load, links, goesOnIn, picture }: FlowPageProps) {
  const { parts, missing, fetchNow } = useParts(load);
  const flow = wholeIn(parts) ?? opening;
  const late = parts?.fault?.late;
  const known = useMemo(
    () =>
      ahead((it) => {
        const standing = stand(flow, it, late);
        const { open } = standing;
        return {
          standing,
          view: parts?.fault && isStaged(flow) ? parts.fault.viewOf(flow, standing, parts.fault.late) : undefined,
          ready: ('step' in open && parts?.common.readyFor(open.step, it, flow.steps, standing)) || undefined,
        };
      }),
    [flow, stand, late, parts],
  );
  const standOf = useCallback((it: Case) => known.of(it).standing, [known]);
  const whole = async () => wholeIn(await load()) ?? opening;
  const session = useCase({ flow, whole, stand: standOf, root });
  const { case: it, ready, standing, move } = session;
  const seat = useSeat();
  const [byHand, setByHand] = useState<ByHand>();
  const place = useRef<HTMLLIElement>(null);

  const open: Open = byHand ? { kind: 'step', step: byHand.step } : standing.open;
  const asked = 'step' in open ? open.step : undefined;
  const shown = byHand ? `${byHand.step.id} ${byHand.why}` : nameOf(open);
  const needsParts = ready && (asked === undefined || asked.kind === 'reading');
  useEffect(() => {
    if (needsParts && !parts) fetchNow();
  }, [needsParts]);
  const waiting = needsParts && !parts;
  const { view, ready: readyForOpen } = known.of(it);
  const first = useRef(true);
  // Before it is painted: drawn where it stands and then moved, it would be drawn twice.
  useLayoutEffect(() => {
    if (!ready || waiting) return;
    // A fresh case is read from its top; otherwise the open question is brought up, and read out when it is new.
    if (!first.current || standing.terminals.length > 0) place.current?.scrollIntoView({ block: 'start' });
    if (!first.current) place.current?.querySelector('h1')?.focus({ preventScroll: true });
    first.current = false;
  }, [shown, ready, waiting, standing.cured, standing.repairs.length]);

  // The question that was there before this script is still the open one, or the tap was not for what is there now.
  const builtWith = useRef(asked);
  useEffect(() => {
    if (!ready) return;
    const tapped = takeFirstTap();
    if (asked === builtWith.current) tapped?.click();
  }, [ready]);

  const doubted = open.kind === 'doubt';
  const given = (step: Step, answer: Answer): Case => {
    if (open.kind === 'doubt') return afterDoubt(it, step, answer, standing);
    if (byHand?.why !== 'again') return answered(it, step.id, answer);
    return sameAnswer(answer, standing.facts[step.id]) ? confirmed(it, step.id) : revised(it, step.id, answer);
  };
  // Each answer that is offered is worked out while the question is read, so that the tap need not wait for it.
  useEffect(() => {
    if (!ready || waiting || !asked) return;
    const answers = [...offered(asked, standing).map(([option]) => ({ option })), { cannot: true } as const];
    const next = answers.map((one) => given(asked, one));
    known.keepOnly([it, ...next]);
    return oneByOne(next.map((one) => () => void known.of(one)));
  }, [shown, it, known, ready, waiting]);

  const answer = (step: Step, answer: Answer, note?: string) => {
    if (!ready) return;
    const next = given(step, answer);
    if (!move(note === undefined ? next : noted(next, note))) return;
    // Where what has the focus is taken away, the browser lays the page out there and then.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    if (step.kind === 'reading') dropDraft(it, step.id);
    setByHand(undefined);
  };
  const goOn = (id: string, told?: Facts) =>
    session.unlessOvertaken(() => {
      const noRoom = handOver(it, standing, id, told);
      if (noRoom !== undefined) session.tell(noRoom);
      else if (links[id]) location.href = root + links[id].path;
    });
  const leaveByHand = () => {
    if (byHand) dropDraft(it, byHand.step.id);
    setByHand(undefined);
  };
  const reopen = (step: Step) => setByHand({ step, why: 'again' });
  // In a flow of rows what comes after a changed answer may not be asked any more; a fault flow keeps it all.
  const changedAt = byHand ? standing.terminals.findIndex(({ step }) => step.id === byHand.step.id) : -1;
  const terminals = isStaged(flow)
    ? standing.terminals.filter((_, i) => i !== changedAt)
    : standing.terminals.slice(0, changedAt < 0 ? undefined : changedAt);
  const Picture = picture && parts?.plan?.PICTURES[picture];
  const ended = !asked && parts;
  const repaired = it.events.at(-1);
  const takeOn = goesOnIn.map(
    (id) =>
      links[id] && (
        <button key={id} type="button" onClick={() => goOn(id)}>
          Take these answers to “{links[id].title}”
        </button>
      ),
  );

  return (
    <div class="flow">
      <ol class="wire" aria-label={flow.title}>
        <li class="wire-start">
          <p class="flow-title">{flow.title}</p>
          {it.events.length < 2 && (
            <Signed word="Danger" sentences={[RIDING, 'Stop at a hot smell, at smoke, or when a fuse blows twice.']} />
          )}
          {terminals.length > 0 && <p class="hint">Tap an answer to give it again.</p>}
        </li>
        <Notices session={session} />
        <Wire
          known={fromMyBike(flow, standing, it)}
          root={root}
          terminals={terminals}
          situation={standing}
          onReopen={reopen}
        />
        <li class="open-step" ref={place}>
          {repaired?.type === 'repair' && asked && (
            <p class="notice" role="status">
              {repaired.result === 'not-it'
                ? 'Noted: it is not that.'
                : 'The repair is noted. What it cannot have changed is kept; the rest is asked again.'}
            </p>
          )}
          {session.overtaken > 0 && (
            <Overtaken times={session.overtaken} onTake={session.takeNewer} onKeep={session.goOnWithThis} />
          )}
          {waiting && missing && (
            <p class="notice" role="status">
              The rest of this page has not arrived. Find a signal and load it again. Your answers are kept.
            </p>
          )}
          {asked && (
            <>
              <OpenStep
                key={shown}
                step={asked}
                situation={standing}
                ready={
                  (byHand ? parts?.common.readyFor(asked, it, flow.steps, standing) : readyForOpen) ?? NOTHING_TO_DO
                }
                seat={seat}
                was={doubted ? undefined : byHand ? standing.facts[asked.id] : standing.unusable}
                lastTime={doubted ? undefined : session.read[asked.id]}
                draft={ready && asked.kind === 'reading' ? draftOf(it, asked.id) : {}}
                notes={standing.notes}
                parts={parts}
                disabled={!ready}
                justCame={!first.current}
                doubt={
                  open.kind !== 'doubt'
                    ? undefined
                    : view
                      ? parts?.fault?.doubtInWords(view, asked, open.because)
                      : parts?.plan?.doubtInWords(standing)
                }
                whyNow={() => view && parts?.fault?.whyNow(view, asked)}
                meanings={view && parts?.fault && <parts.fault.Meanings view={view} step={asked} />}
                root={root}
                onDraft={(texts) => keepDraft(it, asked.id, texts)}
                onAnswer={(given, note) => answer(asked, given, note)}
              />
              {byHand && (
                <button type="button" class="plain" onClick={leaveByHand}>
                  {byHand.why === 'again' ? 'Keep the answer as it was' : 'Back to the question that was open'}
                </button>
              )}
              {view && !byHand && !doubted && parts?.fault && (
                <Later>
                  <parts.fault.OutOfTurn
                    key={shown}
                    view={view}
                    now={asked}
                    onOpen={(step) => setByHand({ step, why: 'out of turn' })}
                  />
                </Later>
              )}
              {Picture && (
                <Later>
                  <Picture {...standing} />
                </Later>
              )}
            </>
          )}
          {ended && view && parts.fault && (
            <parts.fault.FaultEnd
              key={shown}
              view={view}
              case={it}
              root={root}
              onMove={move}
              onReopen={reopen}
              onGoOn={goOn}
              goesOn={takeOn}
            />
          )}
          {ended && open.kind === 'verdict' && parts.plan && (
            <>
              <parts.plan.VerdictView
                verdict={open.verdict}
                remedy={open.remedy}
                standing={standing}
                case={it}
                root={root}
                onReopen={reopen}
                onMove={move}
                picture={Picture && <Picture {...standing} />}
              />
              {takeOn}
            </>
          )}
          <CaseTools session={session} parts={parts} title={flow.title} canGoBack={!byHand} />
        </li>
      </ol>
      {view && parts?.fault && (
        <Later>
          <parts.fault.Suspects view={view} />
        </Later>
      )}
    </div>
  );
}
