import { signal, type Signal } from '@preact/signals';
import {
  emptyShownFilm, fanWidthRatio, filmBeneath, handNow, LiveSpray, settleCoat, strokesOf, writeShown,
  type CoatSetting, type Drill, type PathBuilder, type Pose, type RubricSpec, type ShownFilm,
} from '../../../sim/index.ts';
import type { SprayCanvas } from '../../canvas/spray/sprayScene.ts';
import { gunScene } from '../../worker/gunScene.ts';
import { FrameCosts } from './frameCosts.ts';
import { gaugesOf, type Gauges } from './gauges.ts';
import { LEAP_MS } from './hand/clock.ts';
import { startGunHand, type GunHand, type HandSettings } from './hand/gunHand.ts';
import { Pace } from './pace.ts';
import { SessionClock } from './sessionClock.ts';
import { sprayScene, type RoomLook } from './roomScene.ts';
import type { Sounds } from './sounds.ts';
import { StrokesLaid } from './strokesLaid.ts';

/**
 * Script time that the film may take of a frame: a share of the time between two frames, so that it
 * keeps up whatever their number, within limits, ms. While time is let pass nobody waits for a stroke.
 */
const WORK_SHARE = 0.12;
const LEAST_WORK_MS = 1.5;
const MOST_WORK_MS = 6;
const PASSING_WORK_MS = 12;
/** A film that is farther behind than a window and its work, s, takes more of a frame, little by little: a jump would make frames uneven. At the other end it takes all that it may. */
const CALM_S = 0.5;
const LATE_S = 1.5;
const CATCH_UP_SHARE = 0.4;
const MOST_CATCH_UP_MS = 40;
/** Gauges follow this often: faster cannot be read. */
const GAUGE_MS = 66;
/** How much of the aiming before the first trigger belongs to a session, s. */
const AIMING_S = 1;
/** A gap in the rows that is longer is a page that slept, and counts for no more than this, s. */
const GAP_S = LEAP_MS / 1000;
/** How far back the gauges look, s. */
const GAUGED_S = 0.5;
/** A session ends by itself at this many rows: half an hour at 500 a second. */
const MOST_ROWS = 900_000;

/** How the reader holds the gun; the distance and the pivot's place come from the panel. */
export type HandPrefs = Omit<HandSettings, 'meantDistance_m' | 'pivotX_m'>;

/** What a room is opened with. */
export interface RoomParts {
  readonly drill: Drill;
  readonly hand: HandPrefs;
  /** Whose limits are the gauges' bands. */
  readonly rubric: () => RubricSpec;
  readonly sounds: Sounds;
  readonly settingsChanged: (settings: HandSettings) => void;
  /** Called at the end of each frame. */
  readonly framed: () => void;
}

export type Phase = 'aiming' | 'spraying' | 'passing' | 'full';

/** A drill's panel under a hand: poses in, film on the screen, rows kept. */
export class SprayRoom {
  readonly phase: Signal<Phase> = signal('aiming');
  readonly gauges: Signal<Gauges | null> = signal(null);
  readonly trigger = signal(0);
  /** How many ticks the pace has given. */
  readonly ticks = signal(0);
  /** Since the first row, s. */
  readonly clock_s = signal(0);
  readonly costs = new FrameCosts();
  readonly setting: CoatSetting;
  private readonly guides: readonly Float64Array[];
  private readonly beneath: ReturnType<typeof filmBeneath>;
  private readonly pace: Pace;
  private readonly fanWidthPerDistance: number;
  private live: LiveSpray;
  private strokes: StrokesLaid;
  private shown: ShownFilm;
  private hand: GunHand;
  private look: RoomLook = { value: 'target', guides: false, pace: false, theme: 'light' };
  private prefs: HandPrefs;
  private pivotX_m: number;
  private aiming: Pose[] = [];
  private clock = new SessionClock(GAP_S);
  private last: Pose | null = null;
  private gauged_ms = 0;
  private framed_ms = performance.now();
  private frame = 0;

