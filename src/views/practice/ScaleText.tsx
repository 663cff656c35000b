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
  if (isTrue) return <p class="spray-scale">True scale: a stroke on the glass is as long as on the part.{now.isLarger ? ' The panel is larger than the window: move the view with the buttons.' : ''}</p>;
  const words = ratio >= 1 ? `1 : ${roundedText(ratio)}` : `${roundedText(1 / ratio)} : 1`;
  return <p class="spray-scale">Scale {matched === null ? 'about ' : ''}{words}: move that much slower on the glass than on a part. {matched === null ? 'The screen is not matched to a card.' : ''}</p>;
}
