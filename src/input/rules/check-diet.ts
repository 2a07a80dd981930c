import type { Finding, Path } from '../finding.ts';
import type { FieldReader } from '../read-fields.ts';

/** Stages of eating leave no day without one and give no day two. */
export function checkDiet(read: FieldReader, stages: readonly Path[]): readonly Finding[] {
  return stages.flatMap((path, index) => {
    const before = stages[index - 1];
    const from = dayAt(read, path, 'from_day');
    return [
      ...checkEnd(read, path),
      ...(before === undefined ? checkFirst(from, path) : checkNext(read, { path, from, before })),
    ];
  });
}

function dayAt(read: FieldReader, path: Path, key: string): number | undefined {
  const value = read.value([...path, key]);
  return typeof value === 'number' ? value : undefined;
}

function checkEnd(read: FieldReader, path: Path): readonly Finding[] {
  const [from, to] = [dayAt(read, path, 'from_day'), dayAt(read, path, 'to_day')];
  if (from === undefined || to === undefined || to >= from) return [];
  const related = [{ path: [...path, 'from_day'], message: 'the first day' }];
  const hint = 'Correct one of the two.';
  return [
    {
      code: 'CASE_CONFLICT',
      path: [...path, 'to_day'],
      message: 'this stage ends before it begins',
      hint,
      related,
    },
  ];
}

function checkFirst(from: number | undefined, path: Path): readonly Finding[] {
  if (from === undefined || from <= 1) return [];
  const message = 'nothing says what to eat and drink before the first stage';
  const hint = 'Begin with from_day: 0 or 1.';
  return [{ code: 'CASE_CONFLICT', path: [...path, 'from_day'], message, hint }];
}

interface Next {
  readonly path: Path;
  readonly from: number | undefined;
  readonly before: Path;
}

function checkNext(read: FieldReader, { path, from, before }: Next): readonly Finding[] {
  const last = dayAt(read, before, 'to_day');
  if (from === undefined || from === (last ?? NaN) + 1) return [];
  const at = [...path, 'from_day'];
  const code = 'CASE_CONFLICT';
  if (last === undefined) {
    const message = 'the stage above has no last day, and another follows';
    const hint = `Add to_day: ${String(from - 1)} to the stage above.`;
    return [{ code, path: at, message, hint, related: [{ path: before, message: 'the stage above' }] }];
  }
  const related = [{ path: [...before, 'to_day'], message: 'the last day of the stage above' }];
  const message =
    from > last ? 'no stage says what to eat between the one above and this' : 'two stages share a day';
  return [
    {
      code,
      path: at,
      message,
      hint: `Write from_day: ${String(last + 1)}, or correct the stage above.`,
      related,
    },
  ];
}
