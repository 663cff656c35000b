import './spray.css';
import { Container, type WebGLRenderer } from 'pixi.js';
import { type Camera, fitCamera, type Frame, toPanel } from '../camera.ts';
import { makeRenderer } from '../drawing.ts';
import { GunLayer } from '../gunLayer.ts';
import { InkLines } from '../inkLines.ts';
import { InkMesh } from '../inkMesh.ts';
import { OutlineLayer } from '../outlineLayer.ts';
import { palettes } from '../palette.ts';
import { ViewUniforms } from '../view.ts';
import type { Patch } from './patchTexture.ts';
import type { SprayCanvas, SprayMoment, SprayScene, WetScene } from './sprayScene.ts';
import { WetLayer } from './wetLayer.ts';

/** Puts a canvas for spraying into `host`, which gives it its size. Fails where the browser has no WebGL 2. */
export async function createSprayCanvas(host: HTMLElement): Promise<SprayCanvas> {
  const canvas = document.createElement('canvas');
  return new SprayView(host, canvas, await makeRenderer(canvas, window.devicePixelRatio));
}

/** Draws only when told to, once a frame: what the hand does must be seen in the next one. */
class SprayView implements SprayCanvas {
  readonly root = document.createElement('div');
  private readonly view = new ViewUniforms();
  private readonly stage = new Container();
  private readonly wet: WetLayer;
  private readonly outline = new OutlineLayer(this.view);
  private readonly lines = new InkMesh(this.view);
  private readonly gun = new GunLayer(this.view);
  private readonly stops: (() => void)[] = [];
  private scene: SprayScene | null = null;
  private last: SprayMoment = { gun: null, edges: [], pace_m: null };
  private camera: Camera = { pxPerM: 100, originX_px: 0, originY_px: 0 };
  private film: WetScene | null = null;
  private scale: number | null = null;
  private width_px = 0;
  private height_px = 0;

  constructor(
    private readonly host: HTMLElement,
    private readonly canvas: HTMLCanvasElement,
    private readonly renderer: WebGLRenderer,
  ) {
    this.wet = new WetLayer(this.view, renderer);
    this.stage.addChild(this.outline.shadow.mesh, this.wet.grid.mesh, this.outline.edges.mesh, this.lines.mesh, this.gun.ink.mesh);
    this.root.className = 'spray-canvas';
    this.root.append(canvas);
    host.append(this.root);
    const sizes = new ResizeObserver(() => this.resize());
    sizes.observe(host);
    const restored = (): void => this.restore();
    canvas.addEventListener('webglcontextrestored', restored);
    this.stops.push(() => sizes.disconnect(), () => canvas.removeEventListener('webglcontextrestored', restored));
    this.resize();
  }

  get pxPerM(): number {
    return this.camera.pxPerM;
  }

  get isLarger(): boolean {
    return this.scale !== null && (this.width_px > this.host.clientWidth || this.height_px > this.host.clientHeight);
  }

  panBy(x: number, y: number): void {
    const { clientWidth, clientHeight } = this.host;
    this.host.scrollBy(x * clientWidth, y * clientHeight);
  }

  show(scene: SprayScene): void {
    this.scene = scene;
    this.outline.show(scene.panel);
    const palette = palettes[scene.theme];
    this.view.setInks(palette);
    this.renderer.background.color = palette.paper;
    this.root.style.setProperty('--spray-accent', palette.accent);
    this.showFilm(scene.wet);
    this.resize();
  }

  showFilm(wet: WetScene): void {
    this.film = wet;
    this.wet.show(wet);
  }

  touch(patch: Patch): void {
    this.wet.touch(patch);
  }

  upload(): void {
    if (this.film !== null && !this.renderer.gl.isContextLost()) this.wet.send();
  }

  draw(moment: SprayMoment): void {
    // Looked at here, since not every way to another screen is told: a frame is drawn in any case.
    if (window.devicePixelRatio !== this.renderer.resolution) this.resize();
    if (this.scene === null || this.width_px === 0 || this.renderer.gl.isContextLost()) return;
    if (moment.edges !== this.last.edges || moment.pace_m !== this.last.pace_m) this.drawLines(moment);
    this.last = moment;
    this.gun.show(moment.gun);
    this.view.set(this.camera, this.width_px, this.height_px, this.renderer.resolution);
    this.renderer.render({ container: this.stage });
  }

  setScale(pxPerM: number | null): void {
    this.scale = pxPerM;
    this.resize();
    // A drawing that is larger than the window is first seen from its middle.
    this.host.scrollTo((this.width_px - this.host.clientWidth) / 2, (this.height_px - this.host.clientHeight) / 2);
  }

  toPanel(clientX: number, clientY: number): readonly [number, number] {
    const box = this.root.getBoundingClientRect();
    return toPanel(this.camera, clientX - box.left, clientY - box.top);
  }

  destroy(): void {
    for (const stop of this.stops) stop();
    this.stage.destroy({ children: true });
    this.renderer.destroy();
    this.root.remove();
  }

  private drawLines({ edges, pace_m }: SprayMoment): void {
    const ink = new InkLines();
    for (const guide of this.scene?.guides ?? []) {
      ink.polyline(guide, false, 2.5, 'paper');
      ink.polyline(guide, false, 1, 'ink');
    }
    for (const edge of edges) {
      ink.polyline(edge, false, 3, 'paper');
      ink.polyline(edge, false, 1.25, 'accent');
    }
    if (pace_m !== null) {
      ink.disc(pace_m[0], pace_m[1], 8, 'paper');
      ink.ring(pace_m[0], pace_m[1], 6, 2.5, 'ink');
    }
    this.lines.show(ink);
  }

  /** The window, its density or the scale has changed: the drawing keeps its place under the hand. */
  private resize(): void {
    const { scene, scale, host, root } = this;
    const fit = scene?.fit_m ?? [0, 0, 1, 1];
    const isFixed = scale !== null;
    root.style.width = isFixed ? `${Math.ceil((fit[2] - fit[0]) * scale)}px` : '';
    root.style.height = isFixed ? `${Math.ceil((fit[3] - fit[1]) * scale)}px` : '';
    host.classList.toggle('spray-scrolls', isFixed);
    const width_px = root.clientWidth;
    const height_px = root.clientHeight;
    if (width_px === 0 || height_px === 0) return;
    this.width_px = width_px;
    this.height_px = height_px;
    this.canvas.style.width = `${width_px}px`;
    this.renderer.resize(width_px, height_px, window.devicePixelRatio);
    const frame: Frame = { left_px: 0, top_px: 0, right_px: width_px, bottom_px: height_px };
    this.camera = isFixed
      ? { pxPerM: scale, originX_px: width_px / 2 - ((fit[0] + fit[2]) / 2) * scale, originY_px: height_px / 2 + ((fit[1] + fit[3]) / 2) * scale }
      : fitCamera(frame, fit);
    // Where the panel lies on the glass, for whoever drives the page by script.
    const { pxPerM, originX_px, originY_px } = this.camera;
    Object.assign(root.dataset, { pxPerM: String(pxPerM), originX: String(originX_px), originY: String(originY_px) });
    // Resizing empties the canvas: drawn at once, it does not flash.
    this.redraw();
  }

  /** The GPU was lost and came back: everything is sent again. */
  private restore(): void {
    if (this.film !== null) this.wet.show(this.film);
    this.redraw();
  }

  private redraw(): void {
    this.drawLines(this.last);
    this.upload();
    this.draw(this.last);
  }
}
