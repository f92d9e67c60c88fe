/** The text of a file that a builder chose or dropped, or why it is none. */
import { LONGEST_NOTEBOOK } from '../../boat/file/own-notebooks';

/** Bytes; a file of more is not even read. */
const LARGEST = 4 * LONGEST_NOTEBOOK;

/** Why a file is not opened, as the end of a sentence. */
export interface Refused {
  readonly because: string;
}

const TOO_LONG = `it is too long; a notebook may have ${LONGEST_NOTEBOOK} characters`;

export async function notebookText(file: Blob): Promise<string | Refused> {
  if (file.size > LARGEST) return { because: TOO_LONG };
  const text = decoded(await file.arrayBuffer());
  if (text.length > LONGEST_NOTEBOOK) return { because: TOO_LONG };
  if (text.includes('\0')) return { because: 'it is not a text' };
  return text.trim() === '' ? { because: 'it is empty' } : text;
}

/** Editors of old write letters beyond the plain ones in the code of Western Windows. */
function decoded(bytes: ArrayBuffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
