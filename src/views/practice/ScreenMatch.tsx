import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { setPrefs } from '../../app/practice/practice.ts';
import { state } from '../../app/state.ts';

/** A card of format ID-1, ISO/IEC 7810: bank and identity cards have it. */
const CARD_WIDTH_MM = 85.6;
const CARD_HEIGHT_MM = 53.98;
/** A CSS pixel is nominally a ninety-sixth of an inch. */
const USUAL_PX_PER_MM = 96 / 25.4;
const LEAST_PX = 160;
const MOST_PX = 700;
const STEP_PX = 0.5;

/** A card held against the glass says how large the screen draws. */
export function ScreenMatch({ done }: { readonly done: () => void }): JSX.Element {
  const known = state.practice.value.screen?.pxPerMm ?? USUAL_PX_PER_MM;
  const [width_px, setWidth] = useState(known * CARD_WIDTH_MM);
  const match = (): void => {
    setPrefs({ screen: { pxPerMm: width_px / CARD_WIDTH_MM, pixelRatio: window.devicePixelRatio }, trueScale: true });
    done();
  };
  return (
    <div class="screen-match" role="group" aria-label="Match the screen to a card">
      <p>Hold a bank card (85.60 × 53.98 mm) against the glass and move the slider until the drawing is as wide as the card.</p>
      <div class="screen-scroll">
        <div class="screen-card" style={{ width: `${width_px}px`, height: `${(width_px * CARD_HEIGHT_MM) / CARD_WIDTH_MM}px` }} />
      </div>
      <label for="card-width">Width of the drawing</label>
      <input id="card-width" type="range" min={LEAST_PX} max={MOST_PX} step={STEP_PX} value={width_px} aria-valuetext={`${width_px.toFixed(1)} px`} onInput={(event) => setWidth(Number(event.currentTarget.value))} />
      <div class="actions">
        <button type="button" class="act" onClick={match}>It is as wide as the card</button>
        <button type="button" onClick={done}>Leave it</button>
      </div>
    </div>
  );
}
