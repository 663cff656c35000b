import { BufferImageSource, type WebGLRenderer } from 'pixi.js';
import { GRID_GLSL, GridMesh } from '../gridMesh.ts';
import { GridTexture } from '../gridTexture.ts';
import type { ViewUniforms } from '../view.ts';
import { DirtyTiles } from './dirtyTiles.ts';
import { PatchTexture, type Patch } from './patchTexture.ts';
import type { WetScene } from './sprayScene.ts';

/**
 * The film's colour, and over it what an eye would see: a sheen on wet film that follows its slope,
 * upright bars on film that runs, specks on film that arrived as dust. Told apart by pattern too.
 */
const FRAGMENT = `${GRID_GLSL}
uniform sampler2D uFilm;
uniform sampler2D uLook;
uniform sampler2D uCover;
uniform sampler2D uColours;
uniform vec2 uDomain;
float filmAt(ivec2 cell) { return texelFetch(uFilm, clamp(cell, ivec2(0), ivec2(uGrid.xy) - 1), 0).r; }
float speck(vec2 at) { return fract(sin(dot(floor(at), vec2(12.9898, 78.233))) * 43758.5453); }
void main() {
  ivec2 cell = cellUnder(vCell);
  if (texelFetch(uCover, cell, 0).r < 0.5) discard;
  float span = uDomain.y - uDomain.x;
  float film = filmAt(cell);
  int index = int(clamp(floor((film - uDomain.x) / span * 255.0 + 0.5), 0.0, 255.0));
  vec3 ink = texelFetch(uColours, ivec2(index, 0), 0).rgb;
  float look = texelFetch(uLook, cell, 0).r;
  if (look < 0.0) {
    ink = mix(ink, vec3(0.97), step(1.0 - 0.6 * min(1.0, -look), speck(vCell * 2.0)) * 0.85);
  } else if (look > 0.0) {
    bool runs = look >= 2.0;
    float wet = runs ? look - 2.0 : look;
    vec2 slope = vec2(filmAt(cell + ivec2(1, 0)) - filmAt(cell - ivec2(1, 0)), filmAt(cell + ivec2(0, 1)) - filmAt(cell - ivec2(0, 1))) / span;
    vec3 normal = normalize(vec3(-12.0 * slope, 1.0));
    float shine = pow(max(0.0, dot(normal, normalize(vec3(-0.35, 0.55, 0.9)))), 24.0);
    ink = mix(ink, vec3(1.0), wet * (0.04 + 0.5 * shine));
    if (runs) ink = mix(ink, vec3(0.05, 0.07, 0.1), 0.55 * step(fract(vCell.x * 0.5), 0.35));
  }
  colour = vec4(ink, 1.0);
}`;

/** The film under the hand: arrays that change in place, sent block by block. */
export class WetLayer {
  readonly grid: GridMesh;
  private readonly film: PatchTexture;
  private readonly look: PatchTexture;
  private readonly cover = new GridTexture();
  private readonly colours = new BufferImageSource({ resource: new Uint8Array(1024), width: 256, height: 1, format: 'rgba8unorm', scaleMode: 'nearest', alphaMode: 'no-premultiply-alpha' });
  private dirty = new DirtyTiles(1, 1);
  private readonly largest: number;

  constructor(view: ViewUniforms, renderer: WebGLRenderer) {
    const { gl } = renderer;
    this.largest = gl.getParameter(gl.MAX_TEXTURE_SIZE) as number;
    this.film = new PatchTexture(renderer);
    this.look = new PatchTexture(renderer);
    this.grid = new GridMesh(view, FRAGMENT, { uFilm: this.film.source, uLook: this.look.source, uCover: this.cover.source, uColours: this.colours });
  }

  /** Takes over a film's arrays; all of it is sent. @throws Error where the panel has more cells along a side than the GPU can hold. */
  show({ columns, rows, cellSize_m, values, look, cover, colours, domain }: WetScene): void {
    if (Math.max(columns, rows) > this.largest) throw new Error(`the panel is ${columns} × ${rows} cells, more than the ${this.largest} that this screen can draw; give the job a larger cell`);
    this.film.show(values, columns, rows, (source) => this.grid.bind('uFilm', source));
    this.look.show(look, columns, rows, (source) => this.grid.bind('uLook', source));
    this.cover.show(cover, columns, rows, (source) => this.grid.bind('uCover', source));
    this.colours.resource = colours;
    this.colours.update();
    this.grid.setGrid(columns, rows, columns * cellSize_m, rows * cellSize_m);
    this.grid.setDomain(domain[0], domain[1]);
    this.grid.mesh.visible = true;
    this.dirty = new DirtyTiles(columns, rows);
  }

  /** Notes that a block of the arrays has changed. */
  touch(patch: Patch): void {
    this.dirty.mark(patch);
  }

  /** Sends what has changed. */
  send(): void {
    this.dirty.take((patch) => {
      this.film.patch(patch);
      this.look.patch(patch);
    });
  }
}
