import type { Result } from '../../calculators/calculator.ts';
import type { Shown } from '../../calculators/shown.ts';
import { JoinedSpeakers } from './JoinedSpeakers.tsx';
import { Figures, Key, Plot } from './Plot.tsx';

/** The result of a calculator, or its last one, marked as such. */
export function ResultSection({ result, notice, assumed }: Shown & { readonly assumed: number }) {
  return (
    <section aria-labelledby="result" class={notice ? 'result old' : 'result'}>
      <h2 id="result">Result</h2>
      <p role="status" class={notice ? 'notice' : 'sr-only'}>
        {notice}
      </p>
      {result && <Lines {...result} assumed={assumed} />}
    </section>
  );
}

function Lines({ lines, picture, says, assumed }: Result & { readonly assumed: number }) {
  return (
    <>
      <dl class="lines">
        {lines.map(({ label, text, note, mood }) => (
          <div key={label} class={mood}>
            <dt>{label}</dt>
            <dd>
              <b>{text}</b>
              {note && <span class="hint">{note}</span>}
            </dd>
          </div>
        ))}
      </dl>
      {assumed > 0 && (
        <p class="hint">
          {assumed === 1 ? 'For one field' : `For ${assumed} fields`} the usual value stands in. It is only as good as
          that.
        </p>
      )}
      <figure class="chart">
        {picture.kind === 'plot' ? <Plot {...picture} says={says} /> : <JoinedSpeakers {...picture} says={says} />}
        {picture.kind === 'plot' && <Key curves={picture.curves} />}
        <figcaption>{says}</figcaption>
        {picture.kind === 'plot' && <Figures {...picture} />}
      </figure>
    </>
  );
}
