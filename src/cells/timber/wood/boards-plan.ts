/** The pieces of the boat's long parts as a cutting problem, and the best plan known for it. */
import type { Found, Hull } from '../../../boat';
import { longParts } from '../../../boat/joinery/long-parts';
import { type TimberPiece, timberPieces } from '../../../boat/joinery/piece-plan';
import { soldKeys } from '../../../boat/quantities/shop';
import {
  costAtLeast,
  costOf,
  type CuttingAnswer,
  type CuttingPlan,
  type CuttingProblem,
  faultsOfPlan,
  shopPlan,
} from '../../../kernel/cutting';
import type { Values } from '../../form/define';

/** The boat's long parts; the keys of their inputs begin with these. */
export const partKeys = {
  keelson: 'keelson',
  chineLog: 'log',
  sheerClamp: 'clamp',
  rubRail: 'rail',
} as const;

/** A piece to cut: its name, and which ends are scarfed. */
export type Cut = Pick<TimberPiece, 'name' | 'length' | 'scarfed'>;

/** Pieces of one section, cut from boards of that section. */
export interface Section {
  readonly thickness: number;
  readonly width: number;
  readonly cuts: readonly Cut[];
  readonly problem: CuttingProblem;
}

export interface BoughtSection extends Section {
  readonly plan: CuttingPlan;
  readonly proved: boolean;
}

/** A piece in the order of the cuts: board by board, from the end of each. */
export interface CutHere extends Cut {
  /** The board, 1 first, through all sections. */
  readonly board: number;
  readonly section: BoughtSection;
}

const number = (v: Values, key: string): number => v[key] as number; // the cell's own inputs

/** No saw cuts closer: lengths that differ by less are one, m. */
const MICRON = 1e-6;

/**
 * The sections in order of the parts. Sections alike within a tenth of a millimetre are one.
 *
 * Throws where nothing is to be cut, or where no board is sold.
 */
export function sectionsOf(hull: Hull, v: Values): Section[] {
  const stocks = soldKeys
    .map((key) => ({ length: number(v, `stock${key}`), price: number(v, `paid${key}`) }))
    .filter(({ length }) => length > 0);
  if (stocks.length === 0) throw new Error('give the length of at least one board that is sold');
  const bySection = new Map<string, { thickness: number; width: number; cuts: Cut[] }>();
  const add = (key: string, cuts: readonly Cut[]) => {
    if (cuts.length === 0) return;
    const [thickness, width] = [number(v, `${key}Thickness`), number(v, `${key}Width`)];
    const id = `${Math.round(thickness * 1e4)} ${Math.round(width * 1e4)}`;
    const section = bySection.get(id) ?? { thickness, width, cuts: [] };
    bySection.set(id, section);
    section.cuts.push(...cuts);
  };
  for (const { id } of longParts) add(partKeys[id], longCuts(hull, v, id));
  add('other', otherCuts(v));
  if (bySection.size === 0) throw new Error('no part is to be cut: give a number of pieces');
  return [...bySection.values()].map(({ thickness, width, cuts }) => ({
    thickness,
    width,
    cuts,
    problem: {
      parts: cuts.map(({ name, length }) => ({ name, length: Math.round(length / MICRON) * MICRON })),
      stocks: stocks.map(({ length, price }) => ({ length, price: price * thickness * width * length })),
      kerf: number(v, 'kerf'),
    },
  }));
}

/** As the plan of pieces lays them, of so many timbers as are asked for; the first come first. */
function longCuts(hull: Hull, v: Values, part: keyof typeof partKeys): readonly Cut[] {
  const key = partKeys[part];
  const wanted = number(v, `${key}Pieces`);
  if (wanted === 0) return [];
  const timbers = timberPieces(hull, part, {
    board: number(v, `${key}Board`),
    taper: number(v, 'slope') * number(v, `${key}Thickness`),
    trim: number(v, 'trim'),
    first: {
      port: number(v, `${key}Port`),
      starboard: number(v, part === 'keelson' ? 'keelsonPort' : `${key}Starboard`),
    },
  });
  return timbers.slice(0, wanted).flat();
}

/** Short parts of the builder's own, each in one piece. */
function otherCuts(v: Values): readonly Cut[] {
  const pieces = number(v, 'otherPieces');
  return Array.from({ length: pieces }, (_, i) => ({
    name: pieces === 1 ? 'other part' : `other part ${i + 1}`,
    length: number(v, 'otherLength') + number(v, 'trim'),
    scarfed: { aft: false, fore: false },
  }));
}

export const jointsIn = (sections: readonly Section[]): number =>
  sections.flatMap(({ cuts }) => cuts).filter(({ scarfed }) => scarfed.aft).length;

/** The problem as the searcher takes it. */
export function problemText(sections: readonly Section[]): string {
  return JSON.stringify(sections.map(({ problem }) => problem));
}

const SAME = 1e-6;
let last: { readonly text: string; readonly plans: readonly CuttingPlan[] } | null = null;

/** Several steps ask for the same plans; the last are kept. */
function byRule(text: string, sections: readonly Section[]): readonly CuttingPlan[] {
  if (last?.text !== text) last = { text, plans: sections.map(({ problem }) => shopPlan(problem)) };
  return last.plans;
}

/** For each section the cheaper of the plan that a search has found and the plan by the rule of the shop. */
export function bestOf(hull: Hull, v: Values, found: Found): BoughtSection[] {
  const sections = sectionsOf(hull, v);
  const text = problemText(sections);
  const shop = byRule(text, sections);
  const answer = found(text) as CuttingAnswer | null;
  return sections.map((section, at) => {
    const rule = shop[at]!; // one plan a section
    const searched = answer?.plans[at];
    const better = searched && faultsOfPlan(searched, section.problem).length === 0;
    const plan = better ? searched : rule;
    const proved =
      (better && answer?.proved[at] === true) ||
      costOf(plan, section.problem) <= costAtLeast(section.problem) * (1 + SAME);
    return { ...section, plan, proved };
  });
}

/** The plans by the rule of the shop alone. */
export function shopOf(hull: Hull, v: Values): BoughtSection[] {
  return bestOf(hull, v, () => null);
}

/** The cut list: the pieces in the order of the cuts, numbered from 1 by their place. */
export function cutList(sections: readonly BoughtSection[]): readonly CutHere[] {
  let board = 0;
  return sections.flatMap((section) =>
    section.plan.boards.flatMap(({ parts }) => {
      board += 1;
      return parts.map((part) => ({ ...section.cuts[part]!, board, section })); // a part a cut
    }),
  );
}
