import { MarkupError } from './element.ts';
import type { MarkupElement } from './element.ts';

/** A number attribute; absent or empty gives undefined. */
export function numberOf(element: MarkupElement, name: string): number | undefined {
  const text = element.attributes[name] ?? '';
  if (text === '') return undefined;
  const value = Number(text);
  if (!Number.isFinite(value)) refuse(element, `${name} of <${element.name}> is not a number`);
  return value;
}

export function requiredNumber(element: MarkupElement, name: string): number {
  const value = numberOf(element, name);
  if (value === undefined) refuse(element, `${name} of <${element.name}> is empty`);
  return value;
}

/** A text attribute that must say something. */
export function requiredText(element: MarkupElement, name: string): string {
  const value = textOf(element, name);
  if (value === undefined) refuse(element, `${name} of <${element.name}> is empty`);
  return value;
}

/** A text attribute; absent or empty gives undefined. */
export function textOf(element: MarkupElement, name: string): string | undefined {
  const text = element.attributes[name] ?? '';
  return text === '' ? undefined : text;
}

/** One of a closed list of words. */
export function choiceOf<T extends string>(element: MarkupElement, name: string, choices: readonly T[]): T {
  const text = element.attributes[name] ?? '';
  const choice = choices.find((word) => word === text);
  if (choice === undefined)
    refuse(element, `${name} of <${element.name}> is not one of ${choices.join(', ')}`);
  return choice;
}

/** True or false; absent or empty gives false. */
export function flagOf(element: MarkupElement, name: string): boolean {
  return textOf(element, name) === undefined
    ? false
    : choiceOf(element, name, ['true', 'false'] as const) === 'true';
}

export function childrenNamed(element: MarkupElement, ...names: readonly string[]): readonly MarkupElement[] {
  return element.children
    .filter((child) => child.type === 'element')
    .filter((child) => names.includes(child.name));
}

export function childNamed(element: MarkupElement, ...names: readonly string[]): MarkupElement | undefined {
  const found = childrenNamed(element, ...names);
  const second = found[1];
  if (second !== undefined) refuse(second, `<${element.name}> has a second <${second.name}>`);
  return found[0];
}

type Present<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** Leaves out keys whose value is absent, as exact optional types ask. */
export function present<T extends object>(values: T): Present<T> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as Present<T>;
}

export function refuse(element: MarkupElement, message: string): never {
  throw new MarkupError('vocabulary', message, element.origin);
}
