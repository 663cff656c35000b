// Without it pixi makes functions from text, which the page's policy forbids.
import 'pixi.js/unsafe-eval';
import { Container, WebGLRenderer } from 'pixi.js';
import type { Camera } from './camera.ts';
import { FilmLayer } from './filmLayer.ts';
import { GunLayer } from './gunLayer.ts';
import { OutlineLayer } from './outlineLayer.ts';
import { palettes } from './palette.ts';
import type { CanvasScene } from './scene.ts';
import { StrokesLayer } from './strokesLayer.ts';
import { ViewUniforms } from './view.ts';
import { ZonesLayer } from './zonesLayer.ts';

/** Everything that pixi draws: film, hatching, edges, strokes and the fan, in that order upward. */
export class Drawing {
  private readonly stage = new Container();
  private readonly view = new ViewUniforms();
  private readonly film: FilmLayer;
  private readonly zones: ZonesLayer;
  private readonly outline: OutlineLayer;
  private readonly strokes: StrokesLayer;
  private readonly gun: GunLayer;

  constructor(private readonly renderer: WebGLRenderer) {
    const { gl } = renderer;
    const largest = gl.getParameter(gl.MAX_TEXTURE_SIZE) as number;
    this.film = new FilmLayer(this.view, largest);
    this.zones = new ZonesLayer(this.view, largest);
    this.outline = new OutlineLayer(this.view);
    this.strokes = new StrokesLayer(this.view);
    this.gun = new GunLayer(this.view);
    this.stage.addChild(
      this.outline.shadow.mesh,
      this.film.grid.mesh,
      this.zones.grid.mesh,
      this.outline.edges.mesh,
      this.strokes.ink.mesh,
      this.gun.ink.mesh,
    );
  }

  /** Cells along a side of one drawn cell; above 1 the grid is finer than the GPU can hold. */
  get filmStep(): number {
    return this.film.step;
  }

  /** Takes over what changed; a new film is on its way to the GPU when this returns. */
  show(scene: CanvasScene): void {
    this.film.show(scene.field);
    this.zones.show(scene.zones, scene.selectedZone, scene.field);
    this.outline.show(scene.panel);
    this.gun.show(scene.gun);
    const palette = palettes[scene.theme];
    this.view.setInks(palette);
    this.renderer.background.color = palette.paper;
  }

  render(scene: CanvasScene, camera: Camera, width_px: number, height_px: number): void {
    if (this.renderer.gl.isContextLost()) return;
    this.strokes.show(scene.strokes, scene.selectedStrokes, camera.pxPerM);
    this.view.set(camera, width_px, height_px, this.renderer.resolution);
    this.renderer.render({ container: this.stage });
  }

  destroy(): void {
    this.stage.destroy({ children: true });
    this.renderer.destroy();
  }
}

/** A renderer on a canvas of its own. WebGL only: a 2D fallback would not run the shaders. */
export async function makeRenderer(canvas: HTMLCanvasElement, pixelRatio: number): Promise<WebGLRenderer> {
  const renderer = new WebGLRenderer();
  await renderer.init({
    canvas,
    width: 2,
    height: 2,
    resolution: pixelRatio,
    autoDensity: true,
    antialias: false,
    // No pixi events, text or accessibility: fewer bytes, and the root element has its own.
    skipExtensionImports: true,
    // A drawing may stand for hours between two frames; nothing of it may be thrown away.
    gcActive: false,
  });
  return renderer;
}
