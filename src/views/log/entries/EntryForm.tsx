import type { JSX } from 'preact';
import { ACT_CAUTIONS, actsOf, LOG_KIND_WORDS, LOG_KINDS, plannedFor, waitedWords, waitWords, type LogEntrySpec, type LogKind, type ReportedEntry } from '../../../../sim/index.ts';
import { changeEntry } from '../../../app/log/entryChange.ts';
import { removeEntry } from '../../../app/log/logCommands.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { AirFields } from './AirFields.tsx';
import { CombFields } from './CombFields.tsx';
import { CupFields } from './CupFields.tsx';
import { CanFields, EntryNumber, EntryWords } from './EntryBoxes.tsx';
import { FaultFields } from './FaultFields.tsx';
import { PhotoFields } from './PhotoFields.tsx';
import { TimeFields } from './TimeFields.tsx';

export interface EntryFormProps {
  readonly reported: ReportedEntry;
}

/** The fields of an open, unsigned entry: the few of every coat first, the rest folded. */
export function EntryForm({ reported }: EntryFormProps): JSX.Element {
  const { entry, plan } = reported;
  const waited = waitedWords(reported);
  const isCoat = entry.kind === 'coat' || entry.kind === 'rework' || entry.kind === 'other';
  return (
    <div class="log-entries-form">
      <ActCautions entry={entry} />
      <TimeFields entry={entry} />
      <p class="log-entries-found">{waited ?? (plan.before === null ? 'Nothing was noted before it on this panel.' : `Nothing was noted before it; the plan asks after “${plan.before.name}”: ${waitWords(plan.before)}.`)}</p>
      <div class="log-entries-fields">
        <EntryWords at={['who']} label="Who does it" longest={200} isOptional={false} />
        {isCoat ? <CanFields can="product" label="Product" planned={plan.mixName === null ? undefined : `The plan’s mix: ${plan.mixName}.`} /> : null}
      </div>
      {isCoat ? <CupFields plan={plan} /> : null}
      {entry.kind === 'sand' ? <SandingFields entry={entry} /> : null}
      <AirFields group="airStart" />
      {isCoat ? <CombFields entry={entry} planned_um={plan.wet_um} /> : null}
      <FaultFields entry={entry} />
      <div class="log-entries-fields">
        <EntryWords at={['notes']} label="Remark" longest={5000} isLong />
      </div>
      <MoreFields reported={reported} isCoat={isCoat} />
      <PhotoFields entry={entry} />
      <div class="actions">
        <button type="button" aria-label={`Remove entry ${entry.name}`} onClick={removeEntry}>Remove this entry</button>
      </div>
    </div>
  );
}

/** Cautions where the act is, while it is under way. */
function ActCautions({ entry }: { readonly entry: LogEntrySpec }): JSX.Element | null {
  const { step } = plannedFor(state.job.value, entry);
  const acts = step === null ? (entry.kind === 'coat' || entry.kind === 'rework' ? actsOf('spray') : entry.kind === 'other' ? [] : actsOf(entry.kind)) : actsOf(step.kind);
  if (entry.ended !== undefined || acts.length === 0) return null;
  return (
    <details class="log-entries-cautions" open>
      <summary>Before and while you do it</summary>
      <ul>{acts.flatMap((act) => ACT_CAUTIONS[act]).map((text) => <li key={text}>{text}</li>)}</ul>
    </details>
  );
}

function MoreFields({ reported, isCoat }: EntryFormProps & { readonly isCoat: boolean }): JSX.Element {
  const { entry, plan } = reported;
  return (
    <details class="log-entries-more">
      <summary>Air at the end, thinner and ratio, gun, amounts, sanding, panels</summary>
      <AirFields group="airEnd" />
      <div class="log-entries-fields">
        <EntryWords at={['name']} label="What was done" longest={200} isOptional={false} />
        <ChoiceField id="entry-kind" label="Kind" value={entry.kind} options={LOG_KINDS.map((kind) => [kind, LOG_KIND_WORDS[kind]] as const)} choose={(kind: LogKind) => changeEntry('Kind', '/kind', kind)} />
        <EntryWords at={['certificate']} label="Number of their certificate" longest={100} />
        {isCoat ? <CanFields can="thinner" label="Thinner" /> : null}
        {isCoat ? <EntryWords at={['ratio']} label="Finish to thinner" longest={100} {...(plan.ratio === null ? {} : { hint: `Planned: ${plan.ratio}.` })} /> : null}
        {isCoat ? <EntryWords at={['gun']} label="The gun as it was set" longest={500} isLong /> : null}
        {isCoat ? <EntryNumber at={['used_mL']} label="Mixed liquid used" /> : null}
        <EntryNumber at={['waited_min']} label="Wait before it, as noted" hint="Only where it is not the one worked out above." />
      </div>
      <PanelTicks entry={entry} />
      {isCoat ? <RecordingField entry={entry} /> : null}
      {entry.kind === 'sand' ? null : <SandingFields entry={entry} />}
    </details>
  );
}

function PanelTicks({ entry }: { readonly entry: LogEntrySpec }): JSX.Element {
  const { panels } = state.job.value.part;
  return (
    <fieldset class="log-entries-group">
      <legend>Panels</legend>
      {panels.map(({ id, name }) => (
        <TickField key={id} label={name} on={entry.panels.includes(id)} turn={(on) => changeEntry('Panels', '/panels', panels.map((each) => each.id).filter((each) => (each === id ? on : entry.panels.includes(each))))} />
      ))}
    </fieldset>
  );
}

function RecordingField({ entry }: { readonly entry: LogEntrySpec }): JSX.Element | null {
  const { recordings } = state.job.value;
  if (recordings.length === 0 && entry.recording === undefined) return null;
  const options: (readonly [string, string])[] = [['', 'None'], ...recordings.map(({ id, name }) => [id, name] as const)];
  if (entry.recording !== undefined && !recordings.some(({ id }) => id === entry.recording)) options.push([entry.recording, `${entry.recording} (no longer in this job)`]);
  return <ChoiceField id="entry-recording" label="Recorded strokes" value={entry.recording ?? ''} options={options} choose={(id) => changeEntry('Recorded strokes', '/recording', id === '' ? undefined : id)} hint="Signing takes their digest along." />;
}

/** Usual paper between coats: 280 wet on aluminium (AC 43.13-1B 2-21h). */
const USUAL_SANDING = { grit: 280, wet: true };

function SandingFields({ entry }: { readonly entry: LogEntrySpec }): JSX.Element {
  const { sanding } = entry;
  return (
    <fieldset class="log-entries-group">
      <legend>Sanding</legend>
      <TickField label="It was sanded" on={sanding !== undefined} turn={(on) => changeEntry('Sanding', '/sanding', on ? USUAL_SANDING : undefined)} />
      {sanding === undefined ? null : <EntryNumber at={['sanding', 'grit']} label="Grit of the paper" />}
      {sanding === undefined ? null : <TickField label="Sanded wet" on={sanding.wet} turn={(wet) => changeEntry('Wet or dry', '/sanding/wet', wet)} />}
    </fieldset>
  );
}
