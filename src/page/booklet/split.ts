/** Parts what is higher than a page between its lines, rows and items, as paper would. */

/** px; what stands lower than this on the screen's grid is a rounding. */
const HAIR = 0.5;

/** The element in parts, each no higher than the room as far as it can be parted; they stand where it stood. */
export function parted(element: HTMLElement, room: number): HTMLElement[] {
  const parts = [element];
  for (let last = element; last.getBoundingClientRect().height > room + HAIR; last = parts.at(-1)!) {
    const rest = cutAt(last, last.getBoundingClientRect().top + room);
    if (!rest) break;
    last.after(rest);
    parts.push(rest);
  }
  return parts;
}

/** Cuts off what lies below a line across the page, and gives it; null where nothing can be cut off. */
function cutAt(element: HTMLElement, line: number): HTMLElement | null {
  const range = document.createRange();
  range.selectNodeContents(element);
  const cut = lastAbove(element, line);
  if (!cut) return null;
  range.setStart(cut.node, cut.at);
  const rest = element.cloneNode(false) as HTMLElement;
  rest.append(range.extractContents());
  goOnCounting(element, rest);
  return rest.textContent?.trim() === '' ? null : rest;
}

/** A numbered list that is parted goes on where it was. */
function goOnCounting(before: HTMLElement, after: HTMLElement): void {
  const [from, to] = [before, after].map((one) =>
    one.matches('ol') ? one : one.querySelector(':scope > ol'),
  );
  if (from instanceof HTMLOListElement && to instanceof HTMLOListElement)
    to.start = from.start + from.querySelectorAll(':scope > li').length;
}

/** The first place whose end lies below the line, if it isn't the very first. */
function lastAbove(element: HTMLElement, line: number): { readonly node: Node; readonly at: number } | null {
  const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  let isFirst = true;
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    for (const { index } of (node.nodeValue ?? '').matchAll(/\S+/g)) {
      range.setStart(node, index);
      range.setEnd(node, index + 1);
      if (range.getBoundingClientRect().bottom > line) {
        const whole = wholeOf(node, element);
        if (isFirst) return null;
        if (!whole) return { node, at: index };
        const { parentNode } = whole;
        const at = parentNode ? [...parentNode.childNodes].indexOf(whole) : -1;
        return parentNode && at > 0 ? { node: parentNode, at } : null;
      }
      isFirst = false;
    }
  }
  return null;
}

/** A row, an item or a picture is not cut through. */
function wholeOf(node: Node, within: Element): Element | null {
  const whole = node.parentElement?.closest('tr, li, svg') ?? null;
  return whole && within.contains(whole) && whole !== within ? whole : null;
}
