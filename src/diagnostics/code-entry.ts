/** Which part of the work a code belongs to; decides the exit code of the command. */
export type Stage = 'usage' | 'case' | 'evidence' | 'words' | 'render' | 'verify' | 'batch' | 'internal';

/** One code of the catalogue. */
export interface CodeEntry {
  readonly stage: Stage;
  /** When it is raised, in plain words; one row each in DEVELOPERS.md. */
  readonly when: string;
  /** What to do, starting with a verb. */
  readonly todo: string;
}
