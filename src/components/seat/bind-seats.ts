import { currentSeat, SEAT_CHANGE, SEAT_KEY, savedSeat, seatNamed, takeSeat } from '../../browser/seat.ts';

/** Makes every seat control of the page (the list in the header, the buttons on the start page) show and change it. */

const lists = document.querySelectorAll<HTMLSelectElement>('select[data-seats]');
const buttons = document.querySelectorAll<HTMLInputElement>('input[data-seats]');

function show(): void {
  const seat = currentSeat();
  for (const list of lists) list.value = seat;
  for (const button of buttons) button.checked = button.value === seat;
}

function take({ currentTarget }: Event): void {
  const seat = seatNamed((currentTarget as HTMLSelectElement | HTMLInputElement).value);
  if (seat) takeSeat(seat);
}

/** Another tab, or a page that the browser had put to sleep, may have missed a change. */
function catchUp(): void {
  const seat = savedSeat();
  if (seat && seat !== currentSeat()) takeSeat(seat);
}

for (const control of [...lists, ...buttons]) control.addEventListener('change', take);
window.addEventListener(SEAT_CHANGE, show);
window.addEventListener('pageshow', (event) => event.persisted && catchUp());
window.addEventListener('storage', (event) => event.key === SEAT_KEY && catchUp());
show();
