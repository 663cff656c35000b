import { Buffer, BufferUsage, Geometry, Mesh, Shader } from 'pixi.js';
import { FLOATS_PER_MARK, type InkLines } from './inkLines.ts';
import { VIEW_GLSL, type ViewUniforms } from './view.ts';

const VERTEX = `${VIEW_GLSL}
in vec2 aCorner;
in vec4 aEnds;
in vec4 aOffsets;
in vec3 aShape;
out vec2 vPlace;
out float vLength;
out vec2 vShape;
flat out int vTone;
void main() {
  vec2 from = screenPx(aEnds.xy) + vec2(aOffsets.x, -aOffsets.y);
  vec2 to = screenPx(aEnds.zw) + vec2(aOffsets.z, -aOffsets.w);
  vLength = distance(from, to);
  vec2 along = vLength > 1e-4 ? (to - from) / vLength : vec2(1.0, 0.0);
  vec2 across = vec2(-along.y, along.x);
  float reach = aShape.x + aShape.y + 1.0;
  vPlace = vec2(aCorner.x < 0.0 ? -reach : vLength + reach, aCorner.y * reach);
  vShape = aShape.xy;
  vTone = int(aShape.z + 0.5);
  gl_Position = clipPlace(from + along * vPlace.x + across * vPlace.y);
}`;

/** Distance to a line with round ends, then a one-pixel soft edge: crisp without multisampling. */
const FRAGMENT = `#version 300 es
precision highp float;
uniform vec4 uCamera;
uniform vec4 uTones[4];
in vec2 vPlace;
in float vLength;
in vec2 vShape;
flat in int vTone;
out vec4 colour;
void main() {
  float away = length(vec2(vPlace.x - clamp(vPlace.x, 0.0, vLength), vPlace.y));
  float inside = (vShape.x - abs(away - vShape.y)) * uCamera.w + 0.5;
  colour = uTones[vTone] * clamp(inside, 0.0, 1.0);
}`;

const FLOAT_BYTES = 4;

/** A pixi mesh that draws a list of ink marks in one call. */
export class InkMesh {
  readonly mesh: Mesh<Geometry, Shader>;
  private readonly marks: Buffer;
  private readonly geometry: Geometry;

  constructor(view: ViewUniforms) {
    this.marks = new Buffer({
      data: new Float32Array(FLOATS_PER_MARK),
      usage: BufferUsage.VERTEX | BufferUsage.COPY_DST,
    });
    const buffer = this.marks;
    const stride = FLOATS_PER_MARK * FLOAT_BYTES;
    const column = (first: number): { buffer: Buffer; stride: number; offset: number; instance: true } =>
      ({ buffer, stride, offset: first * FLOAT_BYTES, instance: true });
    this.geometry = new Geometry({
      topology: 'triangle-strip',
      attributes: {
        aCorner: { buffer: new Float32Array([-1, -1, -1, 1, 1, -1, 1, 1]), format: 'float32x2' },
        aEnds: { ...column(0), format: 'float32x4' },
        aOffsets: { ...column(4), format: 'float32x4' },
        aShape: { ...column(8), format: 'float32x3' },
      },
      instanceCount: 1,
    });
    const shader = Shader.from({
      gl: { vertex: VERTEX, fragment: FRAGMENT },
      resources: { view: view.group },
    });
    this.mesh = new Mesh({ geometry: this.geometry, shader });
    this.mesh.visible = false;
  }

  show(lines: InkLines): void {
    this.mesh.visible = lines.count > 0;
    if (lines.count === 0) return;
    this.marks.data = lines.data().slice();
    this.geometry.instanceCount = lines.count;
  }
}
