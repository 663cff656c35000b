import { SHARE_SLACK_PERCENT, type MixSpec } from '../../sim/index.ts';

/** A row of a blend as it stands in the form: the share as typed. */
export interface BlendRow {
  readonly solvent: string;
  readonly share: string;
}

/** One solvent a row, its share behind it. A solvent's id holds no space. */
export function blendText(rows: readonly BlendRow[]): string {
  return rows.map(({ solvent, share }) => `${solvent} ${share}`).join('\n');
}

/** The rows of such a text. */
export function blendRows(text: string): BlendRow[] {
  return text.split('\n').map((line) => {
    const space = line.indexOf(' ');
    return space < 0 ? { solvent: line, share: '' } : { solvent: line.slice(0, space), share: line.slice(space + 1) };
  });
}

export function rowsOf(parts: MixSpec['thinner']): BlendRow[] {
  return parts.map(({ solvent, percent }) => ({ solvent, share: String(percent) }));
}

/** Least and greatest share that the job file takes, per cent. */
const LEAST_SHARE = 0.01;
const WHOLE = 100;

/** A blend from its rows, or what is wrong: with one row, by its index, or with their sum. */
export type ReadBlend =
  | { readonly parts: MixSpec['thinner']; readonly sum: number }
  | { readonly problem: string; readonly row: number | null; readonly sum: number | null };

/** The parts that rows state, once every share is a number and they add to 100 %. */
export function readBlend(rows: readonly BlendRow[]): ReadBlend {
  const parts = rows.map(({ solvent, share }) => ({ solvent, percent: shareOf(share) }));
  const row = parts.findIndex(({ percent }) => !(percent >= LEAST_SHARE && percent <= WHOLE));
  if (row >= 0) {
    const typed = (rows[row] as BlendRow).share.trim();
    return { problem: `${typed === '' ? 'No share is typed' : `"${typed}" is no share`}; give a number from ${LEAST_SHARE} to ${WHOLE}, in % by volume`, row, sum: null };
  }
  const sum = Number(parts.reduce((total, { percent }) => total + percent, 0).toFixed(3));
  // The slack on a sum of shares that binary cannot hold.
  if (Math.abs(sum - WHOLE) > SHARE_SLACK_PERCENT + 1e-9) {
    const off = Number(Math.abs(sum - WHOLE).toFixed(3));
    return { problem: `The shares add to ${sum} %, which is ${off} too ${sum < WHOLE ? 'little' : 'much'}; they make the whole thinner, 100 %`, row: null, sum };
  }
  return { parts, sum };
}

function shareOf(text: string): number {
  const plain = text.trim().replace(/ ?%$/, '');
  return plain === '' ? NaN : Number(plain);
}
