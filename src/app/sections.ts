import { computed } from '@preact/signals';
import { state, type SectionLine } from './state.ts';

/** Where the line runs up a panel on which the reader has put none, as a share of its width. */
const USUAL_PLACE = 0.45;

/** A line belongs to a panel of one size: on another size it would lie at a meaningless place, or beside it. */
const sectionKey = computed(() => {
  const shown = state.film.value?.setting.panel;
  if (shown === undefined) return null;
  const mm = (value_m: number): string => (value_m * 1000).toFixed(1);
  return `${shown.id} ${mm(shown.width_m)} x ${mm(shown.height_m)}`;
});

/** The section line of the panel in view: the reader's, or up the panel near its middle. */
export const section = computed<SectionLine>(() => {
  const shown = state.film.value?.setting.panel;
  const kept = sectionKey.value === null ? undefined : state.sections.value[sectionKey.value];
  return kept ?? sectionUp(shown?.width_m ?? 1, shown?.height_m ?? 1);
});

export function sectionUp(width_m: number, height_m: number): SectionLine {
  return [width_m * USUAL_PLACE, 0, width_m * USUAL_PLACE, height_m];
}

/** Puts the line of the panel in view. */
export function putSection(line: SectionLine): void {
  const key = sectionKey.peek();
  if (key !== null) state.sections.value = { ...state.sections.peek(), [key]: line };
}
