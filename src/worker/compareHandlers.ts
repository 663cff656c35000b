import { compareSetUps, comparisonFields, CrosscoatError, setUpsPage, type Comparison, type ReportedComparison } from '../../sim/index.ts';
import type { Handlers } from './serve.ts';

/** Looks at the films from trigger on to the end of the watch. */
const TIMES = 16;
/** They grow as the square: a film's first minute is worth as many looks as the next three. */
const GROWTH = 2;

/** What the worker does for set-ups side by side: it keeps the comparison that it made last. */
export function makeCompareHandlers(): Pick<Handlers, 'compare' | 'comparedAt' | 'setUpsReport'> {
  let kept: Comparison | null = null;
  const made = (): Comparison => {
    if (kept !== null) return kept;
    throw new CrosscoatError('not-found', 'nothing is compared yet; compare set-ups first');
  };
  return {
    compare: ({ job, coat, setUps, strokes }) => {
      kept = compareSetUps(job, coat, { setUps, strokes, at_s: looksAt });
      return Promise.resolve({ reply: { comparison: reportedOf(kept), times_s: kept.at_s } });
    },
    comparedAt: ({ index, map }) => Promise.resolve({ reply: { index, fields: comparisonFields(made(), map, index) } }),
    setUpsReport: ({ job, units }) => Promise.resolve({ reply: { html: setUpsPage({ job, comparison: made() }, units) } }),
  };
}

/** What the page shows, without films and lives. */
function reportedOf({ coat, panel, strokes, watched_s, sides, rows }: Comparison): ReportedComparison {
  return {
    coat,
    panel,
    strokes,
    watched_s,
    rows,
    sides: sides.map(({ setUp, ...side }) => {
      if (side.problem !== null) return { setUp, problem: side.problem };
      const { problem, figures, faults, assumed, isOutsideRange, warnings } = side;
      return { setUp, problem, figures, faults, assumed, isOutsideRange, warnings };
    }),
  };
}

function looksAt(end_s: number): number[] {
  return Array.from({ length: TIMES }, (_, i) => end_s * ((i + 1) / TIMES) ** GROWTH);
}
