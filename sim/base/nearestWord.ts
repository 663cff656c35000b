/**
 * The known word most like a mistyped one, or null where none is near: the same stem before the
 * unit (`width_in` for `width_mm`), else at most a third of its letters changed.
 */
export function nearestWord(word: string, known: readonly string[]): string | null {
  // Beyond this nobody mistypes a known word, and the comparison would cost its length squared.
  if (word.length > 64) return null;
  const stem = stemOf(word);
  const sameStem = known.find((other) => other !== word && stemOf(other) === stem);
  if (sameStem !== undefined) return sameStem;
  const most = Math.max(1, Math.floor(word.length / 3));
  let best: string | null = null;
  let bestEdits = most + 1;
  for (const other of known) {
    const edits = editCount(word.toLowerCase(), other.toLowerCase());
    if (edits < bestEdits) {
      best = other;
      bestEdits = edits;
    }
  }
  return best;
}

function stemOf(word: string): string {
  return (word.split('_')[0] as string).toLowerCase();
}

/** Fewest single-letter insertions, deletions and replacements (Levenshtein 1966, Soviet Physics Doklady 10). */
function editCount(a: string, b: string): number {
  let before = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = (before[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      row.push(Math.min(replaced, (before[j] as number) + 1, (row[j - 1] as number) + 1));
    }
    before = row;
  }
  return before[b.length] as number;
}
