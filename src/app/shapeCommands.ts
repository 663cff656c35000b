import type { PanelSpec } from '../../sim/index.ts';
import { changeJob } from './document.ts';
import { keepDraft } from './fieldText.ts';
import { latestOnly } from './latest.ts';
import { pointerOf, valueAt, withValueAt, type JobPath } from './path.ts';
import { problemOf } from './problem.ts';
import type { Session } from './session.ts';
import { readPoints } from './shapeText.ts';
import { state } from './state.ts';

/** A panel's path: part, panels, its index. */
const PANEL_DEPTH = 3;

let session: Session | null = null;

/** Gives the shape editors the worker that checks their outlines; called once at start. */
export function connectShapes(started: Session): void {
  session = started;
}

/** Takes corners as typed; they become the shape as soon as the panel can be made with them. */
export function typePoints(path: JobPath, name: string, text: string): void {
  const read = readPoints(text);
  const pointer = pointerOf([...path, 'points_mm']);
  if ('problem' in read) keepDraft(pointer, { text, problem: read.problem });
  else typeShape({ path, pointer, name, text, shape: { points_mm: read.points } });
}

/** Takes an SVG path as typed, likewise. */
export function typePath(path: JobPath, name: string, text: string): void {
  typeShape({ path, pointer: pointerOf([...path, 'path_mm']), name, text, shape: { path_mm: text } });
}

interface TypedShape {
  readonly path: JobPath;
  readonly pointer: string;
  readonly name: string;
  readonly text: string;
  readonly shape: unknown;
}

function typeShape(typed: TypedShape): void {
  keepDraft(typed.pointer, { text: typed.text, problem: state.drafts.peek()[typed.pointer]?.problem ?? null });
  checkShape(typed);
}

/** The worker makes the panel, since reading outlines is script that the page can do without. */
const checkShape = latestOnly(async ({ path, pointer, name, text, shape }: TypedShape) => {
  const panelPath = path.slice(0, PANEL_DEPTH);
  const panel = valueAt(withValueAt(state.job.peek(), path, shape), panelPath) as PanelSpec;
  const problem = await session?.checkPanel(panel, pointerOf(panelPath)).then(
    () => null,
    (thrown: unknown) => problemOf('', thrown).text,
  );
  // Typed on, undone or left meanwhile: what was checked is no longer asked for.
  if (problem === undefined || state.drafts.peek()[pointer]?.text !== text) return;
  keepDraft(pointer, { text, problem });
  if (problem === null) changeJob(name, withValueAt(state.job.peek(), path, shape), pointer);
});
