/** Everything plainleaf may ask of the outside world. Stages see this as a type only. */
export interface Workspace {
  /** Names of the entries of a folder, sorted; folders end in `/`. Throws if it is not there. */
  list(folder: string): Promise<readonly string[]>;
  exists(path: string): Promise<boolean>;
  readText(path: string): Promise<string>;
  readBytes(path: string): Promise<Uint8Array>;
  /** Writes to a temporary name, then renames; file mode 0600, new folders 0700. */
  write(path: string, content: string | Uint8Array): Promise<void>;
  remove(path: string): Promise<void>;
  /** Today's date and time; the only clock there is. */
  now(): Date;
}
