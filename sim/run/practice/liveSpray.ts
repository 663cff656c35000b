import { blockHull, type CellBlock } from '../../base/grid.ts';
import { airSlices, type AirSlice } from '../../deposit/airSlices.ts';
import { layBands } from '../../deposit/bands.ts';
import type { Deposit } from '../../deposit/deposit.ts';
import { emptyDeposit } from '../../deposit/emptyDeposit.ts';
import { fluidSlices } from '../../deposit/fluidSlices.ts';
import { gunView, rowsReached } from '../../deposit/gunView.ts';
import { checkPath } from '../../deposit/layPath.ts';
import { laySlice, startRun } from '../../deposit/laySlice.ts';
import { makeLayer, type Layer } from '../../deposit/pieces.ts';
import { blockWithin, clearBlock, partOf } from '../../deposit/sprayClock.ts';
import { FRESH_STEP_S } from '../../film/life/advance.ts';
import { filmForNextCoat } from '../../film/life/nextCoat.ts';
import { emptyLivingFilm, type LivingFilm } from '../../film/life/state.ts';
import type { Landing } from '../../film/life/wetFilm.ts';
import type { FilmLaw } from '../../film/law.ts';
import type { Path, Pose } from '../../stroke/path.ts';
import { PathBuilder } from '../../stroke/pathBuilder.ts';
import { JUDGED_COVER } from '../../verdict/judged.ts';
import { filmLawOf } from '../filmLaw.ts';
import { filmSteps } from '../filmSteps.ts';
import { arrivingFastFraction } from '../livingCoat.ts';
import type { CoatSetting } from '../result.ts';

/** What landed in one quarter second and is not in the film yet. */
interface Window {
  readonly until_s: number;
  /** Null while nothing landed. */
  deposit: Deposit | null;
  block: CellBlock | null;
  readonly air: AirSlice[];
  /** The film has it already; its air still blows. */
  isTaken: boolean;
}

/** One window on its way into the film. */
interface Work {
  readonly steps: ReturnType<typeof filmSteps>;
  readonly window: Window;
  readonly landing: Landing | null;
}

/** Blocks of cells whose film has changed are told to this. */
export type Touched = (block: CellBlock) => void;

/**
 * A coat sprayed by a hand as it moves: poses come in one by one, the liquid of each is laid at
 * once, and the film lives on by the same quarter-second steps as a coat that is sprayed from a
 * whole path (`liveUntil`), in pieces that fit between two frames. The film may lag behind the hand;
 * what has landed meanwhile is told by `pendingOn` (see `writeShown`).
 */
export class LiveSpray {
  readonly film: LivingFilm;
  readonly law: FilmLaw;
  readonly rows = new PathBuilder(4096);
  private readonly layer: Layer;
  private readonly fastFraction: number;
  private readonly free: Deposit[] = [];
  /** The one being laid is the last; the film takes the first. */
  private readonly windows: Window[] = [];
  private working: Work | null = null;
  private start_s = 0;
  private laid_s = 0;

  /** @param beneath the film of the coat beneath as it is now; null for a bare panel. */
  constructor(
    private readonly setting: CoatSetting,
    beneath: LivingFilm | null,
    private readonly touched: Touched,
  ) {
    const { panelGrid, spray, air } = setting;
    this.law = filmLawOf(setting);
    const inside = Uint8Array.from(panelGrid.cover, (cover) => (cover >= JUDGED_COVER ? 1 : 0));
    this.film = beneath === null ? emptyLivingFilm(panelGrid.grid, inside, air.temperature_K) : filmForNextCoat(beneath, this.law);
    this.layer = makeLayer(spray, 'auto');
    this.fastFraction = arrivingFastFraction(setting);
  }

  /** Adds a pose; times must rise. Nothing is laid before `lay`. @throws CrosscoatError `range`, `time` as a path's rows do. */
  add(pose: Pose): void {
    if (this.rows.count === 0) {
      this.start_s = pose.t_s;
      this.laid_s = pose.t_s;
      this.windows.push(this.windowUntil(FRESH_STEP_S));
    }
    this.rows.add(pose);
  }

