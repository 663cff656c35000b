import type { LogEntrySpec } from '../../../sim/index.ts';
import { dropDraft, keepDraft } from '../fieldText.ts';
import { readNumber } from '../readNumber.ts';
import { state } from '../state.ts';
import { unitOfKey } from '../units.ts';
import { changeEntry } from './entryChange.ts';
import { logStage, openEntry, openIndex } from './log.ts';

/** What a reading of the comb asks for, in order; the first is the only one that must be given. */
export const COMB_BOXES = [
  { name: 'low_um', label: 'Last wetted tooth' },
  { name: 'high_um', label: 'Next tooth, dry' },
  { name: 'x_mm', label: 'Right of the lower left corner' },
  { name: 'y_mm', label: 'Up from it' },
] as const;
type CombKey = (typeof COMB_BOXES)[number]['name'];

/** Most items of each list, as the schema has them. */
const MOST = { combs: 200, faults: 100, photos: 12 } as const;

function combPointer(key: CombKey): string {
  return `/log/${openIndex.value}/combs/next/${key}`;
}

/** The next reading's box: its text, unit and what is wrong. */
export function combText(key: CombKey): { readonly text: string; readonly unit: string; readonly problem: string | null } {
  const draft = state.drafts.value[combPointer(key)];
  return { text: draft?.text ?? '', unit: unitOfKey(key, state.units.value), problem: draft?.problem ?? null };
}

function readComb(key: CombKey, text: string): { readonly value: number } | { readonly problem: string } {
  return readNumber(state.job.peek(), ['log', openIndex.peek(), 'combs', 0, key], text, state.units.peek());
}

/** Takes a keystroke of the next reading. */
export function typeComb(key: CombKey, text: string): void {
  const read = text.trim() === '' ? null : readComb(key, text);
  keepDraft(combPointer(key), { text, problem: read !== null && 'problem' in read ? read.problem : null });
}

/** Adds the reading as typed. What is missing or wrong is told at its box, and everything typed stays. */
export function addComb(): void {
  const comb: Partial<Record<CombKey, number>> = {};
  for (const { name } of COMB_BOXES) {
    const text = state.drafts.peek()[combPointer(name)]?.text ?? '';
    if (text.trim() === '' && name !== 'low_um') continue;
    const read = readComb(name, text);
    if ('problem' in read) return keepDraft(combPointer(name), { text, problem: read.problem });
    comb[name] = read.value;
  }
  const wrong = combProblem(comb);
  if (wrong !== null) return keepDraft(combPointer(wrong.name), { text: state.drafts.peek()[combPointer(wrong.name)]?.text ?? '', problem: wrong.problem });
  if (addItem('combs', comb, 'Add a comb reading')) for (const { name } of COMB_BOXES) dropDraft(combPointer(name));
}

function combProblem({ low_um = 0, high_um, x_mm, y_mm }: Partial<Record<CombKey, number>>): { readonly name: CombKey; readonly problem: string } | null {
  if (high_um !== undefined && high_um <= low_um) return { name: 'high_um', problem: 'The next dry tooth is longer than the last wetted one; the film lies between the two' };
  if (high_um === undefined && low_um === 0) return { name: 'high_um', problem: 'No tooth was wetted: give the first tooth, which the film is below' };
  if ((x_mm === undefined) !== (y_mm === undefined)) return { name: x_mm === undefined ? 'x_mm' : 'y_mm', problem: 'A place has two figures; give both or neither' };
  return null;
}

type ListKey = keyof typeof MOST;

/** Adds an item to a list of the open entry. @returns whether it was added. */
export function addItem<Key extends ListKey>(key: Key, item: Partial<LogEntrySpec[Key][number]>, label: string): boolean {
  const count = openEntry.peek()?.[key].length ?? 0;
  if (count >= MOST[key]) {
    logStage.problem.value = { title: 'Nothing was added', text: `An entry holds ${MOST[key]} of these and this one has as many; begin another entry.`, place: {} };
    return false;
  }
  return changeEntry(label, `/${key}/${count}`, item);
}

/** Takes an item out of a list of the open entry; its history keeps what it was. */
export function removeItem(key: ListKey, index: number, label: string): void {
  changeEntry(label, `/${key}/${index}`, undefined);
}
