// Texts in the one-byte encoding of a PDF's standard fonts (WinAnsi, PDF 32000-1:2008, annex D.2).

/** Characters that WinAnsi has outside Latin-1. */
const PLACES: Readonly<Record<string, number>> = {
  '€': 0x80,
  '…': 0x85,
  '‘': 0x91,
  '’': 0x92,
  '“': 0x93,
  '”': 0x94,
  '•': 0x95,
  '–': 0x96,
  '—': 0x97,
};

/** Characters that it lacks, in others that say the same. */
const INSTEAD: Readonly<Record<string, string>> = {
  '−': '-',
  '′': "'",
  '″': '"',
  '⁄': '/',
  '⅛': ' 1/8',
  '⅜': ' 3/8',
  '⅝': ' 5/8',
  '⅞': ' 7/8',
  '≤': '<=',
  '≥': '>=',
  '→': '->',
  '←': '<-',
};

/** One character a byte. Accents that can't be written are left off; what else can't be is a question mark. */
export function ansi(text: string): string {
  return Array.from(text, byteFor).join('');
}

function byteFor(character: string): string {
  const place = PLACES[character];
  if (place !== undefined) return String.fromCharCode(place);
  const instead = INSTEAD[character];
  if (instead !== undefined) return instead;
  const code = character.codePointAt(0) ?? 0;
  if ((code >= 0x20 && code <= 0x7e) || (code >= 0xa0 && code <= 0xff)) return character;
  if (/\s/u.test(character) || code < 0x20) return ' ';
  const plain = character.normalize('NFD').charAt(0);
  return plain >= '!' && plain <= '~' ? plain : '?';
}
