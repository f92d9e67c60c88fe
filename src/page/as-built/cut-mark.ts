/** The key that marks a part as cut, or as not cut after all; beneath it what no longer fits. */
import { cutAs, givensOf } from '../../notebook/graph/cut-part';
import { useBench } from '../bench';
import { html, use } from '../html';
import { bareOf } from '../bare';
import { capital } from '../words';
import { MisfitList } from './misfit-list';
import { partWords } from './part-words';

export interface CutMarkProps {
  /** First word of the names of the part's quantities: `frame3`. */
  readonly part: string;
  /** Beside a cell's input: the key alone. */
  readonly brief?: boolean;
}

export function CutMark({ part, brief = false }: CutMarkProps) {
  const bench = useBench();
  const { book, instances, misfits } = bench;
  const isCut = Object.hasOwn(book.asBuilt.value.cut, part);
  const { the, areMany } = partWords(part);
  const stays = areMany ? 'They stay as they are' : 'It stays as it is';
  const turn = () =>
    book.markCut(
      part,
      isCut ? null : cutAs(part, bareOf(bench).book.inHand.peek(), instances.peek().values()),
    );
  const own = isCut ? misfits.value.filter((misfit) => misfit.part === part) : [];
  return html`<div class=${`cut-mark${isCut ? ' is-cut' : ''}`}>
    <p role="status">
      ${isCut ? html`<b>${capital(the)}: cut.</b> ${brief ? '' : `${stays}, whatever is edited. `}${fits(own.length, areMany ? 'them' : 'it')}` : ''}
    </p>
    <button type="button" onClick=${turn}>
      ${isCut ? `${capital(the)}: not cut after all` : `Mark ${the} as cut`}
    </button>
    ${isCut && !brief ? use(NotHeld, { part }) : null}
    ${own.length > 0 && !brief ? use(MisfitList, { misfits: own }) : null}
  </div>`;
}

/** What had no number on the day the part was marked, or is new since, is not held to anything. */
function NotHeld({ part }: { part: string }) {
  const { book } = useBench();
  const graph = book.inHand.value;
  const { held } = book.asBuilt.value.cut[part]!; // asked only of a part that is cut
  const free = givensOf(part, graph).filter((name) => !Object.hasOwn(held, name));
  if (free.length === 0) return null;
  const meanings = free.map((name) => graph.quantity(name)?.meaning ?? name).join(', ');
  return html`<p class="says">
    Not held, for want of a number when it was marked: ${meanings}. Unmark the part and mark it again when it has one.
  </p>`;
}

function fits(misfits: number, them: string): string {
  if (misfits === 0) return `All still fits ${them}.`;
  return misfits === 1 ? `One number no longer fits ${them}.` : `${misfits} numbers no longer fit ${them}.`;
}
