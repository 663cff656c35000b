import type { JSX } from 'preact';
import type { SurveySpec } from '../../../../sim/index.ts';
import { couponWorking } from '../../../app/survey/couponWorking.ts';
import { askedFigures, figurePointer, setEntry, takeReading, typeFigure } from '../../../app/survey/readingEntry.ts';
import { KIND_WORDS, type FigureField, type ReadingKind } from '../../../app/survey/readingFigures.ts';
import { AREA_SPOTS, nextArea, nextSpot, SPOT_READINGS } from '../../../app/survey/spotNames.ts';
import { isOpenCloth } from '../../../app/survey/surveyPanel.ts';
import { READING_KINDS } from '../../../app/survey/surveyPrefs.ts';
import { state } from '../../../app/state.ts';
import { unitOfKey } from '../../../app/units.ts';
import { ButtonRow } from '../../fields/ButtonRow.tsx';
import { NumberBox } from '../../fields/NumberBox.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';

const KIND_HELP: Readonly<Record<ReadingKind, string>> = {
  metal: 'A magnetic or eddy-current gauge on a metal witness, or on a metal part: dry film.',
  coupon: 'A piece of the same cloth, weighed before the coat and when it is dry: the gain over its area and the density of the dry film is the dry film.',
  micrometer: 'The same place before the coat and after, dry: the difference is the dry film.',
  comb: 'The wet film lies between the last wetted tooth and the next, dry one: two figures, never one. Read at once on a rigid place; solids turn it into dry film.',
};

/** Id of the box in which a figure of the next reading is typed. */
function figureId(kind: ReadingKind, key: string): string {
  return `survey-figure-${kind}-${key}`;
}

/** Puts the caret where the next figure is typed. */
export function focusFigure(): void {
  const { entry } = state.survey.peek();
  const wanted = askedFigures(entry).find(({ key }) => (state.drafts.peek()[figurePointer(entry.kind, key)]?.text ?? '') === '');
  document.getElementById(figureId(entry.kind, (wanted ?? askedFigures(entry)[0])?.key ?? ''))?.focus();
}

/** The next reading: its kind, its place in words, and its figures; Enter adds it and makes ready for the one after. */
export function EntryForm({ survey }: { readonly survey: SurveySpec }): JSX.Element {
  const { entry } = state.survey.value;
  const add = (): void => {
    const taken = takeReading();
    if ('wanting' in taken) document.getElementById(figureId(state.survey.peek().entry.kind, taken.wanting))?.focus();
    else focusFigure();
  };
  return (
    <div class="survey-readings-entry">
      <ButtonRow label="Kind of reading" value={entry.kind} options={READING_KINDS.map((kind) => [kind, KIND_WORDS[kind]] as const)} choose={(kind) => setEntry({ kind })} />
      <p>{KIND_HELP[entry.kind]}</p>
      {isOpenCloth.value && entry.kind === 'metal' ? <ClothNotice /> : null}
      <div class="survey-readings-xy">
        <PlaceField axis="x_mm" label="Place, x from the left" />
        <PlaceField axis="y_mm" label="Place, y from below" />
      </div>
      <AreaField survey={survey} />
      <form class="survey-readings-figures" onSubmit={(event) => { event.preventDefault(); add(); }}>
        {askedFigures(entry).map((field) => <Figure key={`${entry.kind}-${field.key}`} kind={entry.kind} field={field} />)}
        {entry.kind === 'comb' ? <TickField label="Every tooth was wetted: the film is thicker than the comb shows" on={entry.allWetted} turn={(allWetted) => setEntry({ allWetted })} /> : null}
        {entry.kind === 'coupon' ? <CouponSaid survey={survey} /> : null}
        <button type="submit" class="act">{`Add reading ${survey.readings.length + 1}`}</button>
        <p class="soft">Enter adds it. A unit may be typed behind any figure, such as 2.1 mil.</p>
      </form>
    </div>
  );
}

/** What no gauge can do on cloth, before it is tried. */
function ClothNotice(): JSX.Element {
  return (
    <div class="survey-readings-cloth" role="note">
      <p><strong>This panel is open cloth: magnetic and eddy-current gauges read nothing useful on it.</strong> They need metal under the film. Read a metal witness that was sprayed alongside, or weigh a coupon of the same cloth.</p>
      <div class="actions"><button type="button" onClick={() => setEntry({ kind: 'coupon' })}>Weigh a coupon</button></div>
    </div>
  );
}

function Figure({ kind, field: { key, label } }: { readonly kind: ReadingKind; readonly field: FigureField }): JSX.Element {
  const draft = state.drafts.value[figurePointer(kind, key)];
  return (
    <NumberBox
      id={figureId(kind, key)}
      label={label}
      text={draft?.text ?? ''}
      unit={unitOfKey(key, state.units.value)}
      problem={draft?.problem ?? null}
      hint={undefined}
      type={(text) => typeFigure(kind, key, text)}
      leave={() => undefined}
    />
  );
}

function PlaceField({ axis, label }: { readonly axis: 'x_mm' | 'y_mm'; readonly label: string }): JSX.Element {
  return <ViewNumberField id={`survey-${axis.charAt(0)}`} label={label} unitKey={axis} value={state.survey.value.entry[axis]} low={-1e5} high={1e5} set={(value) => setEntry({ [axis]: value })} clear={() => setEntry({ [axis]: null })} />;
}

/** Name of the area; where the rule goes by spots, which spot the next reading belongs to. */
function AreaField({ survey }: { readonly survey: SurveySpec }): JSX.Element {
  const { entry } = state.survey.value;
  const { spot, taken, whole } = nextSpot(survey.readings, entry.area);
  const goesBySpots = survey.rule.kind === 'spots-areas';
  return (
    <div class="survey-readings-area">
      <div class="field">
        <label for="survey-area">Area, if any</label>
        <input id="survey-area" type="text" maxLength={40} autocomplete="off" value={entry.area} onInput={(event) => setEntry({ area: event.currentTarget.value })} />
      </div>
      {goesBySpots ? (
        <>
          <p data-testid="survey-spot">{`Next: spot ${spot}, reading ${taken + 1} of ${SPOT_READINGS}. ${whole} of ${AREA_SPOTS} spots of this area are whole${whole >= AREA_SPOTS ? ': go on to the next area' : ''}.`}</p>
          <button type="button" onClick={() => setEntry({ area: nextArea(entry.area) })}>Next area</button>
        </>
      ) : null}
    </div>
  );
}

/** What the weights come to, at once and with the working. */
function CouponSaid({ survey }: { readonly survey: SurveySpec }): JSX.Element {
  const told = couponWorking(survey);
  if (told === null) return <p class="soft" role="status">Type both weights and the area, and the film and the weight per area stand here.</p>;
  return (
    <div role="status" class="survey-readings-coupon">
      <p><strong>{told.answer}</strong></p>
      <p>{told.working}</p>
    </div>
  );
}
