import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { COLOUR_COUNT, legendIn, type Field } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';
import { unitOfField } from '../panel/fieldWords.ts';

/** The colour bar that all panels share, with its ticks. */
export function LessonLegend({ field }: { readonly field: Field }): JSX.Element {
  const bar = useRef<HTMLCanvasElement>(null);
  const legend = legendIn(field, unitOfField(field, state.units.value));
  const unit = legend.unit === '' ? '' : `, ${legend.unit}`;
  useEffect(() => {
    bar.current?.getContext('2d')?.putImageData(new ImageData(new Uint8ClampedArray(field.colours), COLOUR_COUNT, 1), 0, 0);
  }, [field.colours]);
  return (
    <figure class="lessons-legend">
      <figcaption>{legend.title}{unit}{legend.isClipped ? ' (the last colour also means more)' : ''}</figcaption>
      <canvas ref={bar} width={COLOUR_COUNT} height={1} role="img" aria-label={`${legend.title}${unit}, from ${legend.ticks[0]?.text ?? ''} to ${legend.ticks.at(-1)?.text ?? ''}`} />
      <div class="lessons-ticks" aria-hidden="true">
        {legend.ticks.map(({ place, text }) => <span key={text} style={{ left: `${place * 100}%` }}>{text}</span>)}
      </div>
    </figure>
  );
}
