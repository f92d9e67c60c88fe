/** What a word means, beside it, while the pointer is on it or the focus is: it can be pointed at, and Esc takes it away. */

const ID = 'word-said';

let shown: { readonly link: Element; readonly note: HTMLElement } | null = null;

export function sayOnPointing(): void {
  addEventListener('pointerover', ({ target, pointerType }) => {
    // A finger goes there at once.
    if (pointerType === 'touch' || !(target instanceof Element) || target.closest(`#${ID}`)) return;
    const link = target.closest('a.word');
    if (link) say(link);
    else if (shown && shown.link !== document.activeElement) hide();
  });
  addEventListener('focusin', ({ target }) => {
    const link = target instanceof Element && target.matches('a.word:focus-visible') ? target : null;
    if (link) say(link);
    else hide();
  });
  addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') hide();
  });
  addEventListener('hashchange', hide);
}

function say(link: Element): void {
  if (shown?.link === link) return;
  hide();
  const note = document.createElement('p');
  note.id = ID;
  note.className = ID;
  note.role = 'tooltip';
  note.textContent = link.getAttribute('data-says');
  document.body.append(note);
  const at = link.getBoundingClientRect();
  const room = document.documentElement.clientWidth - note.offsetWidth - 16;
  note.style.left = `${scrollX + Math.max(16, Math.min(at.left, room))}px`;
  const below = at.bottom + 4;
  const isBelow = below + note.offsetHeight < innerHeight;
  note.style.top = `${scrollY + (isBelow ? below : at.top - 4 - note.offsetHeight)}px`;
  link.setAttribute('aria-describedby', ID);
  shown = { link, note };
}

function hide(): void {
  shown?.link.removeAttribute('aria-describedby');
  shown?.note.remove();
  shown = null;
}
