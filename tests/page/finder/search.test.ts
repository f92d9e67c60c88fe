/** The finder's search: what is typed, whole, begun, misspelt or by another word for it, and what comes first. */
import { describe, expect, test } from 'vitest';
import { cells } from '../../../src/cells/all';
import { wordsIn } from '../../../src/page/finder/fold';
import { type Findable, find, indexOf } from '../../../src/page/finder/search';
import { tradeWords } from '../../../src/page/finder/trade-words';
import { things, thingsWithoutBoat } from './all-things';

const index = indexOf(things, tradeWords);
const found = (text: string, open: string | null = null) => find(index, text, open);
const titled = (text: string) => found(text).map(({ title }) => title);

describe('over all notebooks', () => {
  test.each(['log of the build', 'diary', 'journal'])(
    '%s leads to the log of the boat in hand, and where there is none, nowhere',
    (text) => {
      expect(found(text)[0]).toMatchObject({ title: 'Log of the build', place: 'log', notebook: null });
      const without = find(indexOf(thingsWithoutBoat, tradeWords), text, null);
      expect(without.filter(({ place }) => place === 'log')).toStrictEqual([]);
    },
  );

  test.each(cells.map(({ title }) => title))('%s is found first by its title', (title) => {
    expect(found(title)[0]).toMatchObject({ kind: 'question', title });
  });

  test.each(cells.map((cell) => [cell.title, cell] as const))(
    '%s: each field and each answer is found by its label, in the cell or where it belongs',
    (_, { id, inputs, answers }) => {
      const named = [
        ...Object.entries(inputs).map(([key, { label, owners }]) => [label, key, owners ?? []] as const),
        ...answers.map(({ of, label }) => [label, of, []] as const),
      ];
      const lost = named.filter(([label, key, owners]) => {
        const ways = [`${id}.${key}`, ...owners.map(({ name }) => name)];
        return !found(label).some(({ same }) => ways.includes(same));
      });
      expect(named.length).toBeGreaterThan(1);
      expect(lost).toStrictEqual([]);
    },
  );

  test.each(cells.map(({ id, title, question }) => [title, question, id] as const))(
    '%s is found with a slip in a word of its own',
    (title, question, id) => {
      const [word = ''] = wordsIn(`${title} ${question}`).toSorted((a, b) => b.length - a.length);
      const at = word.length - 2;
      const slips = {
        dropped: word.slice(0, at) + word.slice(at + 1),
        doubled: word.slice(0, at) + word[at] + word.slice(at),
        changed: `${word.slice(0, at)}q${word.slice(at + 1)}`,
        changedOver: word.slice(0, at) + word[at + 1] + word[at],
      };
      for (const slipped of Object.values(slips))
        expect([slipped, found(slipped).map(({ same }) => same)]).toStrictEqual([
          slipped,
          expect.arrayContaining([`cell ${id}`]),
        ]);
    },
  );

  test('a number of the boat or of the shop is found once, in her sheet, and without a boat in the cells', () => {
    const [thickness, ...others] = found('keelson thickness');
    expect(thickness).toMatchObject({ kind: 'field', notebook: null, place: 'keelson.thickness' });
    expect(others.filter(({ same }) => same === 'keelson.thickness')).toStrictEqual([]);
    expect(found('air in the shop')[0]).toMatchObject({ notebook: null, place: 'shop.air' });
    const loose = find(indexOf(thingsWithoutBoat, tradeWords), 'keelson thickness', 'quick-answers');
    expect(loose[0]).toMatchObject({ kind: 'field', place: 'quickLimber.keelsonThickness' });
  });

  test('of a cell in several notebooks the one in the open notebook is shown', () => {
    const where = (open: string | null) =>
      found('limber', open)
        .filter(({ same }) => same === 'cell limber')
        .map(({ notebook }) => notebook);
    expect(where('frames-standing-true')).toStrictEqual(['frames-standing-true']);
    expect(where('the-build')).toStrictEqual(['the-build']);
    expect(where('quick-answers')).toHaveLength(1);
  });

  test('a quick answer is found by the words that ask for it there', () => {
    const [taper] = found('how long is the taper of a scarf').filter(({ kind }) => kind === 'quick answer');
    expect(taper).toMatchObject({
      notebook: 'quick-answers',
      more: expect.stringMatching(/taper.*[?]$/) as string,
    });
  });

  test('headings and notebooks are found', () => {
    expect(found('standing true')[0]).toMatchObject({ kind: 'notebook', title: 'Frames, standing true' });
    expect(found('dew, damp and cold')[0]).toMatchObject({ kind: 'heading', place: 'dew-damp-and-cold' });
  });
});

