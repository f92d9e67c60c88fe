/** Lengths as a tape shows them: feet, inches and fractions; and as tables of offsets have them, in eighths. */
import { type Bound, ROUND, wholeMarks } from './figures';
import { INCH } from './si';

/** A length cut to the marks of a tape. */
export interface Marked {
  readonly text: string;
  readonly spoken: string;
  /** The mark in metres. */
  readonly mark: number;
}

/** From two feet up lengths are written in feet and inches. */
const feetFrom = 24;

/**
 * `metres` at the nearest of `parts` marks an inch, a limit at the next on its own side: `14 5/8 in`, `5' 3 1/2"`. The
 * whole inches must be exact doubles: lengths beyond some 10^11 m are not for tapes.
 */
export function onTape(metres: number, parts: number, bound?: Bound): Marked {
  const signed = wholeMarks((metres / INCH) * parts, bound);
  const marks = Math.abs(signed);
  const sign = signed < 0 ? '-' : '';
  const mark = (signed * INCH) / parts;
  const inches = Math.floor(marks / parts);
  const fraction = fractionOf(marks % parts, parts);
  if (inches < feetFrom) {
    return {
      text: `${sign}${joined(inches, fraction, ' ')} in`,
      mark,
      spoken: minus(sign) + sayInches(inches, fraction),
    };
  }
  const [feet, rest] = [Math.floor(inches / 12), inches % 12];
  const spoken = rest === 0 && fraction === '' ? `${feet} feet` : `${feet} feet ${sayInches(rest, fraction)}`;
  return {
    text: `${sign}${feet}' ${rest}${fraction && ` ${fraction}`}"`,
    mark,
    spoken: minus(sign) + spoken,
  };
}

/** Marks to an inch, in halves, quarters, eighths and so on, that are no coarser than a tolerance: 64 at most. */
export function marksWithin(metres: number): number {
  return Math.min(64, 2 ** Math.max(0, Math.ceil(Math.log2(INCH / (metres * ROUND)))));
}

function sayInches(inches: number, fraction: string): string {
  if (inches === 0 && fraction !== '') return `${fraction} of an inch`;
  return `${joined(inches, fraction, ' and ')} ${inches === 1 && fraction === '' ? 'inch' : 'inches'}`;
}

function minus(sign: string): string {
  return sign && 'minus ';
}

/** `metres` in feet, inches and eighths, with `+` for a sixteenth more: `5-3-4+`. */
export function inEighths(metres: number): Marked {
  const sixteenths = Math.round((Math.abs(metres) / INCH) * 16);
  const sign = metres < 0 && sixteenths > 0 ? '-' : '';
  const eighths = Math.floor(sixteenths / 2);
  const [feet, inches, rest] = [Math.floor(eighths / 96), Math.floor(eighths / 8) % 12, eighths % 8];
  const more = sixteenths % 2 === 1;
  return {
    text: `${sign}${feet}-${inches}-${rest}${more ? '+' : ''}`,
    mark: ((sign ? -1 : 1) * sixteenths * INCH) / 16,
    spoken: `${minus(sign)}${feet} ${feet === 1 ? 'foot' : 'feet'}, ${sayInches(inches, '')}, ${rest} ${rest === 1 ? 'eighth' : 'eighths'}${more ? ' and a sixteenth' : ''}`,
  };
}

/** `10` of 16 as `5/8`; empty for none. */
function fractionOf(top: number, bottom: number): string {
  if (top === 0) return '';
  return top % 2 === 0 ? fractionOf(top / 2, bottom / 2) : `${top}/${bottom}`;
}

function joined(whole: number, fraction: string, by: string): string {
  if (fraction === '') return String(whole);
  return whole === 0 ? fraction : `${whole}${by}${fraction}`;
}

/**
 * How far past its mark a length lies, in inches: `0.01 in strong`, `1/64 in scant`. Empty for less than
 * five thousandths, which no pencil shows.
 */
export function pastInches(metres: number): string {
  const inches = metres / INCH;
  if (Math.abs(inches) < 0.005) return '';
  const way = inches > 0 ? 'strong' : 'scant';
  const part = [1 / 64, 1 / 32].find((fraction) => Math.abs(Math.abs(inches) - fraction) < 5e-4);
  return part === undefined ? `${Math.abs(inches).toFixed(2)} in ${way}` : `1/${1 / part} in ${way}`;
}

/** The same in millimetres, past a whole one: `0.4 mm strong`. Empty for less than a tenth. */
export function pastMillimetres(metres: number): string {
  const millimetres = Math.abs(metres * 1000);
  return millimetres < 0.05 ? '' : `${millimetres.toFixed(1)} mm ${metres > 0 ? 'strong' : 'scant'}`;
}

/** A length with what the tape leaves out, the article before it, and what it measures behind it. */
const BEHIND =
  /([.!?] )?(\b(?:an?|the) )?([−-]?(?:\d+'\s)?[\d/]+(?:\s\d+\/\d+)?(?:"|\s(?:in|mm)))\s(strong|scant)(?=(\s(?:deep|long|wide|thick|high|across|apart|more)\b)?)/gi;

/**
 * A sentence with what the tape leaves out before a length that an article leads or its measure follows: `a scant
 * 3/4 in deep`, `a strong 11/16 in board`; there is no `3/4 in scant deep`. Elsewhere it stays behind, as at a mark.
 */
export function putBefore(says: string): string {
  return says.replace(
    BEHIND,
    (
      all: string,
      stop: string = '',
      article: string = '',
      length: string = '',
      way: string = '',
      measure: string = '',
      at: number = 0,
    ) => {
      if (article + measure === '') return all;
      const led = article.replace(/an $/i, (an: string) => `${an.charAt(0)} `);
      return `${stop}${led || (stop || at === 0 ? 'A ' : 'a ')}${way} ${length}`;
    },
  );
}
