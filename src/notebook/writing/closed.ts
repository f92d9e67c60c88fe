/** A block that is being typed and not closed yet would take in all that stands below it. */

const OPENS = /^ {0,3}(`{3,}|~{3,})(.*)$/;

/** The same with a line that closes it; null where nothing is open. */
export function closed(markdown: string): string | null {
  let open: string | null = null;
  for (const line of markdown.split('\n')) {
    const [, fence = '', rest = ''] = OPENS.exec(line) ?? [];
    if (fence === '') continue;
    if (open === null) open = fence.startsWith('`') && rest.includes('`') ? null : fence;
    else if (fence.startsWith(open) && rest.trim() === '') open = null;
  }
  return open === null ? null : `${markdown}\n${open}`;
}
