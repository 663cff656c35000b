import type { LogEntrySpec } from '../../../sim/index.ts';
import { dropDraft, fieldText, keepDraft, leaveField, type FieldText } from '../fieldText.ts';
import { pointerOf, valueAt, type JobPath } from '../path.ts';
import { readNumber } from '../readNumber.ts';
import { state } from '../state.ts';
import { changeEntry, endEntryTyping } from './entryChange.ts';
import { openEntry, openIndex } from './log.ts';
import { wrongFields } from './unfinished.ts';

/** A place within an entry: `['cup', 'seconds']`. */
export type EntryPath = readonly [keyof LogEntrySpec, ...JobPath];

/** Numbers that are only read together: a group is in the entry once all that it needs are given. */
export const GROUPS = {
  cup: { needs: ['seconds', 'temperature_C'], may: [], usual: { kind: 'ford-4' } },
  airStart: { needs: ['temperature_C', 'humidity_percent'], may: ['surface_C'], usual: {} },
  airEnd: { needs: ['temperature_C', 'humidity_percent'], may: ['surface_C'], usual: {} },
} as const satisfies Partial<Record<keyof LogEntrySpec, { readonly needs: readonly string[]; readonly may: readonly string[]; readonly usual: Readonly<Record<string, unknown>> }>>;
export type GroupKey = keyof typeof GROUPS;

function jobPath(at: EntryPath): JobPath {
  return ['log', openIndex.value, ...at];
}

function draftPointer(at: EntryPath): string {
  return pointerOf(jobPath(at));
}

/** A number of the open entry as it stands in its box: what is being typed, else its value, else nothing. */
export function entryNumber(at: EntryPath): FieldText {
  return fieldText(state.job.value, jobPath(at), state.units.value, state.drafts.value[draftPointer(at)]);
}

/** Takes a keystroke of a number that stands alone. @param isOptional an empty box takes it out. */
export function typeEntryNumber(at: EntryPath, label: string, text: string, isOptional: boolean): void {
  const read = isOptional && text.trim() === '' ? { value: undefined } : readNumber(state.job.peek(), jobPath(at), text, state.units.peek());
  const pointer = draftPointer(at);
  keepDraft(pointer, { text, problem: 'problem' in read ? read.problem : null });
  if ('value' in read && !changeEntry(label, pointerOf(at), read.value, pointer)) dropDraft(pointer);
}

/** Takes a keystroke of a number of a group; the group is put into the entry as soon as it has all that it needs, and out when all its boxes are empty. */
export function typeInGroup(group: GroupKey, key: string, label: string, text: string): void {
  const entry = openEntry.peek();
  if (entry === null) return;
  const pointer = draftPointer([group, key]);
  const read = text.trim() === '' ? { value: undefined } : readNumber(state.job.peek(), jobPath([group, key]), text, state.units.peek());
  keepDraft(pointer, { text, problem: 'problem' in read ? read.problem : null });
  const there = entry[group] !== undefined;
  const isNeeded = (GROUPS[group].needs as readonly string[]).includes(key);
  if (!('value' in read)) return;
  if (there && read.value === undefined && isNeeded) {
    if (groupIsEmpty(group)) clearGroup(group, label);
    else keepDraft(pointer, { text, problem: 'Nothing is typed here; give a number, or empty the boxes beside it too' });
    return;
  }
  const whole = there ? null : wholeGroup(group);
  const changed = there ? changeEntry(label, pointerOf([group, key]), read.value, pointer) : whole === null || changeEntry(label, pointerOf([group]), whole, pointer);
  if (!changed) dropDraft(pointer);
}

/** What the group would be with what is typed; null where it still lacks something. */
function wholeGroup(group: GroupKey): Record<string, unknown> | null {
  const { needs, may, usual } = GROUPS[group];
  const whole: Record<string, unknown> = { ...usual, ...chosenCup(group) };
  for (const key of [...needs, ...may]) {
    const text = state.drafts.peek()[draftPointer([group, key])]?.text.trim() ?? '';
    if (text === '') continue;
    const read = readNumber(state.job.peek(), jobPath([group, key]), text, state.units.peek());
    if ('value' in read) whole[key] = read.value;
  }
  return needs.every((key) => whole[key] !== undefined) ? whole : null;
}

