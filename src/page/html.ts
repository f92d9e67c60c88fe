/** Markup: htm for plain elements, `use` for components, so that their props are checked. */
import { type Attributes, type ComponentChildren, type FunctionComponent, h, type VNode } from 'preact';
import htm from 'htm';

/** One root a template; htm's own type can't say so. */
export const html = htm.bind(h) as (strings: TemplateStringsArray, ...values: unknown[]) => VNode;

/** A component with its props checked; htm would check none. */
export function use<P>(
  component: FunctionComponent<P>,
  props: P & Attributes,
  ...children: ComponentChildren[]
): VNode {
  return h(component as FunctionComponent<object>, props as object, ...children);
}
