/** The switches that the instrumented sources look at while they run. The names are the instrumenter's. */
interface Switches {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number;
  /** Nothing is counted any more. */
  measured?: boolean;
  mutantCoverage?: { readonly static: Hits; readonly perTest: Record<string, Hits> };
}
type Hits = Record<string, number>;

const holder = globalThis as { __stryker__?: Switches };
const switches: Switches = (holder.__stryker__ ??= {});

/** A mutant that is passed this often within one test is held to loop for ever. */
const mostHits = 5_000_000;

/** What was passed while the files were imported, and in each test. */
export function readCoverage(): {
  readonly imports: readonly string[];
  readonly tests: ReadonlyMap<string, string[]>;
} {
  const { static: imports = {}, perTest = {} } = switches.mutantCoverage ?? {};
  switches.measured = true;
  const tests = Object.entries(perTest).map(([test, hits]) => [test, Object.keys(hits)] as const);
  return { imports: Object.keys(imports), tests: new Map(tests) };
}

export function beginTest(test: string | undefined): void {
  switches.currentTestId = test;
}

/** Switches one mutant on, or all of them off. */
export function switchMutant(mutant: string | undefined): void {
  switches.activeMutant = mutant;
  switches.hitCount = 0;
  switches.hitLimit = mostHits;
}
