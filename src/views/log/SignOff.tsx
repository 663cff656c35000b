import './signOff.css';
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { LONGEST_REASON, momentShown, SIGNATURE_STATE_WORDS, signatureState, SIGNING_NOTE, type Recorded, type SignedSpec } from '../../../sim/index.ts';
import { dropDraft, keepDraft } from '../../app/fieldText.ts';
import { endUndo } from '../../app/log/endUndo.ts';
import { state } from '../../app/state.ts';

/** Who signs, and their own words. */
export type SignatureTyped = Pick<SignedSpec, 'who' | 'certificate' | 'words'>;

export interface SignOffProps {
  /** Name of the record's drafts and head of its ids, one of a kind on the page: `entry-3`. */
  readonly id: string;
  /** What is signed, as a sentence names it: `entry`, `survey`. */
  readonly what: string;
  readonly record: Recorded;
  /** Text of the recording that the record names; null where it names none or the job has it no more. */
  readonly recordingText: string | null;
  /** Who usually signs here, until another name is typed. */
  readonly who: string;
  readonly certificate?: string | undefined;
  /** @returns whether it was signed; why not is told by the stage. */
  readonly sign: (signature: SignatureTyped) => boolean;
  /** @returns whether it was reopened. */
  readonly reopen: (by: string, why: string) => boolean;
}

/** Signing an entry or a survey off; or, signed, its signature and digest, whether it still matches, and reopening with a reason. */
export function SignOff(props: SignOffProps): JSX.Element {
  const { id, record } = props;
  return (
    <section class="sign-off" aria-labelledby={`${id}-sign`}>
      <h3 id={`${id}-sign`}>Sign-off</h3>
      {record.signed === undefined ? <SignForm {...props} /> : <Signature {...props} signature={record.signed} />}
      <p>{SIGNING_NOTE}</p>
    </section>
  );
}

function SignForm({ id, what, who, certificate = '', sign }: SignOffProps): JSX.Element {
  const [name, number, words] = [draftOf(id, 'who', who), draftOf(id, 'certificate', certificate), draftOf(id, 'words', '')];
  const submit = (event: Event): void => {
    event.preventDefault();
    const done = sign({ who: name.trim(), ...(number.trim() === '' ? {} : { certificate: number.trim() }), ...(words.trim() === '' ? {} : { words: words.trim() }) });
    if (!done) return;
    dropDrafts(id);
    endUndo();
  };
  return (
    <form onSubmit={submit}>
      <SignText id={id} part="who" label="Name of the person who signs" text={name} longest={200} />
      <SignText id={id} part="certificate" label="Number of their certificate" text={number} longest={100} hint="May be left empty." />
      <SignText id={id} part="words" label="What they sign, in their own words" text={words} longest={1000} isLong hint="Nothing is suggested here: the words are theirs. May be left empty." />
      <button type="submit" disabled={name.trim() === ''}>Sign and lock this {what}</button>
      <p class="soft">Signing cannot be undone; a signed {what} can be reopened with a reason, which stays in its history.</p>
    </form>
  );
}

function Signature({ id, what, record, recordingText, signature, reopen }: SignOffProps & { readonly signature: SignedSpec }): JSX.Element {
  const found = useMemo(() => signatureState(record, recordingText), [record, recordingText]);
  const [by, why] = [draftOf(id, 'by', state.log.value.who), draftOf(id, 'why', '')];
  const submit = (event: Event): void => {
    event.preventDefault();
    if (reopen(by.trim(), why.trim())) dropDrafts(id);
  };
  return (
    <>
      <p>Signed {momentShown(signature.at)} by <strong>{signature.who}</strong>{signature.certificate === undefined ? '' : `, certificate ${signature.certificate}`}. It is locked.</p>
      {signature.words === undefined ? null : <blockquote>{signature.words}</blockquote>}
      <p class={`sign-off-state ${found}`} data-testid={`${id}-signature`}>{SIGNATURE_STATE_WORDS[found]}</p>
      <p class="sign-off-digest"><span>Digest</span> <strong>{signature.sha256.slice(0, 8)}</strong> <code>{signature.sha256}</code></p>
      <p class="soft">SHA-256 of the canonical form (RFC 8785) of this {what} with its signature, without the digest itself. Written on paper, its first eight digits are enough to notice a change.</p>
      <details>
        <summary>Reopen it, to change it</summary>
        <form onSubmit={submit}>
          <SignText id={id} part="by" label="Who reopens it" text={by} longest={200} />
          <SignText id={id} part="why" label="Why" text={why} longest={LONGEST_REASON} isLong hint="The signature, its digest and this reason stay in the history." />
          <button type="submit" disabled={by.trim() === '' || why.trim() === ''}>Reopen this {what}</button>
        </form>
      </details>
    </>
  );
}

type Part = 'who' | 'certificate' | 'words' | 'by' | 'why';
const PARTS: readonly Part[] = ['who', 'certificate', 'words', 'by', 'why'];

/** What is typed here is no part of the record until it is signed, but outlives a reload. */
function pointerOf(id: string, part: Part): string {
  return `/view/sign-${id}-${part}`;
}

function draftOf(id: string, part: Part, usual: string): string {
  return state.drafts.value[pointerOf(id, part)]?.text ?? usual;
}

function dropDrafts(id: string): void {
  for (const part of PARTS) dropDraft(pointerOf(id, part));
}

interface SignTextProps {
  readonly id: string;
  readonly part: Part;
  readonly label: string;
  readonly text: string;
  readonly longest: number;
  readonly isLong?: boolean;
  readonly hint?: string;
}

function SignText({ id, part, label, text, longest, isLong = false, hint }: SignTextProps): JSX.Element {
  const name = `${id}-sign-${part}`;
  const type = (typed: string): void => keepDraft(pointerOf(id, part), { text: typed, problem: null });
  const common = { id: name, maxLength: longest, value: text, autocomplete: 'off', ...(hint === undefined ? {} : { 'aria-describedby': `${name}-note` }) } as const;
  return (
    <div class="field field-wide">
      <label for={name}>{label}</label>
      {isLong ? <textarea {...common} rows={3} onInput={(event) => type(event.currentTarget.value)} /> : <input type="text" {...common} onInput={(event) => type(event.currentTarget.value)} />}
      {hint === undefined ? null : <span class="field-note" id={`${name}-note`}>{hint}</span>}
    </div>
  );
}
