import type { KnownCodes } from '../model/known-codes.ts';

/** What a file is checked against. */
export interface ReadContext extends KnownCodes {
  /** ISO date of the day the packet is made; left out, ages and past dates are not checked. */
  readonly today?: string;
}
