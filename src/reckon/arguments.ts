/** What is asked on the command line: a boat, names, and entries written over it. */
import { parseArgs } from 'node:util';

export interface Request {
  /** A starter's id or the path of a boat file. */
  readonly boat: string;
  /** Quantities, at least one. */
  readonly names: readonly string[];
  /** Entries by the quantity's name, in the order given. */
  readonly set: ReadonlyMap<string, string>;
}

/** Reads the words after the command's own name: what is asked, 'help', or what is wrong as sentences. */
export function readArguments(
  args: readonly string[],
): Request | 'help' | { readonly faults: readonly string[] } {
  const { tokens } = parseArgs({
    args: [...args],
    options: { set: { type: 'string', multiple: true }, help: { type: 'boolean', short: 'h' } },
    allowPositionals: true,
    // Its own sentences speak of programs; ours speak of the boat.
    strict: false,
    tokens: true,
  });
  if (tokens.some((token) => token.kind === 'option' && token.name === 'help')) return 'help';

  const faults: string[] = [];
  const words: string[] = [];
  const set = new Map<string, string>();
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    else if (token.kind === 'option' && token.name === 'set') {
      const fault = addEntry(set, token.value);
      if (fault !== undefined) faults.push(fault);
    } else if (token.kind === 'option') {
      faults.push(`there is no option "${token.rawName}"; there are --set NAME='ENTRY' and --help`);
    }
  }
  const [boat, ...names] = words;
  if (boat === undefined) faults.push('name a boat, then the quantities to reckon; --help says how');
  else if (names.length === 0) faults.push(`name the quantities to reckon after "${boat}"; --help says how`);
  return boat === undefined || faults.length > 0 ? { faults } : { boat, names, set };
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
