import type { JSX } from 'preact';
import { classedPaths, counted, type Field, type Panel, type PlanComparison } from '../../../../sim/index.ts';
import { fitPanel, type PanelFit } from '../../../app/survey/panelFit.ts';
import type { ReadingMark } from '../../../app/survey/readingMarks.ts';
import { lookAtSurvey } from '../../../app/survey/survey.ts';
import { surveyPanel } from '../../../app/survey/surveyPanel.ts';
import { TRUTH_MAPS, type TruthMap } from '../../../app/survey/surveyPrefs.ts';
import { truthSheet } from '../../../app/survey/truthSheet.ts';
import { state } from '../../../app/state.ts';
import { useWidth } from '../../../charts/useWidth.ts';
import { LessonMap } from '../../demonstrations/LessonMap.tsx';
import { ButtonRow } from '../../fields/ButtonRow.tsx';
import { MapLegend } from '../../panel/MapLegend.tsx';
import { PanelDrawing } from '../PanelDrawing.tsx';

const MAP_WORDS: Readonly<Record<TruthMap, string>> = { difference: 'Believed less planned', error: 'Standard error', planned: 'Planned' };

/** Largest height of the map, px. */
const HEIGHT_PX = 640;
/** From one hatch line to the next, px. */
const HATCH_PX = 9;
/** A reading farther from the plan times the ratio than so many times the gauge's noise stands out. */
const FAR = 2;

/** The film between the readings, its standard error, or the plan, on one panel to scale with the readings over it. */
export function TruthMaps({ comparison }: { readonly comparison: PlanComparison }): JSX.Element | null {
  const fields = truthSheet.fields.value;
  const panel = surveyPanel.value;
  const { truth } = state.survey.value;
  const field = fields?.[truth.map] ?? null;
  if (field === null || panel === null) return null;
  return (
    <div class="survey-truth-map-box">
      <ButtonRow label="Map" value={truth.map} options={TRUTH_MAPS.map((map) => [map, MAP_WORDS[map]] as const)} choose={(map) => lookAtSurvey({ truth: { ...truth, map } })} />
      <Map panel={panel} field={field} comparison={comparison} isHatched={truth.map !== 'planned'} />
      <MapLegend field={field} units={state.units.value} />
      <ul class="survey-truth-key">
        {truth.map === 'planned' ? null : <li><svg width="44" height="24" aria-hidden="true"><HatchPattern id="truth-key" scale={1} /><rect width="44" height="24" fill="url(#truth-key)" stroke="currentColor" /></svg>hatched: a guess, farther than the range from any reading</li>}
        <li>numbers: the readings; in a square where they lie farther from the plan times the ratio than twice the gauge's noise</li>
      </ul>
    </div>
  );
}

function Map({ panel, field, comparison, isHatched }: { readonly panel: Panel; readonly field: Field; readonly comparison: PlanComparison; readonly isHatched: boolean }): JSX.Element {
  const { box, width_px } = useWidth(520, 520);
  const fit = fitPanel(panel, width_px, HEIGHT_PX);
  const guesses = comparison.between?.isGuess.reduce((sum, guess) => sum + guess, 0) ?? 0;
  return (
    <div ref={box}>
      <div class="survey-truth-map" style={{ width: `${fit.width_px}px`, height: `${fit.height_px}px` }}>
        <div class="survey-truth-cells" style={cellsBox(fit, field)}><LessonMap field={field} values={field.values} title={`${panel.name}, ${counted(comparison.readings.length, 'reading')}`} /></div>
        {isHatched && guesses > 0 ? <Hatch fit={fit} comparison={comparison} /> : null}
        <PanelDrawing panel={panel} fit={fit} system={state.units.value} marks={marksOf(comparison)} cross={null} />
      </div>
    </div>
  );
}

/** Where the cells lie on the picture: their grid may reach over the panel's box at the right and the top. */
function cellsBox({ left_px, top_px, px_per_m, panelHeight_m }: PanelFit, { grid: { columns, rows, cellSize_m } }: Pick<Field, 'grid'>): Record<string, string> {
  const height_m = rows * cellSize_m;
  return { left: `${left_px}px`, top: `${top_px + (panelHeight_m - height_m) * px_per_m}px`, width: `${columns * cellSize_m * px_per_m}px`, height: `${height_m * px_per_m}px` };
}

function Hatch({ fit, comparison: { between, panelGrid } }: { readonly fit: PanelFit; readonly comparison: PlanComparison }): JSX.Element | null {
  if (between === null) return null;
  const { columns, rows, cellSize_m } = panelGrid.grid;
  const paths = classedPaths({ columns, rows, classes: Int16Array.from(between.isGuess, (guess) => guess - 1), fills: ['url(#truth-guess)'] });
  return (
    <svg class="survey-truth-cells" style={cellsBox(fit, panelGrid)} viewBox={`0 0 ${columns} ${rows}`} preserveAspectRatio="none" aria-hidden="true">
      <HatchPattern id="truth-guess" scale={1 / (cellSize_m * fit.px_per_m)} />
      <g dangerouslySetInnerHTML={{ __html: paths }} />
    </svg>
  );
}

/** Slanting lines, dark on light, so that they show on every colour of a map. */
function HatchPattern({ id, scale }: { readonly id: string; readonly scale: number }): JSX.Element {
  return (
    <defs>
      <pattern id={id} width={HATCH_PX} height={HATCH_PX} patternUnits="userSpaceOnUse" patternTransform={`scale(${scale}) rotate(45)`}>
        <rect width={2} height={HATCH_PX} fill="#181818" />
        <rect x={2} width={1} height={HATCH_PX} fill="#fdfbf6" />
      </pattern>
    </defs>
  );
}

function marksOf({ readings, ratio }: PlanComparison): ReadingMark[] {
  return readings.map(({ index, at_m, measured_m, predicted_m, noise_m }) => ({ at_m, label: String(index + 1), standsOut: Math.abs(measured_m - (ratio?.value ?? 1) * predicted_m) > FAR * noise_m }));
}
