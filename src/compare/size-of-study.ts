import type { Candidate } from './assess-record.ts';

/** People behind the figure, as stated. */
export function peopleOf({ record }: Candidate): number | undefined {
  return 'n' in record.value ? record.value.n : undefined;
}
