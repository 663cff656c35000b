import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { shownFilm } from '../../app/scene.ts';
import { section } from '../../app/sections.ts';
import { state } from '../../app/state.ts';
import { traceFilm } from '../../charts/sectionTrace.ts';
import { SectionTrace } from '../../charts/SectionTrace.tsx';
import { SectionEnds } from './SectionEnds.tsx';

const trace = computed(() => {
  const film = shownFilm.value;
  const reply = state.film.value;
  return film === null || reply === null ? null : traceFilm(film, reply.setting.panelGrid.cover, section.value);
});

/** Most film as laid along the line: the scale holds it while the film dries. Off the panel there is none. */
const held_m = computed(() => {
  const reply = state.film.value;
  if (reply === null || !state.inTime.value) return 0;
  return traceFilm(reply.laid.film, reply.setting.panelGrid.cover, section.value).wet_m.reduce((most, wet) => (wet > most ? wet : most), 0);
});

/** The section of the film on screen, and buttons for the lines that most people want. */
export function SectionView(): JSX.Element | null {
  const now = trace.value;
  const reply = state.film.value;
  if (now === null || reply === null) return null;
  return (
    <SectionTrace trace={now} target={reply.setting.target} system={state.units.value} held_m={held_m.value}>
      <SectionEnds />
    </SectionTrace>
  );
}
