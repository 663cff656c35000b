import {
  filmCsvRows,
  filmPicture,
  makeField,
  reportJson,
  shownUnit,
  strokeLines,
  strokesSvg,
  writeRecording,
  type CoatResult,
  type FieldKind,
  type UnitSystem,
} from '../../sim/index.ts';
import { zoneLabel } from '../app/zones.ts';
import type { ExportKind } from './protocol.ts';

const WHITE: readonly [number, number, number, number] = [255, 255, 255, 255];
/** The map's long side is at least this many pixels, where whole pixels a cell allow. */
const WANTED_PIXELS = 1600;

/** One file of a judged coat. */
export async function exportBlob(kind: ExportKind, coat: CoatResult, field: FieldKind, units: UnitSystem): Promise<Blob> {
  switch (kind) {
    case 'map-png':
      return mapPng(coat, field, units);
    case 'strokes-svg':
      return new Blob([strokesDrawing(coat, units)], { type: 'image/svg+xml' });
    case 'film-csv':
      return new Blob(inPieces(filmCsvRows(coat.laid.film, coat.setting.panelGrid)), { type: 'text/csv' });
    case 'strokes-csv':
      return new Blob([...writeRecording(coat.strokes.path)], { type: 'text/csv' });
    case 'results-json':
      return new Blob([JSON.stringify(reportJson([coat], coat.setting.job), null, 2), '\n'], { type: 'application/json' });
  }
}

async function mapPng({ laid, setting, verdict }: CoatResult, kind: FieldKind, units: UnitSystem): Promise<Blob> {
  const { columns, rows } = laid.film.grid;
  const { name, size } = shownUnit('film', units);
  const picture = filmPicture(makeField(kind, laid.film, setting.target), setting.panelGrid, {
    pixelsPerCell: Math.max(1, Math.min(8, Math.round(WANTED_PIXELS / Math.max(columns, rows)))),
    background: WHITE,
    zones: verdict.faults.flatMap(({ kind: fault, zones }) => zones.map(({ cells }) => ({ kind: fault, cells }))),
    thickness: { name, metres: size },
  });
  const canvas = new OffscreenCanvas(picture.width, picture.height);
  const pixels = new ImageData(new Uint8ClampedArray(picture.rgba), picture.width, picture.height);
  canvas.getContext('2d')?.putImageData(pixels, 0, 0);
  return canvas.convertToBlob({ type: 'image/png' });
}

function strokesDrawing({ setting, strokes, laid, verdict }: CoatResult, units: UnitSystem): string {
  return strokesSvg({
    title: `${setting.panel.name}: ${setting.coat.name}`,
    panel: setting.panel,
    grid: laid.film.grid,
    lines: strokeLines(strokes.path, strokes.strokes),
    measures: strokes.measures,
    zones: verdict.faults.flatMap(({ kind, zones }, fault) =>
      zones.map(({ cells, at_m }) => ({ kind, cells, at_m, label: zoneLabel(fault) })),
    ),
    unit: units === 'us' ? 'in' : 'mm',
  });
}

/** Lines joined some thousand at a time: one part a line would be slow, one string in all too long. */
function inPieces(lines: Iterable<string>): string[] {
  const LINES_PER_PIECE = 4096;
  const pieces: string[] = [];
  let piece = '';
  let count = 0;
  for (const line of lines) {
    piece += `${line}\n`;
    if (++count % LINES_PER_PIECE !== 0) continue;
    pieces.push(piece);
    piece = '';
  }
  return [...pieces, piece];
}
