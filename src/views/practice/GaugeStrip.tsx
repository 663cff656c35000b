import type { JSX } from 'preact';
import { shown, shownAngle, shownPercent, type UnitSystem } from '../../../sim/index.ts';
import type { Gauge, Gauges } from '../../app/practice/gauges.ts';
import { room } from '../../app/practice/underway.ts';
import { state } from '../../app/state.ts';

/** How a gauge is named and read. */
interface GaugeWords {
  readonly key: keyof Gauges;
  readonly title: string;
  /** Said below and above the band. */
  readonly below: string;
  readonly above: string;
  readonly text: (value: number, system: UnitSystem) => string;
}

const WORDS: readonly GaugeWords[] = [
  { key: 'distance', title: 'Distance', below: 'near', above: 'far', text: (value, system) => shown(value, 'length', system) },
  { key: 'speed', title: 'Speed', below: 'slow', above: 'fast', text: (value, system) => shown(value, 'speed', system) },
  { key: 'angle', title: 'Off square', below: '', above: 'tilted', text: shownAngle },
  { key: 'overlap', title: 'Overlap', below: 'narrow', above: 'wide', text: shownPercent },
];

/** What the hand does against its bands, above the panel so that nothing of it is hidden. */
export function GaugeStrip(): JSX.Element {
  const gauges = room.value?.gauges.value ?? null;
  return (
    <div class="gauge-strip" role="group" aria-label="Gauges">
      {WORDS.map((words) => <OneGauge key={words.key} words={words} gauge={gauges?.[words.key] ?? null} />)}
    </div>
  );
}

function OneGauge({ words, gauge }: { readonly words: GaugeWords; readonly gauge: Gauge | null }): JSX.Element {
  const isKnown = gauge !== null && Number.isFinite(gauge.value);
  const text = isKnown ? words.text(gauge.value, state.units.value) : 'none yet';
  const place = (value: number): number => (gauge === null ? 0 : 100 * Math.min(1, Math.max(0, (value - gauge.from) / (gauge.to - gauge.from))));
  return (
    <div
      class="gauge"
      role="meter"
      aria-label={words.title}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={isKnown ? Math.round(place(gauge.value)) : 0}
      aria-valuetext={`${text} ${isKnown ? sideOf(gauge, words) : ''}`}
    >
      <span class="gauge-title">{words.title}</span>
      <span class="gauge-value">{text}</span>
      <span class="gauge-side">{isKnown ? sideOf(gauge, words) : ''}</span>
      <span class="gauge-scale" aria-hidden="true">
        {gauge === null ? null : <span class="gauge-band" style={{ left: `${place(gauge.low)}%`, width: `${place(gauge.high) - place(gauge.low)}%` }} />}
        {isKnown ? <span class="gauge-mark" style={{ left: `${place(gauge.value)}%` }} /> : null}
      </span>
    </div>
  );
}

function sideOf({ value, low, high }: Gauge, { below, above }: GaugeWords): string {
  if (value < low) return below;
  return value > high ? above : 'good';
}
