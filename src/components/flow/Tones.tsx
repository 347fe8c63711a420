import { TONE_PEAK_DBFS, TONES } from '../../sound/tone.ts';
import type { ToneName } from '../../steps/step.ts';

/** The test tones of a step, to play here or to take away. The address of their folder is that of the page's site. */
export function Tones({ names, folder }: { readonly names: readonly ToneName[]; readonly folder: string }) {
  const tones = TONES.filter(({ name }) => names.includes(name));
  return (
    <div class="tones">
      {tones.map(({ name, frequencyHz, file }) => (
        <div key={name} class="tone">
          <b>{frequencyHz} Hz</b>
          {/* biome-ignore lint/a11y/useMediaCaption: a steady test tone has no words */}
          <audio controls loop preload="none" src={folder + file} aria-label={`${frequencyHz} Hz tone`} />
          <a href={folder + file} download={`tone-${file}`}>
            Download
          </a>
        </div>
      ))}
      <p class="hint">
        All tones peak at {TONE_PEAK_DBFS} dBFS, 20 seconds, mono. Phone volume full, then the bike’s volume does the
        work.
      </p>
    </div>
  );
}
