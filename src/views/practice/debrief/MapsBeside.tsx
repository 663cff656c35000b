import type { JSX } from 'preact';
import { capitalised, FAULT_PLURALS, shown, shownPercent, shownTime, type FaultKind, type OtherFilm, type UnitSystem } from '../../../../sim/index.ts';
import type { DebriefReply } from '../../../worker/protocol.ts';
import { FilmMap } from './FilmMap.tsx';
import { wholeBox } from './mapBox.ts';
import { PanelInk } from './MapInk.tsx';
import { MapLegend } from '../../panel/MapLegend.tsx';

export interface MapsBesideProps {
  readonly debrief: DebriefReply;
  readonly units: UnitSystem;
}

/** The film as sprayed beside the film of the planned strokes, one legend, figures under each. */
export function MapsBeside({ debrief, units }: MapsBesideProps): JSX.Element {
  const { sprayed, planned, reported } = debrief;
  const { panel, panelGrid } = reported.coat.setting;
  return (
    <section class="debrief-part debrief-maps" aria-label="As sprayed and as planned">
      <h2>As sprayed and as planned</h2>
      <div class="debrief-beside">
        {([['As sprayed', sprayed], ['As planned', planned]] as const).map(([title, field]) => (
          <figure key={title}>
            <figcaption>{title}</figcaption>
            <FilmMap field={field} cover={panelGrid.cover} box={wholeBox(panel)} label={`${title}: ${field.title}`} most_px={480} over={(place) => <PanelInk panel={panel} place={place} />} />
          </figure>
        ))}
      </div>
      <MapLegend field={sprayed} units={units} />
      <Figures sprayed={reported.sprayed} planned={reported.planned} units={units} />
    </section>
  );
}

function Figures({ sprayed, planned, units }: { readonly sprayed: OtherFilm; readonly planned: OtherFilm; readonly units: UnitSystem }): JSX.Element {
  return (
    <table class="debrief-figures">
      <thead>
        <tr><td /><th scope="col">as sprayed</th><th scope="col">as planned</th></tr>
      </thead>
      <tbody>
        {figureRows(sprayed, planned, units).map(([name, ...values]) => (
          <tr key={name}><th scope="row">{name}</th>{values.map((value, i) => <td key={i}>{value}</td>)}</tr>
        ))}
      </tbody>
    </table>
  );
}

/** Name, as sprayed, as planned. Faults that neither has are left out. */
function figureRows(sprayed: OtherFilm, planned: OtherFilm, units: UnitSystem): (readonly [string, string, string])[] {
  const row = (name: string, text: (film: OtherFilm) => string): readonly [string, string, string] => [name, text(sprayed), text(planned)];
  const kinds = Object.keys({ ...sprayed.areas_m2, ...planned.areas_m2 }) as FaultKind[];
  return [
    row('Mean film', ({ figures }) => shown(figures.mean_m, 'film', units)),
    row('In target', ({ inTargetFraction }) => shownPercent(inTargetFraction)),
    row('Evenness', ({ figures }) => shownPercent(figures.cv)),
    row('Paint', ({ account }) => shown(account.sprayed_m3, 'volume', units)),
    row('Time', ({ duration_s }) => shownTime(duration_s)),
    ...kinds.map((kind) => row(capitalised(FAULT_PLURALS[kind]), ({ areas_m2 }) => (areas_m2[kind] === undefined ? 'none' : shown(areas_m2[kind], 'area', units)))),
  ];
}
