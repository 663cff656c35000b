import type { JSX } from 'preact';
import { roundedText } from '../../../sim/index.ts';
import { isMatched, NOMINAL_PX_PER_MM } from '../../app/practice/practice.ts';
import type { SprayRoom } from '../../app/practice/sprayRoom.ts';
import { state } from '../../app/state.ts';

const MM_PER_M = 1000;

/** The scale in use: how long a stroke on the glass is on the part. */
export function ScaleText({ now }: { readonly now: SprayRoom | null }): JSX.Element | null {
  if (now === null) return null;
  // The drawing's scale follows the window, which the gauges' clock looks at again and again.
  void now.gauges.value;
  const prefs = state.practice.value;
  const matched = isMatched(prefs, window.devicePixelRatio) ? prefs.screen : null;
  const ratio = ((matched?.pxPerMm ?? NOMINAL_PX_PER_MM) * MM_PER_M) / now.pxPerM;
  const isTrue = prefs.trueScale && matched !== null;
  if (isTrue) return <TrueScale now={now} />;
  const words = ratio >= 1 ? `1 : ${roundedText(ratio)}` : `${roundedText(1 / ratio)} : 1`;
  return <p class="spray-scale">Scale {matched === null ? 'about ' : ''}{words}: move that much slower on the glass than on a part. {matched === null ? 'The screen is not matched to a card.' : ''}</p>;
}

/** Ways to move the view, in shares of it. */
const WAYS: readonly (readonly [words: string, x: number, y: number])[] = [['Left', -0.5, 0], ['Up', 0, -0.5], ['Down', 0, 0.5], ['Right', 0.5, 0]];

/** A view that is smaller than the panel is carried by buttons, as wheel, finger and arrow keys are the gun's. */
function TrueScale({ now }: { readonly now: SprayRoom }): JSX.Element {
  const words = 'True scale: a stroke on the glass is as long as on the part.';
  if (!now.isLarger) return <p class="spray-scale">{words}</p>;
  return (
    <>
      <p class="spray-scale">{words} The panel is larger than the window.</p>
      <div class="actions" role="group" aria-label="Move the view">
        <span class="spray-waits">Move the view</span>
        {WAYS.map(([way, x, y]) => <button key={way} type="button" onClick={() => now.panBy(x, y)}>{way}</button>)}
      </div>
    </>
  );
}
