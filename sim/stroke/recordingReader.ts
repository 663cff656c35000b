import { CrosscoatError, type Warning } from '../base/errors.ts';
import type { Path } from './path.ts';
import type { RECORDING_DEFAULTS } from './recordingColumns.ts';
import { DEFAULT_WORDS, type RecordingColumn } from './recordingColumns.ts';
import { closeGaps } from './recordingGaps.ts';
import { CsvLines, type LineReader, plainNumber } from './recordingText.ts';
import { TrajectoryLines } from './trajectoryText.ts';

/** A recorded file, read. */
export interface Recording {
  readonly path: Path;
  readonly warnings: readonly Warning[];
  /** How each of t, x, y, z, fan, pitch, yaw, trigger was got. */
  readonly columns: readonly RecordingColumn[];
}

/** Takes a recorded file's text piece by piece. */
export interface RecordingReader {
  /** The next piece, cut anywhere. @throws CrosscoatError with file, row and column. */
  push(chunk: string): void;
  /** After the last piece. */
  end(): Recording;
}

const MOST_CHARACTERS = 1_000_000_000;
const LONGEST_ROW = 1_000_000;

/**
 * Reads recorded strokes: CSV with a header (`t_s,x_mm,y_mm,z_mm,fan_deg,pitch_deg,yaw_deg,trigger`,
 * other units by suffix) or trajectory text (`timestamp tx ty tz qx qy qz qw [trigger]`), told apart
 * by the first line. Only the rows' numbers are kept (60 bytes a row, at most twice that), and the
 * cost is linear in the text.
 *
 * Rows count from 1 with the header; empty lines count. Files of more than 5 million rows or a
 * thousand million characters are refused as soon as that is seen.
 * @throws `columns`, `unit`, `range`, `time` or `limit`, from `push` or `end`.
 */
export function createRecordingReader(options: { readonly fileName: string }): RecordingReader {
  const file = options.fileName;
  let pending = '';
  let isQuoted = false;
  let scanned = 0;
  let lineEnd = 0;
  let characters = 0;
  let lines: LineReader | null = null;

  /** Moves `lineEnd` behind the last line end outside quotes; each character is looked at once. */
  const scan = (): void => {
    while (scanned < pending.length) {
      const quote = pending.indexOf('"', scanned);
      const stop = quote < 0 ? pending.length : quote;
      if (!isQuoted) lineEnd = Math.max(lineEnd, lastLineEnd(pending, scanned, stop));
      if (quote >= 0) isQuoted = !isQuoted;
      scanned = stop + (quote < 0 ? 0 : 1);
    }
  };

  const readLines = (text: string): void => {
    lines ??= lineReaderFor(text, file);
    lines.read(text);
  };

  const push = (chunk: string): void => {
    const text = characters === 0 && chunk.startsWith('\ufeff') ? chunk.slice(1) : chunk;
    characters += chunk.length;
    if (characters > MOST_CHARACTERS) throw new CrosscoatError('limit', `${file}: longer than ${MOST_CHARACTERS} characters; cut the recording into parts`, { file });
    pending += text;
    scan();
    // A first line of remarks or blanks alone does not tell which form the file has.
    if (lineEnd > 0 && (lines !== null || hasContent(pending.slice(0, lineEnd)))) {
      readLines(pending.slice(0, lineEnd));
      pending = pending.slice(lineEnd);
      scanned -= lineEnd;
      lineEnd = 0;
    }
    if (pending.length > LONGEST_ROW) throw new CrosscoatError('limit', `${file}: a row is longer than ${LONGEST_ROW} characters; the file is no recording, or a quote is never closed`, { file });
  };

  const end = (): Recording => {
    if (pending.trim() !== '') readLines(pending);
    pending = '';
    const rows = lines?.rows ?? null;
    if (lines === null || rows === null || rows.count < 2) throw new CrosscoatError('columns', `${file}: has ${rows?.count ?? 0} rows of numbers; a recording needs a header and at least 2`, { file });
    const closed = closeGaps(rows.build(), file, (index) => rows.rowOf(index));
    return {
      path: closed.path,
      warnings: [...headerWarnings(lines, file), ...rows.warnings(), ...closed.warnings],
      columns: lines.columns,
    };
  };
  return { push, end };
}

/** Index behind the last line end within `from` to `to`, or 0; a carriage return at the very end may be half of one. */
function lastLineEnd(text: string, from: number, to: number): number {
  const FEED = 10;
  const RETURN = 13;
  for (let i = to - 1; i >= from; i--) {
    const character = text.charCodeAt(i);
    if (character === FEED || (character === RETURN && i < text.length - 1)) return i + 1;
  }
  return 0;
}

function hasContent(text: string): boolean {
  return /^[ \t]*[^#\s]/m.test(text);
}

function lineReaderFor(text: string, file: string): LineReader {
  if (text.includes('\0')) throw new CrosscoatError('columns', `${file}: is not text in UTF-8; give CSV or trajectory text`, { file });
  const first = (/^[ \t]*[^#\s].*/m.exec(text)?.[0] ?? '').trim();
  const fields = first.split(/\s+/);
  const isTrajectory = text.trimStart().startsWith('#') || (fields.length >= 8 && (fields[0] === 'timestamp' || fields.slice(0, 8).every((field) => !Number.isNaN(plainNumber(field)))));
  return isTrajectory ? new TrajectoryLines(file) : new CsvLines(file);
}

function headerWarnings(lines: LineReader, file: string): Warning[] {
  const warnings: Warning[] = [];
  const missing = lines.columns.filter(({ field }) => field < 0).map(({ quantity }) => quantity as keyof typeof RECORDING_DEFAULTS);
  if (missing.length > 0) {
    warnings.push({ code: 'defaults-used', text: `${file}: has no column for ${missing.join(', ')}; taken as ${missing.map((quantity) => DEFAULT_WORDS[quantity]).join(', ')}`, place: { file, row: 1 } });
  }
  if (lines.ignored.length > 0) {
    const shown = lines.ignored.slice(0, 10).map((name) => `"${name.slice(0, 40)}"`).join(', ');
    warnings.push({ code: 'column-ignored', text: `${file}: what stands under ${shown} means nothing here and is left out`, place: { file, row: 1 } });
  }
  return warnings;
}
