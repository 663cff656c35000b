import type { JSX } from 'preact';
import { estimateWords, shownUnit, trendSentences, type PlanComparison } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';
import { PairChart } from '../../../charts/PairChart.tsx';
import { pairEnds, type PairLine } from '../../../charts/pairChart.ts';

const TICKS = 5;
const DASHED = '8 4';
const DOTTED = '2 4';

/** Each reading against the film planned there. */
export function PlanChart({ comparison: { readings, ratio } }: { readonly comparison: PlanComparison }): JSX.Element {
  const { name, size } = shownUnit('film', state.units.value);
  const points = readings.map(({ predicted_m, measured_m }) => [predicted_m / size, measured_m / size] as const);
  const x = pairEnds(points.map(([planned]) => planned), [0], TICKS);
  const y = pairEnds(points.map(([, measured]) => measured), [0, ...(ratio === null ? [] : [ratio.value * x[1]])], TICKS);
  const top = Math.min(x[1], y[1]);
  const lines: PairLine[] = [{ from: [0, 0], to: [top, top], dash: DASHED, name: 'as planned' }, ...(ratio === null ? [] : [{ from: [0, 0] as const, to: [x[1], ratio.value * x[1]] as const, dash: '', name: `mean ratio, ${estimateWords(ratio)}` }])];
  return (
    <figure>
      <figcaption>Measured against planned, dry film</figcaption>
      <PairChart points={points} lines={lines} x={x} y={y} xTitle={`planned, ${name} dry`} yTitle={`measured, ${name} dry`} label={`Measured dry film of ${readings.length} readings against planned; mean ratio ${ratio === null ? 'not known' : estimateWords(ratio)}`} />
    </figure>
  );
}

/** Film over plan by the order in which it was sprayed, with the line of its drift. */
export function OrderChart({ comparison }: { readonly comparison: PlanComparison }): JSX.Element {
  const { readings, ratio, trends } = comparison;
  const points = readings.filter(({ predicted_m }) => predicted_m > 0).map(({ order, measured_m, predicted_m }) => [order * 100, (measured_m / predicted_m) * 100] as const);
  const drift = trends.find(({ kind }) => kind === 'order') ?? null;
  const middle = (ratio?.value ?? 1) * 100;
  const lines: PairLine[] = [
    { from: [0, 100], to: [100, 100], dash: DASHED, name: 'as planned' },
    { from: [0, middle], to: [100, middle], dash: DOTTED, name: 'mean ratio' },
    ...(drift === null ? [] : [{ from: [0, middle * (1 - drift.change.value / 2)] as const, to: [100, middle * (1 + drift.change.value / 2)] as const, dash: '', name: drift.isSeen ? 'drift with the order of strokes' : 'drift with the order of strokes (not told from chance)' }]),
  ];
  return (
    <figure>
      <figcaption>Film over plan by order of strokes</figcaption>
      <PairChart points={points} lines={lines} x={[0, 100]} y={pairEnds([...points.map(([, share]) => share), ...lines.flatMap(({ from, to }) => [from[1], to[1]])], [], TICKS)} xTitle="order of the strokes that laid it, 0 first to 100 last" yTitle="measured over planned, %" label={`Measured over planned by the order of strokes. ${trendSentences(comparison).join(' ')}`} />
    </figure>
  );
}
