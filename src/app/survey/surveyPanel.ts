import { computed } from '@preact/signals';
import { makePanel, nearestEdge, type Panel } from '../../../sim/index.ts';
import { state } from '../state.ts';
import { shownSurvey } from './survey.ts';

/** The panel that the survey shown is of; null without a survey, or for a panel that cannot be made (the stage Part says why). */
export const surveyPanel = computed<Panel | null>(() => {
  const id = shownSurvey.value?.panel;
  const { panels } = state.job.value.part;
  const index = panels.findIndex((panel) => panel.id === id);
  const spec = panels[index];
  if (spec === undefined) return null;
  try {
    return makePanel(spec, `/part/panels/${index}`).panel;
  } catch {
    return null;
  }
});

/** Whether the survey's panel is cloth with open air behind, on which no gauge for metal reads. */
export const isOpenCloth = computed(() => state.job.value.part.panels.find(({ id }) => id === shownSurvey.value?.panel)?.backing === 'open-cloth');

/** A place this far off the edge is at the edge: places are taken by hand, m. */
const EDGE_M = 2e-3;

/** Whether a place lies on the panel: inside its outline and in none of its holes. */
export function isOnPanel(panel: Panel, [x_m, y_m]: readonly [number, number]): boolean {
  return nearestEdge(panel, x_m, y_m).distance_m > -EDGE_M;
}
