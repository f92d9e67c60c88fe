/**
 * Fields that a cell shows of the boat's numbers and the shop's: what is typed there is theirs, and every cell follows.
 * Label, preset, limits, step and note are said where they are declared (src/boat/scantlings.ts, shop.ts and others).
 */
import type { Declared } from '../../boat';
import { declaredAs } from '../../boat/quantities/declared';
import { isIssue, type KindId, plainShown, read } from '../../measure';
import type { ChoiceSpec, InputSpec } from './define';

/** What the owner says, the cell does not. */
type Said =
  | 'kind'
  | 'label'
  | 'from'
  | 'preset'
  | 'presetInch'
  | 'min'
  | 'max'
  | 'step'
  | 'note'
  | 'owners'
  | 'otherwise';

/** Where the link turns on the part in hand, the cell says which of its parts that is: `Thickness screwed on`. */
interface Role {
  readonly label?: string;
}

export type OfBoat = Omit<InputSpec, Said> & Role;
export type ChosenOfBoat = Omit<ChoiceSpec, Said | 'options'> & Role;

/**
 * Asks for a number of the boat's by its name: `keelson.thickness`, `{part}.width`. Limits are as wide as those of any
 * owner that the link may lead to.
 * @throws TypeError where no such number is declared
 */
export function fromBoat(link: string, more: OfBoat = {}): InputSpec {
  const owners = ownersOf([link, ...Object.values(more.fromBy?.links ?? {})]);
  const [{ kind, step, otherwise }] = owners;
  const widest = (key: 'min' | 'max', sign: 1 | -1) => {
    const texts = owners.map((owner) => owner[key]);
    if (texts.includes(undefined)) return undefined;
    return texts.reduce((wide, text) =>
      sign * valueOf(text!, kind) > sign * valueOf(wide!, kind) ? text : wide,
    );
  };
  const [min, max] = [widest('min', -1), widest('max', 1)];
  return {
    kind,
    from: link,
    ...said(link, owners),
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
    ...(step === undefined ? {} : { step }),
    ...(otherwise && { otherwise }),
    ...more,
  };
}

/** Asks for a number of the shop's: `kerf`. */
export const fromShop = (key: string, more: OfBoat = {}): InputSpec => fromBoat(`shop.${key}`, more);

/** Asks for a choice of the boat's: `{part}.timber`. */
export function chosenFromBoat(link: string, more: ChosenOfBoat = {}): ChoiceSpec {
  const owners = ownersOf([link, ...Object.values(more.fromBy?.links ?? {})]);
  return { kind: 'choice', from: link, options: owners[0].options ?? [], ...said(link, owners), ...more };
}

type Owners = readonly [Declared, ...Declared[]];

function ownersOf(links: readonly string[]): Owners {
  const [first, ...others] = [...new Set(links.flatMap(declaredAs))];
  if (!first) throw new TypeError(`neither boat nor shop declares ${links.join(', ')}`);
  return [first, ...others];
}

/** In the words of the first. */
function said(link: string, owners: Owners) {
  const [{ label, brief, source, preset, presetInch, withoutBoat }] = owners;
  return {
    label: link.includes('{') ? (brief ?? label) : label,
    preset: withoutBoat ?? preset,
    ...(presetInch === undefined ? {} : { presetInch }),
    ...(source === undefined ? {} : { note: source }),
    owners,
  };
}

/** Our own text: one that can't be read is a slip of ours. */
function valueOf(text: string, kind: KindId): number {
  const reading = read(text, { kind, shown: plainShown, field: 'limit' });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  if (isIssue(value)) throw new TypeError(`the limit "${text}" can't be read: ${value.issue}`);
  return value;
}
