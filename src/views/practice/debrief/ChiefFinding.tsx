import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { chiefSentence, markSentence, shown, shownPlace, strokeWords, type UnitSystem } from '../../../../sim/index.ts';
import type { DebriefReply } from '../../../worker/protocol.ts';
import { FilmMap } from './FilmMap.tsx';
import { chiefPlace } from './mapBox.ts';
import { PanelInk, StrokesInk, ZonesInk } from './MapInk.tsx';
import { MapLegend } from '../../panel/MapLegend.tsx';

export interface ChiefFindingProps {
  readonly debrief: DebriefReply;
  readonly units: UnitSystem;
  /** Stroke chosen in the table, 0-based. */
  readonly chosen: number | null;
}

/** The one sentence that matters most, beside its place on the panel and its stroke. */
export function ChiefFinding({ debrief, units, chosen }: ChiefFindingProps): JSX.Element {
  const { reported, lines, sprayed } = debrief;
  const { panel, panelGrid } = reported.coat.setting;
  const { box, at_m, strokes, rims } = useMemo(() => chiefPlace(reported, lines), [reported, lines]);
  const heavy = chosen === null || strokes.includes(chosen) ? strokes : [...strokes, chosen];
  const place = at_m === null ? 'The panel' : `About ${shownPlace(at_m, units)}`;
  const named = heavy.length === 0 ? '' : `, ${strokeWords(heavy)} drawn heavy`;
  const caption = `${place}${named}. The picture is ${shown(box[2] - box[0], 'length', units)} wide.`;
  return (
    <section class="debrief-chief" aria-label="What matters most">
      <div>
        <p class="debrief-sentence" data-testid="chief-sentence">{chiefSentence(reported, units)}</p>
        <p data-testid="mark-sentence">{markSentence(reported, units)}</p>
      </div>
      <figure>
        <FilmMap
          field={sprayed}
          cover={panelGrid.cover}
          box={box}
          label={`${sprayed.title}. ${caption}`}
          most_px={420}
          over={(placing) => (
            <>
              <PanelInk panel={panel} place={placing} />
              <StrokesInk lines={lines} heavy={heavy} box={box} place={placing} />
              <ZonesInk rims={rims} place={placing} />
            </>
          )}
        />
        <figcaption>{caption}</figcaption>
        <MapLegend field={sprayed} units={units} />
      </figure>
    </section>
  );
}
