/** Second versions of the boat worth a look: the number corrected, a wedge, the least mend, the trial move. */
import { type Hull, offsetName } from '../../boat';
import type { Offer, OnHand, Values } from '../define';
import { wayOf } from './fair-picture';
import { leanOf, lineOf, mendOf, number, panelUnder, reading, trialOf, word } from './fair-working';
import type { LongLine } from './long-line';
import { ALIKE, firstSuspect, rivalOn } from './suspects';

type Say = OnHand['say'];

export function offersOf(v: Values, { hull, say }: Pick<OnHand, 'hull' | 'say'>): readonly Offer[] {
  if (!hull) return [];
  return [...correctionOffers(hull, v, say), ...mendOffer(hull, v), ...trialOffer(hull, v, say)];
}

/** The first suspect of the whole table put right, and as much of it as the thickest wedge or cut can do. */
function correctionOffers(hull: Hull, v: Values, say: Say): readonly Offer[] {
  const { station, line, correction, proof } = firstSuspect(hull, reading(v));
  if (proof <= 1) return [];
  const moved = `${say(Math.abs(correction), 'length')} ${wayOf(correction, line.view)}`;
  const whole: Offer = {
    label: `${station.label}, ${line.edge.label}: ${moved}`,
    changes: changeOf(hull, line, station.index, correction),
  };
  const there = { ...v, edge: line.edge.name, view: line.view, oddStation: station.name, shift: 0 };
  const lean = leanOf(hull, hull, there);
  // Thickness of the wedge for each unit of the move, square to the frame side.
  const share = line.view === 'plan' ? Math.cos(lean) : -Math.sin(lean);
  const most = number(v, 'mostWedge');
  const rival = rivalOn(hull, line, reading(v));
  if (rival.nearly > ALIKE) {
    const by = `${say(Math.abs(rival.correction), 'length')} ${wayOf(rival.correction, line.view)}`;
    return [
      whole,
      {
        label: `Or, nearly as likely, ${rival.station.label}, ${line.edge.label}: ${by}`,
        changes: changeOf(hull, line, rival.station.index, rival.correction),
      },
    ];
  }
  // A frame side that runs along the move takes no wedge: the line is only marked elsewhere on it.
  if (Math.abs(correction * share) <= most || Math.abs(share) < 0.1) return [whole];
  const part = (Math.sign(correction) * most) / Math.abs(share);
  const kind = correction * share > 0 ? 'A wedge' : 'A cut';
  const panel = panelUnder(hull, line).label;
  return [
    whole,
    {
      label: `${kind} of ${say(most, 'length')} at the ${line.edge.label} of ${station.label}, tapering along its ${panel}: ${say(Math.abs(part), 'length')} ${wayOf(part, line.view)}`,
      changes: changeOf(hull, line, station.index, part),
    },
  ];
}

/** Every move of the least mend of the line in hand, without the trial. */
function mendOffer(hull: Hull, v: Values): readonly Offer[] {
  const still = { ...v, shift: 0 };
  const line = lineOf(hull, still);
  const moves = mendOf(hull, still);
  const moved = moves.flatMap((move, i) => (move === 0 ? [] : [i]));
  if (moved.length === 0) return [];
  const stations = moved.length === 1 ? 'one station' : `${moved.length} stations`;
  return [
    {
      label: `The least mend of the ${line.edge.label} in ${line.view}: ${stations}`,
      changes: Object.fromEntries(
        moved.flatMap((i) => Object.entries(changeOf(hull, line, i, moves[i]!))), // one move a station
      ),
    },
  ];
}

function trialOffer(hull: Hull, v: Values, say: Say): readonly Offer[] {
  const { by, view } = trialOf(v);
  if (by === 0) return [];
  const station = hull.station(word(v, 'tried'));
  const line = lineOf(hull, { ...v, shift: 0 });
  return [
    {
      label: `The trial: ${station.label}, ${line.edge.label} ${say(Math.abs(by), 'length')} ${wayOf(by, view)}`,
      changes: changeOf(hull, line, station.index, by),
    },
  ];
}

/** The entry that moves one point, to the tenth of a millimetre. */
function changeOf(hull: Hull, line: LongLine, index: number, by: number): Offer['changes'] {
  const column = line.view === 'plan' ? 'halfBreadth' : 'height';
  const name = offsetName(hull.stations[index]!.name, line.edge.name, column); // one a point
  const value = line.values[index]! + by;
  return { [name]: `${+((column === 'halfBreadth' ? Math.max(value, 0) : value) * 1000).toFixed(1)} mm` };
}
