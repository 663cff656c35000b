import { InkLines } from './inkLines.ts';
import { InkMesh } from './inkMesh.ts';
import type { PanelScene } from './scene.ts';
import type { ViewUniforms } from './view.ts';

const LINE_PX = 1.75;
/** Paper on both sides of an edge: in the dark the ink is light, and so is the film. */
const CASING_PX = 1.25;
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
    const rings = [panel.outline, ...panel.holes];
    for (const ring of rings) edges.polyline(ring, true, LINE_PX + 2 * CASING_PX, 'paper');
    for (const ring of rings) edges.polyline(ring, true, LINE_PX, 'ink');
    this.edges.show(edges);
  }
}
