/** One number, one owner: what a cell shows of the boat's or the shop's numbers it does not say again. */
import { describe, expect, test } from 'vitest';
import { type Declared, starters } from '../../src/boat';
import { isChoice, plainInstance } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { isIssue, plainShown } from '../../src/measure';
import { createBook } from '../../src/notebook/book';
import { looseCatalogue } from '../../src/notebook/graph/loose-catalogue';
import { freshState, noBoat } from '../../src/notebook/state/state';
import { standing } from '../../src/notebook/graph/standing';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { withoutChines, withTwoChines } from './odd-boats';

const inputs = cells.flatMap((cell) =>
  Object.entries(cell.inputs).map(([key, spec]) => ({ name: `${cell.id}.${key}`, spec })),
);
const ofCells = new Set(cells.map(({ id }) => id));
const isCells = (name: string) => ofCells.has(name.split('.')[0]!);

const boats = [...starters.map(({ table }) => table), withTwoChines, withoutChines].map(
  (table) => standing(() => table, wholeCatalogue, { entries: () => ({}), shown: plainShown })().value.graph,
);

describe('a number of the boat or the shop', () => {
  test('is asked for by what declares it, wherever a field shows it', () => {
    const shown = boats.flatMap((graph) =>
      inputs.flatMap(({ name, spec }) => {
        const { text = '', written } = graph.entry(name) ?? {};
        const giver = graph.quantity(text);
        return !written && giver && 'preset' in giver && !isCells(text) ? [{ name, spec, giver }] : [];
      }),
    );
    expect(new Set(shown.map(({ name }) => name)).size).toBeGreaterThan(130);
    const amiss = shown.flatMap(({ name, spec, giver }) =>
      spec.owners?.some((owner) => owner.name === giver.name) ? [] : [`${name} shows ${giver.name}`],
    );
    expect([...new Set(amiss)]).toStrictEqual([]);
  });

  test('has no preset, limits, step or note beside those declared', () => {
    const owned = inputs.filter(({ spec }) => spec.owners);
    expect(owned.length).toBeGreaterThan(130);
    const amiss = owned.flatMap(({ name, spec }) => {
      const owners = spec.owners!;
      const [first] = owners as readonly [Declared, ...Declared[]];
      const limits = (key: 'min' | 'max') =>
        isChoice(spec) || owners.some((owner) => owner[key] === spec[key]);
      const holds = {
        preset: spec.preset === (first.withoutBoat ?? first.preset) && spec.presetInch === first.presetInch,
        note: spec.note === first.source,
        min: limits('min'),
        max: limits('max'),
        step: isChoice(spec) ? spec.options === first.options : spec.step === first.step,
        kind: spec.kind === first.kind,
      };
      return Object.entries(holds).flatMap(([key, is]) => (is ? [] : [`${name}: ${key}`]));
    });
    expect(amiss).toStrictEqual([]);
  });

  test('bears one label, but where the cell says which of its parts it is of', () => {
    const amiss = inputs.flatMap(({ name, spec }) => {
      const [owner] = spec.owners ?? [];
      const isOne = owner && !spec.from?.includes('{');
      return isOne && !spec.fromBy && spec.label !== owner.label ? [`${name}: ${spec.label}`] : [];
    });
    expect(amiss).toStrictEqual([]);
  });

  test('has one preset on a sheet without a boat, whichever cells show it there', () => {
    const loose = createBook(freshState(noBoat), () => looseCatalogue(cells.map(plainInstance))).first.value;
    const byLink = new Map<string, Map<unknown, string>>();
    for (const { name, spec } of inputs) {
      if (spec.from === undefined || spec.from.includes('{self}')) continue;
      const [cell] = name.split('.');
      const answer = spec.fromBy && loose.value(`${cell}.${spec.fromBy.choice}`);
      const from = (typeof answer === 'string' && spec.fromBy?.links[answer]) || spec.from;
      const link = from.replaceAll(/\{(\w+)\}/g, (_, key: string) => {
        const chosen = loose.quantity(`${name.split('.')[0]}.${key}`)
          ? loose.value(`${name.split('.')[0]}.${key}`)
          : key;
        return typeof chosen === 'string' ? chosen : key;
      });
      if (!spec.owners?.some((owner) => owner.name === link)) continue;
      const value = loose.value(name);
      const values = byLink.get(link) ?? new Map<unknown, string>();
      byLink.set(link, values.set(isIssue(value) ? value.issue : value, name));
    }
    expect(byLink.size).toBeGreaterThan(50);
    const several = [...byLink].filter(([, values]) => values.size > 1);
    expect(several.map(([link, values]) => `${link}: ${[...values.values()].join(', ')}`)).toStrictEqual([]);
  });
});

