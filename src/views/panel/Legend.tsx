import type { JSX } from 'preact';
import { legendIn, type Field } from '../../../sim/index.ts';
import { field } from '../../app/scene.ts';
import { state } from '../../app/state.ts';
import { unitOfField } from './fieldWords.ts';

const WIDTH = 600;
const BAR = 18;

/** The colour bar: title, unit, ticks at round numbers, and marks at the target and its limits. */
export function Legend(): JSX.Element | null {
  const now = field.value;
  if (now === null) return null;
  const legend = legendIn(now, unitOfField(now, state.units.value));
  const [low, high] = now.domain;
  const marks = now.marks
    .map((mark) => ((mark - low) / (high - low)) * WIDTH)
    .filter((x) => x > 0 && x < WIDTH)
    .map((x) => `M${x.toFixed(1)},0 V${BAR}`)
    .join(' ');
  const unit = legend.unit === '' ? '' : `, ${legend.unit}`;
  return (
    <figure class="legend">
      <figcaption>{legend.title}{unit}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${BAR}`} class="legend-bar" preserveAspectRatio="none" role="img" aria-label={`${legend.title}${unit}, from ${legend.ticks[0]?.text ?? ''} to ${legend.ticks.at(-1)?.text ?? ''}`}>
        {bands(now).map(({ x, width, colour }) => <rect key={x} x={x} width={width} height={BAR} fill={colour} />)}
        <path class="legend-mark rim" d={marks} />
        <path class="legend-mark" d={marks} />
      </svg>
      <div class="legend-ticks" aria-hidden="true">
        {legend.ticks.map(({ place, text }) => <span key={text} style={{ left: `${place * 100}%` }}>{text}</span>)}
      </div>
    </figure>
  );
}

/** The colour table in bands of four: finer cannot be seen in a bar. */
function bands({ colours }: Field): { x: number; width: number; colour: string }[] {
  const step = 4;
  const count = colours.length / 4;
  const width = (WIDTH * step) / count;
  return Array.from({ length: count / step }, (_, i) => {
    const at = (i * step + step / 2) * 4;
    return { x: i * width, width: width + 0.5, colour: `rgb(${colours[at]} ${colours[at + 1]} ${colours[at + 2]})` };
  });
}
