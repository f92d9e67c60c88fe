/**
 * Fields that a cell shows of the boat's numbers and the shop's: what is typed there is theirs, and every cell follows.
 * Label, preset, limits, step and note are said where they are declared (src/boat/quantities: scantlings.ts, shop.ts and
 * others); `fromBoat` and `fromShop` ask for them by name.
 */
import type { Declared } from '../../boat';
import type { ChoiceSpec, InputSpec } from './define';
import { ownNumber } from './own-text';

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
 * A number. Limits are as wide as those of any owner that the link may lead to.
 * @param among what is declared
 * @throws TypeError where no such number is declared
 */
export function askNumber(among: readonly Declared[], link: string, more: OfBoat): InputSpec {
  const owners = ownersOf(among, [link, ...Object.values(more.fromBy?.links ?? {})]);
  const [{ kind, step, otherwise }] = owners;
  const widest = (key: 'min' | 'max', sign: 1 | -1) => {
    const texts = owners.map((owner) => owner[key]);
    if (texts.includes(undefined)) return undefined;
    return texts.reduce((wide, text) =>
      sign * ownNumber(text!, kind) > sign * ownNumber(wide!, kind) ? text : wide,
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

/** A choice. */
export function askChoice(among: readonly Declared[], link: string, more: ChosenOfBoat): ChoiceSpec {
  const owners = ownersOf(among, [link, ...Object.values(more.fromBy?.links ?? {})]);
  return { kind: 'choice', from: link, options: owners[0].options ?? [], ...said(link, owners), ...more };
}

type Owners = readonly [Declared, ...Declared[]];

function ownersOf(among: readonly Declared[], links: readonly string[]): Owners {
  const [first, ...others] = [...new Set(links.flatMap((link) => matching(among, link)))];
  if (!first) throw new TypeError(`neither boat nor shop declares ${links.join(', ')}`);
  return [first, ...others];
}

/** One by its name, of `{part}.thickness` all thicknesses; none where the link leads to what follows from others. */
function matching(among: readonly Declared[], link: string): readonly Declared[] {
  const pattern = new RegExp(`^${link.replaceAll('.', '\\.').replaceAll(/\{\w+\}/g, '\\w+')}$`);
  return link === '' ? [] : among.filter(({ name }) => pattern.test(name));
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