describe('other words of the trade', () => {
  const words = Object.entries(tradeWords);
  const titles = things.map(({ title, more = '' }) => wordsIn(`${title} ${more}`));

  test.each(words)('%s stands for what is there', (word, phrases) => {
    const dead = phrases.filter(
      (phrase) => !titles.some((title) => wordsIn(phrase).every((one) => title.includes(one))),
    );
    expect(dead).toStrictEqual([]);
    expect(wordsIn(word)).toHaveLength(1);
    expect(found(word).length).toBeGreaterThan(0);
  });

  test.each([
    ['rib', 'Pattern of a frame'],
    ['gunwale', 'Sheer clamp thickness'],
    ['gunwale', 'Rub rail thickness'],
    ['gunwhale', 'Sheer clamp thickness'],
    ['bung', 'Filler for holes and gaps'],
    ['lumber', 'Boards to buy'],
    ['timber', 'Boards to buy'],
    ['plywood', 'Bottom thickness'],
    ['epoxy', 'Resin and hardener'],
    ['glue', 'Resin and hardener'],
    ['resin', 'Glue'],
    ['fairing', 'Is the line fair?'],
    ['lofting', 'Table of offsets'],
    ['miter', 'mitre of the side'],
    ['weep', 'Keelson slot and limber holes'],
  ])('%s finds "%s"', (word, title) => {
    expect(titled(word)).toContain(title);
  });
});

describe('what is typed', () => {
  const thing = (kind: Findable['kind'], title: string, more = '', notebook = 'one'): Findable => ({
    kind,
    title,
    more,
    notebook,
    same: `${kind} ${title} ${notebook}`,
  });
  const few = indexOf(
    [
      thing('word', 'Scarf, scarf joint'),
      thing('heading', 'The scarf'),
      thing('answer', 'scarf'),
      thing('field', 'Slope of the scarfs'),
      thing('question', 'Where joints fall', 'Where do the scarfs fall?'),
      thing('question', 'Scarf joint', 'How long is the taper?'),
      thing('quick answer', 'Scarf joint', 'How long is the taper?'),
      thing('question', 'Scarfing by hand', '', 'two'),
      thing('question', 'Scarfing by saw', '', 'one'),
      thing('field', 'Naïve façade'),
      { ...thing('field', 'Depth'), also: 'Notches for the log' },
    ],
    { splice: ['scarf'] },
  );
  const kindsOf = (text: string, open = 'one') =>
    find(few, text, open).map(({ kind, title }) => `${kind}: ${title}`);

  test('questions come first and what the word means, then fields, answers, headings; a word begun comes last', () => {
    expect(kindsOf('scarf')).toStrictEqual([
      'question: Scarf joint',
      'question: Where joints fall',
      'word: Scarf, scarf joint',
      'quick answer: Scarf joint',
      'field: Slope of the scarfs',
      'answer: scarf',
      'heading: The scarf',
      'question: Scarfing by saw',
      'question: Scarfing by hand',
    ]);
  });

  test('what is called exactly so comes first', () => {
    expect(kindsOf('the scarf')[0]).toBe('heading: The scarf');
    expect(kindsOf('where joints fall')[0]).toBe('question: Where joints fall');
    expect(kindsOf('slope of the scarfs')[0]).toBe('field: Slope of the scarfs');
  });

  test('what stands in the open notebook goes before its equals', () => {
    expect(kindsOf('scarfing', 'one')[0]).toBe('question: Scarfing by saw');
    expect(kindsOf('scarfing', 'two')[0]).toBe('question: Scarfing by hand');
  });

  test('two letters are enough, one is not', () => {
    expect(kindsOf('s')).toStrictEqual([]);
    expect(kindsOf(' s ')).toStrictEqual([]);
    expect(kindsOf('sc').length).toBeGreaterThan(5);
  });

  test('every word must be there, the last as far as it is typed', () => {
    expect(kindsOf('slope sc')).toStrictEqual(['field: Slope of the scarfs']);
    expect(kindsOf('slope notch')).toStrictEqual([]);
  });

  test('small words are passed over', () => {
    expect(kindsOf('how to splice the depth of a notch')).toStrictEqual([]);
    expect(kindsOf('what is the depth of the notch')).toStrictEqual(['field: Depth']);
  });

  test('what a field belongs to helps to find it, and does not find it alone', () => {
    expect(kindsOf('notch depth')).toStrictEqual(['field: Depth']);
    expect(kindsOf('notch')).toStrictEqual([]);
  });

  test('accents, capitals and the plural make no difference', () => {
    expect(kindsOf('naive FACADE')).toStrictEqual(['field: Naïve façade']);
    expect(kindsOf('Joints')).toContain('question: Scarf joint');
  });

  test('one slip is forgiven where nothing is called so, two are not', () => {
    expect(kindsOf('scrafing')).toContain('question: Scarfing by saw');
    expect(kindsOf('splcie')).toContain('word: Scarf, scarf joint');
    expect(kindsOf('srcafign')).toStrictEqual([]);
    expect(kindsOf('xyzzy')).toStrictEqual([]);
  });
});
