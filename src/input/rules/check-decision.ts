import { homeDocuments, packetDocuments, PacketNameSchema } from '../../model/codes.ts';
import type { DocumentKind } from '../../model/codes.ts';
import type { KnownCodes, KnownOption } from '../../model/known-codes.ts';
import type { Finding, Path } from '../finding.ts';
import type { Entry, FieldReader } from '../read-fields.ts';
import { findRepeats } from './check-duplicates.ts';
import type { Rule } from './rule.ts';

const optionsPath: Path = ['decision', 'options'];

/** What is leaned to, advised against or chosen is among the options, and the surgeon's words agree with each other. */
export const checkDecision: Rule = (read, known) => {
  const against = adviceAgainst(read);
  const named = [
    ...namedAt(read, ['decision', 'leaning', 'option']),
    ...namedAt(read, ['decision', 'chosen']),
    ...against,
  ];
  return [
    ...named.flatMap((entry) => checkAmongOptions(entry, read)),
    ...findRepeats(against, 'this option is advised against twice'),
    ...checkLeaning(read, against),
    ...checkChosen(read, known),
    ...offerNoOperation(read),
  ];
};

function namedAt(read: FieldReader, path: Path): Entry[] {
  const value = read.text(path);
  return value === undefined ? [] : [{ value, path }];
}

function adviceAgainst(read: FieldReader): Entry[] {
  return read.items(['decision', 'advised_against']).flatMap((path) => namedAt(read, [...path, 'option']));
}

function checkAmongOptions({ value, path }: Entry, read: FieldReader): Finding[] {
  const options = read.texts(optionsPath).map((option) => option.value);
  // Doing nothing more is always an option, written or not.
  if (options.length === 0 || value === 'no-operation' || options.includes(value)) return [];
  const hint = 'Add it to decision.options, or name one that is there.';
  const related = [{ path: optionsPath, message: 'the options' }];
  return [
    { code: 'CASE_CONFLICT', path, message: 'this is not among the options of this case', hint, related },
  ];
}

function checkLeaning(read: FieldReader, against: readonly Entry[]): Finding[] {
  const path: Path = ['decision', 'leaning', 'option'];
  const other = against.find(({ value }) => value === read.text(path));
  if (other === undefined) return [];
  const message = 'the surgeon leans to an option and advises against it';
  return [
    {
      code: 'CASE_CONFLICT',
      path,
      message,
      hint: 'Remove one of the two.',
      related: [{ path: other.path, message: 'advised against here' }],
    },
  ];
}

/** Documents about one treatment need to know which, and some on what day. */
const aboutTheChosen: readonly DocumentKind[] = ['consent', 'operation', ...homeDocuments];

function checkChosen(read: FieldReader, known: KnownCodes): Finding[] {
  const asked = askedDocuments(read);
  const chosen = read.text(['decision', 'chosen']);
  const about = asked.find(({ value }) => isAmong(aboutTheChosen, value));
  if (about !== undefined && chosen === undefined) {
    const message = `${about.value} is about the treatment that was chosen, and decision.chosen is not there`;
    const hint = 'Write decision.chosen, or leave this document out.';
    return [{ code: 'CASE_CONFLICT', path: about.path, message, hint }];
  }
  const after = asked.find(({ value }) => isAmong(homeDocuments, value));
  const kind = known.options.find(({ code }) => code === chosen)?.kind;
  return [
    ...(after === undefined ? [] : [...checkTreated(after, chosen), ...checkDay(after, read)]),
    ...(kind === undefined ? [] : checkIsProcedure(asked, kind)),
  ];
}

/** The documents named, or those of the packet named. */
function askedDocuments(read: FieldReader): readonly Entry[] {
  const packet = PacketNameSchema.safeParse(read.text(['packet']));
  const named = packet.success ? packetDocuments[packet.data] : [];
  return [...read.texts(['documents']), ...named.map((value) => ({ value, path: ['packet'] }))];
}

function isAmong(kinds: readonly string[], value: string): boolean {
  return kinds.includes(value);
}

function checkTreated({ value, path }: Entry, chosen: string | undefined): Finding[] {
  if (chosen !== 'no-operation') return [];
  const message = `${value} is about the time after a treatment, and no-operation was chosen`;
  return [{ code: 'CASE_CONFLICT', path, message, hint: 'Leave this document out.' }];
}

function checkDay({ value, path }: Entry, read: FieldReader): Finding[] {
  if (read.text(['plan', 'operation_date']) !== undefined) return [];
  const message = `${value} counts its days from the operation, and plan.operation_date is not there`;
  const hint =
    'Write plan.operation_date, for a medicine the day of its first dose, or leave this document out.';
  return [{ code: 'CASE_CONFLICT', path, message, hint }];
}

const procedures: readonly KnownOption['kind'][] = ['operation', 'endoscopic'];

/** A medicine, a programme or nothing new has no day in hospital, and nothing that could be drawn. */
function checkIsProcedure(documents: readonly Entry[], kind: KnownOption['kind']): Finding[] {
  const asked = documents.find(({ value }) => value === 'operation');
  if (asked === undefined || procedures.includes(kind)) return [];
  const message =
    'operation is about an operation or a treatment through the mouth, and decision.chosen is neither';
  const hint = 'Leave this document out.';
  const related = [{ path: ['decision', 'chosen'] as Path, message: 'this was chosen' }];
  return [{ code: 'CASE_CONFLICT', path: asked.path, message, hint, related }];
}

function offerNoOperation(read: FieldReader): Finding[] {
  const options = read.texts(optionsPath);
  if (options.length === 0 || options.some(({ value }) => value === 'no-operation')) return [];
  const message = 'doing nothing more is always an option: no-operation is added at the end';
  const hint = 'Write no-operation where it is to be printed.';
  return [{ code: 'CASE_OPTION_ADDED', severity: 'warning', path: optionsPath, message, hint }];
}
