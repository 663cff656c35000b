import { InkLines } from './inkLines.ts';
import { InkMesh } from './inkMesh.ts';
import type { GunScene } from './scene.ts';
import type { ViewUniforms } from './view.ts';

const CROSS_PX = 7;

/** The fan's rim on the panel and the foot of the nozzle; heavier while fluid flows. */
export class GunLayer {
  readonly ink: InkMesh;
  private readonly lines = new InkLines();
  private shown: GunScene | null = null;

  constructor(view: ViewUniforms) {
    this.ink = new InkMesh(view);
  }

  show(gun: GunScene | null): void {
    if (gun === this.shown) return;
    this.shown = gun;
    const { lines } = this;
    lines.clear();
    if (gun !== null) {
      const width = gun.spraying ? 2.25 : 1.25;
      lines.polyline(gun.rim, true, width + 2.5, 'paper');
      lines.polyline(gun.rim, true, width, gun.spraying ? 'accent' : 'ink');
      drawFoot(lines, gun);
    }
    this.ink.show(lines);
  }
}

function drawFoot(lines: InkLines, gun: GunScene): void {
  const { x_m, y_m } = gun;
  for (const [width, tone] of [[4, 'paper'], [1.5, 'ink']] as const) {
    lines.stick(x_m, y_m, -CROSS_PX, 0, CROSS_PX, 0, width, tone);
    lines.stick(x_m, y_m, 0, -CROSS_PX, 0, CROSS_PX, width, tone);
  }
  if (gun.spraying) lines.disc(x_m, y_m, 3.5, 'accent');
}
