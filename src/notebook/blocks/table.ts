/** A table that is written out. */
import { markdownKind } from '../text/block-kind';

export const table = markdownKind(['table'], (token, { line, inlines }) => {
  // The lexer gives no lines within a table: a cell's row is its place below the head and the rule.
  const head = token.header.map((cell) => inlines(cell.tokens));
  const rows = token.rows.map((row, at) => row.map((cell) => inlines(cell.tokens, line + 2 + at)));
  return [{ type: 'table', align: token.align, head, rows }];
});
