/** The few lines between two `---` at the head of a notebook: `key: value`, one a line. */
import { starters } from '../../boat';
import type { Stage } from '../../cells';
import type { TextFault, FrontMatter } from './page-text';

export interface Head {
  /** What was written; title null where there is none. */
  readonly written: Omit<FrontMatter, 'title'> & { readonly title: string | null };
  readonly faults: readonly TextFault[];
  /** The text below the head. */
  readonly rest: string;
  /** Lines taken by the head. */
  readonly lines: number;
}

const keys = ['title', 'summary', 'stage', 'order', 'boat', 'form'] as const;
type Key = (typeof keys)[number];
const isKey = (key: string): key is Key => (keys as readonly string[]).includes(key);

/** Every stage, in the order of a build; a stage left out here is a fault of types. */
const stages = Object.keys({
  shape: true,
  frames: true,
  timber: true,
  skin: true,
  finish: true,
  afloat: true,
  handling: true,
  buying: true,
} satisfies Record<Stage, true>);
const isStage = (text: string): text is Stage => stages.includes(text);

/** What a notebook may say it is about; one that says nothing follows the builder's own boat. */
export const boatsToBring = starters.map(({ id }) => id);
const boats = ['none', ...boatsToBring];

/** The one form that a notebook may have beside the plain one. */
const QUESTIONS = 'questions';

/** Letters that the list of notebooks has room for. */
export const LONGEST_TITLE = 120;
const LONGEST_SUMMARY = 400;

/** Notebooks that don't say where they stand come after those that do. */
export const LAST = 1000;

/** Reads the head of a notebook whose lines end in `\n`. A notebook without a head is all rest. */
export function readFrontMatter(text: string): Head {
  const lines = text.split('\n');
  const end =
    lines[0]?.trimEnd() === '---' ? lines.findIndex((line, at) => at > 0 && line.trimEnd() === '---') : 0;
  const faults: TextFault[] = [];
  const fault = (line: number, says: string, text: string) =>
    faults.push({ type: 'fault', line, says, text });
  const written = new Map<Key, { value: string; line: number }>();

  if (end < 0)
    fault(1, 'The head that begins with --- has no end: close it with another line of ---.', '---');
  for (let at = 1; at < end; at += 1) {
    const text = lines[at] ?? '';
    if (text.trim() === '') continue;
    const [, key, value] = /^(\w+)\s*:\s*(.*?)\s*$/.exec(text) ?? [];
    if (key === undefined || value === undefined) {
      fault(at + 1, 'A line of the head is a name, a colon and a text, as in "title: The build".', text);
    } else if (!isKey(key)) {
      fault(at + 1, `The head takes ${keys.join(', ')}; "${key}" is none of them.`, text);
    } else if (written.has(key)) {
      fault(at + 1, `"${key}" is already given on line ${written.get(key)?.line ?? 0}.`, text);
    } else written.set(key, { value: unquoted(value), line: at + 1 });
  }

  for (const [key, most] of [
    ['title', LONGEST_TITLE],
    ['summary', LONGEST_SUMMARY],
  ] as const) {
    const { value = '', line = 1 } = written.get(key) ?? {};
    if (value.length <= most) continue;
    fault(line, `"${key}" may be ${most} letters long.`, `${value.slice(0, most)} …`);
    written.delete(key);
  }
  const order = written.get('order');
  if (order && !/^\d{1,4}$/.test(order.value)) {
    fault(
      order.line,
      `"order" is a whole number, such as 2; "${order.value}" is not.`,
      lines[order.line - 1] ?? '',
    );
    written.delete('order');
  }
  const stage = written.get('stage')?.value ?? '';
  if (stage !== '' && !isStage(stage)) {
    const line = written.get('stage')?.line ?? 1;
    fault(line, `"stage" is one of ${stages.join(', ')}; "${stage}" is none of them.`, lines[line - 1] ?? '');
  }
  const boat = written.get('boat');
  if (boat && !boats.includes(boat.value)) {
    const says = `"boat" is one of ${boats.join(', ')}; "${boat.value}" is none of them.`;
    fault(boat.line, says, lines[boat.line - 1] ?? '');
    written.delete('boat');
  }
  const form = written.get('form');
  const says =
    form && form.value !== QUESTIONS
      ? `"form" is ${QUESTIONS}, or left out; "${form.value}" is neither.`
      : form && written.get('boat')?.value !== 'none'
        ? `A list of questions knows no boat: with "form: ${QUESTIONS}" goes "boat: none".`
        : null;
  if (form && says !== null) {
    fault(form.line, says, lines[form.line - 1] ?? '');
    written.delete('form');
  }
  const taken = end > 0 ? end + 1 : end < 0 ? 1 : 0;
  return {
    written: {
      title: written.get('title')?.value || null,
      summary: written.get('summary')?.value ?? '',
      stage: isStage(stage) ? stage : null,
      order: Number(written.get('order')?.value ?? LAST),
      boat: written.get('boat')?.value ?? null,
      ...(written.has('form') && { form: QUESTIONS }),
    },
    faults,
    rest: lines.slice(taken).join('\n'),
    lines: taken,
  };
}

/** Writers used to other heads put quotes round a text with a colon in it. */
function unquoted(value: string): string {
  return (
    /^"(.*)"$|^'(.*)'$/
      .exec(value)
      ?.slice(1)
      .find((inner) => inner !== undefined) ?? value
  );
}
