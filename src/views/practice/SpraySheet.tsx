import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { mountRoom, room, startedIn_ms } from '../../app/practice/underway.ts';
import { DrillCard } from './DrillCard.tsx';
import { GaugeStrip } from './GaugeStrip.tsx';
import { HandForm } from './HandForm.tsx';
import { LiveLegend } from './LiveLegend.tsx';
import { SprayControls } from './SprayControls.tsx';
import { TriggerPad } from './TriggerPad.tsx';

/** The panel under the hand. It stays while another sheet is shown, so that a session goes on. */
export function SpraySheet({ isShown }: { readonly isShown: boolean }): JSX.Element {
  const host = useRef<HTMLDivElement>(null);
  const panel = room.value?.setting.panel;
  useEffect(() => (host.current === null ? undefined : mountRoom(host.current)), []);
  return (
    <section class="spray-sheet" hidden={!isShown} aria-label="Spray">
      <div class="spray-told">
        <DrillCard />
        <HandForm />
      </div>
      <div class="spray-work">
        <GaugeStrip />
        <div
          ref={host}
          class="spray-host"
          style={panel === undefined ? {} : { '--panel-aspect': panel.width_m / panel.height_m }}
          data-started-ms={startedIn_ms.value.toFixed(0)}
          data-ready={room.value !== null}
        />
        <SprayControls />
        <TriggerPad />
        <LiveLegend />
      </div>
    </section>
  );
}
