/** What is known of a file before it is opened. */
export interface FileFacts {
  readonly kind: 'file' | 'folder' | 'other';
  readonly bytes: number;
}

/** Everything outside the command: terminal, files, clock. Tests give their own. */
export interface Io {
  /** Resolves when the text is handed over; a reader that has gone away is no error. */
  out(text: string): Promise<void>;
  err(text: string): void;
  /** Whether standard error is a terminal that a line can be rewritten on. */
  readonly isTerminal: boolean;
  now_ms(): number;
  /** This minute on the clock of the place, RFC 3339 with its offset. */
  moment(): string;
  /** Standard input as UTF-8 text. */
  input(): AsyncIterable<string>;
  /** Null where there is no such file. */
  facts(path: string): Promise<FileFacts | null>;
  /** A file as UTF-8 text, piece by piece. */
  read(path: string): AsyncIterable<string>;
  /** A whole file's bytes. */
  bytes(path: string): Promise<Uint8Array>;
  /** Writes the whole file or nothing: a part-written one never stands under its name. */
  write(path: string, pieces: Iterable<string | Uint8Array>): Promise<void>;
}
