/**
 * The film in time: `npx tsx tests/bench/film.bench.ts`.
 * One step of drying, levelling and the check for flow with every cell wet, the same with 5 % of
 * the panel wet, with every cell running, and the demo's coat with the ten minutes after it.
 */
import { advanceFilm, FRESH_STEP_S } from '../../sim/film/life/advance.ts';
import { TILE_COLUMNS, TILE_ROWS, type LivingFilm } from '../../sim/film/life/state.ts';
import { filmLawOf } from '../../sim/run/filmLaw.ts';
import { coatMoment, DEMO_PLANNED_COAT, demoJob, liveUntil, settleCoat, startCoat, strokesOf } from '../../sim/index.ts';
import { filmOf } from '../helpers/filmCases.ts';
import { measure, printTable } from './measure.ts';

const COLUMNS = 1500;
const ROWS = 750;
const CELLS = COLUMNS * ROWS;
/** A patch of 5 % of the panel, as a fan and its last strokes leave. */
const PATCH_COLUMNS = 320;
const PATCH_ROWS = 176;

const setting = settleCoat(demoJob(), DEMO_PLANNED_COAT);
const law = filmLawOf(setting);

/** A panel with wet film where `wet` says; tiles without any are asleep, as they are when nothing has landed there. */
function panel(wet_m: number, isWet: (column: number, row: number) => boolean): LivingFilm {
  const film = filmOf(law, COLUMNS, ROWS, 0.002, (column, row) => (isWet(column, row) ? wet_m : 0), setting.mix.volumeSolidsFraction);
  const { tiles } = film;
  for (let tile = 0; tile < tiles.due_s.length; tile++) {
    const column = (tile % tiles.columns) * TILE_COLUMNS;
    const row = Math.floor(tile / tiles.columns) * TILE_ROWS;
    if (!isWet(column, row)) tiles.due_s[tile] = Infinity;
  }
  return film;
}

/** One short step of a fresh film; the film is kept fresh, so that every step does the same work. */
function step(film: LivingFilm): number {
  film.tiles.due_s.forEach((due, tile) => {
    if (due < Infinity) {
      film.tiles.due_s[tile] = film.time_s;
      film.tiles.wettedAt_s[tile] = film.time_s;
    }
  });
  advanceFilm(film, law, film.time_s + FRESH_STEP_S);
  return (film.solids_m[0] as number) + (film.fast_m[0] as number) + film.account.evaporatedFast_m3;
}

const all = panel(90e-6, () => true);
const every = measure(() => step(all), 40);
const patch = panel(90e-6, (column, row) => column < PATCH_COLUMNS && row < PATCH_ROWS);
const some = measure(() => step(patch), 40);
const heavy = panel(170e-6, () => true);
const running = measure(() => step(heavy), 5);

const mcells = (time_ms: number, cells: number) => (cells / time_ms / 1e3).toFixed(1);
printTable(`One film step of ${FRESH_STEP_S} s on ${COLUMNS} × ${ROWS} cells`, [
  { film: 'every cell wet, 90 µm, holds', 'least ms': every.min_ms.toFixed(2), 'median ms': every.median_ms.toFixed(2), 'Mcells/s': mcells(every.min_ms, CELLS), 'of the whole': '1' },
  { film: '5 % wet', 'least ms': some.min_ms.toFixed(2), 'median ms': some.median_ms.toFixed(2), 'Mcells/s': mcells(some.min_ms, PATCH_COLUMNS * PATCH_ROWS), 'of the whole': (some.min_ms / every.min_ms).toFixed(3) },
  { film: 'every cell runs, 170 µm', 'least ms': running.min_ms.toFixed(2), 'median ms': running.median_ms.toFixed(2), 'Mcells/s': mcells(running.min_ms, CELLS), 'of the whole': (running.min_ms / every.min_ms).toFixed(1) },
]);

const life = measure(() => {
  const coat = startCoat(setting, strokesOf(setting));
  liveUntil(coat, coat.sprayed_s + 600);
  return coatMoment(coat).dry_m.reduce((sum, dry) => sum + dry, 0);
}, 5);
printTable("The demo's planned coat and the ten minutes after it", [{ cells: setting.panelGrid.cover.length, 'least ms': life.min_ms.toFixed(0), 'median ms': life.median_ms.toFixed(0) }]);
