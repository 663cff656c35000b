import { signatureState, type Job, type Recorded } from '../../sim/index.ts';

/** Signed entries of the log, and signed surveys. Of a list: one text each, the same only where record, signature and what became of them are. */
export interface SignedIn<T> {
  readonly entries: T;
  readonly surveys: T;
}

/** What is signed in a job. A digest that its record no longer fits counts as another than one that it does. */
export function signedIn({ log = [], surveys = [], recordings }: Job): SignedIn<readonly string[]> {
  const marks = (records: readonly (Recorded & { readonly id: string; readonly recording?: string | undefined })[]): readonly string[] =>
    records.flatMap((each) => {
      if (each.signed === undefined) return [];
      const text = recordings.find(({ id }) => id === each.recording)?.text ?? null;
      return [`${each.id} ${each.signed.sha256} ${signatureState(each, text)}`];
    });
  return { entries: marks(log), surveys: marks(surveys) };
}

/** How many of `here` are not among `there`. */
export function notSignedSo(here: SignedIn<readonly string[]>, there: SignedIn<readonly string[]>): SignedIn<number> {
  const count = (ours: readonly string[], theirs: readonly string[]): number => ours.filter((mark) => !theirs.includes(mark)).length;
  return { entries: count(here.entries, there.entries), surveys: count(here.surveys, there.surveys) };
}
