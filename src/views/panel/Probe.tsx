import type { JSX } from 'preact';
import { cellAt, shown, shownPercent, shownPlace } from '../../../sim/index.ts';
import { shownFilm } from '../../app/scene.ts';
import { state } from '../../app/state.ts';

/** Strokes named one by one; the rest are counted. */
const MOST_NAMED = 4;

/** What lies under the pointer: film wet and dry, strokes and what each laid. */
export function Probe(): JSX.Element {
  const at_m = state.probe_m.value;
  const film = shownFilm.value;
  if (at_m === null || film === null) {
    return <p class="probe soft">Point at the panel to read the film there; on the panel, Shift with the arrow keys steps the probe.</p>;
  }
  const system = state.units.value;
  const cell = cellAt(film.grid, ...at_m);
  const isInside = cell >= 0 && (state.film.value?.setting.panelGrid.cover[cell] ?? 0) >= 0.5;
  if (!isInside) return <p class="probe">{shownPlace(at_m, system)}: off the panel</p>;
  const [wet, dry] = [film.wet_m[cell] ?? 0, film.dry_m[cell] ?? 0];
  return (
    <p class="probe" data-testid="probe">
      <span>{shownPlace(at_m, system)}</span>
      <strong>{shown(wet, 'film', system)} wet</strong>
      <strong>{shown(dry, 'film', system)} dry</strong>
      <span>{wet > 0 ? `${shownPercent(dry / wet)} ${state.moment.value === null ? 'solids at impact' : 'solids'}` : 'no film'}</span>
      <span>{strokesText()}</span>
    </p>
  );
}

/** `stroke 5 lays 31 µm, stroke 6 lays 22 µm`, largest first. */
function strokesText(): string {
  const at = state.strokesAt.value;
  if (at === null || at.strokes.length === 0) return '';
  const largest = [...at.strokes].sort((a, b) => b.wet_m - a.wet_m);
  const named = largest.slice(0, MOST_NAMED).map(({ stroke, wet_m }) => `stroke ${stroke + 1}: ${shown(wet_m, 'film', state.units.value)}`);
  const rest = largest.length - named.length;
  return `${named.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}`;
}
