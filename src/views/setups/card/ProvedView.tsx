import type { JSX } from 'preact';
import type { SetUpSpec } from '../../../../sim/index.ts';
import { applyProved } from '../../../app/setups/cardCommands.ts';
import { provedRows } from '../../../app/setups/provedRows.ts';
import { shownSetUp } from '../../../app/setups/setUps.ts';
import { state } from '../../../app/state.ts';
import type { ProvedReply, Told } from '../../../worker/cardMessages.ts';
import { FAMILY_WORDS } from '../../gun/familyWords.ts';

export interface ProvedViewProps {
  /** The set-up as it stood when it was asked of. */
  readonly asked: SetUpSpec;
  readonly proved: Told<ProvedReply>;
}

/** What the card changes in its set-up, old and new, and the button that takes it over. */
export function ProvedView({ asked, proved }: ProvedViewProps): JSX.Element | null {
  if (proved === null) return null;
  return (
    <section class="setups-whole setups-told" aria-labelledby="setups-proved">
      <h2 id="setups-proved">What the card says of the set-up</h2>
      {'problem' in proved ? <p class="setups-answer"><span class="wrong">Not to be used yet: {proved.problem.text}</span></p> : <Changes asked={asked} proved={proved.answer} />}
    </section>
  );
}

function Changes({ asked, proved }: { readonly asked: SetUpSpec; readonly proved: ProvedReply }): JSX.Element {
  const rows = provedRows(proved.changed, FAMILY_WORDS, state.units.value);
  const isOld = asked !== shownSetUp.value;
  if (rows.length === 0) return <p>Nothing that the set-up states is measured yet.</p>;
  return (
    <>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Numbers that the card changes">
        <table class="setups-table">
          <caption>{asked.name}, with half of each 95 % interval</caption>
          <thead><tr><th scope="col">Number</th><th scope="col">Stated</th><th scope="col">By the card</th><th scope="col">Within</th></tr></thead>
          <tbody>
            {rows.map(({ name, from, to, within }) => (
              <tr key={name}><th scope="row">{name}</th><td>{from}</td><td>{to}</td><td>{within}</td></tr>
            ))}
          </tbody>
        </table>
      </div>
      {proved.warnings.length === 0 ? null : (
        <ul class="setups-faults">{proved.warnings.map(({ text }) => <li key={text}>{text}</li>)}</ul>
      )}
      <div class="actions">
        <button type="button" class="act" disabled={isOld} onClick={() => applyProved(asked, proved.setUp)}>Use for this set-up</button>
      </div>
      <p class="soft">One step: Undo takes it back. What the card measured is then known within these bounds wherever the set-up is used, and between these distances.</p>
    </>
  );
}
