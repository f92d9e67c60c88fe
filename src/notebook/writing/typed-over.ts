/** What was typed into a field, put into the file that it shows: a field knows one mark for the end of a line, a file may have others. */
import { asShown, endingOf } from './lines';

/** Only what differs is written, so that all else stays as it stands in the file. */
export function typedOver(text: string, typed: string): string {
  const shown = asShown(text);
  const most = Math.min(shown.length, typed.length);
  let before = 0;
  while (before < most && shown[before] === typed[before]) before += 1;
  let after = 0;
  while (after < most - before && shown.at(-1 - after) === typed.at(-1 - after)) after += 1;
  const put = typed.slice(before, typed.length - after);
  const upper = text.slice(0, inFile(text, before));
  const lower = text.slice(inFile(text, shown.length - after));
  const written = upper + put.replaceAll('\n', endingOf(text)) + lower;
  // Of a file that mixes its marks, two may come to stand side by side and be read as one.
  return asShown(written) === typed ? written : (/^\ufeff/.exec(text)?.[0] ?? '') + typed;
}

/** Where in the file a letter stands that the field shows. */
function inFile(text: string, at: number): number {
  let file = text.startsWith('\ufeff') ? 1 : 0;
  for (let shown = 0; shown < at; shown += 1) file += text.startsWith('\r\n', file) ? 2 : 1;
  return file;
}
