import { CrosscoatError } from '../../sim/index.ts';
import { quantityOf } from './optionValues.ts';

/** Sides of a room, or of a face, behind each other. */
const BETWEEN = /\s*[x×*]\s*/i;
const LEAST_ROOM_M3 = 1;
const MOST_ROOM_M3 = 1e5;

/** A volume (`120m3`, `4200 ft³`) or three sides (`20x15x10ft`), m³. @throws `unit`, `range` outside 1 to 100 000 m³. */
export function roomOf(option: string, text: string): number {
  const sides = sidesOf(option, text, 3);
  const volume_m3 = sides === null ? quantityOf(option, text, ['volume', 'm³', '120m3 or 20x15x10ft']) : sides.reduce((product, side_m) => product * side_m, 1);
  if (volume_m3 >= LEAST_ROOM_M3 && volume_m3 <= MOST_ROOM_M3) return volume_m3;
  throw new CrosscoatError('range', `${option} = "${text}" is ${Number(volume_m3.toPrecision(4))} m³, not from 1 to 100000 m³; give the volume of the room, such as 120m3 or 20x15x10ft`);
}

/** An area (`5.2 m2`) or two sides (`8x7ft`), m². @throws `unit`, `range` outside 0.1 to 1000 m². */
export function areaOf(option: string, text: string): number {
  const sides = sidesOf(option, text, 2);
  const area_m2 = sides === null ? quantityOf(option, text, ['area', 'm²', '5.2m2 or 8x7ft']) : sides.reduce((product, side_m) => product * side_m, 1);
  if (area_m2 >= 0.1 && area_m2 <= 1000) return area_m2;
  throw new CrosscoatError('range', `${option} = "${text}" is ${Number(area_m2.toPrecision(4))} m², not from 0.1 to 1000 m²; give the open face of the booth, such as 8x7ft`);
}

/** Sides in m, each with the unit of the last where it has none of its own; null for a text of one part. */
function sidesOf(option: string, text: string, count: number): number[] | null {
  const parts = text.trim().split(BETWEEN);
  if (parts.length === 1) return null;
  if (parts.length !== count) throw new CrosscoatError('unit', `${option} = "${text}" has ${parts.length} sides, not ${count}; give them as ${count === 3 ? '20x15x10ft' : '8x7ft'}`);
  const unit = /[^\d.\s].*$/.exec(parts.at(-1) as string)?.[0] ?? '';
  if (unit === '') throw new CrosscoatError('unit', `${option} = "${text}" has no unit; write 6x4.5x3m or 20x15x10ft`);
  return parts.map((part) => quantityOf(option, part, ['length', unit, count === 3 ? '20x15x10ft' : '8x7ft']));
}
