/** Second versions of the boat worth a look: the number corrected, a wedge, the least mend, the trial move. */
import { type Hull, offsetName } from '../../boat';
import type { Effect, Offer, OnHand, Values } from '../form/define';
import { effectsOf } from './fair-effects';
import { wayOf } from './fair-drawing';
import { leanOf, lineOf, mendOf, number, panelUnder, reading, trialOf, viewOf, word } from './fair-working';
import type { LongLine } from './long-line';
import type { Move } from './moved-hull';
import { ALIKE, firstSuspect, rivalOn } from './suspects';

type Say = OnHand['say'];

export function offersOf(v: Values, { hull, say }: Pick<OnHand, 'hull' | 'say'>): readonly Offer[] {
  if (!hull) return [];
  return [
    ...lineOffer(hull, v),
    ...correctionOffers(hull, v, say),
    ...mendOffer(hull, v, say),
    ...trialOffer(hull, v, say),
  ];
}

/** The line of the first suspect, where another is looked at. */
function lineOffer(hull: Hull, v: Values): readonly Offer[] {
  const { station, line, proof } = firstSuspect(hull, reading(v));
  const { edge, view } = line;
  if (proof <= 1 || (edge.name === word(v, 'edge') && view === viewOf(v))) return [];
  return [
    {
      turns: 'Show that line',
      label: `The number to look at first: ${station.label}, ${edge.label} in ${view}`,
      changes: { '{self}.edge': edge.name, '{self}.view': view },
    },
  ];
}

/** The first suspect of the whole table put right, and as much of it as the thickest wedge or cut can do. */
function correctionOffers(hull: Hull, v: Values, say: Say): readonly Offer[] {
  const { station, line, correction, proof } = firstSuspect(hull, reading(v));
  if (proof <= 1) return [];
  const offer = (label: string, index: number, by: number, inWood: readonly Effect[] = []): Offer => {
    const { effects = [], ...made } = offerOf(hull, line, [{ index, by }], label, v, say);
    return { ...made, effects: [...effects, ...inWood] };
  };
  const named = `${station.label}, ${line.edge.label}: ${say(Math.abs(correction), 'length')} ${wayOf(correction, line.view)}`;
  const rival = rivalOn(hull, line, reading(v));
  if (rival.nearly > ALIKE) {
    const by = `${say(Math.abs(rival.correction), 'length')} ${wayOf(rival.correction, line.view)}`;
    return [
      offer(named, station.index, correction),
      offer(
        `Or, nearly as likely, ${rival.station.label}, ${line.edge.label}: ${by}`,
        rival.station.index,
        rival.correction,
      ),
    ];
  }
  const there = { ...v, edge: line.edge.name, view: line.view, oddStation: station.name, shift: 0 };
  const lean = leanOf(hull, hull, there);
  // Thickness of the wedge for each unit of the move, square to the frame side.
  const share = line.view === 'plan' ? Math.cos(lean) : -Math.sin(lean);
  // A frame side that runs along the move takes no wedge: the line is only marked elsewhere on it.
  if (Math.abs(share) < 0.1) return [offer(named, station.index, correction)];
  const most = number(v, 'mostWedge');
  const panel = panelUnder(hull, line);
  const far = panel.inner.name === line.edge.name ? panel.outer : panel.inner;
  const wood = (wedge: number) =>
    `a ${wedge > 0 ? 'wedge' : 'cut'} of ${say(Math.abs(wedge), 'length')} at the ${line.edge.label}, nothing at the ${far.label}`;
  const depths = (wedge: number) => depthsWith(wedge, number(v, 'moulded'), line.edge.label);
  const wedge = correction * share;
  if (Math.abs(wedge) <= most)
    return [offer(`${named}; in wood ${wood(wedge)}`, station.index, correction, depths(wedge))];
  const part = (Math.sign(correction) * most) / Math.abs(share);
  const moved = `${say(Math.abs(part), 'length')} ${wayOf(part, line.view)}`;
  return [
    offer(named, station.index, correction),
    offer(
      `${station.label}, as much of it as is worth gluing or planing: ${wood(part * share)}, ${moved}`,
      station.index,
      part,
      depths(part * share),
    ),
  ];
}

/**
 * What the mend does to the frame side itself, at its thick end. A wedged one keeps its depth if it loses the same
 * taper inside; what that leaves of its own wood is for the builder to judge.
 * @param wedge + glued on, - planed off, m
 */
function depthsWith(wedge: number, moulded: number, at: string): readonly Effect[] {
  const deep: Effect = {
    label: `Depth of the side member at the ${at}`,
    kind: 'length',
    before: moulded,
    after: Math.max(moulded + wedge, 0),
  };
  if (wedge < 0 || wedge >= moulded) return [deep];
  const left: Effect = {
    label: 'Its own wood there, if it loses the same taper inside and so keeps its depth',
    kind: 'length',
    before: moulded,
    after: moulded - wedge,
  };
  return [deep, left];
}

/** Every move of the least mend of the line in hand, without the trial. */
function mendOffer(hull: Hull, v: Values, say: Say): readonly Offer[] {
  const still = { ...v, shift: 0 };
  const line = lineOf(hull, still);
  const moved = mendOf(hull, still).flatMap((by, index) => (by === 0 ? [] : [{ index, by }]));
  if (moved.length === 0) return [];
  const stations = moved.length === 1 ? 'one station' : `${moved.length} stations`;
  return [
    offerOf(
      hull,
      line,
      moved,
      `The least mend of the ${line.edge.label} in ${line.view}: ${stations}`,
      v,
      say,
    ),
  ];
}

function trialOffer(hull: Hull, v: Values, say: Say): readonly Offer[] {
  const { by, view } = trialOf(hull, v);
  if (by === 0) return [];
  const { label, index } = hull.station(word(v, 'tried'));
  const line = lineOf(hull, { ...v, shift: 0 });
  const words = `The trial: ${label}, ${line.edge.label} ${say(Math.abs(by), 'length')} ${wayOf(by, view)}`;
  return [offerOf(hull, line, [{ index, by }], words, v, say)];
}

interface Shift {
  /** Of the station. */
  readonly index: number;
  /** m, + outboard or up. */
  readonly by: number;
}

function offerOf(
  hull: Hull,
  line: LongLine,
  shifts: readonly Shift[],
  label: string,
  v: Values,
  say: Say,
): Offer {
  const written = shifts.map((shift) => writtenFor(line, shift));
  const column = line.view === 'plan' ? 'halfBreadth' : 'height';
  const changes = written.map(({ index, mm }): [string, string] => {
    const name = offsetName(hull.stations[index]!.name, line.edge.name, column); // one a point
    return [name, `${mm} mm`];
  });
  const moves = written.map(({ index, mm }): Move => ({
    edge: line.edge.name,
    station: hull.stations[index]!.name,
    view: line.view,
    by: mm / 1000 - line.values[index]!,
  }));
  return {
    label,
    changes: Object.fromEntries<string>(changes),
    effects: effectsOf(hull, line, moves, number(v, 'draught'), say),
  };
}

/** The number to be written, to the tenth of a millimetre. */
function writtenFor({ values, view }: LongLine, { index, by }: Shift) {
  const value = values[index]! + by;
  return { index, mm: +((view === 'plan' ? Math.max(value, 0) : value) * 1000).toFixed(1) };
}
