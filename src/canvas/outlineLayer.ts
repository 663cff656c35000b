import { InkLines } from './inkLines.ts';
import { InkMesh } from './inkMesh.ts';
import type { PanelScene } from './scene.ts';
import type { ViewUniforms } from './view.ts';

const LINE_PX = 1.75;
const SHADOW_PX = 4;
/** The shadow falls to the lower right. */
const SHADOW_DX_PX = 2.5;
const SHADOW_DY_PX = -3;

/** The panel's shadow on the paper, under the film map, and its edges, over it. */
export class OutlineLayer {
  readonly shadow: InkMesh;
  readonly edges: InkMesh;
  private shown: PanelScene | null = null;

  constructor(view: ViewUniforms) {
    this.shadow = new InkMesh(view);
    this.edges = new InkMesh(view);
  }

  show(panel: PanelScene): void {
    if (panel === this.shown) return;
    this.shown = panel;
    const shadow = new InkLines();
    shadow.polyline(panel.outline, true, SHADOW_PX, 'shade', SHADOW_DX_PX, SHADOW_DY_PX);
    this.shadow.show(shadow);
    const edges = new InkLines();
    edges.polyline(panel.outline, true, LINE_PX, 'ink');
    for (const hole of panel.holes) edges.polyline(hole, true, LINE_PX, 'ink');
    this.edges.show(edges);
  }
}
