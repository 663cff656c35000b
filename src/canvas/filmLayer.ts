import { BufferImageSource } from 'pixi.js';
import { GRID_GLSL, GridMesh } from './gridMesh.ts';
import { GridTexture } from './gridTexture.ts';
import type { FieldScene } from './scene.ts';
import { type Thinning, thinnedValues, thinning } from './thinnedGrid.ts';
import type { ViewUniforms } from './view.ts';

const FRAGMENT = `${GRID_GLSL}
uniform sampler2D uFilm;
uniform sampler2D uCover;
uniform sampler2D uColours;
uniform vec2 uDomain;
void main() {
  ivec2 cell = cellUnder(vCell);
  float film = texelFetch(uFilm, cell, 0).r;
  if (texelFetch(uCover, cell, 0).r < 0.5 || isnan(film)) discard;
  float span = uDomain.y - uDomain.x;
  float share = span == 0.0 ? 0.0 : (film - uDomain.x) / span;
  int index = int(clamp(floor(share * 255.0 + 0.5), 0.0, 255.0));
  colour = vec4(texelFetch(uColours, ivec2(index, 0), 0).rgb, 1.0);
}`;

/** The film map: each cell's value looked up in 256 colours. */
export class FilmLayer {
  readonly grid: GridMesh;
  private readonly film = new GridTexture();
  private readonly cover = new GridTexture();
  private readonly colours = new BufferImageSource({
    resource: new Uint8Array(1024),
    width: 256,
    height: 1,
    format: 'rgba8unorm',
    scaleMode: 'nearest',
    alphaMode: 'no-premultiply-alpha',
  });
  private shown: FieldScene | null = null;
  private thin: Thinning = { step: 1, columns: 1, rows: 1 };

  constructor(view: ViewUniforms, private readonly largestTexture: number) {
    this.grid = new GridMesh(view, FRAGMENT, {
      uFilm: this.film.source,
      uCover: this.cover.source,
      uColours: this.colours,
    });
  }

  /** How coarse the map is drawn: 1 shows every cell. */
  get step(): number {
    return this.shown === null ? 1 : this.thin.step;
  }

  show(field: FieldScene | null): void {
    const before = this.shown;
    if (field === before) return;
    this.shown = field;
    this.grid.mesh.visible = field !== null;
    if (field === null) return;
    if (before?.columns !== field.columns || before.rows !== field.rows || before.cellSize_m !== field.cellSize_m) {
      this.layGrid(field);
    }
    if (before?.values !== field.values) this.upload('uFilm', this.film, field, field.values);
    if (before?.cover !== field.cover) this.upload('uCover', this.cover, field, field.cover);
    if (before?.colours !== field.colours) {
      this.colours.resource = field.colours;
      this.colours.update();
    }
    this.grid.setDomain(field.domain[0], field.domain[1]);
  }

  private layGrid(field: FieldScene): void {
    const thin = thinning(field.columns, field.rows, this.largestTexture);
    const cell_m = thin.step * field.cellSize_m;
    this.thin = thin;
    this.grid.setGrid(thin.columns, thin.rows, thin.columns * cell_m, thin.rows * cell_m);
  }

  private upload(name: string, texture: GridTexture, field: FieldScene, values: Float32Array): void {
    const kept = thinnedValues(field.columns, field.rows, values, this.thin);
    texture.show(kept, this.thin.columns, this.thin.rows, (source) => this.grid.bind(name, source));
  }
}
