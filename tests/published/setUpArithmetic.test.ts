import { describe } from 'vitest';
import { filmFigures } from '../../sim/verdict/figures.ts';
import { layCoat } from '../../sim/run/lay.ts';
import { settleSide, type StrokeChoice } from '../../sim/run/compare/sideJob.ts';
import { strokesOf } from '../../sim/run/strokes.ts';
import type { Job } from '../../sim/job/schema.ts';
import type { PanelGrid } from '../../sim/panel/panelGrid.ts';
import { FAN, testJob } from '../unit/run/testJob.ts';
import { lastDigit, testPublished, type PublishedRow } from '../helpers/publishedRow.ts';

const SOURCE = 'worked arithmetic: Q · efficiency / (speed · width · (1 - overlap)), common practice';
/** Divides a pitch of 100 and of 125 mm. */
const CELL_MM = 5;

interface Case {
  readonly rate: number;
  readonly width_mm: number;
  readonly speed: number;
  readonly efficiency: number;
  readonly cross?: boolean;
  readonly target_um?: number;
}

/** A job whose own set-up is another one than that which is compared. */
function jobOf({ rate, width_mm, speed, efficiency, cross = false, target_um = 50 }: Case, firstStroke_mm = 0, height_mm = 1000): Job {
  const job = testJob({ size_mm: [height_mm, height_mm], plan: { speed_m_s: speed, cross, firstStroke_mm }, target: { thickness_um: target_um } });
  const setUp = { ...FAN, id: 'asked', name: 'Asked', fan: { ...FAN.fan, width_mm, depth_mm: 40 }, fluidRate_mL_min: rate, transfer: { ...FAN.transfer, efficiency_percent: efficiency * 100 } };
  return { ...job, setUps: [...job.setUps, setUp] };
}

function sideOf(of: Case, choice: StrokeChoice = 'as-stated', firstStroke_mm = 0, height_mm = 1000) {
  return settleSide(jobOf(of, firstStroke_mm, height_mm), 'coat', 'asked', choice, CELL_MM);
}

/** Mean wet film over two whole pitches each way in the middle of the panel, µm. */
function middleFilm_um(of: Case, choice: StrokeChoice = 'as-stated'): number {
  const setting = sideOf(of, choice);
  const { film } = layCoat(setting, strokesOf(setting));
  const half = of.width_mm / 2 / CELL_MM;
  const { columns, rows } = film.grid;
  const inMiddle = (place: number, count: number) => place >= count / 2 - half && place < count / 2 + half;
  const cover = new Float32Array(film.wet_m.length).map((_, cell) => (inMiddle(cell % columns, columns) && inMiddle(Math.floor(cell / columns), rows) ? 1 : 0));
  const middle: PanelGrid = { grid: film.grid, cover, covered_m2: NaN };
  return filmFigures(film.wet_m, middle).mean_m * 1e6;
}

const CASES: readonly (readonly [Case, number])[] = [
  [{ rate: 150, width_mm: 250, speed: 0.4, efficiency: 0.65 }, 32.5],
  [{ rate: 150, width_mm: 250, speed: 0.4, efficiency: 0.4 }, 20],
  [{ rate: 120, width_mm: 200, speed: 0.3, efficiency: 0.65 }, 43.33],
  [{ rate: 200, width_mm: 250, speed: 0.3, efficiency: 0.65 }, 57.78],
];

const filmRows = CASES.flatMap(([of, film]): PublishedRow[] => [
  { source: SOURCE, quantity: `${of.rate} mL/min, ${of.width_mm} mm, ${of.efficiency}, as a side`, expected: film, tolerance: lastDigit(2), why: 'half a unit in the last digit printed', ours: () => middleFilm_um(of) },
  // The pass at right angles has as many strokes, so each place is passed twice.
  { source: `${SOURCE}; a cross coat doubles it`, quantity: `the same, cross coat`, expected: (2 * film), tolerance: 2 * lastDigit(2), why: 'twice the rounding of the printed film', ours: () => middleFilm_um({ ...of, cross: true }) },
]);

const [[asked]] = CASES as unknown as readonly [readonly [Case, number]];

const planRows: PublishedRow[] = [
  {
    source: 'worked arithmetic: ceil((H - W)/(W (1 - o))) + 1 strokes from half a fan inside either edge, common practice',
    quantity: 'strokes for 1.5 m, fan 250 mm, 50 %', expected: 11, tolerance: 0, why: 'a count',
    ours: () => strokesOf(sideOf(asked, 'as-stated', 125, 1500)).strokes.length,
  },
  {
    source: SOURCE, quantity: 'speed for 32.5 µm, stated speed 0.2 m/s', expected: 0.4, tolerance: 0, why: 'told to the millimetre a second, and 0.4 is one',
    ours: () => sideOf({ ...asked, speed: 0.2, target_um: 32.5 }, 'to-target').plan.speed_m_s,
  },
  {
    source: SOURCE, quantity: 'film at that speed', expected: 32.5, tolerance: lastDigit(2), why: 'half a unit in the last digit printed',
    ours: () => middleFilm_um({ ...asked, speed: 0.2, target_um: 32.5 }, 'to-target'),
  },
];

describe('set-up arithmetic', () => {
  testPublished([...filmRows, ...planRows]);
});
