/** Where a command prints. Results go to `out`; progress and what went wrong go to `err`. */
export interface Terminal {
  out(text: string): void;
  err(text: string): void;
  /** One line that the next output replaces; only where a person is watching. */
  status(text: string): void;
}

/** The streams of this process, or those of a test. */
export interface Streams {
  readonly out: Pick<NodeJS.WriteStream, 'write'>;
  readonly err: Pick<NodeJS.WriteStream, 'write'> & { readonly isTTY?: boolean };
}

const clearLine = '\r\u001b[2K';

/** Prints whole lines. A status line is shown only on a terminal, and never stays behind. */
export function createTerminal({ out, err }: Streams): Terminal {
  let showing = false;
  const clear = (): void => {
    if (showing) err.write(clearLine);
    showing = false;
  };
  return {
    out: (text) => {
      clear();
      out.write(`${text}\n`);
    },
    err: (text) => {
      clear();
      err.write(`${text}\n`);
    },
    status: (text) => {
      if (err.isTTY !== true) return;
      clear();
      if (text === '') return;
      err.write(text);
      showing = true;
    },
  };
}
