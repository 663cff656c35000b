import { expect, it } from 'vitest';
import { unsaidPlace } from '../../../src/app/problem.ts';

it('leaves out of the place what title and text have said', () => {
  const place = { file: 'a.csv', row: 3, column: 't_s' };
  expect(unsaidPlace({ title: 'a.csv was not opened', text: 'row 3, t_s: 1 comes after 2', place })).toBe('');
  expect(unsaidPlace({ title: '', text: 'time runs back', place })).toBe('file a.csv, row 3, column t_s');
  expect(unsaidPlace({ title: '', text: '', place: { pointer: '', stroke: 0 } })).toBe('stroke 1');
});
