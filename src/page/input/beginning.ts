/** The beginning of a note, where there is no room for the rest: never one that reads like a sentence broken off. */

/** A longer note than this shows its beginning only. */
const LONGEST = 44;

/** Words that lead on to others, whose owner is yet to come, and signs of numbers: no piece of a sentence ends in them. */
const LEADS_ON =
  /[\s,.;:]+(?:the|an?|of|and|or|(?<!\d )in|on|at|to|by|for|with|from|under|over|between|than|that|which|who|where|when|if|as|is|are|its?|one|no|not|only|about|within|along|across|below|above|before|after|until|less|more|their|her|they|[+−±]|\S+’s)$/i;

/** The first clause of a note that is too long for a line or two, else as many whole words as fit and can end it. */
export function beginning(note: string): string {
  if (note.length <= LONGEST) return note;
  const [clause] = /^.{20,}?(?<!\b(?:No|ch))(?=[.;:] )/.exec(note.slice(0, LONGEST + 2)) ?? [];
  if (clause) return clause;
  let words = note.slice(0, LONGEST).replace(/[\s,.;:(]+\S*$/, '');
  if (words.lastIndexOf('(') > words.lastIndexOf(')')) words = words.slice(0, words.lastIndexOf('(')).trim();
  while (LEADS_ON.test(words)) words = words.replace(LEADS_ON, '');
  return words;
}
