/** The ways in which what a learner writes may change: pure functions on the state, which Undo steps through as through any other. */
import { type Lesson, noLesson, nothingSaid, type SaidTo } from '../../boat';
import type { BookState } from '../state/state';

export const lessonIn = (state: BookState, notebook: string): Lesson =>
  ownOf(state.lessons, notebook) ?? noLesson;

export const saidIn = (state: BookState, notebook: string, ask: string): SaidTo =>
  ownOf(lessonIn(state, notebook).said, ask) ?? nothingSaid;

const ownOf = <T>(all: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(all, key) ? all[key] : undefined;

/** Writes what has changed of what was said to a question; null takes all of it back. What stands there already is no change. */
export function writeSaid(
  state: BookState,
  notebook: string,
  ask: string,
  change: Partial<SaidTo> | null,
): BookState {
  const lesson = lessonIn(state, notebook);
  if (change === null) {
    const { [ask]: was, ...others } = lesson.said;
    return was ? put(state, notebook, { ...lesson, said: others }) : state;
  }
  const was = saidIn(state, notebook, ask);
  const is = { ...was, ...change };
  if (JSON.stringify(is) === JSON.stringify(was)) return state;
  return put(state, notebook, { ...lesson, said: { ...lesson.said, [ask]: is } });
}

export function writeSeed(state: BookState, notebook: string, seed: string): BookState {
  const lesson = lessonIn(state, notebook);
  return lesson.seed === seed ? state : put(state, notebook, { ...lesson, seed });
}

/** Where nothing is said there is no lesson. */
function put(state: BookState, notebook: string, lesson: Lesson): BookState {
  const { [notebook]: _, ...others } = state.lessons;
  const isEmpty = lesson.seed === '' && Object.keys(lesson.said).length === 0;
  return { ...state, lessons: isEmpty ? others : { ...others, [notebook]: lesson } };
}
