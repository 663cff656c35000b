import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { makeSetUp, makeSpray, overlapCv, shown, shownPercent, strokeAcross } from '../../../sim/index.ts';
import { coat, setUp } from '../../app/document.ts';
import { state } from '../../app/state.ts';
import { FanCurve, RippleCurve } from '../../charts/FanCurve.tsx';

/** The fan at its stated distance, sampled; null while the set-up makes none. */
const footprint = computed(() => {
  try {
    return makeSpray(makeSetUp(setUp.value)).footprint;
  } catch {
    return null;
  }
});

/** Film of one stroke across the fan, and the ripple that many leave at the coat's overlap. */
export function FanDrawing(): JSX.Element | null {
  const fan = footprint.value;
  if (fan === null) return null;
  const overlap = coat.value.plan.overlap_percent / 100;
  const cv = overlapCv(fan, overlap);
  const width = shown(fan.width_m, 'length', state.units.value);
  const across = (u: number): number => strokeAcross(fan, u);
  const pitch = ((1 - overlap) * fan.width_m) / fan.halfLength_m;
  return (
    <figure class="fan-drawing">
      <FanCurve across={across} label={`Film across one stroke of the fan, ${width} wide`} />
      <figcaption>One stroke, {width} wide</figcaption>
      <RippleCurve across={across} pitch={pitch} label={`Film of many strokes at ${shownPercent(overlap)} overlap`} />
      <figcaption>
        Many strokes at {shownPercent(overlap)} overlap: variation (CV) {shownPercent(cv)}
      </figcaption>
    </figure>
  );
}
