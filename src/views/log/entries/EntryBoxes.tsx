import type { JSX } from 'preact';
import { entryNumber, entryText, leaveEntryField, typeEntryNumber, typeEntryText, typeInCan, typeInGroup, type EntryPath, type GroupKey } from '../../../app/log/entryFields.ts';
import { openEntry } from '../../../app/log/log.ts';
import { NumberBox } from '../../fields/NumberBox.tsx';

interface BoxProps {
  readonly label: string;
  readonly hint?: string | undefined;
}

/** A number of the open entry that may be left out. */
export function EntryNumber({ at, label, hint }: BoxProps & { readonly at: EntryPath }): JSX.Element {
  const { text, unit, problem } = entryNumber(at);
  return <NumberBox id={idOf(at)} label={label} text={text} unit={unit} problem={problem} hint={hint} type={(typed) => typeEntryNumber(at, label, typed, true)} leave={() => leaveEntryField(at)} />;
}

/** A number that only counts together with others. */
export function GroupNumber({ group, name, label, hint }: BoxProps & { readonly group: GroupKey; readonly name: string }): JSX.Element {
  const at: EntryPath = [group, name];
  const { text, unit, problem } = entryNumber(at);
  return <NumberBox id={idOf(at)} label={label} text={text} unit={unit} problem={problem} hint={hint} type={(typed) => typeInGroup(group, name, label, typed)} leave={() => leaveEntryField(at)} />;
}

interface TextProps extends BoxProps {
  readonly id: string;
  readonly text: string;
  readonly longest: number;
  readonly isLong?: boolean;
  readonly list?: string;
  readonly type: (text: string) => void;
  readonly leave: () => void;
}

/** A box for words. */
export function WordsBox({ id, label, hint, text, longest, isLong = false, list, type, leave }: TextProps): JSX.Element {
  const common = { id, maxLength: longest, value: text, autocomplete: 'off', onBlur: leave, ...(hint === undefined ? {} : { 'aria-describedby': `${id}-note` }) } as const;
  return (
    <div class="field field-wide">
      <label for={id}>{label}</label>
      {isLong
        ? <textarea {...common} class="log-entries-words" rows={3} onInput={(event) => type(event.currentTarget.value)} />
        : <input type="text" {...common} {...(list === undefined ? {} : { list })} onInput={(event) => type(event.currentTarget.value)} />}
      {hint === undefined ? null : <span class="field-note" id={`${id}-note`}>{hint}</span>}
    </div>
  );
}

/** Words of the open entry. */
export function EntryWords({ at, isOptional = true, ...box }: BoxProps & { readonly at: EntryPath; readonly longest: number; readonly isLong?: boolean; readonly isOptional?: boolean; readonly list?: string }): JSX.Element {
  return <WordsBox id={idOf(at)} {...box} text={entryText(at)} type={(text) => typeEntryText(at, box.label, text, isOptional)} leave={() => leaveEntryField(at)} />;
}

/** What came out of a tin: name, batch, last day on which it may be used. */
export function CanFields({ can, label, planned }: { readonly can: 'product' | 'thinner'; readonly label: string; readonly planned?: string | undefined }): JSX.Element {
  const shelfLife = openEntry.value?.[can]?.shelfLife ?? '';
  const day = `entry-${can}-shelfLife`;
  return (
    <>
      <WordsBox id={`entry-${can}-name`} label={label} hint={planned} text={entryText([can, 'name'])} longest={200} type={(text) => typeInCan(can, 'name', label, text)} leave={() => leaveEntryField([can, 'name'])} />
      <WordsBox id={`entry-${can}-batch`} label={`Batch of the ${can}`} text={entryText([can, 'batch'])} longest={100} type={(text) => typeInCan(can, 'batch', `Batch of the ${can}`, text)} leave={() => leaveEntryField([can, 'batch'])} />
      <div class="field field-wide">
        <label for={day}>Shelf life of the {can}: last day</label>
        <input id={day} type="date" value={shelfLife} onChange={(event) => { typeInCan(can, 'shelfLife', `Shelf life of the ${can}`, event.currentTarget.value); leaveEntryField([can, 'shelfLife']); }} />
      </div>
    </>
  );
}

function idOf(at: EntryPath): string {
  return `entry-${at.join('-')}`;
}
