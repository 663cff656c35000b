import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { NOMINAL_PX_PER_MM, setPrefs } from '../../app/practice/practice.ts';
import { state } from '../../app/state.ts';

/** A card of format ID-1, ISO/IEC 7810: bank and identity cards have it. */
const LONG_SIDE_MM = 85.6;
const SHORT_SIDE_MM = 53.98;
const LEAST_PX = 160;
const MOST_PX = 700;
const STEP_PX = 0.5;

/** A card held against the glass says how large the screen draws. */
export function ScreenMatch({ done }: { readonly done: () => void }): JSX.Element {
  const known = state.practice.value.screen?.pxPerMm ?? NOMINAL_PX_PER_MM;
  const [height_px, setHeight] = useState(known * LONG_SIDE_MM);
  const match = (): void => {
    setPrefs({ screen: { pxPerMm: height_px / LONG_SIDE_MM, pixelRatio: window.devicePixelRatio }, trueScale: true });
    done();
  };
  return (
    <div class="screen-match" role="group" aria-label="Match the screen to a card">
      <p>Hold a bank card (85.60 × 53.98 mm) upright against the glass and move the slider until the drawing is as tall as the card.</p>
      <div class="screen-scroll">
        <div class="screen-card" style={{ height: `${height_px}px`, width: `${(height_px * SHORT_SIDE_MM) / LONG_SIDE_MM}px` }} />
      </div>
      <label for="card-height">Height of the drawing</label>
      <input id="card-height" type="range" min={LEAST_PX} max={MOST_PX} step={STEP_PX} value={height_px} aria-valuetext={`${height_px.toFixed(1)} px`} onInput={(event) => setHeight(Number(event.currentTarget.value))} />
      <div class="actions">
        <button type="button" class="act" onClick={match}>It is as tall as the card</button>
        <button type="button" onClick={done}>Leave it</button>
      </div>
    </div>
  );
}
