import {
  shownAngle, shownNumber, shownPercent, shownTime,
  type Measure, type MeantStroke, type ReportedDebrief, type StrokeMeasures, type StrokeTrace, type UnitSystem,
} from '../../../../sim/index.ts';
import { tracedStrokes, MEASURE_OF, type HandQuantity, type TracedStroke } from '../../../charts/handTrace.ts';

/** How a figure stands to its band: above it, below it, or inside on average only. */
export type HandMark = 'above' | 'below' | 'unsteady';

/** One figure of a stroke. */
export interface HandCell {
  readonly text: string;
  /** What was meant, empty where nothing was or it is the same for every stroke. */
  readonly meant: string;
  readonly mark: HandMark | null;
}

/** One stroke as the table shows it. */
export interface HandRow {
  /** 0-based. */
  readonly stroke: number;
  readonly pass: number;
  readonly cells: Readonly<Record<HandColumn, HandCell>>;
}

/** The columns in their order. */
export const HAND_COLUMNS = ['length', 'speed', 'varies', 'distance', 'tilt', 'overlap', 'on', 'off', 'stops'] as const;
export type HandColumn = (typeof HAND_COLUMNS)[number];

/** Off square is judged by what is exceeded for a twentieth of the time, as the measure is. */
const TILT_RANK = 0.95;
/** Places are good to about a millimetre, m. */
const EDGE_SLACK_M = 1e-3;

/** The limit of a measure in the rubric, SI; null where it has no row. */
export function limitIn({ score }: Pick<ReportedDebrief, 'score'>, measure: Measure): number | null {
  return score.rows.find((row) => row.measure === measure)?.limit ?? null;
}

/** Every stroke against what was meant; bands are the rubric's limits. */
export function handRows(debrief: ReportedDebrief, system: UnitSystem): HandRow[] {
  const { traces, meant, coat } = debrief;
  const quantity = (each: HandQuantity): TracedStroke[] => tracedStrokes(each, traces, meant, limitIn(debrief, MEASURE_OF[each]));
  const [speed, distance, tilt] = [quantity('speed'), quantity('distance'), quantity('tilt')];
  const limits: RowLimits = { overlap: limitIn(debrief, 'overlap'), stops: limitIn(debrief, 'stops') };
  return coat.strokes.measures.map((measure, i) => ({
    stroke: measure.stroke,
    pass: measure.pass,
    cells: {
      ...edgeCells(measure, system),
      length: plain(shownNumber(measure.length_m, 'length', system)),
      varies: plain(shownPercent(measure.speed.cv)),
      speed: { ...spread(measure.speed.mean_m_s, meant[i]?.speed_m_s, (value) => shownNumber(value, 'speed', system)), mark: bandMark(measure.speed.mean_m_s, speed[i]) },
      distance: { ...spread(measure.distance.mean_m, meant[i]?.distance_m, (value) => shownNumber(value, 'length', system)), mark: bandMark(measure.distance.mean_m, distance[i]) },
      tilt: tiltCell(traces[i], tilt[i]),
      overlap: overlapCell(measure, meant[i], limits.overlap),
      stops: stopsCell(measure, limits.stops),
    },
  }));
}

interface RowLimits {
  readonly overlap: number | null;
  readonly stops: number | null;
}

function plain(text: string): HandCell {
  return { text, meant: '', mark: null };
}

function spread(mean: number, meant: number | undefined, text: (value: number) => string): Pick<HandCell, 'text' | 'meant'> {
  return { text: text(mean), meant: meant === undefined || Number.isNaN(meant) ? '' : text(meant) };
}

/** By the mean; a stroke whose mean is right but whose root mean square is not is unsteady. */
function bandMark(mean: number, traced: TracedStroke | undefined): HandMark | null {
  if (traced === undefined || Number.isNaN(traced.high)) return null;
  const { values, meant, low, high } = traced;
  if (mean > high) return 'above';
  if (mean < low) return 'below';
  const squares = values.reduce((sum, value) => sum + (value - meant) ** 2, 0);
  return Math.sqrt(squares / values.length) > high - meant ? 'unsteady' : null;
}

function tiltCell(trace: StrokeTrace | undefined, traced: TracedStroke | undefined): HandCell {
  if (trace === undefined || trace.tilt_rad.length === 0) return plain('-');
  const sorted = trace.tilt_rad.slice().sort();
  const worst = sorted[Math.floor(TILT_RANK * (sorted.length - 1))] as number;
  return { text: shownAngle(worst), meant: '', mark: traced !== undefined && worst > traced.high ? 'above' : null };
}

function overlapCell({ overlap }: StrokeMeasures, meant: MeantStroke | undefined, limit: number | null): HandCell {
  if (overlap === null) return plain('-');
  const middle = meant?.overlapFraction ?? NaN;
  const off = overlap.meanFraction - middle;
  const mark = limit === null || !(Math.abs(off) > limit) ? null : off > 0 ? 'above' : 'below';
  return { ...spread(overlap.meanFraction, middle, shownPercent), mark };
}

/** Fluid on and off past the edge; inside it is below what was meant. */
function edgeCells({ triggerOn_m, triggerOff_m }: StrokeMeasures, system: UnitSystem): Pick<HandRow['cells'], 'on' | 'off'> {
  const cell = (past_m: number | null): HandCell =>
    past_m === null ? plain('-') : { ...plain(shownNumber(past_m, 'length', system)), mark: past_m < -EDGE_SLACK_M ? 'below' : null };
  return { on: cell(triggerOn_m), off: cell(triggerOff_m) };
}

function stopsCell({ stops }: StrokeMeasures, limit: number | null): HandCell {
  if (stops.length === 0) return plain('-');
  const stopped_s = stops.reduce((sum, { duration_s }) => sum + duration_s, 0);
  return { text: `${stops.length} (${shownTime(stopped_s)})`, meant: '', mark: limit !== null && stopped_s > limit ? 'above' : null };
}
