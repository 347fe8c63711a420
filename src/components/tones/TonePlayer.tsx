import { useEffect, useRef, useState } from 'preact/hooks';

interface Props {
  /** `400 Hz`, as it is said. */
  readonly pitch: string;
  /** The address of the tone. */
  readonly src: string;
  /** The name of the file when it is taken away. */
  readonly file: string;
}

type State = 'still' | 'playing' | 'failed';

/** One tone at a time comes out of a phone: starting one stops the other. */
let sounding: HTMLAudioElement | undefined;

/** One large button that plays a tone round and round and stops it, and a link that takes the tone away. */
export function TonePlayer({ pitch, src, file }: Props) {
  const audio = useRef<HTMLAudioElement>(null);
  const [state, setState] = useState<State>('still');
  // A tone that goes on while the next question is on the screen would be measured by nobody and heard by all.
  useEffect(() => () => audio.current?.pause(), []);

  const toggle = () => {
    const tone = audio.current;
    if (!tone) return;
    if (state === 'playing') {
      tone.pause();
      return;
    }
    if (sounding !== tone) sounding?.pause();
    sounding = tone;
    tone.currentTime = 0;
    // Stopped before it began is no failure.
    tone.play().catch((error: DOMException) => setState(error.name === 'AbortError' ? 'still' : 'failed'));
  };
  return (
    <div class="tone">
      {/* biome-ignore lint/a11y/useMediaCaption: a steady test tone has no words */}
      <audio
        ref={audio}
        loop
        preload="none"
        src={src}
        onPlaying={() => setState('playing')}
        onPause={() => setState('still')}
        onError={() => setState('failed')}
      />
      <button type="button" class={`play needs-script${state === 'playing' ? ' playing' : ''}`} onClick={toggle}>
        {state === 'playing' ? 'Stop' : 'Play'} {pitch.replace(' ', '\u00A0')}
      </button>
      <a class="button" href={src} download={file}>
        Download<span class="sr-only"> {file}</span>
      </a>
      <p role="status" class={state === 'failed' ? 'reading-error' : 'sr-only'}>
        {state === 'failed' && 'This browser does not play it. Download it, or use a memory stick.'}
        {state === 'playing' && `${pitch} is playing.`}
      </p>
    </div>
  );
}