  /** Lays the liquid of all poses so far. */
  lay(): void {
    const until_s = this.rows.lastTime_s;
    if (!(until_s > this.laid_s)) return;
    const path = this.rows.since(this.laid_s - this.setting.spray.triggerLag_s);
    checkPath(path);
    while (this.laid_s < until_s) {
      const window = this.windows.at(-1) as Window;
      const end_s = Math.min(until_s, this.start_s + window.until_s);
      this.layPart(window, path, end_s);
      window.air.push(...airSlices(path).filter((slice) => slice.start_s < end_s && slice.start_s + slice.duration_s > this.laid_s));
      this.laid_s = end_s;
      if (end_s >= this.start_s + window.until_s) this.windows.push(this.windowUntil(window.until_s + FRESH_STEP_S));
    }
  }

  /** By how much the film is behind the hand, s: up to a quarter second at best. */
  get lag_s(): number {
    return this.rows.count === 0 ? 0 : this.laid_s - this.start_s - this.film.time_s;
  }

  /** Whether a whole step waits to be taken. */
  get isBehind(): boolean {
    return this.working !== null || this.windows.length > 1;
  }

  /** Lets the film live on for as long as there is something to do and `mayGoOn` says so; asked after each piece (some 50 µs). */
  work(mayGoOn: () => boolean): void {
    while (this.isBehind && mayGoOn()) {
      this.working ??= this.beginWork();
      const { steps, window, landing } = this.working;
      const { done, value } = steps.next();
      if (done === true) this.endWork(window);
      else if (value !== null) {
        if (value === landing) window.isTaken = true;
        this.touched(value);
      }
    }
  }

  /** What has landed on a block of cells and is not in the film yet. */
  pendingOn(block: CellBlock): readonly Deposit[] {
    return this.windows.flatMap((window) => (window.deposit !== null && !window.isTaken && window.block !== null && meets(window.block, block) ? [window.deposit] : []));
  }

  private windowUntil(until_s: number): Window {
    return { until_s, deposit: null, block: null, air: [], isTaken: false };
  }

  private layPart(window: Window, path: Path, end_s: number): void {
    const { grid } = this.setting.panelGrid;
    let lowRow = grid.rows;
    let highRow = 0;
    for (const slice of fluidSlices(path, [], this.setting.spray, end_s)) {
      const part = partOf(slice, this.laid_s, end_s);
      if (part === null) continue;
      window.deposit ??= this.free.pop() ?? emptyDeposit(grid);
      const run = startRun(this.layer, window.deposit);
      laySlice(run, part, undefined);
      layBands(window.deposit, run.bands);
      for (const pose of [part.start, part.end]) {
        const [low, high] = rowsReached(gunView(pose, this.layer.tables), grid, this.layer.tables, 1, 1);
        lowRow = Math.min(lowRow, low);
        highRow = Math.max(highRow, high);
      }
    }
    if (window.deposit === null || lowRow >= highRow) return;
    const block = blockWithin(window.deposit, lowRow, highRow);
    if (block === null) return;
    window.block = window.block === null ? block : blockHull(window.block, block);
    this.touched(block);
  }

  private beginWork(): Work {
    const window = this.windows[0] as Window;
    const { deposit, block } = window;
    const landing: Landing | null = deposit === null || block === null ? null : { ...block, wet_m: deposit.wet_m, solids_m: deposit.solids_m, arrivedDry_m: deposit.arrivedDry_m, fastFraction: this.fastFraction };
    const step = { until_s: window.until_s, landing, air: window.air, start_s: this.start_s };
    return { steps: filmSteps(this.film, this.law, this.setting, step), window, landing };
  }

  private endWork({ deposit, block }: Window): void {
    this.windows.shift();
    this.working = null;
    if (deposit === null) return;
    if (block !== null) clearBlock(deposit, block);
    this.free.push(deposit);
  }
}

function meets(a: CellBlock, b: CellBlock): boolean {
  return a.lowColumn < b.highColumn && b.lowColumn < a.highColumn && a.lowRow < b.highRow && b.lowRow < a.highRow;
}
