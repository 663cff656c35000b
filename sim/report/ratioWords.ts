import type { MixRatio } from '../mix/mixRatio.ts';

/** Largest part of a ratio of whole numbers; beyond it nobody pours by parts. */
const MOST_PART = 40;
/** What rounding of a double leaves of a whole part. */
const WHOLE = 1e-9;
/** A ratio this near one of small whole numbers is also told as that one. */
const ABOUT = 0.015;
const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** Finish, thinner and retarder in proportion. */
type Parts = readonly [finish: number, thinner: number, retarder: number];

/**
 * A ratio by volume as finish:thinner or finish:thinner:retarder, such that it reads back as it was: whole numbers where
 * there are small ones, else against one of finish.
 */
export function ratioAsTyped(ratio: MixRatio): string {
  const parts = wholeParts(ratio, WHOLE, MOST_PART) ?? plainParts(ratio);
  return (ratio.retarderFraction === 0 ? parts.slice(0, 2) : parts).map((part) => decimal(part, 12)).join(':');
}

/**
 * A ratio by volume in words: `three volumes of finish, one of thinner`. One that is nearly of small whole numbers is told as
 * such, with its figures.
 */
export function ratioWords(ratio: MixRatio): string {
  if (ratio.thinnerPerFinish === 0) return 'finish alone, no thinner';
  const exact = wholeParts(ratio, WHOLE, MOST_PART);
  if (exact !== null) return partWords(exact);
  const near = ratio.retarderFraction === 0 ? wholeParts(ratio, ABOUT * ratio.thinnerPerFinish, 12) : null;
  const figures = partWords(plainParts(ratio).map((part) => Number(decimal(part, 3))) as unknown as Parts);
  return near === null ? figures : `about ${partWords(near)} (${shortRatio(ratio)})`;
}

/** The same for a table or a label: `4:1`, `1:0.33`. */
export function shortRatio(ratio: MixRatio): string {
  const parts = wholeParts(ratio, WHOLE, MOST_PART) ?? plainParts(ratio);
  return (ratio.retarderFraction === 0 ? parts.slice(0, 2) : parts).map((part) => decimal(part, 3)).join(':');
}

function plainParts({ thinnerPerFinish, retarderFraction }: MixRatio): Parts {
  const retarder = thinnerPerFinish * retarderFraction;
  return [1, thinnerPerFinish - retarder, retarder];
}

/** The smallest whole parts within a tolerance of those to one of finish; null where they are not small. */
function wholeParts(ratio: MixRatio, tolerance: number, most: number): Parts | null {
  const [, thinner, retarder] = plainParts(ratio);
  for (let finish = 1; finish <= most; finish++) {
    const parts: Parts = [finish, Math.round(thinner * finish), Math.round(retarder * finish)];
    const isNear = (part: number, of: number): boolean => Math.abs(part / finish - of) <= tolerance && (part > 0 || of === 0) && part <= most;
    if (isNear(parts[1], thinner) && isNear(parts[2], retarder)) return parts;
  }
  return null;
}

function partWords([finish, thinner, retarder]: Parts): string {
  const head = `${countWord(finish)} volume${finish === 1 ? '' : 's'} of finish`;
  const others = [...(thinner === 0 ? [] : [`${countWord(thinner)} of thinner`]), ...(retarder === 0 ? [] : [`${countWord(retarder)} of retarder`])];
  return [head, ...others].join(', ');
}

function countWord(count: number): string {
  return COUNTS[count] ?? String(count);
}

function decimal(value: number, figures: number): string {
  // Never as 1e-7, which is no part that anybody types.
  return value === 0 ? '0' : Number(value.toPrecision(figures)).toFixed(15).replace(/\.?0+$/, '');
}
