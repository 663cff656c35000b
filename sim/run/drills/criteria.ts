import type { Measure } from '../../job/measures.ts';
import { USUAL_RUBRIC } from '../../job/rubric.ts';

/** What meeting a measure means, in words, at its limit in the usual rubric. */
const CLAUSES: Readonly<Record<Measure, (limit: number) => string>> = {
  distance: (limit) => `the distance is off by at most ${limit} mm (${inches(limit)} in), root mean square`,
  speed: (limit) => `the speed is off by at most ${limit} %, root mean square`,
  angle: (limit) => `the gun is within ${limit}° of square for 95 % of the time`,
  overlap: (limit) => `the overlap is off by at most ${limit} % of the fan, root mean square`,
  trigger: (limit) => `at ${limit} % or more of the stroke ends fluid comes on, or goes off, outside the edge with the gun moving`,
  stops: (limit) => `the gun stands still with fluid on for at most ${limit} s in all`,
  coverage: (limit) => `${limit} % or more of the panel has the least film that the target allows`,
  evenness: (limit) => `the film varies by at most ${limit} % (standard deviation over mean)`,
  runs: (limit) => (limit === 0 ? 'no film runs' : `at most ${limit} % of the panel has run`),
  'dry-laps': (limit) => `dry laps take up at most ${limit} % of the panel`,
  dust: (limit) => `dry spray takes up at most ${limit} % of the panel`,
  paint: (limit) => `at most ${limit} % more paint is sprayed than planned`,
  time: (limit) => `it takes at most ${limit} % longer than planned`,
};

const MM_PER_INCH = 25.4;

function inches(length_mm: number): string {
  return (length_mm / MM_PER_INCH).toFixed(1);
}

/**
 * A performance criterion with the figures of the usual rubric, which the usual session is marked by.
 * @param setting what is meant, as the beginning of a sentence.
 */
export function criterionOf(setting: string, counts: readonly Measure[]): string {
  const clauses = counts.flatMap((measure) => {
    const row = USUAL_RUBRIC.rows.find((one) => one.measure === measure);
    return row === undefined ? [] : [CLAUSES[measure](row.limit)];
  });
  return `${setting}: ${clauses.join('; ')}.`;
}
