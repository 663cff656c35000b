import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { shownPlace, type Panel } from '../../../../sim/index.ts';
import { setEntry } from '../../../app/survey/readingEntry.ts';
import { crossAfter, fitPanel, placeOfPicture, wholeMillimetres } from '../../../app/survey/panelFit.ts';
import type { ReadingMark } from '../../../app/survey/readingMarks.ts';
import { isOnPanel } from '../../../app/survey/surveyPanel.ts';
import { dropDraft } from '../../../app/fieldText.ts';
import { state } from '../../../app/state.ts';
import { useWidth } from '../../../charts/useWidth.ts';
import { PanelDrawing } from '../PanelDrawing.tsx';

/** Largest height of the drawing, px: it is looked at beside the fields. */
const HEIGHT_PX = 560;

/** The panel to scale, on which a tap or the keyboard's cross takes the place of the next reading. @param taken called once a place is taken. */
export function PlacePicker({ panel, marks, taken }: { readonly panel: Panel; readonly marks: readonly ReadingMark[]; readonly taken: () => void }): JSX.Element {
  const { box, width_px } = useWidth(520, 620);
  const [moved, setMoved] = useState<readonly [number, number] | null>(null);
  const { entry } = state.survey.value;
  const system = state.units.value;
  const fit = fitPanel(panel, width_px, HEIGHT_PX);
  const place = entry.x_mm === null || entry.y_mm === null ? null : ([entry.x_mm / 1000, entry.y_mm / 1000] as const);
  const cross = moved ?? place;
  const take = (at: readonly [number, number]): void => {
    setMoved(null);
    dropDraft('/view/survey-x');
    dropDraft('/view/survey-y');
    setEntry({ x_mm: Math.round(at[0] * 1000), y_mm: Math.round(at[1] * 1000) });
    taken();
  };
  return (
    <div class="survey-readings-place" ref={box}>
      <div
        class="survey-readings-panel"
        role="application"
        tabIndex={0}
        aria-label={`${panel.name}, to scale: place of the next reading`}
        aria-describedby="survey-place-help survey-place-said"
        style={{ width: `${fit.width_px}px` }}
        onClick={(event) => {
          const rim = event.currentTarget.getBoundingClientRect();
          const [x_m, y_m] = placeOfPicture(fit, [event.clientX - rim.left, event.clientY - rim.top]);
          take([wholeMillimetres(x_m, panel.width_m), wholeMillimetres(y_m, panel.height_m)]);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && cross !== null) take(cross);
          const next = crossAfter(event.key, event.shiftKey, cross ?? [panel.width_m / 2, panel.height_m / 2], panel);
          if (next !== null) setMoved(next);
          if (next !== null || event.key === 'Enter') event.preventDefault();
        }}
        onBlur={() => setMoved(null)}
      >
        <PanelDrawing panel={panel} fit={fit} system={system} marks={marks} cross={cross} />
      </div>
      <p id="survey-place-said" role="status" data-testid="survey-place">
        {cross === null ? 'No place: the next reading has none.' : `${moved === null ? 'Place' : 'Cross'}: ${shownPlace(cross, system)}${isOnPanel(panel, cross) ? '' : ', beside the panel or in a hole'}.`}
      </p>
      <p class="soft" id="survey-place-help">Tap the place. By keyboard: arrow keys move the cross by 10 mm, with Shift by 50 mm, and Enter takes the place.</p>
    </div>
  );
}
