import type { FunctionComponent } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Flow } from '../../../machines/rows.ts';
import { handOver } from '../../browser/case-store.ts';
import { draftOf, dropDraft, keepDraft } from '../../browser/drafts.ts';
import { useCase } from '../../browser/use-case.ts';
import { useSeat } from '../../browser/use-seat.ts';
import { answered, confirmed, cured, learntHere, noted, repaired, revised } from '../../case/change.ts';
import { FLOWS, type FlowId, isFlowId } from '../../case/flows.ts';
import type { Standing } from '../../case/standing.ts';
import { CAUTIONS } from '../../steps/cautions.ts';
import type { Answer, Facts, Step } from '../../steps/step.ts';
import { OpenStep } from './OpenStep.tsx';
import { Overtaken } from './Overtaken.tsx';
import { ProofOfCure } from './ProofOfCure.tsx';
import { type LoadTable, useParts } from './use-parts.ts';
import { fromMyBike, Wire } from './Wire.tsx';

export interface FlowPageProps {
  readonly flow: Flow;
  /** The address of the site's root, with a slash at its end. */
  readonly root: string;
  /** Fetches who can be behind the complaint. A plan has none. */
  readonly loadTable?: LoadTable;
  /** The step that shows the ranked answer before it asks. */
  readonly rankAt?: string;
  /** Whether its verdicts are fixes that can be tried, and cured or not. */
  readonly repairs?: boolean;
  /** The flows that a verdict can be taken on to, with the same facts. */
  readonly goesOnIn?: readonly FlowId[];
  /** Something drawn under the open step or the verdict. */
  readonly picture?: FunctionComponent<Standing>;
}

const sameAnswer = (a: Answer, b: Answer | undefined): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The way to the flow that takes this case on. */
function OnwardButton(props: { readonly to: FlowId; readonly because: string; readonly onGo: (id: FlowId) => void }) {
  const { to, because, onGo } = props;
  return (
    <section class="notice" aria-label="Go on in another flow">
      <p>{because}</p>
      <button type="button" class="go" onClick={() => onGo(to)}>
        Go on with “{FLOWS[to].title}”
      </button>
    </section>
  );
}

