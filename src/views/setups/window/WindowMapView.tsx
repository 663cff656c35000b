import type { JSX, TargetedPointerEvent } from 'preact';
import { useMemo } from 'preact/hooks';
import { axisShown, FAULT_WORDS, faultsOn, windowSvg, WINDOW_SIDE, type WindowPlace } from '../../../../sim/index.ts';
import { windowSheet } from '../../../app/setups/windowSheet.ts';
import { state } from '../../../app/state.ts';
import type { WindowReply } from '../../../worker/setUpMessages.ts';

/** The map with its rulers; a press on it probes the place. The sliders beside it do the same from the keyboard. */
export function WindowMapView({ reply, isRough }: { readonly reply: WindowReply; readonly isRough: boolean }): JSX.Element {
  const { map, description } = reply;
  const units = state.units.value;
  const place = windowSheet.place.value ?? description.stated;
  const drawn = useMemo(
    () => windowSvg({ map, x: axisShown(map.x.axis, units), y: axisShown(map.y.axis, units), best: description.window?.best ?? null, stated: description.stated, id: 'window' }),
    [reply, units],
  );
  return (
    <figure class="window-map" aria-busy={isRough}>
      <div class="window-picture" onPointerDown={(event) => probe(event, reply)}>
        <div aria-hidden="true" dangerouslySetInnerHTML={{ __html: drawn }} />
        <span class="window-probe" style={probeStyle(reply, place)} aria-hidden="true" />
      </div>
      <figcaption>
        Plain: nothing at fault. Cross: the coat as stated. Ring: most room all round.
        <ul class="window-key">
          {faultsOn(map).map((fault) => (
            <li key={fault}><svg class="window-swatch" viewBox="0 0 10 10" aria-hidden="true"><rect width="10" height="10" fill={`url(#window-${fault})`} /></svg>{FAULT_WORDS[fault]}</li>
          ))}
        </ul>
      </figcaption>
    </figure>
  );
}

function probeStyle({ map }: WindowReply, { x, y }: WindowPlace): Readonly<Record<string, string>> {
  const { left, top, side, width, height } = WINDOW_SIDE;
  const share = (value: number, low: number, high: number): number => (value - low) / (high - low);
  return {
    left: `${(100 * (left + side * share(x, map.x.low, map.x.high))) / width}%`,
    top: `${(100 * (top + side * (1 - share(y, map.y.low, map.y.high)))) / height}%`,
  };
}

function probe(event: TargetedPointerEvent<HTMLDivElement>, { map }: WindowReply): void {
  const box = event.currentTarget.getBoundingClientRect();
  const { left, top, side, width, height } = WINDOW_SIDE;
  const across = (((event.clientX - box.left) / box.width) * width - left) / side;
  const up = 1 - (((event.clientY - box.top) / box.height) * height - top) / side;
  if (!(across >= 0 && across <= 1 && up >= 0 && up <= 1)) return;
  windowSheet.place.value = { x: map.x.low + across * (map.x.high - map.x.low), y: map.y.low + up * (map.y.high - map.y.low) };
}
