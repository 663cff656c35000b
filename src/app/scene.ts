import { computed } from '@preact/signals';
import { coatFaults, makeField } from '../../sim/index.ts';
import type { CanvasScene, FieldScene, PanelScene, StrokeScene, ZoneScene } from '../canvas/scene.ts';
import type { MomentReply } from '../worker/protocol.ts';
import { fitBox } from './fitBox.ts';
import { reported } from './reported.ts';
import { section } from './sections.ts';
import { state } from './state.ts';
import { darkNow } from './theme.ts';
import { rulerUnit } from './units.ts';
import { zoneKey, zoneLabel } from './zones.ts';

/** Zones drawn at most; the list has them all. Beyond this the panel is one hatching anyway. */
const MOST_ZONES = 200;
/** One and the same list, so that nothing is drawn again. */
const NO_ZONES: readonly ZoneScene[] = [];

/** The film as laid: that of the replay's time, or the finished one. */
const laidFilm = computed(() => state.replay.value?.film ?? state.film.value?.laid.film ?? null);

/** The film in view: at a time of its life, or as laid. */
export const shownFilm = computed(() => {
  const moment = state.moment.value;
  if (moment === null) return laidFilm.value;
  return { grid: moment.field.grid, wet_m: moment.wet_m, dry_m: moment.dry_m };
});

/** The field of the film as laid with its domain, legend data and colours. During a replay the finished film's domain holds. */
export const laidField = computed(() => {
  const reply = state.film.value;
  const film = laidFilm.value;
  if (reply === null || film === null) return null;
  const kind = state.field.value;
  const now = makeField(kind, film, reply.setting.target);
  if (film === reply.laid.film) return now;
  const { domain, colours } = makeField(kind, reply.laid.film, reply.setting.target);
  return { ...now, domain, colours };
});

/** The field in view. */
export const field = computed(() => state.moment.value?.field ?? laidField.value);

const fieldScene = computed<FieldScene | null>(() => {
  const now = field.value;
  const reply = state.film.value;
  if (now === null || reply === null) return null;
  return {
    ...now.grid,
    values: now.values,
    cover: reply.setting.panelGrid.cover,
    domain: now.domain,
    colours: now.colours,
  };
});

const panelScene = computed<PanelScene | null>(() => {
  const shown = state.film.value?.setting.panel;
  if (shown === undefined) return null;
  const { tilt_rad, down_rad } = shown.attitude;
  const isLevel = Math.sin(tilt_rad) < 1e-6;
  return { outline: shown.outline, holes: shown.holes, width_m: shown.width_m, height_m: shown.height_m, down_rad: isLevel ? null : down_rad };
});

/** All strokes, or only those chosen where the reader has put the others away. */
const strokeScenes = computed<readonly StrokeScene[]>(() => {
  const lines = state.film.value?.lines ?? [];
  const drawn = state.drawnOver.value.strokes ? lines : lines.filter(({ index }) => state.chosenStrokes.value.includes(index));
  return drawn.map(({ index, line }) => ({ index, line, label: String(index + 1) }));
});

/** Key of the outline round film that has run, in a picture of the film in time; it is no fault of the list. */
export const RAN_KEY = 'ran';

const zoneScenes = computed<readonly ZoneScene[]>(() => {
  const moment = state.moment.value;
  if (state.replay.value !== null || !state.drawnOver.value.faults) return [];
  const chosen = state.chosenFault.value?.fault;
  const coat = reported.value;
  const faults = coat === null ? [] : coatFaults(coat);
  const zones = faults.flatMap(({ kind, zones: all }, fault) =>
    // Over the film at one time only the chosen fault is drawn: the others are of the end of its life.
    (moment !== null && fault !== chosen ? [] : all).map((zone, i) => ({
      key: zoneKey(fault, i),
      // Tags crowd a small drawing: the worst zone speaks for its fault until the fault is chosen.
      label: i === 0 || fault === chosen ? zoneLabel(fault) : '',
      kind,
      cells: zone.cells,
      at_m: zone.at_m,
    })),
  );
  return moment === null ? zones.slice(0, MOST_ZONES) : [...ranZones(moment), ...zones].slice(0, MOST_ZONES);
});

function ranZones({ ran }: MomentReply): readonly ZoneScene[] {
  if (ran.length === 0) return NO_ZONES;
  return [{ key: RAN_KEY, label: '', kind: 'run', cells: ran, at_m: [0, 0] }];
}

/** Of all strokes, drawn or put away: ticking them off must not move the view. */
const fitted = computed(() => {
  const { width_m = 1, height_m = 1 } = state.film.value?.setting.panel ?? {};
  return fitBox(width_m, height_m, (state.film.value?.lines ?? []).map(({ line }) => line));
});

/** Everything the canvas shows; null until there is a first film. */
export const scene = computed<CanvasScene | null>(() => {
  if (panelScene.value === null) return null;
  const chosen = state.chosenFault.value;
  return {
    panel: panelScene.value,
    fit_m: fitted.value,
    field: fieldScene.value,
    strokes: strokeScenes.value,
    selectedStrokes: state.chosenStrokes.value,
    zones: zoneScenes.value,
    selectedZone: chosen === null ? null : zoneKey(chosen.fault, chosen.zone),
    gun: (state.moment.value ?? state.replay.value)?.gun ?? null,
    section: section.value,
    ruler: ruler.value,
    theme: darkNow.value ? 'dark' : 'light',
  };
});

const ruler = computed(() => rulerUnit(state.units.value));
