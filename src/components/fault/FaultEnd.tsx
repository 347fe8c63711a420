import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { elsewhere } from '../../../machines/elsewhere.ts';
import { becauseOf, type HandsOver, toldBy } from '../../../machines/machine.ts';
import { cured, learntHere, repaired } from '../../case/change.ts';
import type { Case } from '../../case/events.ts';
import { openedTheFuse, renewsFuse } from '../../case/opened-fuse.ts';
import type { Standing } from '../../case/standing.ts';
import { type Cause, type Remedy, remedyOf } from '../../causes/cause.ts';
import { effortOf } from '../../causes/repair-action.ts';
import type { Certainty } from '../../inference/certainty.ts';
import type { Facts, Step } from '../../steps/step.ts';
import { ProofOfCure } from '../flow/ProofOfCure.tsx';
import { CauseView } from './CauseView.tsx';
import { ListView } from './ListView.tsx';
import { OnwardView } from './OnwardView.tsx';
import type { FaultView } from './view.ts';

interface Props {
  readonly view: FaultView;
  readonly case: Case;
  readonly root: string;
  readonly onMove: (next: Case) => void;
  readonly onReopen: (step: Step) => void;
  readonly onGoOn: (flow: string, told?: Facts) => void;
  /** What else the answers are good for, once a fix goes through the stored settings. */
  readonly goesOn: ComponentChildren;
}

/** What came of a fix, and whether it was needed at all. */
function Outcome({
  case: it,
  cause,
  repair,
  onMove,
}: Pick<Props, 'case' | 'onMove'> & { readonly cause: Cause } & Pick<Remedy, 'repair'>) {
  return (
    <>
      <button type="button" class="go" onClick={() => onMove(cured(it, cause.id))}>
        It’s cured
      </button>
      <button type="button" onClick={() => onMove(repaired(it, cause.id, 'still'))}>
        Still wrong, go on looking
      </button>
      <button type="button" onClick={() => onMove(repaired(it, cause.id, 'better'))}>
        Better, not gone
      </button>
      {renewsFuse(repair) && (
        <button type="button" onClick={() => onMove(openedTheFuse(it, cause.id, repair))}>
          It blew the new fuse
        </button>
      )}
      <button type="button" onClick={() => onMove(repaired(it, cause.id, 'not-it'))}>
        The check says it is not this
      </button>
    </>
  );
}

function OneCause({ cause, certainty, ...props }: Props & { readonly cause: Cause; readonly certainty: Certainty }) {
  const { view, case: it, root, onMove, onReopen, goesOn } = props;
  const { findings, repairs, cured: isCured } = view.standing;
  const remedy = remedyOf(cause, findings);
  const done = isCured === cause.id;
  return (
    <>
      {done && (
        <div class="notice" role="status">
          <p>Noted as cured. Ride, and listen once more.</p>
          <button type="button" onClick={() => onMove(repaired(it, cause.id, 'still'))}>
            It came back
          </button>
        </div>
      )}
      {!done && repairs.at(-1) === cause.id && (
        <div class="notice" role="status">
          <p>The same answer came up again after this repair. First check the repair itself:</p>
          <ProofOfCure proof={remedy.proofOfCure} hasMeter={view.hasMeter} />
        </div>
      )}
      {!done && view.ruledOut.has(cause.id) && (
        <div class="notice" role="status">
          <p>You ruled this out, and nothing else fits better. Do its check once more, another way if you can.</p>
        </div>
      )}
      <CauseView
        view={view}
        case={it}
        cause={cause}
        certainty={certainty}
        besides={view.standing.open.kind === 'cause' ? view.standing.open.besides : []}
        root={root}
        onReopen={onReopen}
        onMove={onMove}
      >
        {!done && <Outcome case={it} cause={cause} repair={remedy.repair} onMove={onMove} />}
      </CauseView>
      {effortOf(remedy.repair) === 'reflash' && goesOn}
    </>
  );
}

/** The cause that is shown as a verdict: the one that was concluded, picked from a list, or noted as cured. */
function causeShown({ open, cured: isCured }: Standing, picked: string | undefined): string | undefined {
  if (open.kind === 'cause') return open.cause;
  return open.kind === 'list' ? (picked ?? isCured) : undefined;
}

/** Where a fault flow ends: in a cause, in a list of those who are left, or in another flow. */
export function FaultEnd(props: Props) {
  const { view, case: it, onMove, onReopen, onGoOn, goesOn } = props;
  const { open } = view.standing;
  const [picked, setPicked] = useState<string>();
  const place = useRef<HTMLDivElement>(null);
  const before = useRef(picked);
  useEffect(() => {
    if (before.current === picked) return;
    before.current = picked;
    place.current?.scrollIntoView({ block: 'start' });
    place.current?.querySelector('h1')?.focus({ preventScroll: true });
  }, [picked]);
  const notIt = (cause: string) => {
    setPicked(undefined);
    onMove(repaired(it, cause, 'not-it'));
  };
  const goTo = (to: HandsOver) => onGoOn(to.flow, toldBy(to, view.standing.findings));
  const shown = view.causeOf(causeShown(view.standing, picked) ?? '');
  const certainty = open.kind === 'cause' ? open.certainty : 'short list';
  return (
    <div ref={place}>
      {open.kind === 'onward' && (
        <OnwardView
          title={open.to.title}
          because={becauseOf(open.to, view.standing.findings)}
          goesOn={open.to.mayBeNoFault?.(view.standing.findings) && goesOn}
          onGo={() => goTo(open.to)}
          onNotIt={() => notIt(elsewhere(open.to.flow))}
        />
      )}
      {shown && <OneCause {...props} cause={shown} certainty={certainty} />}
      {shown && open.kind === 'list' && picked !== undefined && (
        <button type="button" class="plain" onClick={() => setPicked(undefined)}>
          Back to the list
        </button>
      )}
      {!shown && open.kind === 'list' && (
        <ListView
          view={view}
          causes={open.causes}
          onReopen={onReopen}
          onPick={setPicked}
          onNotIt={notIt}
          onGo={
            learntHere(it)
              ? (cause) => {
                  const to = view.lookedForBy(cause);
                  if (to) goTo(to);
                }
              : undefined
          }
        />
      )}
    </div>
  );
}
