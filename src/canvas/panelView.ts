import type { WebGLRenderer } from 'pixi.js';
import {
  type Camera, fitCamera, movedCamera, placeCamera, toPanel, toScreen, zoomAbout,
} from './camera.ts';
import type { Drawing } from './drawing.ts';
import { actOnKey, KEY_HELP } from './keyHand.ts';
import { drawingFrame } from './overlay.ts';
import { palettes } from './palette.ts';
import { pickAt } from './picking.ts';
import { pngOf } from './picture.ts';
import { watchPixelRatio } from './pixelRatio.ts';
import { listenToPointers } from './pointerHand.ts';
import type { CanvasEvents, CanvasScene, SectionScene } from './scene.ts';
import { movedSection, type SectionPart, sectionPartAt } from './sectionLine.ts';
import { TextOverlay } from './textOverlay.ts';

/** Reach of a press around a thin line. */
const MOUSE_REACH_PX = 8;
const TOUCH_REACH_PX = 22;
/** Step of the key probe where there is no film grid. */
const BARE_PROBE_STEP_M = 0.005;

let views = 0;

/** Camera, pointer, keys and redraw of one canvas. Draws only when something changed. */
export class PanelView {
  private readonly root = document.createElement('div');
  private readonly overlay = new TextOverlay((part, dx_m, dy_m) => this.moveSection(part, dx_m, dy_m));
  private readonly stops: (() => void)[] = [];
  private scene: CanvasScene | null = null;
  private camera: Camera = { pxPerM: 100, originX_px: 0, originY_px: 0 };
  /** Until the reader moves it, the view follows the window's size. */
  private fitted = true;
  private section: SectionScene = [0, 0, 0, 0];
  private held: { readonly part: SectionPart; readonly line: SectionScene } | null = null;
  private probe_m: readonly [number, number] | null = null;
  private width_px = 0;
  private height_px = 0;
  private frameRequest = 0;

  constructor(
    host: HTMLElement,
    private readonly canvas: HTMLCanvasElement,
    private readonly renderer: WebGLRenderer,
    private readonly drawing: Drawing,
    private readonly events: CanvasEvents,
  ) {
    this.buildRoot(host);
    this.listen();
    this.resize();
  }

  show(scene: CanvasScene): void {
    const before = this.scene;
    this.scene = scene;
    if (before?.section !== scene.section) this.section = scene.section;
    if (before?.theme !== scene.theme) {
      this.root.style.setProperty('--panel-canvas-accent', palettes[scene.theme].accent);
    }
    this.drawing.show(scene);
    const { panel } = scene;
    const isOtherSize = before?.panel.width_m !== panel.width_m || before.panel.height_m !== panel.height_m;
    if (isOtherSize || (this.fitted && before?.fit_m !== scene.fit_m)) this.fit();
    this.redraw();
  }

  fit(): void {
    if (this.scene === null) return;
    this.fitted = true;
    this.camera = fitCamera(this.frame(), this.scene.fit_m);
    this.redraw();
  }

  zoomBy(factor: number): void {
    const { left_px, right_px, top_px, bottom_px } = this.frame();
    this.zoomAt(factor, (left_px + right_px) / 2, (top_px + bottom_px) / 2);
  }

  panBy(dx_px: number, dy_px: number): void {
    this.moveCamera(movedCamera(this.camera, dx_px, dy_px));
  }

  goTo(at_m: readonly [number, number], span_m: number): void {
    this.moveCamera(placeCamera(this.frame(), at_m, span_m));
  }

  picture(): Promise<Blob> {
    this.draw();
    return pngOf(this.canvas, this.overlay.svg, getComputedStyle(this.root).fontFamily);
  }

  destroy(): void {
    cancelAnimationFrame(this.frameRequest);
    for (const stop of this.stops) stop();
    this.drawing.destroy();
    this.root.remove();
  }

  private buildRoot(host: HTMLElement): void {
    const { root } = this;
    const help = document.createElement('span');
    help.id = `panel-canvas-help-${++views}`;
    help.className = 'panel-canvas-help';
    help.textContent = KEY_HELP;
    root.className = 'panel-canvas';
    root.tabIndex = 0;
    root.setAttribute('role', 'application');
    root.setAttribute('aria-label', 'Panel drawing');
    root.setAttribute('aria-describedby', help.id);
    root.append(this.canvas, this.overlay.svg, ...this.overlay.handles, help);
    host.append(root);
  }

  private listen(): void {
    const sizes = new ResizeObserver(() => this.resize());
    sizes.observe(this.root);
    const restored = (): void => this.redraw();
    this.canvas.addEventListener('webglcontextrestored', restored);
    const pressed = (event: KeyboardEvent): void => this.pressKey(event);
    this.root.addEventListener('keydown', pressed);
    this.stops.push(
      () => sizes.disconnect(),
      () => this.canvas.removeEventListener('webglcontextrestored', restored),
      () => this.root.removeEventListener('keydown', pressed),
      watchPixelRatio(() => this.resize()),
      listenToPointers(this.root, {
        holdAt: (x_px, y_px, touch) => this.holdAt(x_px, y_px, touch),
        dragSection: (dx_px, dy_px) => {
          const { camera: { pxPerM }, held } = this;
          // From where it was taken, so that it comes back with the pointer from beyond an edge.
          if (held !== null) this.moveSection(held.part, dx_px / pxPerM, -dy_px / pxPerM, held.line);
        },
        pan: (dx_px, dy_px) => this.panBy(dx_px, dy_px),
        zoom: (factor, x_px, y_px) => this.zoomAt(factor, x_px, y_px),
        click: (x_px, y_px, touch) => this.click(x_px, y_px, touch),
        hover: (x_px, y_px) => this.hover(x_px, y_px),
        leave: () => this.events.probe(null),
      }),
    );
  }

