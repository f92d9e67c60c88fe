/** Names of stations where there is little room for them. */
import type { Station } from '../../boat';

/** `frame 3` is 3 on a drawing, `stern transom` is transom. */
export function shortName(label: string): string {
  return /\d+[a-z]?/i.exec(label)?.[0] ?? label.split(/\s+/).at(-1)!; // split gives at least one
}

/** An end by its own name; a bow that is a transom is called so, whatever the table calls it. */
export function endName({ label, role }: Pick<Station, 'label' | 'role'>): string {
  return role === 'bow transom' && !/transom/i.test(label) ? role : label;
}
