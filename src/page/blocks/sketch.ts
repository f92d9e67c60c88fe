import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

const Sketch = later(async () => (await import('../glossary/sketch')).Sketch, 'sketch-to-come');

export const sketch: Show<'sketch'> = ({ of, line }) => use(Sketch, { of, line });
