/** The timber laid straight along the skin: what stands proud of it and what lacks, enlarged; and the same as a graph. */
import { attempt } from '../../boat';
import { centreLine, dim, type Drawing, drawing, hatch, line, mm, note, type Point } from '../../drawing';
import { isIssue } from '../../measure';
import type { FacePlace } from '../../boat/joinery/face-on-skin';
import type { Chart, OnHand } from '../form/define';
import { type FairingValues, lie } from './fairing-steps';

type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;

const inHand = ({ hull, ask }: Saying) =>
  attempt(() => {
    if (!hull) throw new Error('There is no hull to hold the timber against.');
    return ask(lie);
  });

/** Smaller than this, mm, nothing is dimensioned: no plane takes it. */
const LEAST = 0.3;

/** As many places are dimensioned. */
const MOST_TOLD = 6;

export function drawFairing(v: FairingValues, on: Saying): Drawing {
  const found = inHand(on);
  const title = 'The timber against the skin, laid straight';
  if (isIssue(found)) return drawing({ title, says: found.issue, shapes: [note(found.issue)] });
  const { places, ticks } = found;
  const ofStem = v.timber === 'stem';
  const from = ofStem ? 'its foot' : 'the after end';
  const length = mm(found.length);
  const worst = Math.max(...places.flatMap(({ line: at, far }) => [Math.abs(mm(at)), Math.abs(mm(far))]));
  const times = [200, 100, 50, 20, 10, 5, 2, 1].find((factor) => worst * factor <= length / 8) ?? 1;
  const at = (along: number, off: number): Point => [mm(along), mm(off) * times];
  const high = length / 9;
  const farAlone = places.some(({ line: near, far }) => Math.abs(mm(near - far)) > LEAST / 3);
  const metres = (value: number) => on.say(value, 'length');
  const foot = -(worst * times + high * 0.55);
  return drawing({
    title,
    says: `${v.most > 0 ? `Most proud: ${metres(v.most)}, ${metres(v.mostAt)} from ${from}.` : 'It stands proud nowhere.'} ${v.lacks > 0 ? `Lacks most: ${metres(v.lacks)}, ${metres(v.lacksAt)} from there.` : 'It lacks nowhere.'}`,
    shapes: [
      hatch(
        [at(0, 0), ...places.map(({ along, line: off }) => at(along, off)), at(found.length, 0)],
        'cedar',
        {
          pen: 'none',
          part: v.timber,
        },
      ),
      line([at(0, 0), at(found.length, 0)], { pen: 'outline', part: v.panel }),
      line(
        places.map(({ along, line: off }) => at(along, off)),
        { pen: 'visible', part: v.timber },
      ),
      farAlone
        ? line(
            places.map(({ along, far }) => at(along, far)),
            { pen: 'hidden', part: v.timber },
          )
        : [],
      ticks.map(({ at: place, label }) => {
        const x = mm(place);
        return [
          centreLine([x, foot + high * 0.3], [x, -foot - high * 0.3]),
          isShort(label) ? note(label.replace(/^(frame|station)\s+/i, ''), { at: [x, foot] }) : [],
        ];
      }),
      told(places).map(({ along, off }) =>
        dim(at(along, 0), at(along, off), metres(Math.abs(off)), { side: 'right' }),
      ),
      note(
        `Heavy line: the skin, laid straight. Thin line: the timber’s face along its edge${farAlone ? '; dashed: along its far edge' : ''}, drawn ${times} times as far off as it is. Above the skin it stands proud, below it lacks. ${ofStem ? 'Its foot is at the left; the edge is its outer face, the far edge the bearding line.' : 'Frames by their numbers, aft at the left.'}`,
      ),
    ],
  });
}

const isShort = (label: string) => /^(frame|station)\s+\S{1,2}$/i.test(label) || label.length <= 2;

interface Told {
  readonly along: number;
  readonly off: number;
}

/** The crests of the timber’s line and of its far edge, the largest of them. */
function told(places: readonly FacePlace[]): readonly Told[] {
  const crests = (of: (place: FacePlace) => number): Told[] =>
    places.flatMap((place, i) => {
      const [before, off, after] = [places[i - 1], place, places[i + 1]].map(
        (one) => one && Math.abs(of(one)),
      );
      const isCrest = off! > (before ?? 0) && off! >= (after ?? 0);
      return isCrest && mm(off!) >= LEAST ? [{ along: place.along, off: of(place) }] : [];
    });
  const farther = places.some(({ line: near, far }) => Math.abs(mm(near - far)) > LEAST);
  const all = crests(
    farther ? ({ line: near, far }) => (Math.abs(far) > Math.abs(near) ? far : near) : (one) => one.line,
  );
  const length = places.at(-1)!.along; // a board has two places or more
  return all
    .toSorted((a, b) => Math.abs(b.off) - Math.abs(a.off))
    .reduce<Told[]>(
      (kept, one) =>
        kept.length < MOST_TOLD && kept.every(({ along }) => Math.abs(along - one.along) > length / 9)
          ? [...kept, one]
          : kept,
      [],
    );
}

/** What stands proud and what lacks, from end to end, with what the glue bridges. */
export function alongTimber(v: FairingValues, on: Saying): Chart {
  const found = inHand(on);
  const places = isIssue(found) ? [] : found.places;
  return {
    title: 'Off the skin, along the timber',
    says: isIssue(found)
      ? found.issue
      : `From ${on.say(-v.lacks, 'length')} to ${on.say(v.most, 'length')}; the glue bridges ${on.say(v.mostGap, 'length')}.`,
    x: { label: v.timber === 'stem' ? 'up from the foot' : 'from the after end', kind: 'length' },
    y: { label: 'proud of the skin', kind: 'length' },
    lines: [
      {
        name: 'at its edge',
        points: places.map(({ along, line: off }) => [along, off] as const),
        as: 'line',
      },
      { name: 'at the far edge', points: places.map(({ along, far }) => [along, far] as const), as: 'line' },
    ],
    limits: [
      { at: v.mostGap, axis: 'y', label: 'glue bridges' },
      { at: -v.mostGap, axis: 'y', label: 'glue bridges' },
    ],
    points: [{ x: v.at, y: v.line, label: `this mark: ${on.say(v.line, 'length')}` }],
  };
}
