import { useState } from 'preact/hooks';
import type { Seat } from '../../browser/seat.ts';
import { nameOf } from '../../steps/conditions.ts';
import { probesOf } from '../../steps/probes-of.ts';
import { type Answer, inWords, type ReadingStep, type Situation } from '../../steps/step.ts';
import { Tones } from '../tones/Tones.tsx';
import { ProbeDrawing } from './ProbeDrawing.tsx';
import { ReadingForm } from './ReadingForm.tsx';

interface Props {
  readonly step: ReadingStep;
  readonly situation: Situation;
  readonly typed: Readonly<Record<string, string>>;
  readonly fromLastTime: boolean;
  /** What was typed in this step and not sent, by field. */
  readonly draft: Readonly<Record<string, string>>;
  readonly showBandsAtOnce: boolean;
  readonly disabled: boolean;
  /** The address of the site's root. */
  readonly root: string;
  readonly seat: Seat;
  readonly notes: readonly string[];
  readonly onDraft: (texts: Readonly<Record<string, string>>) => void;
  readonly onAnswer: (answer: Answer, note?: string) => void;
}

/** The field of the volume step, among the readings that were typed and not sent. */
const VOLUME = 'volume step';

const mayHaveAmp = ({ rig }: Situation): boolean =>
  rig.rearFedBy === 'amp' || (rig.amps?.some((amp) => amp.drives !== 'front') ?? false);

const volumeNote = (short: string) => `${short}, volume step: `;

/** What a measurement needs on the screen: its tones, the drawing with the points of the reading in hand, the fields. */
export function Measuring({ root, seat, notes, onDraft, onAnswer, ...form }: Props) {
  const { step, situation } = form;
  const short = inWords(step.short, situation);
  const [reached, setReached] = useState(Object.keys(step.readings)[0] ?? '');
  const reading = step.readings[reached];
  const noted = notes.findLast((note) => note.startsWith(volumeNote(short)))?.slice(volumeNote(short).length) ?? '';
  const [volume, setVolume] = useState(form.draft[VOLUME] ?? noted);
  const [draft, setDraft] = useState(form.draft);
  const keep = (name: string, text: string) => {
    const next = { ...draft, [name]: text };
    setDraft(next);
    onDraft(next);
  };
  const said = volume.trim();
  const note = said === '' || said === noted ? undefined : volumeNote(short) + said;
  return (
    <>
      {step.tones && <ToneOf names={step.tones} folder={`${root}tones/`} folded={seat === 'phone'} />}
      {step.tones && (
        <p class="reading volume">
          <label for="volume-step">Volume step, as a note</label>
          <input
            id="volume-step"
            type="text"
            maxLength={40}
            autocomplete="off"
            value={volume}
            disabled={form.disabled}
            onInput={(event) => {
              setVolume(event.currentTarget.value);
              keep(VOLUME, event.currentTarget.value);
            }}
          />
        </p>
      )}
      <ProbeDrawing
        reading={reading?.label ?? short}
        probes={probesOf(step, reading, situation)}
        conditions={(step.conditions ?? []).map(nameOf)}
        onAmp={mayHaveAmp(situation)}
      />
      <ReadingForm
        {...form}
        reached={reached}
        onReach={setReached}
        onType={keep}
        onAnswer={(answer) => onAnswer(answer, note)}
      />
    </>
  );
}

/** Whoever is on the phone has the tone at the other end of the line, so here it is folded away. */
export function ToneOf({ folded, ...tones }: Parameters<typeof Tones>[0] & { readonly folded: boolean }) {
  if (!folded) return <Tones {...tones} />;
  return (
    <details>
      <summary>Play or download the tone</summary>
      <Tones {...tones} />
    </details>
  );
}
