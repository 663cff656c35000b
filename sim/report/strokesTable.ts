import type { StrokeMeasures } from '../stroke/stroke.ts';
import { textTable } from './textTable.ts';
import { shownAngle, shownNumber, shownPercent, shownTime, shownUnit, type UnitSystem } from './units.ts';

/** The technique measures of strokes as a plain-text table, strokes and passes numbered from 1. */
export function strokesTable(measures: readonly StrokeMeasures[], system: UnitSystem): string[] {
  const length = shownUnit('length', system).name;
  const head = ['stroke', 'pass', `length ${length}`, `speed ${shownUnit('speed', system).name}`, 'varies', `distance ${length}`, 'off square', 'overlap', `on ${length}`, `off ${length}`, 'stops'];
  return textTable([head, ...measures.map((measure) => strokeRow(measure, system))]);
}

function strokeRow(measure: StrokeMeasures, system: UnitSystem): string[] {
  const edge = (value_m: number | null) => (value_m === null ? '-' : shownNumber(value_m, 'length', system));
  const stopped_s = measure.stops.reduce((sum, stop) => sum + stop.duration_s, 0);
  return [
    String(measure.stroke + 1),
    String(measure.pass + 1),
    shownNumber(measure.length_m, 'length', system),
    shownNumber(measure.speed.mean_m_s, 'speed', system),
    shownPercent(measure.speed.cv),
    shownNumber(measure.distance.mean_m, 'length', system),
    shownAngle(measure.tilt.mean_rad),
    measure.overlap === null ? '-' : shownPercent(measure.overlap.meanFraction),
    edge(measure.triggerOn_m),
    edge(measure.triggerOff_m),
    measure.stops.length === 0 ? '-' : `${measure.stops.length} (${shownTime(stopped_s)})`,
  ];
}