/** Name of the draft of the cup chosen before its seconds are typed. */
const cupPointer = (): string => draftPointer(['cup', 'kind']);

function chosenCup(group: GroupKey): { kind?: string } {
  const chosen = group === 'cup' ? state.drafts.peek()[cupPointer()]?.text : undefined;
  return chosen === undefined ? {} : { kind: chosen };
}

/** The cup of the entry: as noted, as chosen, else that of the plan's reading, else the usual one. */
export function entryCup(planned: string | null): string {
  return openEntry.value?.cup?.kind ?? state.drafts.value[cupPointer()]?.text ?? planned ?? GROUPS.cup.usual.kind;
}

/** Chooses the cup, before or after its seconds are known. */
export function chooseCup(kind: string): void {
  if (openEntry.peek()?.cup === undefined) keepDraft(cupPointer(), { text: kind, problem: null });
  else changeEntry('Cup', '/cup/kind', kind);
}

function groupIsEmpty(group: GroupKey): boolean {
  const { needs, may } = GROUPS[group];
  return [...needs, ...may].every((key) => {
    const draft = state.drafts.peek()[draftPointer([group, key])];
    return draft === undefined ? valueAt(openEntry.peek(), [group, key]) === undefined : draft.text.trim() === '';
  });
}

function clearGroup(group: GroupKey, label: string): void {
  if (changeEntry(label, pointerOf([group]), undefined)) dropGroupDrafts(group);
}

function dropGroupDrafts(group: GroupKey): void {
  for (const key of [...GROUPS[group].needs, ...GROUPS[group].may]) dropDraft(draftPointer([group, key]));
}

/** What is typed of a group that lacks others. */
function typedInGroup(group: GroupKey): string {
  return GROUPS[group].needs.map((key) => state.drafts.value[draftPointer([group, key])]?.text.trim() ?? '').filter((text) => text !== '').join(' ');
}

/** Whether a group has figures typed that are not in the entry yet, for want of others. */
export function isHalfTyped(group: GroupKey): boolean {
  const entry = openEntry.value;
  if (entry === null || entry[group] !== undefined) return false;
  return typedInGroup(group) !== '';
}

/** What is typed in the open entry's fields and is not in it: signing would leave it out. */
export function unfinishedFields(): readonly string[] {
  const head = `/log/${openIndex.value}/`;
  const isComb = (pointer: string): boolean => pointer.startsWith(`${head}combs/next/`);
  return [...wrongFields(head, (pointer, { text }) => isComb(pointer) && text.trim() !== ''), ...(Object.keys(GROUPS) as GroupKey[]).filter(isHalfTyped).map(typedInGroup)];
}

/** The reader has left a field: what is typed next is another change. Half a group stays as typed. */
export function leaveEntryField(at: EntryPath): void {
  endEntryTyping();
  const path = jobPath(at);
  const pointer = pointerOf(path);
  const draft = state.drafts.peek()[pointer];
  if (draft !== undefined && (draft.text.trim() === '' || valueAt(state.job.peek(), path) !== undefined)) leaveField(pointer);
}

/** Text of the open entry; empty where there is none. */
export function entryText(at: EntryPath): string {
  const value = valueAt(openEntry.value, at);
  return typeof value === 'string' ? value : '';
}

/** Takes a keystroke of a text. @param isOptional an empty box takes the text out. */
export function typeEntryText(at: EntryPath, label: string, text: string, isOptional: boolean): void {
  changeEntry(label, pointerOf(at), isOptional && text === '' ? undefined : text, draftPointer(at));
}

/** Takes a keystroke about a tin: the tin is in the entry as soon as anything of it is, and out when nothing is. */
export function typeInCan(can: 'product' | 'thinner', key: 'name' | 'batch' | 'shelfLife', label: string, text: string): void {
  const entry = openEntry.peek();
  const held = entry?.[can];
  const typed = draftPointer([can, key]);
  const next = { name: '', ...held, [key]: text === '' && key !== 'name' ? undefined : text };
  const isEmpty = next.name === '' && next.batch === undefined && next.shelfLife === undefined;
  if (isEmpty) changeEntry(label, `/${can}`, undefined, typed);
  else if (held === undefined) changeEntry(label, `/${can}`, Object.fromEntries(Object.entries(next).filter(([, value]) => value !== undefined)), typed);
  else changeEntry(label, `/${can}/${key}`, next[key], typed);
}
