import { UniformGroup } from 'pixi.js';
import type { Camera } from './camera.ts';
import { type Palette, writeTones } from './palette.ts';

/** What every shader of the canvas shares: the camera, the view's size and the inks. */
export class ViewUniforms {
  readonly group = new UniformGroup({
    /** pxPerM, originX_px, originY_px, device pixels a CSS pixel. */
    uCamera: { value: new Float32Array([1, 0, 0, 1]), type: 'vec4<f32>' },
    uSize: { value: new Float32Array([1, 1]), type: 'vec2<f32>' },
    uTones: { value: new Float32Array(16), type: 'vec4<f32>', size: 4 },
  });

  set(camera: Camera, width_px: number, height_px: number, pixelRatio: number): void {
    const { uCamera, uSize } = this.group.uniforms;
    uCamera.set([camera.pxPerM, camera.originX_px, camera.originY_px, pixelRatio]);
    uSize.set([width_px, height_px]);
  }

  setInks(palette: Palette): void {
    writeTones(palette, this.group.uniforms.uTones);
  }
}

/** GLSL that each vertex shader starts with: panel metres to CSS pixels to clip space. */
export const VIEW_GLSL = `#version 300 es
precision highp float;
uniform vec4 uCamera;
uniform vec2 uSize;
vec2 screenPx(vec2 at_m) { return uCamera.yz + vec2(at_m.x, -at_m.y) * uCamera.x; }
vec4 clipPlace(vec2 px) { return vec4(px / uSize * vec2(2.0, -2.0) + vec2(-1.0, 1.0), 0.0, 1.0); }
`;
