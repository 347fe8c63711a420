/** An element with a text in it. Never markup: what is shown may have been typed. */
export function element(name: string, text: string, className = ''): HTMLElement {
  const made = document.createElement(name);
  made.textContent = text;
  if (className !== '') made.className = className;
  return made;
}
