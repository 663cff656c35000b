import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { shown, shownAngle, shownPercent, shownUnit, type UnitSystem } from '../../../../sim/index.ts';
import { HandTrace } from '../../../charts/HandTrace.tsx';
import { MEASURE_OF, tracedStrokes, type HandQuantity } from '../../../charts/handTrace.ts';
import type { DebriefReply } from '../../../worker/protocol.ts';
import { limitIn } from './handRows.ts';

export interface TracesProps {
  readonly debrief: DebriefReply;
  readonly units: UnitSystem;
  readonly chosen: number | null;
}

/** How a quantity is drawn and said. */
interface Drawn {
  readonly title: string;
  readonly unit: { readonly name: string; readonly size: number };
  readonly shown: (value: number) => string;
  readonly fromZero: boolean;
}

const PERCENT = { name: '%', size: 0.01 };
const DEGREE = { name: '°', size: Math.PI / 180 };
const QUANTITIES: readonly HandQuantity[] = ['speed', 'distance', 'tilt', 'overlap'];

function drawn(quantity: HandQuantity, units: UnitSystem): Drawn {
  switch (quantity) {
    case 'speed':
      return { title: 'Speed', unit: shownUnit('speed', units), shown: (value) => shown(value, 'speed', units), fromZero: true };
    case 'distance':
      return { title: 'Distance', unit: shownUnit('length', units), shown: (value) => shown(value, 'length', units), fromZero: false };
    case 'tilt':
      return { title: 'Off square', unit: DEGREE, shown: shownAngle, fromZero: true };
    case 'overlap':
      return { title: 'Overlap', unit: PERCENT, shown: shownPercent, fromZero: true };
  }
}

/** Speed, distance, tilt and overlap along the session. */
export function Traces({ debrief, units, chosen }: TracesProps): JSX.Element | null {
  const { reported, start_s, end_s } = debrief;
  const traced = useMemo(
    () => QUANTITIES.map((quantity) => [quantity, tracedStrokes(quantity, reported.traces, reported.meant, limitIn(reported, MEASURE_OF[quantity]))] as const),
    [reported],
  );
  if (reported.traces.length === 0) return null;
  return (
    <section class="debrief-part debrief-traces" aria-label="Traces">
      <h2>Along the session</h2>
      <p class="debrief-key">
        <span class="key"><span class="key-band" /> the rubric's band</span>
        <span class="key"><span class="key-line meant" /> what was meant</span>
        <span>Numbers of strokes above, time below.</span>
      </p>
      {traced.map(([quantity, strokes]) => <HandTrace key={quantity} {...drawn(quantity, units)} strokes={strokes} start_s={start_s} end_s={end_s} chosen={chosen} />)}
    </section>
  );
}
