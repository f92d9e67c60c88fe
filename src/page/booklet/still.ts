/** A part of the page as it stands, for paper: nothing in it is pressed, filled in or followed. */

export function still(part: Element): HTMLElement {
  const copy = part.cloneNode(true) as HTMLElement;
  const originals = [...part.querySelectorAll<HTMLElement>('input, select, textarea')];
  for (const [n, field] of [...copy.querySelectorAll('input, select, textarea')].entries())
    field.replaceWith(written(originals[n]!)); // the copy has as many
  for (const link of copy.querySelectorAll('button.live, a, summary')) {
    const words = document.createElement(link.matches('.live') ? 'b' : 'span');
    words.append(...link.childNodes);
    link.replaceWith(words);
  }
  for (const key of copy.querySelectorAll('button, [role="status"], .cell')) key.remove();
  // What a drawing names is in the drawing.
  for (const one of [copy, ...copy.querySelectorAll('[id]:not(svg *)')]) one.removeAttribute('id');
  return copy;
}

function written(field: HTMLElement): HTMLElement {
  const words = document.createElement('span');
  if (field instanceof HTMLInputElement && /^(?:checkbox|radio)$/.test(field.type)) {
    words.className = 'booklet-box';
    words.textContent = field.checked ? '×' : '';
  } else if (field instanceof HTMLSelectElement)
    words.textContent = field.selectedOptions[0]?.textContent ?? '';
  else {
    const { value } = field as HTMLInputElement | HTMLTextAreaElement;
    words.textContent = value;
    // A line to write on.
    if (value === '') words.className = 'booklet-blank';
  }
  return words;
}
