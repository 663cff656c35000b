import { GravityLayer } from './gravityLayer.ts';
import { LabelsLayer, type Tag } from './labelsLayer.ts';
import { type OverlayView, TICK_TEXT_PX } from './overlay.ts';
import { ProbeLayer } from './probeLayer.ts';
import { RulersLayer } from './rulersLayer.ts';
import type { CanvasScene, SectionScene } from './scene.ts';
import { sectionEndBoxes, SectionLayer } from './sectionLayer.ts';
import type { SectionPart } from './sectionLine.ts';
import { setAttributes, svgElement } from './svg.ts';

/** Lettering, rulers, section line and cross-hair: an SVG over the map, crisp at any pixel ratio. */
export class TextOverlay {
  readonly svg = svgElement('svg', { 'aria-hidden': 'true', 'font-size': TICK_TEXT_PX });
  readonly handles: readonly HTMLButtonElement[];
  private readonly labels = new LabelsLayer();
  private readonly gravity = new GravityLayer();
  private readonly rulers = new RulersLayer();
  private readonly section: SectionLayer;
  private readonly probe = new ProbeLayer();
  private readonly note = svgElement('text');

  constructor(onMove: (part: SectionPart, dx_m: number, dy_m: number) => void) {
    this.section = new SectionLayer(onMove);
    this.handles = this.section.handles;
    this.svg.append(
      this.section.group, this.labels.group, this.probe.group,
      this.rulers.group, this.gravity.group, this.note,
    );
  }

  get tags(): readonly Tag[] {
    return this.labels.tags;
  }

  place(
    view: OverlayView, scene: CanvasScene, section: SectionScene,
    probe_m: readonly [number, number] | null, filmStep: number,
  ): void {
    const { width_px, height_px } = view;
    setAttributes(this.svg, { width: width_px, height: height_px, viewBox: `0 0 ${width_px} ${height_px}` });
    const ends = sectionEndBoxes(view, section);
    const taken = [...ends, ...this.gravity.place(view, scene.panel.down_rad)];
    this.labels.place(view, scene.zones, scene.selectedZone, scene.strokes, scene.selectedStrokes, taken);
    this.section.place(view, section);
    this.probe.place(view, probe_m);
    this.rulers.place(view);
    this.note.textContent = filmStep === 1 ? '' : `Map drawn with 1 cell in ${filmStep}`;
    setAttributes(this.note, { x: view.frame.left_px + 10, y: view.frame.bottom_px - 10, fill: view.palette.ink });
  }
}
