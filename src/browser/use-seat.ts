import { useEffect, useState } from 'preact/hooks';
import { currentSeat, SEAT_CHANGE, type Seat } from './seat.ts';

/** The seat that the page shows. It starts as the one in the built page, so that the first render agrees with it. */
export function useSeat(): Seat {
  const [seat, setSeat] = useState<Seat>('bike');
  useEffect(() => {
    const show = () => setSeat(currentSeat());
    show();
    window.addEventListener(SEAT_CHANGE, show);
    return () => window.removeEventListener(SEAT_CHANGE, show);
  }, []);
  return seat;
}
