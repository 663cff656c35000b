import './scheme.css';
import type { ComponentType, JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { lookAtScheme, schemeStage } from '../../app/scheme/scheme.ts';
import { followScheme } from '../../app/scheme/schemePlan.ts';
import { SCHEME_TABS, type SchemeTab } from '../../app/scheme/schemePrefs.ts';
import { state } from '../../app/state.ts';
import { OverStage } from '../frame/OverStage.tsx';
import { AirSheet } from './air/AirSheet.tsx';
import { AmountsSheet } from './amounts/AmountsSheet.tsx';
import { CardSheet } from './card/CardSheet.tsx';
import { DaysSheet } from './days/DaysSheet.tsx';
import { MixSheet } from './mix/MixSheet.tsx';
import { StepsSheet } from './steps/StepsSheet.tsx';
import { VapourSheet } from './vapour/VapourSheet.tsx';

const TAB_WORDS: Readonly<Record<SchemeTab, string>> = {
  steps: 'Steps', mix: 'Mix', air: 'Air', vapour: 'Vapour', amounts: 'Amounts and weight', days: 'Days', card: 'Job card',
};

const SHEETS: Readonly<Record<SchemeTab, ComponentType>> = {
  steps: StepsSheet, mix: MixSheet, air: AirSheet, vapour: VapourSheet, amounts: AmountsSheet, days: DaysSheet, card: CardSheet,
};

/** The scheme: coats in order, their mix and air, vapour, amounts, days, and one sheet for the wall. */
export function SchemeStage({ close }: { readonly close: () => void }): JSX.Element {
  useEffect(followScheme, []);
  const { tab } = state.scheme.value;
  return <OverStage name="scheme" title="Scheme" close={close} problem={schemeStage.problem} words={TAB_WORDS} tabs={SCHEME_TABS} shown={tab} show={(next) => lookAtScheme({ tab: next })} sheets={SHEETS} />;
}