/** Fields that look alike and ask of different things, each with the reason. */
const different: Readonly<Record<string, string>> = {
  'areaDensity weight of the cloth':
    'cloth over a hull keeps water out; a strap carries the joint and is heavier',
  'share glass in laminate, by weight':
    'a strap is always of cloth, squeegeed; what is laid over the hull may be mat',
  'temperature coldest it cures': 'two cells ask it of the glue, one of the coating',
  'length width of the glue face':
    'one of a joint, or the mean of all; clamps ask of the one joint they press',
  'length width': 'a batten’s, and that of a roll of cloth',
  'count sides': 'of an edge, and of a seam; neither is measured, both lie to port and to starboard',
  'share waste': 'offcuts of a jig’s lumber; paste scraped off beside a fillet',
  'angle angle': 'of a countersink; how far a hull is turned over',
  'count rows': 'along an edge a timber has room for one row; a gusset’s member takes two',
};

describe('a number that cells ask for as their own', () => {
  const own = cells.flatMap((cell) =>
    Object.entries(cell.inputs).flatMap(([key, spec]) =>
      isChoice(spec) || spec.owners ? [] : [{ cell: cell.id, key, name: `${cell.id}.${key}`, spec }],
    ),
  );
  type Own = (typeof own)[number];

  /** Those of several cells that are called alike. */
  const alike = (fields: readonly Own[], by: (field: Own) => string) => {
    const groups = new Map<string, Own[]>();
    for (const field of fields) groups.set(by(field), [...(groups.get(by(field)) ?? []), field]);
    return [...groups].filter(([, of]) => new Set(of.map(({ cell }) => cell)).size > 1);
  };
  const byLabel = alike(own, ({ spec }) => `${spec.kind} ${spec.label.toLowerCase()}`);
  /** Where nothing fills them, two of one name stand each for itself. */
  const byKey = alike(
    own.filter(({ spec }) => spec.from === undefined),
    ({ key, spec }) => `${spec.kind} ${key}`,
  );

  /** One link for all of them, or links that lead to one of them, by way of others of them too. */
  const haveOneOwner = (fields: readonly Own[]) => {
    const links = new Set(fields.map(({ spec }) => spec.from));
    if (links.size === 1) return fields[0]!.spec.from !== undefined;
    const leads = (field: Own, to: Own, beenAt: readonly Own[] = []): boolean => {
      const next = fields.find(({ name }) => name === field.spec.from);
      return (
        field === to || (next !== undefined && !beenAt.includes(next) && leads(next, to, [...beenAt, next]))
      );
    };
    return fields.some((owner) => fields.every((field) => leads(field, owner)));
  };

  test('has one owner wherever it is called the same', () => {
    const amiss = [...byLabel.filter(([, fields]) => !haveOneOwner(fields)), ...byKey];
    const several = amiss.filter(([what]) => !(what in different));
    expect(several.map(([what, of]) => `${what}: ${of.map(({ name }) => name).join(', ')}`)).toStrictEqual(
      [],
    );
    expect(Object.keys(different).filter((what) => !amiss.some(([other]) => other === what))).toStrictEqual(
      [],
    );
  });

  test('has one preset where nothing fills it, but for a wood of another kind', () => {
    const texts = ({ spec: { preset, presetInch } }: Own) => `${preset} | ${presetInch ?? ''}`;
    const several = byLabel.filter(
      ([what, fields]) =>
        !(what in different) &&
        !fields[0]!.spec.from?.includes('{species}') &&
        new Set(fields.map(texts)).size > 1,
    );
    expect(several.map(([what, of]) => `${what}: ${of.map(texts).join(', ')}`)).toStrictEqual([]);
  });

  test('is filled by an answer of a choice only where a link fills it else', () => {
    const amiss = own.filter(({ spec }) => spec.fromBy && spec.from === undefined);
    expect(amiss.map(({ name }) => name)).toStrictEqual([]);
  });
});
