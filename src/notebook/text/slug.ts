/** Words as a name for an address: `What goes wrong?` -> `what-goes-wrong`. */
export function slug(words: string): string {
  return words
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036f'’]/g, '')
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '');
}

/** The same of a file: `shed/The build.md` -> `the-build`. Names that the language itself has are no notebook's. */
export function idOf(fileName: string): string {
  const id = slug(fileName.replace(/^.*[\\/]/, '').replace(/\.(md|markdown|txt)$/i, '')) || 'notebook';
  return id in {} || id === 'prototype' ? `${id}-notebook` : id;
}
