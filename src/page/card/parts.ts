/** What of a card stands on which page. */
import type { Card } from './card';
import type { CardPage } from './card-view';

export function onePage(
  card: Card,
  pictured: boolean,
  noPicture: string,
  overleaf: readonly string[],
): CardPage {
  const { words, warnings, cautions } = card;
  const tabled = card.table !== null;
  return { page: 'first', words, warnings, cautions, pictured, noPicture, tabled, used: true, overleaf };
}

type TwoPages = readonly [first: CardPage, second: CardPage];

/** Ways to part a card in two, the one liked best first: what is read while working stands on the first page. */
export function arrangements(whole: CardPage, card: Card): readonly TwoPages[] {
  const unpictured = { pictured: false, noPicture: '' };
  const ways: readonly Partial<CardPage>[] = [
    { used: false },
    ...(whole.pictured ? [unpictured, { used: false, ...unpictured }] : []),
    ...(whole.tabled ? [{}] : []),
  ];
  return ways.map((keeps) => inTwo(whole, card, keeps));
}

/** In three, so that neither the drawing nor the table gives way to the other. */
export function pictureAndTableApart(
  whole: CardPage,
  card: Card,
): readonly [first: CardPage, second: CardPage, third: CardPage] {
  const [first, rest] = inTwo(whole, card, { pictured: false, noPicture: '' });
  return [first, { ...rest, tabled: false }, { ...rest, page: 'third', pictured: false, noPicture: '' }];
}

/** With this many words, warnings and cautions on the first page, and nothing besides. */
export function parted(whole: CardPage, card: Card, held: number): TwoPages {
  const { words, warnings, cautions } = whole;
  const forCautions = Math.max(0, held - words.length - warnings.length);
  return inTwo(whole, card, {
    words: words.slice(0, held),
    warnings: warnings.slice(0, Math.max(0, held - words.length)),
    cautions: cautions.slice(0, forCautions),
    pictured: false,
    noPicture: '',
    used: false,
  });
}

export const withoutPicture = (part: CardPage): CardPage => ({
  ...part,
  pictured: false,
  noPicture: 'The drawing stands in the notebook.',
});

/** The first page has what it keeps and never the table, the second all the rest. */
function inTwo(whole: CardPage, { table }: Card, keeps: Partial<CardPage>): TwoPages {
  const first = { ...whole, tabled: false, ...keeps };
  const second: CardPage = {
    page: 'second',
    words: whole.words.slice(first.words.length),
    warnings: whole.warnings.slice(first.warnings.length),
    cautions: whole.cautions.slice(first.cautions.length),
    pictured: whole.pictured && !first.pictured,
    noPicture: first.noPicture ? '' : whole.noPicture,
    tabled: whole.tabled,
    used: whole.used && !first.used,
    overleaf: [],
  };
  const overleaf = [
    second.words.length > 0 ? 'the result in words' : '',
    second.warnings.length > 0 ? 'further warnings' : '',
    second.cautions.length > 0 ? 'further cautions' : '',
    second.pictured ? 'the drawing' : '',
    second.tabled && table ? `the table (${table.caption})` : '',
    second.used ? 'the inputs used, the sources' : '',
  ];
  return [{ ...first, overleaf: [...overleaf.filter((words) => words !== ''), ...whole.overleaf] }, second];
}
