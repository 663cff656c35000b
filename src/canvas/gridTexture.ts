import { BufferImageSource } from 'pixi.js';

/** A grid of floats on the GPU, one texel a cell, read with `texelFetch`. */
export class GridTexture {
  source = floatSource(new Float32Array(1), 1, 1);

  /**
   * Uploads `values`. The same size as before re-uses the texture; another size makes a new one,
   * which `bind` must put into the shader before the old one is destroyed.
   */
  show(
    values: Float32Array, columns: number, rows: number, bind: (texture: BufferImageSource) => void,
  ): void {
    const old = this.source;
    if (old.width === columns && old.height === rows) {
      old.resource = values;
      old.update();
      return;
    }
    this.source = floatSource(values, columns, rows);
    bind(this.source);
    old.destroy();
  }
}

function floatSource(resource: Float32Array, width: number, height: number): BufferImageSource {
  return new BufferImageSource({
    resource,
    width,
    height,
    format: 'r32float',
    scaleMode: 'nearest',
    // Pixi's default multiplies on upload, which costs five times the time for one channel.
    alphaMode: 'no-premultiply-alpha',
  });
}
