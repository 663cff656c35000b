import type { JSX } from 'preact';
import { FAULT_PLURALS, FAULT_WORDS, HATCH_WORDS, PLACED_FAULTS, capitalised, coatFaults, faultSentences, shown, shownPlace, type Fault, type ReportedCoat } from '../../../sim/index.ts';
import { chooseFault } from '../../app/choose.ts';
import { tryCure } from '../../app/coatCommands.ts';
import { state } from '../../app/state.ts';
import { zoneLabel } from '../../app/zones.ts';

/** The faults, worst first. Choosing one goes to its place and opens its cause and cure. */
export function FaultList({ coat }: { readonly coat: ReportedCoat }): JSX.Element | null {
  const faults = coatFaults(coat);
  if (faults.length === 0) return null;
  return (
    <section class="faults">
      <h2>{faultsHeading(coat)}</h2>
      <ol>
        {faults.map((fault, i) => <FaultItem key={i} fault={fault} index={i} coat={coat} />)}
      </ol>
    </section>
  );
}

/** Says which lists are joined. */
export function faultsHeading({ life }: ReportedCoat): string {
  return life === undefined ? 'Faults, worst first' : 'Faults as laid, then in time, each worst first';
}

interface FaultItemProps {
  readonly fault: Fault;
  readonly index: number;
  readonly coat: ReportedCoat;
}

function FaultItem({ fault, index, coat }: FaultItemProps): JSX.Element {
  const system = state.units.value;
  const isChosen = state.chosenFault.value?.fault === index;
  return (
    <li class={isChosen ? 'fault chosen' : 'fault'}>
      <button type="button" class="fault-head" aria-expanded={isChosen} onClick={() => chooseFault(isChosen ? null : { fault: index, zone: 0 })}>
        <span class="fault-label" aria-hidden="true">{zoneLabel(index)}</span>
        <span class="fault-name">{capitalised(faultWords(fault))}</span>
        <span class="soft">{shown(fault.area_m2, 'area', system)}</span>
      </button>
      {isChosen ? <FaultBody fault={fault} index={index} coat={coat} /> : null}
    </li>
  );
}

/** `3 thin laps`, but `pinhole risk in 3 places`: what has no plural is counted by its places. */
function faultWords({ kind, zones: { length: count } }: Fault): string {
  if (count < 2) return FAULT_WORDS[kind];
  return PLACED_FAULTS.has(kind) ? `${FAULT_WORDS[kind]} in ${count} places` : `${count} ${FAULT_PLURALS[kind]}`;
}

function FaultBody({ fault, index, coat }: FaultItemProps): JSX.Element {
  const system = state.units.value;
  const { what, cause, cure } = faultSentences(fault, coat.setting.target, system);
  const isOfLife = index >= coat.verdict.faults.length;
  const areCuresTried = (isOfLife ? state.lifeVerdict.value : state.verdict.value)?.curesTried ?? false;
  const change = fault.cure?.change;
  return (
    <div class="fault-body">
      <p>{what} <span class="soft">Drawn as {HATCH_WORDS[fault.kind]}.</span></p>
      <p><strong>Cause.</strong> {cause}</p>
      <p><strong>Cure.</strong> {fault.cure === null && !areCuresTried ? 'The model is trying changes…' : cure}</p>
      {change?.kind === 'plan' && coat.strokes.source === 'plan' ? (
        <button type="button" class="act" onClick={() => tryCure(change)}>Try this</button>
      ) : null}
      {fault.zones.length < 2 ? null : (
        <div class="actions" role="group" aria-label="Zones of this fault">
          {fault.zones.slice(0, 12).map((zone, i) => (
            <button
              key={i}
              type="button"
              aria-pressed={state.chosenFault.value?.zone === i}
              aria-label={`Zone ${i + 1}, ${shownPlace(zone.at_m, system)}`}
              onClick={() => chooseFault({ fault: index, zone: i })}
            >
              {i + 1}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
