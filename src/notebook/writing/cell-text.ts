/** A calculator cell as it is written in a notebook. */
import { isEntry } from '../text/fence';

/**
 * @param name the name of its own; without one it is the plain cell, which takes no lines
 * @param entries what its inputs begin with, by their keys; one that a line can't hold is left out
 */
export function cellText(
  cell: string,
  name?: string,
  entries: Readonly<Record<string, string>> = {},
): string {
  const lines = Object.entries(entries)
    .filter(([, entry]) => isEntry(entry))
    .map(([key, entry]) => `${key} = ${entry.trim()}\n`);
  return name === undefined
    ? `\`\`\`cell ${cell}\n\`\`\``
    : `\`\`\`cell ${cell} as ${name}\n${lines.join('')}\`\`\``;
}

/**
 * A name for one more of them: `scarf` gives `scarf2`, and `keelScarf2` gives `keelScarf3`.
 * @param isFree whether nothing else goes by a name
 */
export function nameBeside(name: string, isFree: (name: string) => boolean): string {
  const stem = name.replace(/\d+$/, '');
  for (let n = 2; ; n += 1) if (isFree(`${stem}${n}`)) return `${stem}${n}`;
}
