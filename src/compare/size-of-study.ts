import type { Candidate } from './assess-record.ts';

/** A count of fewer people is too few to tell, a surgeon's own or a published one. */
export const enoughPeople = 30;

/** People behind the figure, as stated. */
export function peopleOf({ record }: Candidate): number | undefined {
  return 'n' in record.value ? record.value.n : undefined;
}
