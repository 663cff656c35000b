import type { JSX } from 'preact';
import { capitalised, FAN_CAUSE_WORDS, FAN_FAULT_WORDS, FAN_TEST_WORDS, type FanFault } from '../../../../sim/index.ts';

/** What is wrong with the fan by its shape: how much, what may lie behind it, and what to try. */
export function FanFaults({ faults }: { readonly faults: readonly FanFault[] }): JSX.Element {
  return (
    <section class="setups-told" aria-labelledby="setups-fan-faults">
      <h2 id="setups-fan-faults">Faults of the fan</h2>
      {faults.length === 0 ? <p>None shows in these readings.</p> : <ul class="setups-faults">{faults.map((fault) => <Fault key={fault.kind} fault={fault} />)}</ul>}
    </section>
  );
}

function Fault({ fault }: { readonly fault: FanFault }): JSX.Element {
  const { title, figure } = FAN_FAULT_WORDS[fault.kind];
  return (
    <li>
      <h3>{title}</h3>
      <p>{capitalised(figure(fault))}.</p>
      <p>May lie behind it, likeliest first:</p>
      <ul>{fault.causes.map((cause) => <li key={cause}>{FAN_CAUSE_WORDS[cause]}</li>)}</ul>
      <p>To try:</p>
      <ul>{fault.tests.map((test) => <li key={test}>{FAN_TEST_WORDS[test]}</li>)}</ul>
    </li>
  );
}
