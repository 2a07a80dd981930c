import { MarkupError } from './element.ts';
import type { MarkupElement, MarkupNode } from './element.ts';
import { inlineElements, ruleOf } from './vocabulary.ts';
import type { ElementRule } from './vocabulary.ts';

/** Every element known, in its place, with its attributes and no others. Throws MarkupError for the first that is not. */
export function checkVocabulary(nodes: readonly MarkupNode[], file: string): void {
  checkContent({ type: 'element', name: 'document', attributes: {}, children: nodes, origin: `${file}:1` });
}

function checkElement(element: MarkupElement): void {
  const rule = ruleOf(element.name);
  if (rule === undefined || element.name === 'document')
    refuse(element, `<${element.name}> is not a known element`);
  checkAttributes(element, rule);
  checkContent(element);
}

function checkAttributes(element: MarkupElement, rule: ElementRule): void {
  for (const name of Object.keys(element.attributes)) {
    if (!rule.required.includes(name) && !rule.optional.includes(name)) {
      refuse(element, `<${element.name}> has no attribute ${name}`);
    }
  }
  for (const name of rule.required) {
    if (element.attributes[name] === undefined) refuse(element, `<${element.name}> lacks ${name}`);
  }
}

function checkContent(element: MarkupElement): void {
  const content = ruleOf(element.name)?.content ?? [];
  const allowed = content === 'inline' ? inlineElements : content;
  for (const child of element.children) {
    if (child.type === 'text') {
      if (content !== 'inline' && child.value.trim() !== '')
        refuse(element, `text stands directly in <${element.name}>`);
    } else {
      if (!allowed.includes(child.name)) refuse(child, `<${child.name}> may not stand in <${element.name}>`);
      checkElement(child);
    }
  }
}

function refuse(element: MarkupElement, message: string): never {
  throw new MarkupError('vocabulary', message, element.origin);
}
