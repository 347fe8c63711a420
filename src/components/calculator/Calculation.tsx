import { useEffect, useRef, useState } from 'preact/hooks';
import type { Calculator, Result } from '../../calculators/calculator.ts';
import { shown } from '../../calculators/shown.ts';
import { linkOf, typedFromBike, typedInLink, worked } from '../../calculators/typed.ts';
import type { Typed } from '../../rig/typed-field.ts';
import { FieldRow } from '../my-bike/FieldRow.tsx';
import { loadBike } from '../my-bike/stored-bike.ts';
import { ResultSection } from './ResultSection.tsx';

/** A calculator: the result first, then the fields it comes from. It is worked out anew with every key. */
export function Calculation({ one }: { readonly one: Calculator }) {
  const [typed, setTyped] = useState<Typed>({});
  const [judged, setJudged] = useState<ReadonlySet<string>>(new Set());
  const [from, setFrom] = useState('');
  const now = worked(one, typed);
  const last = useRef<Result | undefined>(undefined);
  if (now.result) last.current = now.result;

  useEffect(() => {
    const take = () => {
      const linked = typedInLink(one, location.hash);
      if (Object.keys(linked).length > 0) {
        setTyped(linked);
        setJudged(new Set(Object.keys(linked)));
        setFrom('Filled in from the link.');
        return;
      }
      const known = typedFromBike(one, loadBike().rig);
      setTyped(known);
      setFrom(Object.keys(known).length > 0 ? 'Filled in from “My bike”. What you change here stays here.' : '');
    };
    take();
    window.addEventListener('hashchange', take);
    return () => window.removeEventListener('hashchange', take);
  }, [one]);

  const type = (id: string, text: string) => {
    setJudged((before) => new Set([...before].filter((each) => each !== id)));
    setTyped((before) => ({ ...before, [id]: text }));
  };
  return (
    <div class="calculation">
      <ResultSection {...shown(one, now, last.current)} assumed={now.assumed.length} />
      <form onSubmit={(event) => event.preventDefault()}>
        <h2>With these values</h2>
        {from && <p class="hint">{from}</p>}
        <div class="fields">
          {Object.entries(one.inputs).map(([id, field]) => (
            <FieldRow
              key={id}
              path={id}
              field={field}
              usual
              text={typed[id] ?? ''}
              error={judged.has(id) ? now.errors[id] : undefined}
              onType={(text) => type(id, text)}
              onDone={() => setJudged((before) => new Set([...before, id]))}
            />
          ))}
        </div>
        <div class="deeds">
          <a class="button" href={linkOf(one, typed)}>
            Address with these values
          </a>
          <button type="button" onClick={() => window.print()}>
            Print
          </button>
        </div>
      </form>
    </div>
  );
}
