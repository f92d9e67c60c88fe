/** Second versions of the boat worth a look: the number corrected, a wedge, the least mend, the trial move. */
import { type Hull, offsetName } from '../../boat';
import type { Effect, Offer, OnHand } from '../form/define';
import { effectsOf } from './fair-effects';
import { wayOf } from './fair-drawing';
import { first, leanAt, mendOfTable, panelUnder, still, trial } from './fair-facts';
import type { FairValues } from './fair-steps';
import type { LongLine } from './long-line';
import type { Move } from './moved-hull';
import { ALIKE, rivalOn } from './suspects';

type Say = OnHand['say'];
type Saying = Pick<OnHand, 'hull' | 'say' | 'ask'>;
type Having = Omit<Saying, 'hull'> & { readonly hull: Hull };

export function offersOf(v: FairValues, { hull, say, ask }: Saying): readonly Offer[] {
  if (!hull) return [];
  const on = { hull, say, ask };
  return [...lineOffer(v, on), ...correctionOffers(v, on), ...mendOffer(v, on), ...trialOffer(v, on)];
}

/** The line of the first suspect, where another is looked at. */
function lineOffer(v: FairValues, { ask }: Having): readonly Offer[] {
  const { station, line, proof } = ask(first);
  const { edge, view } = line;
  if (proof <= 1 || (edge.name === v.edge && view === v.view)) return [];
  return [
    {
      turns: 'Show that line',
      label: `The number to look at first: ${station.label}, ${edge.label} in ${view}`,
      changes: { '{self}.edge': edge.name, '{self}.view': view },
    },
  ];
}

/** The first suspect of the whole table put right, and as much of it as the thickest wedge or cut can do. */
function correctionOffers(v: FairValues, { hull, say, ask }: Having): readonly Offer[] {
  const { station, line, correction, proof } = ask(first);
  if (proof <= 1) return [];
  const offer = (label: string, index: number, by: number, inWood: readonly Effect[] = []): Offer => {
    const { effects = [], ...made } = offerOf(hull, line, [{ index, by }], label, v, say);
    return { ...made, effects: [...effects, ...inWood] };
  };
  const named = `${station.label}, ${line.edge.label}: ${say(Math.abs(correction), 'length')} ${wayOf(correction, line.view)}`;
  const rival = rivalOn(hull, line, v);
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
  const panel = panelUnder(hull, line);
  const lean = leanAt(hull, panel, station);
  // Thickness of the wedge for each unit of the move, square to the frame side.
  const share = line.view === 'plan' ? Math.cos(lean) : -Math.sin(lean);
  // A frame side that runs along the move takes no wedge: the line is only marked elsewhere on it.
  if (Math.abs(share) < 0.1) return [offer(named, station.index, correction)];
  const most = v.mostWedge;
  const far = panel.inner.name === line.edge.name ? panel.outer : panel.inner;
  const wood = (wedge: number) =>
    `a ${wedge > 0 ? 'wedge' : 'cut'} of ${say(Math.abs(wedge), 'length')} at the ${line.edge.label}, nothing at the ${far.label}`;
  const depths = (wedge: number) => depthsWith(wedge, v.moulded, line.edge.label);
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
function mendOffer(v: FairValues, { hull, say, ask }: Having): readonly Offer[] {
  const line = ask(still);
  const moved = ask(mendOfTable).flatMap((by, index) => (by === 0 ? [] : [{ index, by }]));
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

function trialOffer(v: FairValues, { hull, say, ask }: Having): readonly Offer[] {
  const { by, view, index } = ask(trial);
  if (by === 0) return [];
  const { label } = hull.stations[index]!; // the trial is at one of them
  const line = ask(still);
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
  v: FairValues,
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
    effects: effectsOf(hull, line, moves, v.draught, say),
  };
}

/** The number to be written, to the tenth of a millimetre. */
function writtenFor({ values, view }: LongLine, { index, by }: Shift) {
  const value = values[index]! + by;
  return { index, mm: +((view === 'plan' ? Math.max(value, 0) : value) * 1000).toFixed(1) };
}