  constructor(private readonly canvas: SprayCanvas, private readonly parts: RoomParts) {
    const { drill, hand } = parts;
    this.prefs = hand;
    this.setting = settleCoat(drill.job(), drill.coat);
    this.beneath = filmBeneath(this.setting);
    this.fanWidthPerDistance = fanWidthRatio(this.setting.setUp, this.setting.plan.distance_m);
    this.pivotX_m = this.setting.panel.width_m / 2;
    this.guides = strokesOf(this.setting).strokes.map(({ meant }) => Float64Array.of(...meant.start_m, ...meant.end_m));
    this.pace = new Pace(this.guides, this.setting.plan.speed_m_s);
    this.shown = emptyShownFilm(this.setting.panelGrid.cover.length);
    this.live = this.newLive();
    this.strokes = new StrokesLaid(this.live.rows, this.fanWidthPerDistance);
    this.hand = this.takeGun();
    this.frame = requestAnimationFrame((now) => this.onFrame(now));
  }

  /** The bare panel again, or the coat beneath as it was; the gun stays in the hand. */
  restart(): void {
    this.hand.stop();
    this.shown.value.fill(0);
    this.shown.look.fill(0);
    this.live = this.newLive();
    this.strokes = new StrokesLaid(this.live.rows, this.fanWidthPerDistance);
    this.aiming = [];
    this.clock = new SessionClock(GAP_S);
    this.last = null;
    this.phase.value = 'aiming';
    this.clock_s.value = 0;
    this.ticks.value = 0;
    this.hand = this.takeGun();
    this.showAll();
  }

  setLook(look: RoomLook): void {
    this.look = look;
    this.showAll();
  }

  setHand(prefs: HandPrefs): void {
    this.hand.setSettings(this.settingsOf(prefs));
    this.prefs = prefs;
  }

  setPad(trigger: number): void {
    this.hand.setPad(trigger);
  }

  setScale(pxPerM: number | null): void {
    this.canvas.setScale(pxPerM);
  }

  get pxPerM(): number {
    return this.canvas.pxPerM;
  }

  get isLarger(): boolean {
    return this.canvas.isLarger;
  }

  panBy(x: number, y: number): void {
    this.canvas.panBy(x, y);
  }

  /** How far the film lags behind the hand, s. */
  get lag_s(): number {
    return this.live.lag_s;
  }

  /** Lets time pass with the trigger off; the film catches up over the next frames. */
  letTimePass(wait_s: number): void {
    const { last } = this;
    if (last === null || this.phase.peek() !== 'spraying') return;
    this.hand.closeTrigger();
    // Closing the trigger may have added a row.
    const { t_s } = this.last ?? last;
    this.take({ ...last, t_s: t_s + wait_s, trigger: 0 });
    this.phase.value = 'passing';
  }

  /** The rows so far: none before the first trigger, others once it was begun again. */
  get rows(): PathBuilder {
    return this.live.rows;
  }

  close(): void {
    cancelAnimationFrame(this.frame);
    this.hand.stop();
    this.parts.sounds.hiss(0);
  }

  private newLive(): LiveSpray {
    const live = new LiveSpray(this.setting, this.beneath, (block) => {
      writeShown(live, block, this.look.value, this.setting.target, this.shown);
      this.canvas.touch(block);
    });
    return live;
  }

  private takeGun(): GunHand {
    return startGunHand(this.canvas.root, this.canvas, this.settingsOf(this.prefs), (pose) => this.onPose(pose), {
      settingsChanged: (settings) => {
        this.pivotX_m = settings.pivotX_m;
        this.parts.settingsChanged(settings);
      },
    });
  }

  /** The distance from the plan; the pivot where the hand has moved it, opposite the panel's middle at first. */
  private settingsOf(prefs: HandPrefs): HandSettings {
    return { ...prefs, meantDistance_m: this.setting.plan.distance_m, pivotX_m: this.pivotX_m };
  }

  private onPose(pose: Pose): void {
    const phase = this.phase.peek();
    if (phase === 'passing' || phase === 'full') return;
    const placed = { ...pose, t_s: this.clock.read(pose.t_s) };
    if (phase === 'spraying') {
      this.take(placed);
      return;
    }
    this.last = placed;
    this.aiming.push(placed);
    if (pose.trigger === 0) {
      while ((this.aiming[0] as Pose).t_s < placed.t_s - AIMING_S) this.aiming.shift();
      return;
    }
    this.phase.value = 'spraying';
    for (const aimed of this.aiming) this.take(aimed);
    this.aiming = [];
  }

