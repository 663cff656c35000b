import './mapLegend.css';
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { COLOUR_COUNT, legendIn, type Field, type UnitSystem } from '../../../sim/index.ts';
import { unitOfField } from './fieldWords.ts';

/** The colour bar that several maps share, with its ticks. */
export function MapLegend({ field, units }: { readonly field: Field; readonly units: UnitSystem }): JSX.Element {
  const bar = useRef<HTMLCanvasElement>(null);
  const { title, unit, ticks, isClipped } = legendIn(field, unitOfField(field, units));
  const named = unit === '' ? title : `${title}, ${unit}`;
  useEffect(() => {
    bar.current?.getContext('2d')?.putImageData(new ImageData(new Uint8ClampedArray(field.colours), COLOUR_COUNT, 1), 0, 0);
  }, [field.colours]);
  return (
    <figure class="map-legend">
      <figcaption>{named}{isClipped ? ' (the last colour also means more)' : ''}</figcaption>
      <canvas ref={bar} width={COLOUR_COUNT} height={1} role="img" aria-label={`${named}, from ${ticks[0]?.text ?? ''} to ${ticks.at(-1)?.text ?? ''}`} />
      <div class="map-legend-ticks" aria-hidden="true">
        {ticks.map(({ place, text }) => <span key={text} style={{ left: `${place * 100}%` }}>{text}</span>)}
      </div>
    </figure>
  );
}
