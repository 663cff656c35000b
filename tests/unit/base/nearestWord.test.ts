import { describe, expect, it } from 'vitest';
import { nearestWord } from '../../../sim/base/nearestWord.ts';

const KEYS = ['width_mm', 'depth_mm', 'atDistance_mm', 'profile'];

describe('nearestWord', () => {
  it.each([
    ['width_in', 'width_mm'],
    ['Width_mm', 'width_mm'],
    ['widht_mm', 'width_mm'],
    ['profil', 'profile'],
    ['colour', null],
    ['', null],
    ['x'.repeat(1e6), null],
  ])('%s', (word, near) => {
    expect(nearestWord(word, KEYS)).toBe(near);
  });
});
