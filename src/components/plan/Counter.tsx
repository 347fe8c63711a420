import type { Sheet } from '../../plan/verdict.ts';
import { withUnit } from '../flow/with-unit.ts';

/** What a counter needs: the words for whoever selects the profile, the gain, the speakers, the check. It is printed, too. */
export function Counter({ sheet }: { readonly sheet: Sheet }) {
  return (
    <section class="counter">
      <h2>For the counter</h2>
      {sheet.parts.map(({ title, lines }) => (
        <div key={title}>
          <h3>{title}</h3>
          <ul>
            {lines.map((line) => (
              <li key={line}>{withUnit(line)}</li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}
