import type { JSX } from 'preact';
import { AXIS_WORDS, capitalised, FAULT_WORDS, shown, shownOnAxis, shownPercent, type WindowMap, type WindowPlace, type WindowSide } from '../../../../sim/index.ts';
import { probedFilm, probedSlack, usePoint, windowSheet } from '../../../app/setups/windowSheet.ts';
import { state } from '../../../app/state.ts';

export interface PlaceProbeProps {
  readonly map: WindowMap;
  readonly stated: WindowPlace;
  readonly best: WindowPlace | null;
}

/** A place of the window in figures: two sliders, the film there, the room to each limit, and a button that takes it. */
export function PlaceProbe({ map, stated, best }: PlaceProbeProps): JSX.Element {
  const place = windowSheet.place.value ?? stated;
  const units = state.units.value;
  const film = probedFilm.value;
  return (
    <div class="window-place">
      <h3>At this place</h3>
      <Slider label={AXIS_WORDS[map.x.axis].title} side={map.x} value={place.x} set={(x) => (windowSheet.place.value = { ...place, x })} />
      <Slider label={AXIS_WORDS[map.y.axis].title} side={map.y} value={place.y} set={(y) => (windowSheet.place.value = { ...place, y })} />
      {film === null ? null : (
        <p>
          Wet film {shown(film.wetMean_m, 'film', units)}, dry {shown(film.dryMean_m, 'film', units)}; varies by {shownPercent(film.cv)}; {shownPercent(film.dryFraction)} arrives dry.
        </p>
      )}
      <table class="setups-table">
        <caption class="hidden-words">Room to each limit</caption>
        <thead><tr><th scope="col">Limit</th><th scope="col">Room left</th></tr></thead>
        <tbody>
          {probedSlack.value.map(([fault, slack]) => (
            <tr key={fault}><th scope="row">{capitalised(FAULT_WORDS[fault])}</th><td>{slack < 0 ? `${shownPercent(-slack)} past it` : shownPercent(slack)}</td></tr>
          ))}
        </tbody>
      </table>
      <div class="actions">
        {best === null ? null : <button type="button" onClick={() => (windowSheet.place.value = best)}>Go to the most room</button>}
        <button type="button" onClick={() => (windowSheet.place.value = null)}>Back to the coat as stated</button>
        <button type="button" class="act" disabled={windowSheet.place.value === null || isRoom(map)} onClick={usePoint}>Use this place for the coat</button>
      </div>
      {isRoom(map) ? <p class="soft">Mix and air are changed on their own stages.</p> : null}
    </div>
  );
}

/** Whether an axis is no part of plan or gun. */
function isRoom({ x, y }: WindowMap): boolean {
  return [x.axis, y.axis].some((axis) => axis === 'thinner' || axis === 'temperature' || axis === 'humidity');
}

/** Places of a slider; a key moves one. */
const STEPS = 100;

function Slider({ label, side, value, set }: { readonly label: string; readonly side: WindowSide; readonly value: number; readonly set: (value: number) => void }): JSX.Element {
  const { axis, low, high } = side;
  const words = shownOnAxis(axis, value, state.units.value);
  const place = Math.round(((value - low) / (high - low)) * STEPS);
  return (
    <label class="window-slider">
      <span>{capitalised(label)} <span class="window-value">{words}</span></span>
      <input type="range" min={0} max={STEPS} value={place} aria-valuetext={words} onInput={(event) => set(low + ((high - low) * Number(event.currentTarget.value)) / STEPS)} />
    </label>
  );
}
