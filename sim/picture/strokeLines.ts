import { gunAxes } from '../base/gunAxes.ts';
import type { Path } from '../stroke/path.ts';
import type { Stroke } from '../stroke/stroke.ts';
import type { StrokeLine } from './strokesSvg.ts';

/**
 * The aim line of each stroke: where the spray axis meets the panel at every row of the stroke.
 * The gun must look at the panel (tilt below a right angle), as the path readers make sure.
 */
export function strokeLines(path: Path, strokes: readonly Stroke[]): StrokeLine[] {
  return strokes.map(({ index, firstRow, lastRow }) => {
    const line = new Float64Array(2 * (lastRow - firstRow + 1));
    for (let row = firstRow; row <= lastRow; row++) {
      const { spray } = gunAxes(path.fan_rad[row] as number, path.pitch_rad[row] as number, path.yaw_rad[row] as number);
      const reach = (path.z_m[row] as number) / -spray[2];
      line[2 * (row - firstRow)] = (path.x_m[row] as number) + reach * spray[0];
      line[2 * (row - firstRow) + 1] = (path.y_m[row] as number) + reach * spray[1];
    }
    return { index, line };
  });
}
