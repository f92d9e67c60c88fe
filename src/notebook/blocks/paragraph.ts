/** A paragraph; and whatever else Markdown knows that a notebook does not, raw HTML above all, as it was typed. */
import { type BlockKind, markdownKind } from '../text/block-kind';

/** Letters; in a longer one the lexer might look for marks for minutes, so it is left as it is typed. */
export const LONGEST_PARAGRAPH = 8_000;

export const paragraph = markdownKind(['paragraph', 'text'], (token, { inlines, fault }) => {
  const says = `This paragraph is too long for marks to be looked for in it; ${LONGEST_PARAGRAPH} characters is the most.`;
  const told = token.raw.length > LONGEST_PARAGRAPH ? [fault(says, '')] : [];
  return [...told, { type: 'paragraph', inside: inlines(token.tokens ?? [token]) }];
});

/** Blank lines and the addresses that links are given below say nothing by themselves. */
export const asTyped: BlockKind = {
  finds: ({ type }) => type !== 'space' && type !== 'def',
  read: ({ raw }) => [{ type: 'paragraph', inside: [{ type: 'text', text: raw.trimEnd() }] }],
};
