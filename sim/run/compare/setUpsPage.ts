import type { Job } from '../../job/schema.ts';
import { fieldSvg } from '../../picture/fieldSvg.ts';
import { fieldLegend } from '../../picture/legend.ts';
import { WINDOW_COLOURS } from '../../picture/windowColours.ts';
import { windowSvg } from '../../picture/windowSvg.ts';
import { COMPARED_WORDS, comparedCell } from '../../report/comparedWords.ts';
import { COMPARE_NOTE, comparedDoubts } from '../../report/compareText.ts';
import { escaped } from '../../report/html/escape.ts';
import { htmlList, htmlPage, htmlTable, type HtmlCell, type PagePart } from '../../report/html/page.ts';
import { shownUnit, type UnitSystem } from '../../report/units.ts';
import { axisShown } from '../../report/windowWords.ts';
import { WINDOW_NOTE, windowSentences } from '../../report/windowText.ts';
import { FAULT_PLURALS, FAULT_WORDS, listed } from '../../report/words.ts';
import { usualRange } from '../window/usualRange.ts';
import { faultsOn } from '../../verdict/workingWindow.ts';
import { describeWindow } from '../window/describeWindow.ts';
import { mapWindow } from '../window/workingWindow.ts';
import { isWatched, type Comparison, type WatchedSide } from './comparison.ts';
import { comparisonFields } from './comparisonFields.ts';

/** What a report of set-ups is made from. */
export interface SetUpsReport {
  readonly job: Job;
  readonly comparison: Comparison;
  /** Parts that were worked out elsewhere, such as the hands. */
  readonly more?: readonly PagePart[];
}

/** Points a side of the windows on paper. */
const POINTS = 60;

/** Set-ups side by side as one HTML file: table, maps, working windows, assumptions, cautions. @throws as the window's map. */
export function setUpsPage({ job, comparison, more = [] }: SetUpsReport, system: UnitSystem): string {
  const sides = comparison.sides.filter(isWatched);
  return htmlPage({
    title: `${job.name}: gun set-ups`,
    subtitle: `${comparison.coat.name}, ${comparison.panel.name}. Job seed ${job.seed}.`,
    parts: [tablePart(comparison, system), mapsPart(comparison, system), ...sides.map((side, i) => windowPart(side, `w${i}`, system)), ...more],
    assumptions: [COMPARE_NOTE, WINDOW_NOTE, ...comparedDoubts(sides)],
  });
}

function tablePart(comparison: Comparison, system: UnitSystem): PagePart {
  const places = comparison.sides.flatMap((side, place) => (isWatched(side) ? [{ side, place }] : []));
  const rows = comparison.rows.map(({ name, best, isTie }): [string, ...HtmlCell[]] => [
    COMPARED_WORDS[name].title,
    ...places.map(({ side, place }) => ({
      text: comparedCell(name, side.figures[name], system),
      within: `${best.includes(place) && isTie ? 'no difference' : ''}${side.figures[name].isOutsideRange ? ' not measured at this distance' : ''}`.trim(),
      best: best.includes(place) && !isTie,
    })),
  ]);
  const faults: [string, ...HtmlCell[]] = ['faults', ...places.map(({ side }) => ({ text: side.faults.length === 0 ? 'none' : listed(side.faults.map((kind) => FAULT_PLURALS[kind])) }))];
  const problems = comparison.sides.flatMap(({ problem }) => (problem === null ? [] : [problem]));
  const table = htmlTable(['', ...places.map(({ side }) => side.setUp.name)], [...rows, faults]);
  return { head: 'Side by side', html: `${table}<p class="soft">✓ best of its row, beyond what is not known of the set-ups.</p>${problems.length === 0 ? '' : htmlList(problems)}` };
}

function mapsPart(comparison: Comparison, system: UnitSystem): PagePart {
  const { name, size } = shownUnit('film', system);
  const fields = comparisonFields(comparison, 'target', 'end');
  const figures = comparison.sides.flatMap((side, i) => {
    const field = fields[i];
    if (!isWatched(side) || field === null || field === undefined) return [];
    const { columns, rows, paths } = fieldSvg(field, side.life.setting.panelGrid);
    const { title, ticks, unit } = fieldLegend(field, { name, metres: size });
    const low = ticks[0]?.text ?? '';
    const high = ticks[ticks.length - 1]?.text ?? '';
    return [`<figure><svg viewBox="0 0 ${columns} ${rows}" role="img" aria-label="${escaped(side.setUp.name)}">${paths}</svg><figcaption>${escaped(side.setUp.name)}: ${escaped(title)}, purple ${low} to orange ${high} ${escaped(unit)}</figcaption></figure>`];
  });
  return { head: 'Film on the panel', html: `<div class="maps">${figures.join('')}</div>` };
}

function windowPart({ setting, setUp }: WatchedSide, id: string, system: UnitSystem): PagePart {
  const [near, far] = usualRange(setting, 'distance');
  const [slow, fast] = usualRange(setting, 'speed');
  const plane = { x: { axis: 'distance', low: near, high: far, count: POINTS }, y: { axis: 'speed', low: slow, high: fast, count: POINTS } } as const;
  const map = mapWindow(setting, plane);
  const description = describeWindow(map);
  const svg = windowSvg({ map, x: axisShown('distance', system), y: axisShown('speed', system), best: description.window?.best ?? null, stated: description.stated, id });
  const key = faultsOn(map).map((fault) => `<span style="background:${WINDOW_COLOURS[fault]}">&nbsp;${escaped(FAULT_WORDS[fault])}&nbsp;</span>`);
  const reported = { coatName: setting.coat.name, setUpName: setUp.name, plane, description, interpolated: map.interpolated };
  return {
    head: `Working window, ${setUp.name}`,
    html: `<figure style="max-width:30rem">${svg}<figcaption>Plain: nothing at fault. ${key.join(' ')} Cross: as stated; ring: most room all round.</figcaption></figure>${htmlList(windowSentences(reported, system))}`,
  };
}
