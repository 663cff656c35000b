import {
  fieldLegend,
  filmCsvRows,
  filmPicture,
  HATCH_WORDS,
  makeField,
  shownUnit,
  strokeLines,
  strokesSvg,
  type CoatResult,
  type FieldKind,
  type Zone,
  type UnitSystem,
} from '../../sim/index.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { writePng } from './pngFile.ts';

/** A picture's longer side comes to about this many pixels. */
const LONG_SIDE = 1200;
const PAPER = [251, 249, 244, 255] as const;

/** What `--field` offers. */
export const FIELD_NAMES = ['film', 'target', 'passes', 'solids'] as const;
export type FieldName = (typeof FIELD_NAMES)[number];

/** Writes the film map as PNG. @returns its legend in words, since the picture holds no text. */
export async function writeMap(io: Io, path: string, result: CoatResult, name: FieldName, units: UnitSystem): Promise<string> {
  const { setting, laid } = result;
  const kind: FieldKind = name === 'film' ? setting.target.film : name;
  const field = makeField(kind, laid.film, setting.target);
  const { name: unitName, size } = shownUnit('film', units);
  const thickness = { name: unitName, metres: size };
  const zones = zonesOf(result);
  const longest = Math.max(field.grid.columns, field.grid.rows);
  const pixelsPerCell = Math.min(32, Math.max(1, Math.round(LONG_SIDE / longest)));
  const picture = filmPicture(field, setting.panelGrid, { pixelsPerCell, background: PAPER, zones, thickness });
  await writePng(io, path, picture);
  const legend = fieldLegend(field, thickness);
  const ticks = legend.ticks.map(({ text }) => text).join(', ');
  const hatching = [...new Set(zones.map((zone) => zone.kind))].map((zone) => `${zone} = ${HATCH_WORDS[zone]}`);
  return [
    `${path}: ${legend.title}; ticks of the colour bar from the bottom: ${ticks}${legend.unit === '' ? '' : ` ${legend.unit}`}${legend.isClipped ? ' (the last colour also for more)' : ''}`,
    ...(hatching.length === 0 ? [] : [`hatching: ${hatching.join(', ')}`]),
  ].join('; ');
}

/** Writes the film as CSV, one row a cell inside the panel. */
export async function writeFilm(io: Io, path: string, { laid, setting }: CoatResult): Promise<void> {
  await writeFile(io, path, withLineEnds(filmCsvRows(laid.film, setting.panelGrid)));
}

function* withLineEnds(rows: Iterable<string>): Generator<string> {
  for (const row of rows) yield `${row}\n`;
}

/** Writes the strokes and the zones as a drawing to scale. */
export async function writeDrawing(io: Io, path: string, result: CoatResult, units: UnitSystem): Promise<void> {
  const { setting, strokes } = result;
  const svg = strokesSvg({
    title: `${setting.panel.name}: ${setting.coat.name}`,
    panel: setting.panel,
    grid: setting.panelGrid.grid,
    lines: strokeLines(strokes.path, strokes.strokes),
    measures: strokes.measures,
    zones: zonesOf(result).map((zone, i) => ({ ...zone, label: `${i + 1} ${zone.kind}` })),
    unit: units === 'us' ? 'in' : 'mm',
  });
  await writeFile(io, path, [svg]);
}

function zonesOf({ verdict }: CoatResult): Zone[] {
  return verdict.faults.flatMap((fault) => fault.zones);
}
