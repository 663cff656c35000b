import { recordingRows, type PathBuilder } from '../../../sim/index.ts';
import type { SessionDraft } from '../../storage/sessions.ts';
import { addToDraft, keepDraft } from './keptSessions.ts';

/** What storage refused is tried again whole, which takes longer, only after this. */
const RETRY_MS = 3000;

/** What of a session under way is kept, or on its way there. */
interface Written {
  /** The rows themselves tell one session from the next. */
  readonly rows: PathBuilder;
  readonly count: number;
  /** Pieces behind what was written whole. */
  readonly pieces: number;
  readonly stamp: string;
}

/**
 * Keeps a session under way as far as it is, again and again: the first time whole, from then on the rows that came since, so that the
 * cost does not grow with the session. Storage does what it is asked in order, so that nothing waits for an answer, which comes late to
 * a busy page.
 */
export class DraftKeeper {
  private written: Written | null = null;
  private refused_ms = -Infinity;

  /** @param draft makes it whole, null where there is nothing. Resolves when it is kept, or refused, which the page is told. */
  async keep(rows: PathBuilder, draft: () => SessionDraft | null): Promise<void> {
    const { written } = this;
    if (written?.rows !== rows) return this.keepWhole(rows, draft);
    const { count } = rows;
    if (count === written.count) return;
    this.written = { ...written, count, pieces: written.pieces + 1 };
    if (await addToDraft(written.stamp, written.pieces, recordingRows(rows.rowsFrom(written.count)))) return;
    // Refused, or another session has become the draft: the newest is it.
    if (this.written?.stamp === written.stamp) await this.keepWhole(rows, draft);
  }

  /** What is kept is taken to be gone, or to be another's: the next time all of it is written. */
  forget(): void {
    this.written = null;
  }

  private async keepWhole(rows: PathBuilder, draft: () => SessionDraft | null): Promise<void> {
    this.written = null;
    if (performance.now() - this.refused_ms < RETRY_MS) return;
    const { count } = rows;
    const whole = draft();
    if (whole === null) return;
    const stamp = `${Date.now()} ${Math.random()}`;
    this.written = { rows, count, pieces: 0, stamp };
    if (await keepDraft(whole, stamp)) return;
    this.refused_ms = performance.now();
    if (this.written?.stamp === stamp) this.written = null;
  }
}