/** Everything of a flow on one page: the wire of what was answered, the open question or the verdict, what is left. */
export function FlowPage({ flow, root, loadTable, rankAt, repairs, goesOnIn, picture: Picture }: FlowPageProps) {
  const session = useCase(flow);
  const { case: it, ready, standing, notices, keptAside, bikeChanged, move, goBack } = session;
  const { startAgain, reopenAside, takeMyBike } = session;
  const seat = useSeat();
  const [changing, setChanging] = useState<Step>();
  const open = useRef<HTMLLIElement>(null);

  const asked = changing ?? ('step' in standing.open ? standing.open.step : undefined);
  const shown = asked?.id ?? ('verdict' in standing.open ? standing.open.verdict.id : '');
  const needsParts = ready && (asked === undefined || asked.kind === 'reading');
  const { parts, missing } = useParts(needsParts, loadTable);
  const waiting = needsParts && !parts;
  const table = useMemo(() => parts?.tableFor?.(standing), [parts, standing]);
  const toCheck = useMemo(() => {
    const found = table && parts?.answerToCheck(flow.steps, standing, table, standing.checked);
    return found ? flow.steps.get(found.step) : undefined;
  }, [flow, parts, table, standing]);
  const first = useRef(true);
  useEffect(() => {
    if (!ready || waiting) return;
    // A fresh case is read from its top; otherwise the open question is brought up, and read out when it is new.
    if (!first.current || standing.terminals.length > 0) open.current?.scrollIntoView({ block: 'start' });
    if (!first.current) open.current?.querySelector('h1')?.focus({ preventScroll: true });
    first.current = false;
  }, [shown, ready, waiting, standing.cured, standing.repairs.length]);

  const answer = (given: Answer, note?: string) => {
    if (!asked) return;
    const next = !changing
      ? answered(it, asked.id, given)
      : sameAnswer(given, standing.facts[asked.id])
        ? confirmed(it, asked.id)
        : revised(it, asked.id, given);
    if (!move(note === undefined ? next : noted(next, note))) return;
    dropDraft(it, asked.id);
    setChanging(undefined);
  };
  const goOnIn = (id: FlowId, told?: Facts) =>
    session.unlessOvertaken(() => {
      const noRoom = handOver(it, standing, id, told);
      if (noRoom === undefined) location.href = root + FLOWS[id].path;
      else session.tell(noRoom);
    });
  const keepAsItWas = () => {
    if (changing) dropDraft(it, changing.id);
    if (changing && changing === toCheck) move(confirmed(it, changing.id));
    setChanging(undefined);
  };
  // What “my bike” says stands on no terminal of its own.
  const changedAt = standing.terminals.findIndex(({ step }) => step.id === changing?.id);
  const before = changedAt < 0 ? standing.terminals : standing.terminals.slice(0, changedAt);
  const was = changing ? standing.facts[changing.id] : standing.unusable;
  const verdict = 'verdict' in standing.open && !changing ? standing.open : undefined;
  const lastRepair = standing.repairs.at(-1);
  const onward = verdict && learntHere(it) ? verdict.verdict.handsOver?.(standing.findings) : undefined;

  return (
    <div class="flow">
      <ol class="wire" aria-label={flow.title}>
        <li class="wire-start">
          <p class="flow-title">{flow.title}</p>
          {it.events.length < 2 && (
            <p class="caution">{CAUTIONS.riding} Stop at a hot smell, at smoke, or when a fuse opens twice.</p>
          )}
        </li>
        {notices.length > 0 && (
          <li>
            <div class="notice" role="status">
              {notices.map((notice) => (
                <p key={notice}>{notice}</p>
              ))}
            </div>
          </li>
        )}
        {keptAside && (
          <li>
            <div class="notice">
              <p>A case you had here before is kept.</p>
              <button type="button" onClick={reopenAside}>
                Open my earlier case again
              </button>
            </div>
          </li>
        )}
        {bikeChanged && (
          <li>
            <div class="notice">
              <p>“My bike” says something else than this case was begun with.</p>
              <button type="button" onClick={takeMyBike}>
                Work it out for my bike as it is saved now
              </button>
            </div>
          </li>
        )}
        <Wire known={fromMyBike(flow, standing)} root={root} terminals={before} onChange={setChanging} />
        <li class="open-step" ref={open}>
          {it.events.at(-1)?.type === 'repair' && !verdict && (
            <p class="notice">The repair is noted. What it cannot have changed is kept; the rest is asked again.</p>
          )}
          {session.overtaken > 0 && (
            <Overtaken times={session.overtaken} onTake={session.takeNewer} onKeep={session.goOnWithThis} />
          )}
          {waiting && missing && (
            <p class="notice" role="status">
              The rest of this page has not arrived. Find a signal and load it again. Your answers are kept.
            </p>
          )}
          {parts && toCheck && !changing && standing.cured === undefined && (
            <parts.CheckAgain
              step={toCheck}
              standing={standing}
              onCheck={() => setChanging(toCheck)}
              onKeep={() => move(confirmed(it, toCheck.id))}
            />
          )}
          {asked && (
            <>
              {parts && table && asked.id === rankAt && !changing && (
                <parts.RankedSoFar flow={flow} standing={standing} suspects={table.suspects} />
              )}
              <OpenStep
                key={shown}
                step={asked}
                situation={standing}
                seat={seat}
                was={was}
                lastTime={session.read[asked.id]}
                draft={ready ? draftOf(it, asked.id) : {}}
                notes={standing.notes}
                parts={parts}
                disabled={!ready}
                root={root}
                onDraft={(texts) => keepDraft(it, asked.id, texts)}
                onAnswer={answer}
              />
              {changing && (
                <button type="button" class="plain" onClick={keepAsItWas}>
                  Keep the answer as it was
                </button>
              )}
            </>
          )}
          {verdict && standing.cured === verdict.verdict.id && (
            <div class="notice" role="status">
              <p>Noted as cured. Ride, and listen once more.</p>
              <button type="button" onClick={() => move(repaired(it, verdict.verdict.id))}>
                It came back
              </button>
            </div>
          )}
          {verdict && lastRepair === verdict.verdict.id && (
            <div class="notice" role="status">
              <p>The same answer came up again after this repair. First check the repair itself:</p>
              <ProofOfCure remedy={verdict.remedy} findings={standing.findings} />
              {parts && table && (
                <parts.NextLikeliest standing={standing} suspects={table.suspects} tried={standing.repairs} />
              )}
            </div>
          )}
          {verdict && parts && (
            <parts.VerdictView
              verdict={verdict.verdict}
              remedy={verdict.verdict.remedy(standing.findings, table?.suspects)}
              standing={standing}
              root={root}
              onChange={setChanging}
              proofTitle={repairs ? 'Prove the cure' : 'Check it'}
              picture={Picture && <Picture {...standing} />}
              onward={
                onward &&
                isFlowId(onward.flow) && (
                  <OnwardButton to={onward.flow} because={onward.because} onGo={(id) => goOnIn(id, onward.answers)} />
                )
              }
            >
              {repairs && standing.cured !== verdict.verdict.id && (
                <>
                  <button type="button" class="go" onClick={() => move(cured(it, verdict.verdict.id))}>
                    It’s cured
                  </button>
                  <button type="button" onClick={() => move(repaired(it, verdict.verdict.id))}>
                    Still wrong, go on looking
                  </button>
                </>
              )}
            </parts.VerdictView>
          )}
          {!verdict && Picture && <Picture {...standing} />}
          {verdict &&
            goesOnIn?.map((id) => (
              <button key={id} type="button" onClick={() => goOnIn(id)}>
                Take these answers to “{FLOWS[id].title}”
              </button>
            ))}
          <div class="case-tools">
            {goBack && !changing && (
              <button type="button" class="plain" onClick={goBack}>
                Back one step
              </button>
            )}
            {it.events.length > 1 && (
              <>
                {parts && <parts.Notes case={it} notes={standing.notes} onNote={move} />}
                {parts && <parts.Share case={it} title={`Sidestand: ${flow.title}`} />}
                <button type="button" class="plain" onClick={startAgain}>
                  Start a new case
                </button>
              </>
            )}
          </div>
        </li>
      </ol>
      {parts && table && asked && (
        <parts.SuspectStrip
          flow={flow}
          standing={standing}
          suspects={table.suspects}
          doubted={changing ? undefined : toCheck}
        />
      )}
    </div>
  );
}
