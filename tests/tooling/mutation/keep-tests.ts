/**
 * What the copied tests import in place of vitest: it keeps each test as a function, so that one warm process can run
 * a chosen test thousands of times, each time with another mutant switched on. Tests with hooks are not kept: the
 * import of a hook fails, which says so.
 */
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  chai,
} from '@vitest/expect';

export interface KeptTest {
  readonly name: string;
  readonly run: () => unknown;
}

type Keep = (name: string, body: () => unknown) => void;
type Each = (rows: readonly unknown[]) => (name: string, body: (...row: unknown[]) => unknown) => void;

export const kept: KeptTest[] = [];
let path: readonly string[] = [];

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect: unknown = Object.assign(
  (value: unknown, message?: string) => chai.expect(value, message),
  ASYMMETRIC_MATCHERS_OBJECT,
  { ...chai.expect },
);

function keepTest(name: string, run: () => unknown): void {
  kept.push({ name: [...path, name].join(' > '), run });
}

function keepSuite(name: string, body: () => void): void {
  const outer = path;
  path = [...path, name];
  body();
  path = outer;
}

/** A row that is a list is spread over the arguments, as vitest does. */
function each(keep: Keep): Each {
  return (rows) => (name, body) => {
    rows.forEach((row, at) => {
      keep(`${name} [${at}]`, () => {
        const list: readonly unknown[] = Array.isArray(row) ? row : [row];
        return body(...list);
      });
    });
  };
}

export const it = Object.assign(keepTest, { each: each(keepTest) });
export const describe = Object.assign(keepSuite, { each: each(keepSuite) });

/** Imports a file of tests and names them after it. */
export async function keepFile(name: string, url: string): Promise<void> {
  path = [name];
  await import(url);
}
