import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { colourTable, shown } from '../../../sim/index.ts';
import { shownValue } from '../../app/practice/practice.ts';
import { NOW_SPAN } from '../../app/practice/roomScene.ts';
import { room } from '../../app/practice/underway.ts';
import { state } from '../../app/state.ts';

/** What the colours and signs on the panel mean. */
export function LiveLegend(): JSX.Element | null {
  const canvas = useRef<HTMLCanvasElement>(null);
  const value = shownValue.value;
  const setting = room.value?.setting;
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (context === null || context === undefined) return;
    context.putImageData(new ImageData(Uint8ClampedArray.from(colourTable(value === 'target' ? 'target' : 'film')), 256, 1), 0, 0);
  }, [value, setting]);
  if (setting === undefined) return null;
  const target_m = setting.target.thickness_m;
  const ticks = value === 'target' ? ['bare', 'target', 'twice the target'] : ['0', shown((NOW_SPAN / 2) * target_m, 'film', state.units.value), shown(NOW_SPAN * target_m, 'film', state.units.value)];
  return (
    <div class="live-legend">
      <canvas ref={canvas} width={256} height={1} role="img" aria-label="Colours of the film, thin to thick" />
      <p class="live-ticks">{ticks.map((tick) => <span key={tick}>{tick}</span>)}</p>
      <p class="soft">{value === 'target' ? 'Film as landed against the target' : 'Film that lies there now'}. Sheen: wet. Upright bars: it runs. Pale specks: it arrived as dust.</p>
    </div>
  );
}
