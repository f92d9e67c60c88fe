/** What the boards are asked for: the plan of pieces part by part, what the yard sells, and the saw. */
import { longParts } from '../../../boat/joinery/long-parts';
import { soldKeys } from '../../../boat/quantities/shop-lumber';
import { input, type InputSpec } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { fromShop } from '../../form/from-shop';
import { boardSection, priceInputs, pricePerVolume } from '../../common/wood/wood-price';

/** The boat's long parts; the keys of their inputs begin with these. */
export const partKeys = {
  keelson: 'keelson',
  chineLog: 'log',
  sheerClamp: 'clamp',
  rubRail: 'rail',
} as const;

const byKey = <P extends readonly [key: string, spec: unknown]>(pairs: readonly P[]) =>
  Object.fromEntries(pairs) as { readonly [Pair in P as Pair[0]]: Pair[1] }; // the keys are those of the pairs

const lengthOf = (
  label: string,
  { preset, min, max, step = '1 mm', ...more }: Omit<InputSpec, 'kind' | 'label'>,
) =>
  input('length', label, {
    preset,
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
    step,
    ...more,
  });

/** What is asked of each part: how many, how it is laid, and the section bought for it. */
const ofParts = longParts.flatMap(({ id, label }) => {
  const key = partKeys[id];
  const ofBoat = (from: string, when: string) => fromBoat(`${id}.${from}`, { when, ofBoat: true });
  const have = `${key}Pieces > 0`;
  const name = `${label.charAt(0).toUpperCase()}${label.slice(1)}`;
  return [
    [
      `${key}Pieces`,
      input('count', `Number of ${label}s`, {
        from: `${id}.pieces`,
        ofBoat: true,
        preset: '0',
        min: '0',
        max: '12',
        step: '1',
        note: 'as many as in the boat; 0 where you have them',
      }),
    ],
    [`${key}Board`, ofBoat('boardLength', have)],
    [`${key}Port`, ofBoat('portFirst', have)],
    [`${key}Starboard`, ofBoat('starboardFirst', `${key}Pieces > 1`)],
    [`${key}Thickness`, ofBoat('thickness', have)],
    [
      `${key}Width`,
      lengthOf(`${name}: width of its boards`, {
        when: have,
        ofBoat: true,
        from: `${id}.boardWidth`,
        preset: '38 mm',
        min: '3 mm',
        max: '2 m',
        note: 'its own, or more where it is cut to shape from a wider board',
      }),
    ],
  ] as const;
});

/** Other parts are listed by their lengths; each line is asked when the one above it is filled in. */
export const otherKeys = ['other', 'second', 'third', 'fourth'] as const;

const others = otherKeys.flatMap((key, at) => {
  const filled = (lines: number) =>
    otherKeys
      .slice(0, lines)
      .map((line) => `${line}Pieces > 0`)
      .join(' and ');
  const name = `Length ${at + 1}`;
  return [
    [
      `${key}Pieces`,
      input('count', `${name}: how many`, {
        ...(at > 0 && { when: filled(at) }),
        preset: '0',
        min: '0',
        max: '12',
        step: '1',
      }),
    ],
    [
      `${key}Length`,
      lengthOf(name, {
        when: filled(at + 1),
        preset: '1 m',
        presetInch: '3 ft',
        min: '100 mm',
        max: '12 m',
        step: '10 mm',
        note: 'each in one piece',
      }),
    ],
  ] as const;
});

const sold = soldKeys.flatMap((key) => {
  return [
    [`stock${key}`, fromShop(`length${key}`)],
    [`price${key}`, fromShop(`price${key}`, { when: 'quoted == "volume"' })],
    [`perLength${key}`, fromShop(`perLength${key}`, { when: 'quoted == "length"' })],
    [`each${key}`, fromShop(`each${key}`, { when: 'quoted == "each"' })],
  ] as const;
});

// A keelson lies on the centreline: it has no fellow to starboard.
const { keelsonStarboard: _, ...parts } = byKey(ofParts);

export const boardsInputs = {
  ...priceInputs,
  ...byKey(sold),
  ...parts,
  ...byKey(others),
  otherThickness: lengthOf('Other part thickness', {
    when: 'otherPieces > 0',
    preset: '19 mm',
    presetInch: '3/4 in',
    min: '1 mm',
    max: '150 mm',
  }),
  otherWidth: lengthOf('Other part width', {
    when: 'otherPieces > 0',
    preset: '38 mm',
    presetInch: '1 1/2 in',
    min: '3 mm',
    max: '2 m',
  }),
  trim: fromBoat('pieces.trim'),
  slope: fromBoat('pieces.slope', { ofBoat: true }),
  kerf: fromShop('kerf'),
  jointPrice: input('money', 'What a joint is worth to you', {
    ofBoat: true,
    preset: '2',
    min: '0',
    max: '1000',
    step: '1',
    note: 'made up: glue and an hour with the plane',
  }),
  piece: input('count', 'Piece of the cut list', { preset: '1', min: '1', max: '999', step: '1' }),
};

/** What each board length costs by volume, however it is quoted. */
export const priceSteps = {
  boardSection,
  ...byKey(
    soldKeys.map(
      (key, at) =>
        [
          `paid${key}`,
          pricePerVolume(
            {
              volume: `price${key}`,
              length: `perLength${key}`,
              each: `each${key}`,
              board: `stock${key}`,
            },
            `price by volume of board ${at + 1}`,
          ),
        ] as const,
    ),
  ),
};
