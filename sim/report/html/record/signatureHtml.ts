import type { ChangeSpec, SignedSpec } from '../../../job/schema.ts';
import type { SignatureState } from '../../../log/signing.ts';
import { changeLines, momentShown, SIGNATURE_STATE_WORDS } from '../../changeWords.ts';
import type { UnitSystem } from '../../units.ts';
import { personWords } from '../../record/recordWords.ts';
import { escaped } from '../escape.ts';
import { wordsTable } from './linesHtml.ts';

/** Who signed, in whose words, with the digest and whether it still holds. */
export function signatureHtml(signed: SignedSpec | undefined, state: SignatureState): string {
  if (signed === undefined) return `<p class="unsigned">${escaped(SIGNATURE_STATE_WORDS.unsigned)}</p>`;
  const words = signed.words === undefined ? '' : `<p>“${escaped(signed.words)}”</p>`;
  const recording = signed.recordingSha256 === undefined ? '' : `<p>Recorded strokes, SHA-256: <code>${escaped(signed.recordingSha256)}</code></p>`;
  return `<div class="signed"><p><strong>Signed</strong> ${escaped(momentShown(signed.at))} by ${escaped(personWords(signed))}.</p>${words}<p>${escaped(SIGNATURE_STATE_WORDS[state])}</p><p>SHA-256: <code>${escaped(signed.sha256)}</code></p>${recording}</div>`;
}

/** What was changed later, oldest first, with what was there before; nothing where nothing was. */
export function historyHtml(history: readonly ChangeSpec[], system: UnitSystem): string {
  if (history.length === 0) return '';
  const rows = changeLines(history, system).map(({ when, what, before }) => [escaped(when), escaped(what), escaped(before)]);
  return `<h4>Changed later</h4>${wordsTable(['When and who', 'What', 'Before that'], rows)}`;
}
