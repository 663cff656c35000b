import type { Job, PanelSpec } from '../../job/schema.ts';
import type { Panel } from '../../panel/panel.ts';
import type { PanelGrid } from '../../panel/panelGrid.ts';
import { boundingBox } from '../../panel/polygon.ts';
import { rasterisePanel } from '../../panel/rasterisePanel.ts';
import { shapeRing } from '../../panel/shapeRing.ts';
import { addedWeight, type AddedWeight } from '../../scheme/addedWeight.ts';
import type { PanelBalance } from '../../scheme/amountsAnswer.ts';
import { balanceAbout, filmCentre, type HingeLine, type PanelPlace, type PlacedWeight } from '../../scheme/balance.ts';
import type { PlannedScheme, PlannedStep } from '../../scheme/planned.ts';
import { scaled } from '../../scheme/spread.ts';
import { layCoat } from '../lay.ts';
import { recordingOf } from '../recordingOf.ts';
import { settleCoat } from '../settle.ts';
import { strokesOf } from '../strokes.ts';
import { schemePanels } from './amountsOf.ts';
import { jobWithMix } from './sprayedCoat.ts';

/** Side of the cells, mm, as where the scheme's own coats are laid; a centre moves by far less (second order, tested). */
const CELL_MM = 10;

/**
 * For every panel of the scheme with a hinge line: where the weight that the scheme adds acts, and its moment about the line. A sprayed coat
 * that covers the panel and is planned on it counts with the map of its film, laid by the model; every other step lies evenly. Weights are the plan's.
 * @throws CrosscoatError what settling and laying a coat throw.
 */
export function hingeBalances(job: Job, plan: PlannedScheme): PanelBalance[] {
  const panels = schemePanels(job, plan);
  const weight = addedWeight(plan, panels, null);
  return panels.flatMap((panel) => {
    const place = job.part.panels.findIndex(({ id }) => id === panel.id);
    const spec = job.part.panels[place];
    const hinge_m = spec === undefined ? null : movedHinge(spec, `/part/panels/${place}`);
    return hinge_m === null ? [] : balanced(job, plan, weight, panel, hinge_m);
  });
}

function balanced(job: Job, plan: PlannedScheme, weight: AddedWeight, panel: Panel, hinge_m: HingeLine): PanelBalance[] {
  const grid = rasterisePanel(panel, CELL_MM * 1e-3);
  const even = filmCentre(grid);
  if (even === null) return [];
  const share = (weight.panels.find(({ panelId }) => panelId === panel.id)?.area_m2 ?? 0) / weight.area_m2;
  const known = new Map<string, PanelPlace | null>();
  const centres = plan.steps.map((step) => mappedCentre(job, step, panel.id, grid, known));
  const balance = balanceAbout(hinge_m, plan.steps.map((_, i): PlacedWeight => ({ weight_kg: scaled(addedAt(weight, i), share), centre_m: centres[i] ?? even })));
  if (balance === null) return [];
  const coats = plan.steps.map(({ coat }, i) => (coat === null ? null : centres[i] !== null));
  return [{ panel, hinge_m, balance, mappedCoats: coats.filter((each) => each === true).length, evenCoats: coats.filter((each) => each === false).length }];
}

function addedAt(weight: AddedWeight, step: number): AddedWeight['total_kg'] {
  return weight.steps[step]?.added_kg ?? { value: 0, low: 0, high: 0 };
}

/** Where the map of a sprayed coat's film has its centre; null for anything without a map on this panel, and for a coat on part of it, whose place is not known. */
function mappedCentre(job: Job, { coat, spec }: PlannedStep, panelId: string, grid: PanelGrid, known: Map<string, PanelPlace | null>): PanelPlace | null {
  if (coat === null || coat.coatId === null || spec.kind !== 'spray' || spec.share_percent < 100) return null;
  const { coatId, mixId } = coat;
  if (job.coats.find(({ id }) => id === coatId)?.panel !== panelId) return null;
  const key = JSON.stringify([coatId, mixId]);
  const before = known.get(key);
  if (before !== undefined) return before;
  const sprayed = mixId === null ? job : jobWithMix(job, coatId, mixId);
  const setting = settleCoat(sprayed, coatId, { cell_mm: CELL_MM });
  const { film } = layCoat(setting, strokesOf(setting, recordingOf(sprayed, setting.coat)));
  const centre = filmCentre(grid, film.dry_m);
  known.set(key, centre);
  return centre;
}

/** The hinge line in the panel's own coordinates: the outline was moved to the origin, and the line goes with it. Null where none is stated. */
function movedHinge({ outline, hinge_mm }: PanelSpec, pointer: string): HingeLine | null {
  if (hinge_mm === undefined) return null;
  const [left, bottom] = boundingBox(shapeRing(outline, `${pointer}/outline`));
  const moved = ([x, y]: readonly [number, number]): PanelPlace => [x * 1e-3 - left, y * 1e-3 - bottom];
  return [moved(hinge_mm[0]), moved(hinge_mm[1])];
}
