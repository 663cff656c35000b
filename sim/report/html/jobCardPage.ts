import { ACT_CAUTIONS } from '../actCautions.ts';
import { cardDayLines, type EntryLines } from '../cardDayLines.ts';
import { CARD_AIR, entryPanels, entryTime, handBoxes, stepKindWords } from '../cardLines.ts';
import { ESTIMATE_STATEMENT } from '../cautions.ts';
import { cardDayWords, dayActs } from '../jobCardText.ts';
import type { CardDay, JobCard } from '../reportedCard.ts';
import type { UnitSystem } from '../units.ts';
import { escaped } from './escape.ts';
import { htmlList } from './page.ts';

/** Black on white, and narrow margins: it hangs on a wall and is written on. A page a day, on A4 and on Letter. */
/** The style sheet of a job card, whole: the app's policy allows it by its text. */
export const JOB_CARD_STYLE = `
:root { color-scheme: light; }
body { font: 16px/1.35 system-ui, sans-serif; color: #111; background: #fff; max-width: 60rem; margin: 0 auto; padding: 1rem; font-variant-numeric: tabular-nums; }
.day { border-bottom: 3px solid #111; padding-bottom: 1rem; margin-bottom: 1.5rem; }
header { display: flex; flex-wrap: wrap; gap: 0 1rem; justify-content: space-between; align-items: baseline; border-bottom: 2px solid #111; }
h1 { font-size: 1.6rem; margin: 0; } h2 { font-size: 1.15rem; margin: 0.9rem 0 0.2rem; } h2 .time { font-size: 1.3rem; } p { margin: 0.25rem 0; }
.entry { break-inside: avoid; border-top: 1px solid #111; padding-bottom: 0.4rem; } .body { display: flex; gap: 1rem; align-items: flex-start; }
dl { margin: 0.2rem 0; flex: 1 1 20rem; min-width: 0; } dl div { display: flex; gap: 0.5rem; break-inside: avoid; } dt { flex: 0 0 5.5em; font-weight: 700; } dd { margin: 0; min-width: 0; overflow-wrap: anywhere; }
.body svg { flex: 0 1 11rem; width: 11rem; max-height: 15rem; }
.boxes { display: flex; flex-wrap: wrap; gap: 0.4rem; margin-top: 0.4rem; } .boxes span { box-sizing: border-box; flex: 1 1 6.5rem; min-width: 0; border: 1px solid #111; min-height: 2.6rem; padding: 0.1rem 0.3rem; font-size: 0.9rem; }
.cautions { border: 2px solid #111; padding: 0.2rem 0.8rem; margin-top: 0.8rem; break-inside: avoid; } .cautions ul { margin: 0.2rem 0; padding-left: 1.2rem; }
@media (max-width: 40rem) { .body { flex-direction: column; } dl { flex: none; } }
@page { margin: 11mm; }
@media print { body { font-size: 8.2pt; line-height: 1.22; padding: 0; max-width: none; } .day { break-after: page; border: 0; margin: 0; padding: 0; } .day:last-of-type { break-after: auto; } h1 { font-size: 14pt; } h2 { font-size: 10.5pt; margin-top: 0.4rem; } h2 .time { font-size: 11.5pt; } p { margin: 0.1rem 0; } dt { flex-basis: 4.6em; } dl { columns: 2; column-gap: 5mm; } .body { gap: 3mm; } .body svg { flex-basis: 2.4cm; width: 2.4cm; max-height: 3.6cm; } .boxes { gap: 1mm; margin-top: 1mm; } .boxes span { min-height: 7.5mm; font-size: 7.5pt; flex-basis: 1.7cm; } .cautions { margin-top: 2mm; } .cautions ul { columns: 2; column-gap: 6mm; } .cautions li { break-inside: avoid; } }
`;

/**
 * The job card as one HTML file for the wall: a page a day, each step with its mix, gun, picture of the first stroke, film, wait, and boxes
 * to fill by hand; cautions of the day's acts at its foot. No script, no picture from elsewhere.
 */
export function jobCardPage(card: JobCard, system: UnitSystem): string {
  const title = `${card.jobName}: job card`;
  return [
    '<!doctype html>',
    `<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escaped(title)}</title><style>${JOB_CARD_STYLE}</style></head><body>`,
    ...card.days.map((day, i) => dayHtml(card, day, system, i)),
    card.doubts.length === 0 ? '' : `<section><h2>Doubts</h2>${htmlList(card.doubts)}</section>`,
    `<p>${escaped(ESTIMATE_STATEMENT)}</p>`,
    '</body></html>',
    '',
  ].join('\n');
}

function dayHtml(card: JobCard, day: CardDay, system: UnitSystem, place: number): string {
  const cautions = dayActs(day, place === card.days.length - 1).flatMap((act) => ACT_CAUTIONS[act]);
  return [
    `<section class="day"><header><h1>${escaped(cardDayWords(day))}</h1><p>${escaped(card.jobName)}, ${escaped(card.partName)}. Sheet ${place + 1} of ${card.days.length}</p></header>`,
    ...cardDayLines(day, system).map((each) => entryHtml(each, system)),
    `<p>${escaped(CARD_AIR)}</p><div class="cautions">${htmlList(cautions)}</div></section>`,
  ].join('\n');
}

function entryHtml({ entry, lines, isPictured }: EntryLines, system: UnitSystem): string {
  const { step, number, gun } = entry;
  const time = entryTime(entry);
  const source = step.source === undefined ? '' : lineHtml('Source', step.source);
  const note = step.note === undefined ? '' : lineHtml('Note', step.note);
  return [
    `<div class="entry"><h2>${time === '' ? '' : `<span class="time">${escaped(time)}</span> `}${number}. ${escaped(step.name)}</h2>`,
    `<p>${escaped(stepKindWords(step))}; ${escaped(entryPanels(entry))}</p>`,
    `<div class="body"><dl>${lines.map(({ head, text }) => lineHtml(head, text)).join('')}${note}${source}</dl>${isPictured ? (gun?.picture ?? '') : ''}</div>`,
    `<div class="boxes">${handBoxes(step, system).map((box) => `<span>${escaped(box)}</span>`).join('')}</div></div>`,
  ].join('');
}

function lineHtml(head: string, text: string): string {
  return `<div><dt>${escaped(head)}</dt><dd>${escaped(text)}</dd></div>`;
}
