import { readStored, type Saved, writeStored } from './storage.ts';

/** Who holds the page. The questions and what is known stay the same; wording and density change. */
export const SEATS = {
  bike: { name: 'At the bike', hint: 'You stand beside it. Short texts, large buttons.' },
  phone: { name: 'On the phone', hint: 'You talk somebody through. What to say stands first.' },
  learning: { name: 'Learning', hint: 'You want to know why. Every reason stays open.' },
} as const;
export type Seat = keyof typeof SEATS;

export const SEAT_KEY = 'sidestand.seat';
export const SEAT_CHANGE = 'seatchange';

/** The seat that a text names, or undefined. */
export const seatNamed = (text: unknown): Seat | undefined =>
  typeof text === 'string' && Object.hasOwn(SEATS, text) ? (text as Seat) : undefined;

/**
 * Runs in the head of every page, before anything is drawn: otherwise the words for another seat would flash up. The
 * security policy of the pages knows this text by its hash.
 */
export const SEAT_BEFORE_PAINT = `try{const s=JSON.parse(localStorage.getItem('${SEAT_KEY}'));if(${JSON.stringify(Object.keys(SEATS))}.includes(s))document.documentElement.dataset.seat=s}catch{}`;

/** The seat that the page shows now. */
export const currentSeat = (): Seat => seatNamed(document.documentElement.dataset['seat']) ?? 'bike';

/** The seat chosen on this device, if any. */
export const savedSeat = (): Seat | undefined => {
  const stored = readStored(SEAT_KEY, seatNamed);
  return stored.ok ? stored.value : undefined;
};

/** Changes the seat of this page, keeps it on this device, and tells whoever listens for `seatchange` on the window. */
export function takeSeat(seat: Seat): Saved {
  document.documentElement.dataset['seat'] = seat;
  const saved = writeStored(SEAT_KEY, seat);
  window.dispatchEvent(new CustomEvent<Seat>(SEAT_CHANGE, { detail: seat }));
  return saved;
}
