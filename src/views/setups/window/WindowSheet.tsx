import './window.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { AXIS_WORDS, capitalised, overlapSentences, sensitivityWords, windowSentences, WINDOW_NOTE, type WindowAxis } from '../../../../sim/index.ts';
import { lookAt } from '../../../app/setups/setUps.ts';
import { AXES } from '../../../app/setups/setUpsPrefs.ts';
import { followWindow, windowSheet } from '../../../app/setups/windowSheet.ts';
import { state } from '../../../app/state.ts';
import { OverlapCurve } from '../../../charts/OverlapCurve.tsx';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { Notice } from '../../frame/Notices.tsx';
import { PlaceProbe } from './PlaceProbe.tsx';
import { WindowMapView } from './WindowMapView.tsx';

/** Where a set-up leaves room on two of its settings, how much, and what each step changes. */
export function WindowSheet(): JSX.Element {
  useEffect(followWindow, []);
  const { reply, around, problem, working } = windowSheet;
  const shown = reply.value;
  const units = state.units.value;
  return (
    <div class="setups-window">
      <div class="setups-fields">
        <AxisField id="window-x" label="To the right" side="x" />
        <AxisField id="window-y" label="Upward" side="y" />
      </div>
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      {shown === null ? <p class="soft" role="status">{working.value ? 'Mapping…' : ''}</p> : (
        <div class="setups-pictures">
          <WindowMapView reply={shown} isRough={working.value} />
          <section aria-label="The window in figures">
            <h2>{shown.setUpName}</h2>
            <ul class="setups-sentences">
              {windowSentences({ ...shown, plane: shown.map, interpolated: shown.map.interpolated }, units).map((text) => <li key={text}>{text}</li>)}
            </ul>
            <PlaceProbe map={shown.map} stated={shown.description.stated} best={shown.description.window?.best ?? null} />
            <p class="soft">{WINDOW_NOTE}</p>
          </section>
        </div>
      )}
      {around.value === null ? null : (
        <div class="setups-pictures">
          <section aria-labelledby="around-head">
            <h2 id="around-head">One step from there</h2>
            <ul class="setups-sentences">{sensitivityWords(around.value.sensitivities, units).map((text) => <li key={text}>{text}</li>)}</ul>
          </section>
          <section aria-labelledby="overlap-head">
            <h2 id="overlap-head">Overlap of this fan</h2>
            <Overlaps />
          </section>
        </div>
      )}
    </div>
  );
}

function AxisField({ id, label, side }: { readonly id: string; readonly label: string; readonly side: 'x' | 'y' }): JSX.Element {
  const { window } = state.setUps.value;
  const other = side === 'x' ? window.y : window.x;
  const choose = (axis: WindowAxis): void => lookAt({ window: { ...window, [side]: axis } });
  return <ChoiceField id={id} label={label} value={window[side]} options={AXES.filter((axis) => axis !== other).map((axis) => [axis, capitalised(AXIS_WORDS[axis].title)] as const)} choose={choose} />;
}

function Overlaps(): JSX.Element | null {
  const around = windowSheet.around.value;
  if (around === null) return null;
  const { overlaps, width_m } = around;
  const { curve, limit, band, half, twoThirds, evenest } = overlaps;
  const sentences = overlapSentences(overlaps, width_m, state.units.value);
  const marks = [{ words: 'a half', at: half }, { words: 'two thirds', at: twoThirds }, { words: 'evenest', at: evenest }];
  return (
    <>
      <OverlapCurve curve={curve} limit={'cv' in limit ? limit.cv : null} band={band} marks={marks} label={`Variation of the film against overlap. ${sentences[0] ?? ''}`} />
      <ul class="setups-sentences">{sentences.map((text) => <li key={text}>{text}</li>)}</ul>
    </>
  );
}
