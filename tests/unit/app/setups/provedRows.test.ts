import { expect, it } from 'vitest';
import { provedRows } from '../../../../src/app/setups/provedRows.ts';
import { FAMILY_WORDS } from '../../../../src/views/gun/familyWords.ts';

it('says old and new in the reader\'s units', () => {
  const changed = [
    { key: 'width_mm', from: 254, to: 241.3, within: 5.08 },
    { key: 'profile', from: 'double-beta', to: 'table', within: null },
    { key: 'beta1', from: null, to: 2.9, within: 0.21 },
    { key: 'fluidRate_mL_min', from: 150, to: 180, within: 6 },
    { key: 'efficiency_percent', from: 65, to: 58, within: 7 },
  ] as const;
  expect(provedRows(changed, FAMILY_WORDS, 'metric')).toEqual([
    { name: 'Fan width', from: '254 mm', to: '241 mm', within: '± 5.08 mm' },
    { name: 'Film across the fan', from: FAMILY_WORDS['double-beta'], to: FAMILY_WORDS.table, within: '' },
    { name: 'Exponent across', from: 'none', to: '2.9', within: '± 0.21' },
    { name: 'Fluid rate', from: '150 mL/min', to: '180 mL/min', within: '± 6 mL/min' },
    { name: 'Solids that land', from: '65 %', to: '58 %', within: '± 7 %' },
  ]);
  // An inch is 25.4 mm by definition.
  expect(provedRows(changed, FAMILY_WORDS, 'us')[0]).toEqual({ name: 'Fan width', from: '10 in', to: '9.5 in', within: '± 0.2 in' });
});
