import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { finding } from '../reading.ts';
import { attribute } from './read-page.ts';
import type { WebPage } from './read-page.ts';
import type { WebRule } from './rules.ts';

type Element = WebPage['elements'][number];

/** Elements that show something and do nothing. Whatever else stands in a page was not put there by us. */
const known: ReadonlySet<string> = new Set(
  [
    'html head meta title style body header nav main article section footer div p span a strong bdi h1 h2 h3 ul ol li dl dt dd',
    'table caption colgroup col thead tbody tr th td figure figcaption details summary',
    'svg desc defs g path use text tspan',
  ]
    .join(' ')
    .split(' '),
);

/** What links and drawn marks may point to: a place in this page, a phone. */
const pointsWithin = /^(#[\w-]+|tel:\+?\d+)$/;
const onlyWidth = /^width:\d+(\.\d+)?%$/;

function attributeAllowed(element: Element, { name, value }: Element['attrs'][number]): boolean {
  if (name.startsWith('on') || name === 'src' || name === 'srcdoc' || name === 'srcset') return false;
  if (name === 'href' || name.endsWith(':href')) return pointsWithin.test(value);
  if (name === 'style') return element.tagName === 'col' && onlyWidth.test(value);
  return name !== 'http-equiv' || value === 'Content-Security-Policy';
}

function hasPolicy(elements: readonly Element[]): boolean {
  const policies = elements.filter((element) => attribute(element, 'http-equiv') !== undefined);
  const content = policies.map((element) => attribute(element, 'content') ?? '');
  return (
    content.length === 1 &&
    /^default-src 'none';/.test(content[0] ?? '') &&
    !/script-src/.test(content[0] ?? '')
  );
}

/** The page runs nothing and fetches nothing: no element, attribute or address that could, and a policy that forbids it. */
export const nothingActive: WebRule = ({ page: { elements } }): readonly Diagnostic[] => {
  const strange = elements.filter(
    (element) => !known.has(element.tagName) || !element.attrs.every((one) => attributeAllowed(element, one)),
  );
  const styles = elements.filter(({ tagName }) => tagName === 'style').length;
  if (strange.length === 0 && styles === 1 && hasPolicy(elements)) return [];
  const detail = strange.length > 0 ? `${strange.length} elements` : 'policy or style sheet';
  return [finding('VERIFY_ACTIVE_CONTENT', { detail })];
};
