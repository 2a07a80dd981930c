/**
 * The mutation run over the comparison:
 * `npm run mutate -- [--files PART,PART] [--from K] [--most N] [--imports] [--out FILE]`.
 * Every mutant of src/compare is switched on in turn, and the tests that pass its place are run, those first that
 * caught others of the file, until one fails. Prints those that no test catches, and the score. What is worked out while
 * a file is imported is judged only with --imports, since each such mutant needs a process of its own.
 */
import { appendFileSync, rmSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';

import { instrument, listSources } from './instrument.ts';
import type { Mutant } from './instrument.ts';
import { startWorker } from './warm-worker.ts';
import type { Answer, WarmWorker } from './warm-worker.ts';
import type { Measured } from './worker.ts';

type Verdict = 'caught' | 'too-slow' | 'survived' | 'not-reached' | 'not-judged';

interface Judged {
  readonly verdict: Verdict;
  /** The test that caught it. */
  readonly by?: string;
}

const root = resolve(import.meta.dirname, '../../..');
const { values } = parseArgs({
  options: {
    files: { type: 'string', default: '' },
    from: { type: 'string', default: '0' },
    imports: { type: 'boolean', default: false },
    most: { type: 'string', default: 'Infinity' },
    out: { type: 'string', default: 'out/mutation.jsonl' },
  },
});
/** Not among them: tests/property/reasons.property.test.ts, which takes as long as all of these. */
const others = [
  'tests/property/compare.test.ts',
  'tests/property/what-if.property.test.ts',
  'tests/external/weight-metrics.van-de-laar.test.ts',
  'tests/external/mortality-score.demaria-2007.test.ts',
  'tests/external/difference-interval.statsmodels.test.ts',
  'tests/external/pooled-shares.metafor-lme4.test.ts',
  'tests/external/intervals.metafor-jstat.test.ts',
];
const testFiles = [...listSources(root, 'tests/unit/compare'), ...others].filter((name) =>
  name.endsWith('.test.ts'),
);
/** Seconds for all tests of one mutant: the whole set takes about a quarter of it. */
const patience = 300;

const { copy, mutants } = await instrument(root, 'src/compare');
const isWorker = (started: WarmWorker | Answer): started is WarmWorker =>
  typeof started === 'object' && 'ask' in started;

async function startWell(): Promise<WarmWorker> {
  const started = await startWorker(copy, testFiles);
  if (!isWorker(started)) throw new Error(`no worker without a mutant: ${JSON.stringify(started)}`);
  return started;
}

let worker = await startWell();
const measured = (await worker.ask({ measure: true }, 1200)) as unknown as {
  imports: string[];
  tests: Measured[];
};
if (!Array.isArray(measured.tests)) throw new Error(`no measure: ${JSON.stringify(measured)}`);
const atImport = new Set(measured.imports);
const passedBy = new Map<string, number[]>();
measured.tests.forEach(({ passes }, at) => {
  for (const id of passes) (passedBy.get(id) ?? passedBy.set(id, []).get(id))?.push(at);
});

/** How often a test caught a mutant of a file. */
const caughtBefore = new Map<string, number>();

/** The quickest first, but before them those that caught most of the same file. */
function order(file: string, tests: readonly number[]): readonly number[] {
  const weight = (at: number): number => (caughtBefore.get(`${file} ${at}`) ?? 0) * 1000;
  const cost = (at: number): number => measured.tests[at]?.ms ?? 0;
  return [...tests].sort(
    (a, b) => weight(b) / (cost(b) + 5) - weight(a) / (cost(a) + 5) || cost(a) - cost(b),
  );
}

const readVerdict = (answer: Answer): Verdict =>
  answer === 'too-slow' ? 'too-slow' : answer === 'died' || answer['caught'] !== null ? 'caught' : 'survived';

/** Some mutants are worked out while a file is imported: those need a process of their own. */
async function judgeAlone({ id, file }: Mutant): Promise<Judged> {
  if (!values.imports) return { verdict: 'not-judged' };
  const started = await startWorker(copy, testFiles, id);
  if (!isWorker(started)) return { verdict: started === 'too-slow' ? 'too-slow' : 'caught' };
  const all = measured.tests.map((_, at) => at);
  const answer = await started.ask({ mutant: id, tests: order(file, all) }, patience);
  started.stop();
  return { verdict: readVerdict(answer) };
}

async function judgeWarm({ id, file }: Mutant, tests: readonly number[]): Promise<Judged> {
  const answer = await worker.ask({ mutant: id, tests: order(file, tests) }, patience);
  if (typeof answer === 'string') worker = await startWell();
  const at = typeof answer === 'string' ? null : answer['caught'];
  if (typeof at !== 'number') return { verdict: readVerdict(answer) };
  caughtBefore.set(`${file} ${at}`, (caughtBefore.get(`${file} ${at}`) ?? 0) + 1);
  return { verdict: 'caught', by: measured.tests[at]?.name ?? '' };
}

async function judge(mutant: Mutant): Promise<Judged> {
  const tests = passedBy.get(mutant.id) ?? [];
  const warm = tests.length === 0 ? null : await judgeWarm(mutant, tests);
  if (warm !== null && warm.verdict !== 'survived') return warm;
  if (atImport.has(mutant.id)) return judgeAlone(mutant);
  return warm ?? { verdict: 'not-reached' };
}

/** Steps of a prime length over the list: a run cut short has looked into every file. */
function spread(list: readonly Mutant[]): readonly Mutant[] {
  const step = 97;
  return Array.from({ length: step }, (_, from) => list.filter((_, at) => at % step === from)).flat();
}

writeFileSync(values.out, '');
const count = new Map<Verdict, number>();
const parts = values.files.split(',');
const all = spread(mutants.filter(({ file }) => parts.some((part) => file.includes(part))));
const chosen = all.slice(Number(values.from), Number(values.from) + Number(values.most));
for (const [at, mutant] of chosen.entries()) {
  const { verdict, by } = await judge(mutant);
  count.set(verdict, (count.get(verdict) ?? 0) + 1);
  appendFileSync(values.out, `${JSON.stringify({ ...mutant, verdict, by })}\n`);
  if (verdict === 'survived' || verdict === 'not-reached')
    console.log(
      `${mutant.file}:${mutant.line}:${mutant.column} ${verdict}: ${mutant.mutator} ${mutant.replacement}`,
    );
  if (at % 100 === 99)
    console.log(`-- ${at + 1} of ${chosen.length}: ${JSON.stringify(Object.fromEntries(count))}`);
}
worker.stop();
rmSync(copy, { recursive: true });
const of = (verdict: Verdict): number => count.get(verdict) ?? 0;
const score = (100 * (of('caught') + of('too-slow'))) / (chosen.length - of('not-judged'));
console.log(
  `${JSON.stringify(Object.fromEntries(count))} of ${mutants.length}: ${score.toFixed(1)} % of those judged are caught`,
);
