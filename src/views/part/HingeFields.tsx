import type { JSX } from 'preact';
import type { PanelSpec } from '../../../sim/index.ts';
import { changeJob, panel, panelIndex } from '../../app/document.ts';
import { withValueAt } from '../../app/path.ts';
import { state } from '../../app/state.ts';
import { NumberField } from '../fields/NumberField.tsx';
import { TickField } from '../fields/TickField.tsx';

/** The hinge line of a moving surface: two points on it, about which the weight of the film is told. */
export function HingeFields(): JSX.Element {
  const path = ['part', 'panels', panelIndex.value, 'hinge_mm'] as const;
  const isHinged = panel.value.hinge_mm !== undefined;
  return (
    <>
      <h3>Balance</h3>
      <TickField
        label="A moving surface, with a hinge line"
        on={isHinged}
        hint="Scheme, Amounts and weight, then tells where the added film acts about it. After refinishing the balance is checked by the maker’s manual."
        turn={turnHinge}
      />
      {isHinged ? (
        <fieldset class="group">
          <legend>Two points on the hinge line</legend>
          <NumberField path={[...path, 0, 0]} label="First point, x" />
          <NumberField path={[...path, 0, 1]} label="First point, y" />
          <NumberField path={[...path, 1, 0]} label="Second point, x" />
          <NumberField path={[...path, 1, 1]} label="Second point, y" />
        </fieldset>
      ) : null}
    </>
  );
}

/** A new line begins as the panel's left edge. */
function turnHinge(on: boolean): void {
  const { hinge_mm, ...rest } = panel.peek();
  const height_mm = Math.max(1, Math.round((state.film.peek()?.setting.panel.height_m ?? 0.4) * 1000));
  const next: PanelSpec = on ? { ...rest, hinge_mm: hinge_mm ?? [[0, 0], [0, height_mm]] } : rest;
  changeJob(on ? 'Add a hinge line' : 'Remove the hinge line', withValueAt(state.job.peek(), ['part', 'panels', panelIndex.peek()], next));
}
