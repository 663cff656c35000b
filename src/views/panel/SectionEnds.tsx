import type { JSX } from 'preact';
import { putSection, sectionUp } from '../../app/sections.ts';
import { state } from '../../app/state.ts';

/** Lines that most people want, as buttons: no drag is needed. */
export function SectionEnds(): JSX.Element | null {
  const shown = state.film.value?.setting.panel;
  if (shown === undefined) return null;
  const { width_m, height_m } = shown;
  return (
    <div class="actions section-ends">
      <button type="button" onClick={() => putSection([0, height_m / 2, width_m, height_m / 2])}>Across</button>
      <button type="button" onClick={() => putSection(sectionUp(width_m, height_m))}>Up</button>
      <span class="soft">or drag the line's ends on the panel</span>
    </div>
  );
}
