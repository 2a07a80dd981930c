import { failure, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import type { OpenCase, PacketState } from '../model/packet.ts';
import { makeSeparately } from '../make-separately.ts';
import { makePacket } from '../pipeline.ts';
import { describeFault } from '../diagnostics/describe-fault.ts';
import { placePoints } from './open-matters.ts';
import type { OpenMatter } from './open-matters.ts';
import { openFile } from './open-file.ts';
import type { OpenInput } from './open-file.ts';
import { writePacket } from './write-packet.ts';
import type { WrittenPacket } from './write-packet.ts';

export interface BatchInput extends OpenInput {
  /** Case files, in the order they are made. */
  readonly files: readonly string[];
  /** Only this language; left out, all that a case asks for. */
  readonly language?: string | undefined;
  /** Whether each document becomes a file of its own. */
  readonly separate?: boolean;
  /** Folder for the packets; left out, everything is made and checked, and nothing is written. */
  readonly out?: string | undefined;
}

interface About {
  readonly file: string;
  readonly caseReference?: string;
  readonly language?: string;
}

interface Made extends About {
  readonly made: true;
  readonly pages: number;
  readonly state: PacketState;
  /** What stands between it and a final packet; of an example too. */
  readonly open: readonly OpenMatter[];
  /** Clinic profile that it was made with. */
  readonly clinic: string;
  /** Absent when nothing was to be written. */
  readonly written: WrittenPacket | undefined;
  readonly warnings: readonly Diagnostic[];
}

interface NotMade extends About {
  readonly made: false;
  readonly diagnostics: readonly Diagnostic[];
}

/** What became of one packet, or of a case that could not be opened. */
export type Outcome = Made | NotMade;

export type BatchEvent =
  (Required<About> & { readonly type: 'start' }) | { readonly type: 'outcome'; readonly outcome: Outcome };

/** Makes packet after packet. One that fails, for whatever reason, never stops the rest. */
export async function* runBatch(input: BatchInput): AsyncGenerator<BatchEvent> {
  const seen = new Map<string, string>();
  for (const file of input.files) {
    const opened = refuseRepeated(await guard(() => openFile(input, file)), file, seen);
    if (opened.ok) yield* makeAll(input, file, opened);
    else yield outcome({ file, made: false, diagnostics: opened.diagnostics });
  }
}

type Opened = Extract<Result<OpenCase>, { ok: true }>;

async function* makeAll(input: BatchInput, file: string, opened: Opened): AsyncGenerator<BatchEvent> {
  const { case: asked } = opened.value;
  const about = { file, caseReference: asked.case };
  const languages = asked.languages.filter((tag) => tag === (input.language ?? tag));
  if (languages.length === 0) yield outcome({ ...about, made: false, diagnostics: [notAsked] });
  for (const [index, language] of languages.entries()) {
    const one = { ...about, language };
    yield { type: 'start', ...one };
    const made = await guard(() => makeOne(input, opened.value, language));
    // What is said of the case itself is said once.
    const ofCase = index === 0 ? opened.warnings : [];
    if (made.ok) yield* outcomesOf(one, made.value, [...ofCase, ...made.warnings]);
    else yield outcome({ ...one, made: false, diagnostics: [...ofCase, ...made.diagnostics] });
  }
}

/** One a file; the warnings are those of all, and told with the first. */
function* outcomesOf(
  one: Required<About>,
  files: readonly MadeFile[],
  warnings: readonly Diagnostic[],
): Generator<BatchEvent> {
  for (const [index, file] of files.entries())
    yield outcome({ ...one, made: true, ...file, warnings: index === 0 ? warnings : [] });
}

type MadeFile = Pick<Made, 'pages' | 'state' | 'open' | 'clinic' | 'written'>;

async function makeOne(
  { prepared, workspace, out, separate = false }: BatchInput,
  open: OpenCase,
  language: string,
): Promise<Result<readonly MadeFile[]>> {
  const made = await (separate ? makeSeparately : makePacket)(prepared, open, language);
  if (!made.ok) return made;
  const packets = 'pdf' in made.value ? [made.value] : made.value;
  try {
    const files: MadeFile[] = [];
    for (const packet of packets) {
      const written = out === undefined ? undefined : await writePacket(workspace, out, packet);
      const matters = placePoints(open, packet.openPoints);
      const about = { state: packet.state, open: matters, clinic: open.files.clinic.file };
      files.push({ ...about, pages: packet.verification.pages, written });
    }
    return success(files, made.warnings);
  } catch {
    const message = `the folder ${out ?? ''} cannot be written`;
    return failure([{ code: 'FILE_NOT_WRITTEN', severity: 'error', message }]);
  }
}

function outcome(value: Outcome): BatchEvent {
  return { type: 'outcome', outcome: value };
}

async function guard<T>(work: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await work();
  } catch (error) {
    return failure([describeFault(error)]);
  }
}

/** Two cases with one reference would overwrite each other's packets; on some disks capitals do not tell them apart. */
function refuseRepeated(opened: Result<OpenCase>, file: string, seen: Map<string, string>): Result<OpenCase> {
  if (!opened.ok) return opened;
  const reference = opened.value.case.case;
  const earlier = seen.get(reference.toLowerCase());
  seen.set(reference.toLowerCase(), earlier ?? file);
  if (earlier === undefined) return opened;
  const message = `case ${reference} is in ${earlier} too, and would overwrite its packets`;
  const hint = 'Give each case a reference of its own.';
  return failure([{ code: 'CASE_CONFLICT', severity: 'error', message, hint, path: 'case' }]);
}

const notAsked: Diagnostic = {
  code: 'USAGE',
  severity: 'error',
  message: 'the case does not ask for this language',
  hint: 'Add it to languages in the case, or leave --language out.',
};
