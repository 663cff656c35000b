import { describe, expect, it } from 'vitest';
import { handFigures } from '../../../../src/views/practice/progress/handFigures.ts';
import { drillsOf, personalHand, resultWords, traineesOf, trendsOf } from '../../../../src/views/practice/progress/progressData.ts';
import { hand, listedSession, score, session } from './samples.ts';

describe('progress', () => {
  it('finds each trainee once', () => {
    const sessions = ['B', 'A', 'B', ''].map((trainee) => listedSession({ trainee }));
    expect(traineesOf(sessions)).toEqual(['', 'A', 'B']);
  });

  it('parts the drills, and those made from jobs by their title', () => {
    const { task } = session();
    const own = (title: string): ReturnType<typeof listedSession> => listedSession({ task: { ...task, id: 'own', title } });
    const drills = drillsOf([listedSession(), own('Rudder'), own('Flap'), listedSession(), own('Rudder')]);
    expect(drills.map(({ title, sessions }) => [title, sessions.length])).toEqual([['Flat panel', 2], ['Rudder', 2], ['Flap', 1]]);
  });

  it('follows each counted measure from the oldest session on, with the newest limit as its band', () => {
    const newest = listedSession({}, score({ distance: 0.01, coverage: 0.99 }));
    const oldest = listedSession({}, score({ distance: 0.03 }));
    const [distance, coverage] = trendsOf([newest, oldest], 'metric');
    expect(distance).toMatchObject({ measure: 'distance', band: { from: -Infinity, to: 0.0125 }, limit: 'limit 12.5 mm' });
    expect(distance!.points.map(({ value }) => value)).toEqual([0.03, 0.01]);
    expect(coverage).toMatchObject({ measure: 'coverage', band: { from: 0.98, to: Infinity }, limit: 'at least 98 %' });
    expect(coverage!.points.map(({ value }) => value)).toEqual([null, 0.99]);
  });

  it('says the total and the first criterion missed', () => {
    expect(resultWords(listedSession(), 'metric')).toBe('100 of 100, passed');
    expect(resultWords(listedSession({}, score({ distance: 0.03, coverage: 0.99 })), 'metric')).toBe('79 of 100, missed: Gun distance 30 mm');
    expect(resultWords(listedSession({}, score({ coverage: 0.5 })), 'metric')).toBe('0 of 100, missed: Gun distance not shown, and 1 more');
  });
});

describe('personalHand', () => {
  it('is unknown without sessions', () => {
    expect(personalHand([])).toBeNull();
  });

  it('turns the time of an error into travel by the mean speed of the sessions that know theirs', () => {
    const known = { ...listedSession(), plannedSpeed_m_s: 0.3, hand: hand({ speed: { mean: 0.1, deviation: 0, correlation_s: NaN, count: 100 } }) };
    const twice = { ...known, plannedSpeed_m_s: 0.5, hand: hand({ speed: { mean: 0, deviation: 0, correlation_s: NaN, count: 300 } }) };
    const personal = personalHand([known, twice, { ...known, plannedSpeed_m_s: NaN }])!;
    // (0.3 × 1.1 × 100 + 0.5 × 300) / 400
    expect(personal.speed_m_s).toBeCloseTo(0.4575, 12);
    const [distance, , overlap] = handFigures(personal, 'metric');
    // An error of 0.5 s at 0.4575 m/s lasts 229 mm.
    expect(distance).toEqual({ title: 'Gun distance', mean: '10 mm too far', spread: '20 mm', lasts_s: '0.5 s', lasts_m: '229 mm' });
    expect([overlap!.lasts_s, overlap!.lasts_m]).toEqual(['not shown', 'not shown']);
  });

  it('says on which side a hand lies', () => {
    const near = hand({ distance_m: { mean: -0.008, deviation: 0.01, correlation_s: 1, count: 5 } });
    expect(handFigures({ sample: near, sessions: 1, speed_m_s: NaN }, 'metric')[0]).toMatchObject({ mean: '8 mm too near', lasts_m: 'not shown' });
  });
});
