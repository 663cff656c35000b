import type { PotFill } from '../../mix/mixBatch.ts';
import { pourRows } from '../mixWords.ts';
import type { UnitSystem } from '../units.ts';
import { escaped } from './escape.ts';

/** Size of the drawing and of the pot in it, px at 100 %. */
const [WIDTH, HEIGHT] = [340, 250];
const POT = { left: 12, right: 112, top: 16, bottom: 236 };
/** The fullest pot leaves room for stirring. */
const FULLEST = 0.86;
/** Labels stand at least so far apart. */
const LINE = 24;
const LABEL_X = 136;

/** How each part is hatched, so that it is told apart without colour: the path drawn in a square of 8 px. */
const HATCHES = { finish: 'M-2,2 l4,-4 M0,8 l8,-8 M6,10 l4,-4', thinner: 'M4,3 v2', retarder: 'M0,4 h8 M4,0 v8' } as const;

/**
 * A straight-sided pot with the mark to which each part is poured, as SVG in the text's own colour. Marks say what the pot then holds in
 * all; how high they stand is to scale.
 * @param idHead head of the ids in it, one of a kind on a page.
 */
export function potSvg(fill: PotFill, system: UnitSystem, idHead = 'pot'): string {
  const rows = pourRows({ fill, parts: null }, system);
  const levels = fill.pours.map(({ upTo }) => POT.bottom - (POT.bottom - POT.top) * FULLEST * (upTo.volume_m3 / fill.each.total.volume_m3));
  const labels = spreadUp(levels);
  const bands = fill.pours.map(({ part }, i) => {
    const [top, bottom] = [levels[i] as number, i === 0 ? POT.bottom : (levels[i - 1] as number)];
    const label = `${rows[i]?.part ?? part} to ${rows[i]?.mark ?? ''}`;
    const y = labels[i] as number;
    return `<rect x="${POT.left}" y="${px(top)}" width="${POT.right - POT.left}" height="${px(bottom - top)}" fill="url(#${idHead}-${part})" stroke="currentColor"/>` +
      `<path d="M${POT.right - 14},${px(top)} H${POT.right + 4} L${LABEL_X - 6},${px(y - 5)}" fill="none" stroke="currentColor" stroke-width="1.5"/>` +
      `<text x="${LABEL_X}" y="${px(y)}" font-size="16" fill="currentColor">${escaped(label)}</text>`;
  });
  const words = fill.pours.map(({ part }, i) => `${part} up to ${rows[i]?.mark ?? ''}`).join(', then ');
  return [
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escaped(`Pot: ${words}`)}" width="${WIDTH}">`,
    `<defs>${fill.pours.map(({ part }) => `<pattern id="${idHead}-${part}" width="8" height="8" patternUnits="userSpaceOnUse"><path d="${HATCHES[part]}" fill="none" stroke="currentColor" stroke-width="${part === 'thinner' ? 2 : 1}"/></pattern>`).join('')}</defs>`,
    ...bands,
    `<path d="M${POT.left},${POT.top} V${POT.bottom} H${POT.right} V${POT.top}" fill="none" stroke="currentColor" stroke-width="3"/>`,
    '</svg>',
  ].join('');
}

/** Heights of the labels: beside their marks, moved up where they would stand on the one below. */
function spreadUp(levels: readonly number[]): number[] {
  const placed: number[] = [];
  for (const level of levels) placed.push(Math.min(level + 5, (placed.at(-1) ?? Infinity) - LINE));
  return placed;
}

function px(value: number): string {
  return value.toFixed(1);
}
