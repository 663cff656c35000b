import { describe, expect, it } from 'vitest';
import { clockText, momentLine } from '../../../src/app/timeWords.ts';
import type { MomentFigures } from '../../../sim/index.ts';
import type { LifeReply } from '../../../src/worker/protocol.ts';

const life: LifeReply = { version: 1, sprayed_s: 70, watched_s: 3733, isWhole: true, touchDry_s: 790, recoat_s: 3790 };
const figures: MomentFigures = { time_s: 130, meanWet_m: 71e-6, meanDry_m: 15e-6, solidsFraction: 0.21, meanFilm_K: 285.75, leastMargin_K: 2.4, ranArea_m2: 0, longestRun_m: 0, isRunning: false };

it.each([[45.4, '45 s'], [59.6, '1 min'], [130, '2 min 10 s'], [3600, '1 h'], [3720, '1 h 2 min'], [7170, '2 h']])('a clock at %f s reads %s', (time_s, text) => {
  expect(clockText(time_s)).toBe(text);
});

describe('momentLine', () => {
  it('says film, warmth, runs and waits in one line', () => {
    expect(momentLine(130, figures, life, 'metric')).toBe(
      '2 min 10 s: 71 µm wet on average, film 12.6 °C, at its coldest 2.4 °C above the dew point, nothing has run; dry to touch in about 11 min, recoat in about 61 min',
    );
    expect(momentLine(130, figures, life, 'us')).toContain('2.8 mil wet on average, film 54.7 °F, at its coldest 4.3 °F above');
  });

  it('tells a film below the dew point, and a run that moves', () => {
    const running = { ...figures, leastMargin_K: -1.2, ranArea_m2: 12e-4, longestRun_m: 0.043, isRunning: true };
    expect(momentLine(130, running, life, 'metric')).toContain('at its coldest 1.2 °C below the dew point, runs over 12 cm², the longest 43 mm, still moving;');
  });

  it('ends with what is done, or was not seen', () => {
    expect(momentLine(4000, { ...figures, leastMargin_K: NaN }, life, 'metric')).toBe('1 h 7 min: 71 µm of film on average, film 12.6 °C, nothing has run; dry to touch, ready for another coat');
    expect(momentLine(130, figures, { ...life, recoat_s: null, watched_s: 10800 }, 'metric')).toContain('not ready for another coat everywhere within 3 h');
    expect(momentLine(3, { ...figures, meanWet_m: NaN }, life, 'metric')).toBe('3 s: no film yet');
  });
});
