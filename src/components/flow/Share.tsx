import { useState } from 'preact/hooks';
import type { Case } from '../../case/events.ts';
import { toLink } from '../../case/link.ts';

/** A link that holds the whole case behind its `#`, so that nothing is sent anywhere until somebody sends it. */
export function Share({ case: it, title }: { readonly case: Case; readonly title: string }) {
  const [link, setLink] = useState<string>();
  const [told, setTold] = useState('');

  const make = async () => {
    const made = `${location.origin}${location.pathname}#${await toLink(it)}`;
    setLink(made);
    try {
      if (navigator.share) await navigator.share({ title, url: made });
      else await navigator.clipboard.writeText(made).then(() => setTold('Copied. Paste it into a message.'));
    } catch {
      setTold('Mark the link below and copy it.');
    }
  };
  return (
    <div>
      <button type="button" class="plain" onClick={make}>
        Send this case to somebody
      </button>
      <p role="status" class="hint">
        {told}
      </p>
      {link && (
        <div class="reading link">
          <label for="case-link">The link. It opens this case in any browser.</label>
          <input id="case-link" type="text" readOnly value={link} onFocus={(event) => event.currentTarget.select()} />
        </div>
      )}
    </div>
  );
}
