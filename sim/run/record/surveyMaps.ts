import { counted } from '../../base/counted.ts';
import type { PanelGrid } from '../../panel/panelGrid.ts';
import type { Field } from '../../picture/field.ts';
import { fieldSvg } from '../../picture/fieldSvg.ts';
import { placesSvg, scaleSvg } from '../../picture/placesSvg.ts';
import { differenceField, errorField, plannedField } from '../../picture/truthFields.ts';
import { escaped } from '../../report/html/escape.ts';
import { decidingReadings } from '../../report/record/readingRows.ts';
import type { SurveyMap } from '../../report/record/reportedRecord.ts';
import { shownUnit, type UnitSystem } from '../../report/units.ts';
import type { PlanComparison } from '../../survey/comparison.ts';
import type { FilmReading } from '../../survey/filmReading.ts';
import type { JudgedSurvey } from '../../survey/judgedSurvey.ts';

/** Room around the panel, in cells of the picture. */
const RIM = 4;

/**
 * Maps of a survey for paper: the film as planned with the readings at their places, then what the readings say between them, with its
 * standard error. None where no reading says its place.
 */
export function surveyMaps(name: string, judged: JudgedSurvey, comparison: PlanComparison, system: UnitSystem): SurveyMap[] {
  const placed = judged.readings.filter(({ at_m }) => at_m !== null);
  if (placed.length === 0) return [];
  const missing = judged.readings.length - placed.length;
  const notDrawn = missing === 0 ? '' : ` ${counted(missing, 'reading')} without a place ${missing === 1 ? 'is' : 'are'} not drawn.`;
  const maps: readonly (readonly [field: Field | null, caption: string])[] = [
    [plannedField(comparison), `The dry film as planned: the model’s, no reading. Circles: places of the readings by their number; filled squares: readings that decide the verdict.${notDrawn}`],
    [differenceField(comparison), 'What the readings say against the plan, between them too (kriging): dry film as believed less planned. Purple thinner, orange heavier.'],
    [errorField(comparison), 'How far to believe that: standard error of the film between the readings. Where it is large nobody read.'],
  ];
  return maps.flatMap(([field, caption]) => (field === null ? [] : [{ svg: mapSvg(`${name}: ${field.title}`, field, comparison.panelGrid, placed, decidingReadings(judged), system), caption }]));
}

function mapSvg(title: string, field: Field, panelGrid: PanelGrid, placed: readonly FilmReading[], decides: ReadonlySet<number>, system: UnitSystem): string {
  const { columns, rows, every, paths } = fieldSvg(field, panelGrid);
  const cell_m = field.grid.cellSize_m * every;
  const places = placed.map(({ index, at_m }) => ({ x: (at_m?.[0] ?? NaN) / cell_m, y: rows - (at_m?.[1] ?? NaN) / cell_m, text: String(index + 1), isMarked: decides.has(index) }));
  const { name, size } = shownUnit('film', system);
  const scale = scaleSvg(field, { name, size }, columns, rows);
  return `<svg viewBox="${-RIM} ${-RIM} ${columns + 2 * RIM + 4} ${rows + RIM + scale.height}" role="img" aria-label="${escaped(title)}"><g shape-rendering="crispEdges">${paths}</g>${placesSvg(places, Math.max(columns, rows))}${scale.svg}</svg>`;
}
