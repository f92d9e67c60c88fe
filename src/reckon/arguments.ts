/** What is asked on the command line: a boat, names, and entries written over it. */
import { parseArgs } from 'node:util';
import type { AskedFurther } from './further';

export interface Request {
  /** A starter's id or the path of a boat file. */
  readonly boat: string;
  /** Quantities, at least one. */
  readonly names: readonly string[];
  /** Entries by the quantity's name, in the order given. */
  readonly set: ReadonlyMap<string, string>;
  /** What is asked of the quantities beyond what they come to; null where nothing is. */
  readonly further: AskedFurther | null;
}

/** Options of what is asked further, each said once. */
const FURTHER = ['against', 'from', 'to', 'wanted', 'by'] as const;
type Further = Partial<Record<(typeof FURTHER)[number], string>>;
const isFurther = (name: string): name is (typeof FURTHER)[number] =>
  (FURTHER as readonly string[]).includes(name);

/** Reads the words after the command's own name: what is asked, 'help', or what is wrong as sentences. */
export function readArguments(
  args: readonly string[],
): Request | 'help' | { readonly faults: readonly string[] } {
  const { tokens } = parseArgs({
    args: [...args],
    options: {
      set: { type: 'string', multiple: true },
      help: { type: 'boolean', short: 'h' },
      ...Object.fromEntries(FURTHER.map((name) => [name, { type: 'string' as const }])),
    },
    allowPositionals: true,
    // Its own sentences speak of programs; ours speak of the boat.
    strict: false,
    tokens: true,
  });
  if (tokens.some((token) => token.kind === 'option' && token.name === 'help')) return 'help';

  const faults: string[] = [];
  const words: string[] = [];
  const set = new Map<string, string>();
  const said: Further = {};
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    else if (token.kind === 'option' && token.name === 'set') {
      const fault = addEntry(set, token.value);
      if (fault !== undefined) faults.push(fault);
    } else if (token.kind === 'option' && isFurther(token.name)) {
      if (!token.value?.trim())
        faults.push(`--${token.name} has nothing after it; --help says what it takes`);
      else if (said[token.name] !== undefined) faults.push(`--${token.name} is said twice`);
      else said[token.name] = token.value.trim();
    } else if (token.kind === 'option') {
      faults.push(
        `there is no option "${token.rawName}"; there are --set NAME='ENTRY', --against, --wanted and --help, which says more`,
      );
    }
  }
  const [boat, ...names] = words;
  if (boat === undefined) faults.push('name a boat, then the quantities to reckon; --help says how');
  else if (names.length === 0) faults.push(`name the quantities to reckon after "${boat}"; --help says how`);
  const further = furtherIn(said, names);
  if (further && 'fault' in further) faults.push(further.fault);
  return boat === undefined || faults.length > 0 || (further && 'fault' in further)
    ? { faults }
    : { boat, names, set, further };
}

/** What is asked further, or what is wrong with it as a sentence. */
function furtherIn(
  { against, from, to, wanted, by }: Further,
  names: readonly string[],
): AskedFurther | { readonly fault: string } | null {
  const isBack = wanted !== undefined || by !== undefined;
  if (against !== undefined && isBack)
    return { fault: '--against and --wanted are two questions; ask one at a time' };
  if (against === undefined && (from !== undefined || to !== undefined))
    return { fault: '--from and --to are the ends of --against NAME, which is missing' };
  if (against !== undefined) return { against, from: from ?? '', to: to ?? '' };
  if (!isBack) return null;
  if (wanted === undefined) return { fault: `--by ${by} goes with what is wanted; write --wanted 'ENTRY'` };
  if (by === undefined)
    return { fault: '--wanted says what is wanted; write --by NAME for the number to change' };
  if (names.length > 1)
    return { fault: 'one quantity at a time is worked backwards; name one before --wanted' };
  const [, aim = 'exactly', entry = wanted] = /^(at most|at least)\s+(.+)$/is.exec(wanted) ?? [];
  return { wanted: aim.toLowerCase() as 'exactly' | 'at most' | 'at least', entry, by };
}

/** Adds `NAME=ENTRY` to the entries; the sentence for one that is not so. */
function addEntry(set: Map<string, string>, text: string | undefined): string | undefined {
  const [, name = '', entry = ''] = /^\s*([^=\s]+)\s*=\s*(.*?)\s*$/s.exec(text ?? '') ?? [];
  if (name === '') {
    return text === undefined
      ? "--set has nothing after it; write --set NAME='ENTRY'"
      : `"${text}" after --set gives no entry to a name; write --set NAME='ENTRY'`;
  }
  if (entry === '') return `${name} is set to nothing; write --set ${name}='ENTRY'`;
  if (set.has(name)) return `${name} is set twice`;
  set.set(name, entry);
  return undefined;
}
