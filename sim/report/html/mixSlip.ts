import { MIX_CAUTIONS } from '../mixCautions.ts';
import { thinningSentences } from '../mixText.ts';
import { batchSentence, filmSentence, MIX_LIMITS, pourRows, ratioSentence, retarderSentence, solidsSentence } from '../mixWords.ts';
import { shortRatio } from '../ratioWords.ts';
import type { ReportedMixing } from '../reportedMixing.ts';
import { shownTemperature, type UnitSystem } from '../units.ts';
import { escaped } from './escape.ts';
import { htmlList, htmlPage, htmlTable } from './page.ts';
import { potSvg } from './potSvg.ts';

/** What is filled in by hand at the bench, in order. */
const BY_HAND = ['Cup seconds read', 'Cup', 'Temperature of the liquid', 'Finish: batch and date', 'Thinner: batch and date', 'Retarder: batch and date', 'Mixed at (date, time)', 'Use by', 'Mixed by', 'Checked by'];

const BOX = 'border:1.5px solid #181818;height:2.2rem;width:30%';
/** Two boxes to a row, so that the slip stays on two pages. */
const BOXES_A_ROW = 2;

/**
 * A mixing slip to print and take to the bench: cautions first, what to pour to which mark, what the cup should say, boxes
 * to fill by hand. One HTML file, no script.
 * @param where what it is for, such as the job's name.
 */
export function mixSlip(mixing: ReportedMixing, where: string, system: UnitSystem): string {
  const { mix, ratio, thinning, fill, thinnerWords } = mixing;
  const said = [retarderSentence(mixing), solidsSentence(mixing), filmSentence(mixing, system), batchSentence(mixing, system)].filter((text) => text !== null);
  return htmlPage({
    title: `Mixing slip: ${mix.name}`,
    subtitle: `${where}. ${mix.finish.name}, ${shortRatio(ratio)} by volume.`,
    parts: [
      { head: 'Before you mix', html: `<div class="cautions">${htmlList(MIX_CAUTIONS)}</div>` },
      { head: 'What goes in', html: [`<p><strong>${escaped(ratioSentence(mixing))}</strong></p>`, `<p>Thinner: ${escaped(thinnerWords)}.</p>`, ...said.map((text) => `<p>${escaped(text)}</p>`)].join('') },
      ...(pourRows(mixing, system).length === 0 ? [] : [{ head: 'Pour', html: `<div class="maps" style="align-items:center"><div style="flex:3 1 20rem">${pourHtml(mixing, system)}</div>${fill === null ? '' : `<figure style="flex:1 1 13rem;max-width:20rem">${potSvg(fill, system)}</figure>`}</div>` }]),
      ...(thinning === null ? [] : [{ head: `In the cup, at ${shownTemperature(thinning.law.temperature_K, system)}`, html: htmlList(thinningSentences(thinning, system)) }]),
      { head: 'By hand', html: boxesHtml() },
      ...(mix.warnings.length === 0 ? [] : [{ head: 'Doubts', html: htmlList(mix.warnings.map(({ text }) => text)) }]),
    ],
    assumptions: [MIX_LIMITS],
  });
}

function pourHtml(mixing: ReportedMixing, system: UnitSystem): string {
  const rows = pourRows(mixing, system).map(({ part, volume, weight, mark, scale }) => [part, { text: volume }, { text: weight }, { text: mark }, { text: scale }] as const);
  return htmlTable(['one pot', 'volume', 'weight', 'fill the pot to', 'the scale shows'], rows);
}

function boxesHtml(): string {
  const rows = BY_HAND.flatMap((_, i) => (i % BOXES_A_ROW === 0 ? [BY_HAND.slice(i, i + BOXES_A_ROW)] : []));
  const box = (name: string): string => `<th scope="row" style="text-align:left">${name}</th><td style="${BOX}"></td>`;
  return `<table>${rows.map((names) => `<tr>${names.map(box).join('')}</tr>`).join('')}</table>`;
}
