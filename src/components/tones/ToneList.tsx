import { formatQuantity } from '../../compute/quantity.ts';
import { TONES } from '../../sound/tone.ts';
import { TonePlayer } from './TonePlayer.tsx';

const USES = {
  '80hz': 'The low tone. Bass boost shows here.',
  '400hz': 'The middle tone. Most readings are taken with it.',
  '1khz': 'A high tone. Engine off against engine running.',
  '4khz': 'The highest tone. It goes to the tweeters: quietly and briefly.',
} as const satisfies Record<(typeof TONES)[number]['name'], string>;

/** All the tones, each with what it is for. */
export function ToneList({ folder }: { readonly folder: string }) {
  return (
    <ul class="tone-list">
      {TONES.map(({ name, file, frequencyHz }) => (
        <li key={name}>
          <h2 id={name}>{formatQuantity(frequencyHz, 'Hz')}</h2>
          <p>{USES[name]}</p>
          <TonePlayer pitch={formatQuantity(frequencyHz, 'Hz')} src={folder + file} file={`tone-${file}`} />
        </li>
      ))}
    </ul>
  );
}
