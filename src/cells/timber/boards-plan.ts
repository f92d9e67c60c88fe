/** The long parts of a boat as a cutting problem, and the best plan known for it. */
import type { Found } from '../../boat';
import {
  costAtLeast,
  costOf,
  type CuttingAnswer,
  type CuttingPlan,
  type CuttingProblem,
  faultsOfPlan,
  shopPlan,
} from '../../kernel/cutting';
import type { Values } from '../define';

/** Parts that are cut from boards: the keys of the cell's inputs begin with these. */
export const longParts = [
  { key: 'keelson', label: 'keelson', name: 'keelson' },
  { key: 'log', label: 'chine log', name: 'chineLog' },
  { key: 'clamp', label: 'sheer clamp', name: 'sheerClamp' },
  { key: 'rail', label: 'rub rail', name: 'rubRail' },
  { key: 'other', label: 'other part', name: null },
] as const;

export const stockKeys = ['A', 'B', 'C', 'D'] as const;

/** Parts of one section, cut from boards of that section. */
export interface Section {
  readonly thickness: number;
  readonly width: number;
  readonly problem: CuttingProblem;
}

export interface BoughtSection extends Section {
  readonly plan: CuttingPlan;
  readonly proved: boolean;
}

const number = (v: Values, key: string): number => v[key] as number; // the cell's own inputs

/**
 * The sections in order of the parts. Sections alike within a tenth of a millimetre are one.
 *
 * Throws where nothing is to be cut, or where no board is sold.
 */
export function sectionsOf(v: Values): Section[] {
  const stocks = stockKeys
    .map((key) => ({ length: number(v, `stock${key}`), price: number(v, `price${key}`) }))
    .filter(({ length }) => length > 0);
  if (stocks.length === 0) throw new Error('give the length of at least one board that is sold');
  const bySection = new Map<
    string,
    { thickness: number; width: number; parts: CuttingProblem['parts'][number][] }
  >();
  for (const { key, label } of longParts) {
    const pieces = number(v, `${key}Pieces`);
    if (pieces === 0) continue;
    const [thickness, width] = [number(v, `${key}Thickness`), number(v, `${key}Width`)];
    const id = `${Math.round(thickness * 1e4)} ${Math.round(width * 1e4)}`;
    const section = bySection.get(id) ?? { thickness, width, parts: [] };
    bySection.set(id, section);
    for (let i = 1; i <= pieces; i += 1)
      section.parts.push({
        name: pieces === 1 ? label : `${label} ${i}`,
        length: number(v, `${key}Length`) + number(v, 'trim'),
      });
  }
  if (bySection.size === 0) throw new Error('no part is to be cut: give a number of pieces');
  return [...bySection.values()].map(({ thickness, width, parts }) => ({
    thickness,
    width,
    problem: {
      parts,
      stocks: stocks.map(({ length, price }) => ({ length, price: price * thickness * width * length })),
      kerf: number(v, 'kerf'),
      scarf:
        v['scarfs'] === 'yes'
          ? {
              taper: number(v, 'slope') * thickness,
              least: number(v, 'leastPiece'),
              most: number(v, 'mostPieces'),
              price: number(v, 'jointPrice'),
            }
          : null,
    },
  }));
}

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
export function bestOf(v: Values, found: Found): BoughtSection[] {
  const sections = sectionsOf(v);
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
export function shopOf(v: Values): BoughtSection[] {
  return bestOf(v, () => null);
}
