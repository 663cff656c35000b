import type { JSX } from 'preact';
import { filmStack, FIELD_LIGHT_RULE, hidingSentences, LAYER_WORDS, ledgerRows, lightSentence, shownUnit } from '../../../../sim/index.ts';
import { coatLetters, schemeReport } from '../../../app/scheme/stepsSheet.ts';
import { state } from '../../../app/state.ts';
import { HatchPatch, LayerColumn } from '../../../charts/LayerColumn.tsx';
import type { ColumnFilm } from '../../../charts/layerColumn.ts';

/** A cut through the films at the end, with the ledger by kind of film. */
export function FilmDrawing(): JSX.Element | null {
  const report = schemeReport.value;
  const units = state.units.value;
  if (report === null) return null;
  const { steps } = report.plan;
  const films: ColumnFilm[] = filmStack(report.plan).map(({ stepIndex, layer, film_m, share }) => {
    const spec = steps[stepIndex]?.spec;
    return { letter: coatLetters.value.get(spec?.id ?? '') ?? '?', name: spec?.name ?? '', layer, film_m, share };
  });
  const layers = [...new Set(films.map(({ layer }) => layer))] as (keyof typeof LAYER_WORDS)[];
  const { name, size } = shownUnit('film', units);
  const [head, ...rows] = ledgerRows(report, units);
  const light = lightSentence(report, units);
  return (
    <section aria-labelledby="steps-drawing" class="scheme-steps-drawing">
      <h2 id="steps-drawing">Cut through the films</h2>
      <div class="scheme-steps-cut">
        <LayerColumn films={films} unit_m={size} unitName={name} label={`Films at the end, from the foot: ${films.map(({ letter, layer }) => `${letter} ${layer}`).join(', ')}. The figures are in the list of steps.`} />
        <ul class="plain-list scheme-steps-key" aria-label="Hatching">
          {layers.map((layer) => <li key={layer}><HatchPatch layer={layer} /> {LAYER_WORDS[layer]}</li>)}
          <li><HatchPatch layer="ground" /> the part beneath</li>
          <li class="soft">Thickness to scale, after sanding. A coat over part of the area is drawn as narrow as its share.</li>
        </ul>
      </div>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Film, liquid and weight by kind of film">
        <table>
          <thead><tr>{head?.map((text) => <th key={text} scope="col">{text}</th>)}</tr></thead>
          <tbody>{rows.map(([first, ...cells]) => <tr key={first}><th scope="row">{first}</th>{cells.map((text, k) => <td key={k}>{text}</td>)}</tr>)}</tbody>
        </table>
      </div>
      {hidingSentences(report, units).map((text) => <p key={text}>{text}</p>)}
      {light === null ? null : <p>{light} {FIELD_LIGHT_RULE}</p>}
    </section>
  );
}
