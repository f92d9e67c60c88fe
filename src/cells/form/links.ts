/** Links: what fills a cell's field by default, and what its choices offer on the boat in hand. */
import type { BoatLists, Option, Read } from '../../boat';
import { wordsOf } from '../../measure';
import type { Cell, ChoiceSpec, InputSpec } from './define';
import { type Instance, isChoice } from './instance';

/** In a link, the instance itself: `{self}.usualLength` is a step of the same cell. */
export const SELF = 'self';

/**
 * The boat's own names of her lowest edge and panel, the chine under her sides and her highest edge, whatever they are
 * called; as most boats call them where there is no boat.
 */
export const atPlace = (lists: BoatLists | null): Readonly<Record<string, string | undefined>> =>
  lists
    ? {
        bottom: lists.panels[0]?.id,
        keel: lists.edges[0]?.id,
        chine: lists.chines.at(-1)?.id,
        sheer: lists.edges.at(-1)?.id,
      }
    : { bottom: 'bottom', keel: 'keel', chine: 'chine', sheer: 'sheer' };

/** What stands for a word of a link: the answer of the cell's own choice, else the edge in that place. */
export function wordFor({ cell, name }: Instance, key: string, lists: BoatLists | null, read: Read): string {
  return (key in cell.inputs ? undefined : atPlace(lists)[key]) ?? read.choice(`${name}.${key}`);
}

/** Puts the cell's choices into a link such as `{along}.length`. */
export function fillIn(template: string, chosen: (key: string) => string): string {
  return template.replace(/\{(\w+)\}/g, (_, key: string) => chosen(key));
}

/**
 * The options a choice offers on this boat; without a boat, a choice among her parts keeps its preset and is none.
 * @param set the answer that the notebook gives, which may be one of a boat's
 */
export function optionsOf(spec: ChoiceSpec, lists: BoatLists | null, set?: string): readonly Option[] {
  if (!lists) {
    const fixed =
      typeof spec.options === 'string' ? [] : spec.options.filter((one) => one.id === set && one.ofBoat);
    if (fixed.length > 0) return fixed;
    const own =
      typeof spec.options === 'string'
        ? []
        : spec.options.filter(({ ofBoat }) => ofBoat !== true).map(elsewhere);
    return own.length > 0 ? own : [{ id: spec.preset, label: wordsOf(spec.preset) }];
  }
  if (typeof spec.options !== 'string') return spec.options;
  const ofBoat = lists[spec.options];
  const none = spec.none ?? (ofBoat.length === 0 ? spec.without : undefined);
  return none === undefined ? ofBoat : [{ id: 'none', label: none }, ...ofBoat];
}

const elsewhere = (option: Option): Option =>
  option.withoutBoat === undefined ? option : { ...option, label: option.withoutBoat };

/** First words of all that the links of a cell may lead to: parts of a boat, other cells, choices of its own. */
export const linkedWords = ({ inputs }: Cell): readonly string[] =>
  Object.values(inputs)
    .flatMap(({ from, fromBy }) => [from ?? '', ...Object.values(fromBy?.links ?? {})])
    .map((link) => link.split('.')[0]!); // a text has a beginning

/** A link falls back to the preset where there is nothing of its name: which is asked when it is read. */
export function linkPreset(
  instance: Instance,
  link: string,
  without: (name: string, read: Read) => string,
  lists: BoatLists | null,
  by?: InputSpec['fromBy'],
): { presetFrom: (read: Read) => string } | null {
  if (!canFollow(instance.cell, link, lists)) return null;
  return {
    presetFrom: (read: Read) => {
      const other = by?.links[read.choice(`${instance.name}.${by.choice}`)];
      const filled = fillIn(other ?? link, (key) =>
        key === SELF ? instance.name : wordFor(instance, key, lists, read),
      );
      return read.has(filled) ? filled : without(filled, read);
    },
  };
}

/** False for a link by a choice that this boat gives nothing to choose from. */
export function canFollow(cell: Cell, link: string, lists: BoatLists | null): boolean {
  return [...link.matchAll(/\{(\w+)\}/g)].every(([, key = '']) => {
    const by = cell.inputs[key];
    return !by || !isChoice(by) || optionsOf(by, lists).length > 0;
  });
}
