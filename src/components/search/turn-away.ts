/** What was found lies over the page. It goes away when somebody turns to what is beside or under it. */
export function turnAway(place: HTMLElement, field: HTMLElement): void {
  const away = (is: boolean) => place.classList.toggle('away', is);
  const isIn = (target: EventTarget | null) => target instanceof Node && place.contains(target);
  for (const event of ['focus', 'input', 'click']) field.addEventListener(event, () => away(false));
  document.addEventListener('pointerdown', ({ target }) => {
    if (!isIn(target)) away(true);
  });
  // A tap on a line takes the keyboard from the field to nothing in some browsers: that is no turning away.
  place.addEventListener('focusout', ({ relatedTarget }) => {
    if (relatedTarget !== null && !isIn(relatedTarget)) away(true);
  });
  place.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') away(true);
  });
}
