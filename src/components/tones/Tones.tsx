import { TONES } from '../../sound/tone.ts';
import type { ToneName } from '../../steps/step.ts';
import { pitchOf } from './pitch.ts';
import { TonePlayer } from './TonePlayer.tsx';

/** The test tones of a step, to play here or to take away. The address of their folder is that of the page's site. */
export function Tones({ names, folder }: { readonly names: readonly ToneName[]; readonly folder: string }) {
  const tones = TONES.filter(({ name }) => names.includes(name));
  return (
    <div class="tones">
      {tones.map((tone) => (
        <TonePlayer key={tone.name} pitch={pitchOf(tone)} src={folder + tone.file} file={`tone-${tone.file}`} />
      ))}
      <p class="hint">It plays until you stop it, phone volume full.</p>
    </div>
  );
}
