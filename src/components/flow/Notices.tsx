import type { useCase } from '../../browser/use-case.ts';

interface Props {
  readonly session: ReturnType<typeof useCase>;
}

/** What the page has to say of the case itself, before the wire of its answers begins. */
export function Notices({ session }: Props) {
  const { notices, keptAside, bikeChanged, reopenAside, takeMyBike } = session;
  return (
    <>
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
    </>
  );
}