  private pressKey(event: KeyboardEvent): void {
    if (event.target !== this.root) return;
    const acted = actOnKey(event, {
      pan: (dx_px, dy_px) => this.panBy(dx_px, dy_px),
      zoom: (factor) => this.zoomBy(factor),
      fit: () => this.fit(),
      stepProbe: (columns, rows) => this.stepProbe(columns, rows),
      choose: () => {
        if (this.probe_m !== null) this.pick(...toScreen(this.camera, ...this.probe_m), MOUSE_REACH_PX);
      },
      clearProbe: () => this.showProbe(null),
    });
    if (acted) event.preventDefault();
  }

  private holdAt(x_px: number, y_px: number, touch: boolean): 'section' | null {
    const reach = touch ? TOUCH_REACH_PX : MOUSE_REACH_PX;
    const part = sectionPartAt(this.section, this.camera, x_px, y_px, reach);
    if (part === null) return null;
    this.held = { part, line: this.section };
    return 'section';
  }

  private moveSection(part: SectionPart, dx_m: number, dy_m: number, from = this.section): void {
    if (this.scene === null) return;
    this.section = movedSection(from, part, dx_m, dy_m, this.scene.panel);
    this.events.section(this.section);
    this.redraw();
  }

  private click(x_px: number, y_px: number, touch: boolean): void {
    // A finger does not hover: its tap probes, and the cross-hair shows where.
    if (touch) this.showProbe(toPanel(this.camera, x_px, y_px));
    this.pick(x_px, y_px, touch ? TOUCH_REACH_PX : MOUSE_REACH_PX);
  }

  private pick(x_px: number, y_px: number, reach_px: number): void {
    if (this.scene === null) return;
    const picked = pickAt(this.scene, this.overlay.tags, this.camera, x_px, y_px, reach_px);
    if (picked === null) return;
    if ('zone' in picked) this.events.zone(picked.zone);
    else this.events.stroke(picked.stroke);
  }

  private hover(x_px: number, y_px: number): void {
    if (this.probe_m !== null) {
      this.probe_m = null;
      this.redraw();
    }
    const part = sectionPartAt(this.section, this.camera, x_px, y_px, MOUSE_REACH_PX);
    this.root.style.cursor = part === null ? '' : 'grab';
    this.events.probe(toPanel(this.camera, x_px, y_px));
  }

  /** From the middle of the view at first, then cell centre by cell centre; the view follows. */
  private stepProbe(columns: number, rows: number): void {
    if (this.scene === null) return;
    const step_m = this.scene.field?.cellSize_m ?? BARE_PROBE_STEP_M;
    const { left_px, right_px, top_px, bottom_px } = this.frame();
    const from = this.probe_m
      ?? toPanel(this.camera, (left_px + right_px) / 2, (top_px + bottom_px) / 2);
    const centre = (at_m: number, steps: number, most_m: number): number =>
      Math.min(most_m, Math.max(0, (Math.floor(at_m / step_m) + steps + 0.5) * step_m));
    const { width_m, height_m } = this.scene.panel;
    const to = [centre(from[0], columns, width_m), centre(from[1], rows, height_m)] as const;
    const [x_px, y_px] = toScreen(this.camera, ...to);
    const outside = (low: number, at: number, high: number): number => Math.min(0, high - at) + Math.max(0, low - at);
    const dx_px = outside(left_px + 20, x_px, right_px - 20);
    const dy_px = outside(top_px + 20, y_px, bottom_px - 20);
    if (dx_px !== 0 || dy_px !== 0) this.panBy(dx_px, dy_px);
    this.showProbe(to);
  }

  private showProbe(at_m: readonly [number, number] | null): void {
    this.probe_m = at_m;
    this.events.probe(at_m);
    this.redraw();
  }

  private zoomAt(factor: number, x_px: number, y_px: number): void {
    this.moveCamera(zoomAbout(this.camera, factor, x_px, y_px));
  }

  private moveCamera(camera: Camera): void {
    this.fitted = false;
    this.camera = camera;
    this.redraw();
  }

  private frame(): ReturnType<typeof drawingFrame> {
    return drawingFrame(this.width_px, this.height_px);
  }

  private resize(): void {
    const width_px = this.root.clientWidth;
    const height_px = this.root.clientHeight;
    if (width_px === 0 || height_px === 0) return;
    const dx_px = (width_px - this.width_px) / 2;
    const dy_px = (height_px - this.height_px) / 2;
    this.width_px = width_px;
    this.height_px = height_px;
    this.renderer.resize(width_px, height_px, window.devicePixelRatio);
    if (this.fitted) this.fit();
    else this.camera = movedCamera(this.camera, dx_px, dy_px);
    // Resizing empties the canvas: drawn at once, it does not flash.
    this.draw();
  }

  private redraw(): void {
    if (this.frameRequest !== 0) return;
    this.frameRequest = requestAnimationFrame(() => this.draw());
  }

  private draw(): void {
    cancelAnimationFrame(this.frameRequest);
    this.frameRequest = 0;
    if (this.scene === null || this.width_px === 0) return;
    const { camera, width_px, height_px, scene } = this;
    this.drawing.render(scene, camera, width_px, height_px);
    const palette = palettes[scene.theme];
    const view = { camera, frame: this.frame(), width_px, height_px, palette, ruler: scene.ruler };
    this.overlay.place(view, scene, this.section, this.probe_m, this.drawing.filmStep);
  }
}
