import { type BufferImageSource, Geometry, Mesh, Shader, UniformGroup } from 'pixi.js';
import { VIEW_GLSL, type ViewUniforms } from './view.ts';

const VERTEX = `${VIEW_GLSL}
in vec2 aCorner;
uniform vec4 uGrid;
out vec2 vCell;
void main() {
  vec2 at_m = aCorner * uGrid.zw;
  vCell = aCorner * uGrid.xy;
  gl_Position = clipPlace(screenPx(at_m));
}`;

/** GLSL for a fragment shader over a grid: the cell under the fragment, row 0 lowest. */
export const GRID_GLSL = `#version 300 es
precision highp float;
precision highp sampler2D;
uniform vec4 uGrid;
in vec2 vCell;
out vec4 colour;
ivec2 cellUnder(vec2 cell) { return ivec2(clamp(floor(cell), vec2(0.0), uGrid.xy - 1.0)); }
`;

/** A rectangle over the panel's grid, coloured by a fragment shader that reads textures. */
export class GridMesh {
  readonly mesh: Mesh<Geometry, Shader>;
  private readonly uniforms = new UniformGroup({
    uGrid: { value: new Float32Array(4), type: 'vec4<f32>' },
    uDomain: { value: new Float32Array([0, 1]), type: 'vec2<f32>' },
  });

  constructor(view: ViewUniforms, fragment: string, textures: Record<string, BufferImageSource>) {
    const geometry = new Geometry({
      topology: 'triangle-strip',
      attributes: {
        aCorner: { buffer: new Float32Array([0, 0, 0, 1, 1, 0, 1, 1]), format: 'float32x2' },
      },
    });
    const shader = Shader.from({
      gl: { vertex: VERTEX, fragment },
      resources: { view: view.group, grid: this.uniforms, ...textures },
    });
    this.mesh = new Mesh({ geometry, shader });
    this.mesh.visible = false;
  }

  bind(name: string, texture: BufferImageSource): void {
    const resources = this.mesh.shader?.resources as Record<string, BufferImageSource>;
    resources[name] = texture;
  }

  setGrid(columns: number, rows: number, width_m: number, height_m: number): void {
    this.uniforms.uniforms.uGrid.set([columns, rows, width_m, height_m]);
  }

  setDomain(first: number, last: number): void {
    this.uniforms.uniforms.uDomain.set([first, last]);
  }
}