  private take(pose: Pose): void {
    this.last = pose;
    this.live.add(pose);
    this.strokes.note(pose);
    if (this.live.rows.count >= MOST_ROWS) this.phase.value = 'full';
  }

  private onFrame(now_ms: number): void {
    this.frame = requestAnimationFrame((next) => this.onFrame(next));
    const began_ms = performance.now();
    this.hand.tick(now_ms);
    this.live.lay();
    const sinceFrame_ms = now_ms - this.framed_ms;
    this.framed_ms = now_ms;
    const budget_ms = this.workBudget_ms(sinceFrame_ms);
    this.live.work(() => performance.now() - began_ms < budget_ms);
    if (this.phase.peek() === 'passing' && !this.live.isBehind) this.endPassing();
    this.canvas.upload();
    this.costs.add(performance.now() - began_ms, sinceFrame_ms);
    this.draw();
    if (now_ms - this.gauged_ms >= GAUGE_MS) this.readGauges(now_ms);
    this.parts.framed();
  }

  private workBudget_ms(sinceFrame_ms: number): number {
    if (this.phase.peek() === 'passing') return PASSING_WORK_MS;
    const late = Math.min(1, Math.max(0, (this.live.lag_s - CALM_S) / (LATE_S - CALM_S)));
    const between = (calm: number, most: number): number => calm + late * (most - calm);
    return Math.max(LEAST_WORK_MS, Math.min(between(MOST_WORK_MS, MOST_CATCH_UP_MS), between(WORK_SHARE, CATCH_UP_SHARE) * sinceFrame_ms));
  }

  private endPassing(): void {
    const { last, hand } = this;
    if (last !== null && hand.pose !== null) this.clock.goOnFrom(last.t_s, hand.pose.t_s);
    this.phase.value = 'spraying';
  }

  private draw(): void {
    const pose = this.hand.pose;
    const gun = pose === null ? null : gunScene(oneRow(pose), this.setting.spray, pose.t_s);
    const pace = this.look.pace && this.phase.peek() === 'spraying' ? this.pace.at(this.sessionTime_s()) : null;
    if (pace !== null && pace.ticks !== this.ticks.peek()) {
      this.ticks.value = pace.ticks;
      this.parts.sounds.tick();
    }
    this.parts.sounds.hiss(pose?.trigger ?? 0);
    this.canvas.draw({ gun, edges: this.strokes.edges, pace_m: pace?.at_m ?? null });
  }

  private readGauges(now_ms: number): void {
    this.gauged_ms = now_ms;
    this.clock_s.value = this.sessionTime_s();
    this.trigger.value = this.hand.pose?.trigger ?? 0;
    if (this.live.rows.count === 0) {
      const pose = this.hand.pose;
      if (pose !== null) this.gauges.value = gaugesOf(handNow(oneRow(pose), [], this.fanWidthPerDistance), this.setting, this.parts.rubric());
      return;
    }
    const { rows } = this.live;
    this.gauges.value = gaugesOf(handNow(rows.since(rows.lastTime_s - GAUGED_S), this.strokes.laterals, this.fanWidthPerDistance), this.setting, this.parts.rubric());
  }

  private sessionTime_s(): number {
    const { rows } = this.live;
    return rows.count === 0 ? 0 : rows.lastTime_s - rows.firstTime_s;
  }

  private showAll(): void {
    const { grid } = this.setting.panelGrid;
    writeShown(this.live, { lowColumn: 0, highColumn: grid.columns, lowRow: 0, highRow: grid.rows }, this.look.value, this.setting.target, this.shown);
    this.canvas.show(sprayScene(this.setting, this.shown, this.look, this.guides));
  }
}

/** A path of a single pose, for what reads a path. */
function oneRow(pose: Pose): Parameters<typeof handNow>[0] {
  const column = (value: number): Float64Array => Float64Array.of(value);
  return {
    count: 1,
    t_s: column(pose.t_s),
    x_m: column(pose.x_m),
    y_m: column(pose.y_m),
    z_m: column(pose.z_m),
    fan_rad: column(pose.fan_rad),
    pitch_rad: column(pose.pitch_rad),
    yaw_rad: column(pose.yaw_rad),
    trigger: Float32Array.of(pose.trigger),
  };
}
