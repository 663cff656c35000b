import { GRID_GLSL, GridMesh } from './gridMesh.ts';
import { GridTexture } from './gridTexture.ts';
import type { FieldScene, ZoneScene } from './scene.ts';
import { thinnedValues, thinning } from './thinnedGrid.ts';
import type { ViewUniforms } from './view.ts';
import { SELECTED_SHIFT, writeZoneMask } from './zoneMask.ts';

/**
 * Hatching in screen pixels, one hand a kind, those of the printed map and its words: holiday an
 * upright grid, thin lap strokes rising to the right, heavy spot crossed strokes, dry spray stippled,
 * run upright strokes, orange peel a net, dry lap level strokes, blush strokes falling to the right,
 * blister rings, pinhole points far apart, over-thick broad level bars. `x` is ink, `y` the paper on both sides of it. A rim is drawn where the pixel beside lacks the kind, with paper
 * inside it, so that it stands off film of its own tone.
 */
const FRAGMENT = `${GRID_GLSL}
uniform vec4 uCamera;
uniform vec4 uTones[4];
uniform sampler2D uZones;
int bitsAt(vec2 cell) {
  if (any(lessThan(cell, vec2(0.0))) || any(greaterThanEqual(cell, uGrid.xy))) return 0;
  return int(texelFetch(uZones, ivec2(cell), 0).r + 0.5);
}
vec2 inked(float away, float half_px) {
  return clamp((vec2(half_px, half_px + 1.0) - away) * uCamera.w + 0.5, 0.0, 1.0);
}
vec2 strokes(vec2 px, vec2 normal, float spacing, float half_px) {
  return inked(abs(fract(dot(px, normal) / spacing) - 0.5) * spacing, half_px);
}
vec2 dots(vec2 px, float spacing, float radius) {
  float row = floor(px.y / spacing);
  vec2 place = vec2(px.x + mod(row, 2.0) * spacing * 0.5, px.y);
  return inked(length((fract(place / spacing) - 0.5) * spacing), radius);
}
vec2 rings(vec2 px, float spacing, float radius) {
  return inked(abs(length((fract(px / spacing) - 0.5) * spacing) - radius), 0.6);
}
const vec2 RISING = vec2(0.7071068, -0.7071068);
const vec2 FALLING = vec2(0.7071068, 0.7071068);
vec2 hatch(int kind, vec2 px) {
  if (kind == 1) return max(strokes(px, vec2(1.0, 0.0), 11.0, 0.65), strokes(px, vec2(0.0, 1.0), 11.0, 0.65));
  if (kind == 2) return strokes(px, RISING, 11.0, 0.65);
  if (kind == 4) return max(strokes(px, RISING, 11.0, 0.65), strokes(px, FALLING, 11.0, 0.65));
  if (kind == 16) return strokes(px, vec2(1.0, 0.0), 8.0, 0.65);
  if (kind == 32) return max(strokes(px, RISING, 6.0, 0.5), strokes(px, FALLING, 6.0, 0.5));
  if (kind == 64) return strokes(px, vec2(0.0, 1.0), 8.0, 0.65);
  if (kind == 128) return strokes(px, FALLING, 11.0, 0.65);
  if (kind == 256) return rings(px, 11.0, 3.2);
  if (kind == 512) return dots(px, 13.0, 1.0);
  if (kind == 1024) return strokes(px, vec2(0.0, 1.0), 12.0, 2.5);
  return dots(px, 8.0, 1.4);
}
int around(vec2 reach) {
  return bitsAt(vCell + vec2(reach.x, 0.0)) & bitsAt(vCell - vec2(reach.x, 0.0))
    & bitsAt(vCell + vec2(0.0, reach.y)) & bitsAt(vCell - vec2(0.0, reach.y));
}
void main() {
  int here = bitsAt(vCell);
  if (here == 0) discard;
  vec2 cell_px = uGrid.zw / uGrid.xy * uCamera.x;
  vec2 px = vCell * cell_px;
  int inRim = around(1.5 / cell_px);
  int inCasing = around(3.0 / cell_px);
  vec4 drawn = vec4(0.0);
  for (int kind = 1; kind <= 1024; kind <<= 1) {
    if ((here & kind) == 0) continue;
    bool chosen = (here & (kind << ${SELECTED_SHIFT})) != 0;
    bool rim = (inRim & kind) == 0;
    bool casing = (inCasing & kind) == 0;
    vec2 mark = rim ? vec2(1.0) : casing ? vec2(0.0, 1.0) : hatch(kind, px);
    vec4 ink = uTones[chosen ? 2 : 0];
    drawn = mix(drawn, uTones[1], mark.y * 0.75);
    drawn = mix(drawn, ink, mark.x);
  }
  colour = drawn;
}`;

/** Fault zones, hatched by kind and rimmed. */
export class ZonesLayer {
  readonly grid: GridMesh;
  private readonly texture = new GridTexture();
  private mask = new Float32Array(0);
  private zones: readonly ZoneScene[] = [];
  private selected: string | null = null;
  private columns = 0;
  private rows = 0;

  constructor(view: ViewUniforms, private readonly largestTexture: number) {
    this.grid = new GridMesh(view, FRAGMENT, { uZones: this.texture.source });
  }

  show(zones: readonly ZoneScene[], selected: string | null, field: FieldScene | null): void {
    this.grid.mesh.visible = field !== null && zones.length > 0;
    if (field === null || zones.length === 0) return;
    const sameGrid = field.columns === this.columns && field.rows === this.rows;
    if (!sameGrid) this.mask = new Float32Array(field.columns * field.rows);
    const thin = thinning(field.columns, field.rows, this.largestTexture);
    const cell_m = thin.step * field.cellSize_m;
    this.grid.setGrid(thin.columns, thin.rows, thin.columns * cell_m, thin.rows * cell_m);
    if (sameGrid && zones === this.zones && selected === this.selected) return;
    this.zones = zones;
    this.selected = selected;
    this.columns = field.columns;
    this.rows = field.rows;
    writeZoneMask(zones, selected, this.mask);
    const kept = thinnedValues(field.columns, field.rows, this.mask, thin);
    this.texture.show(kept, thin.columns, thin.rows, (source) => this.grid.bind('uZones', source));
  }
}
