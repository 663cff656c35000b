import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../../sim/job/demo.ts';
import { makePanel } from '../../../../sim/panel/makePanel.ts';
import { nearestEdge } from '../../../../sim/panel/nearestEdge.ts';
import { placesCsv } from '../../../../sim/report/survey/placesCsv.ts';
import { parseSurveyReadings } from '../../../../sim/run/survey/readings/parseSurveyReadings.ts';
import { whereToRead } from '../../../../sim/run/survey/whereToRead.ts';
import { filmAt, surveyOf } from './truthJob.ts';

const job = demoJob();
const { panel } = makePanel(job.part.panels[0]!, '/part/panels/0');
const spots = surveyOf([], { rule: { kind: 'spots-areas', min_um: 8, level: 3 } });

describe('where to read', () => {
  const plan = whereToRead(job, surveyOf([]));

  it('is as many places as the rule’s table asks, numbered from the top, and four by the model', () => {
    expect(plan.asked.readings).toBe(5);
    expect(plan.places.map(({ kind }) => kind)).toEqual([...Array<string>(5).fill('spread'), 'thinnest', 'thinnest', 'heaviest', 'heaviest']);
    expect(plan.places.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
    expect(plan.places[0]!.at_m[1]).toBeGreaterThan(plan.places[4]!.at_m[1]);
  });

  it('keeps 25 mm off edges and holes, and its places well apart', () => {
    for (const { at_m } of plan.places) expect(nearestEdge(panel, at_m[0], at_m[1]).distance_m).toBeGreaterThanOrEqual(0.025);
    const spread = plan.places.filter(({ kind }) => kind === 'spread');
    for (const one of spread) for (const other of spread) if (one !== other) expect(Math.hypot(one.at_m[0] - other.at_m[0], one.at_m[1] - other.at_m[1])).toBeGreaterThan(0.2);
  });

  it('puts the heaviest above the thinnest by the model itself', () => {
    const films = (kind: string) => filmAt(job, plan.places.filter((place) => place.kind === kind).map(({ at_m }) => [at_m[0] * 1e3, at_m[1] * 1e3] as const));
    expect(Math.min(...films('heaviest'))).toBeGreaterThan(Math.max(...films('thinnest')));
  });

  it('for spots and areas is five spots of three readings an area', () => {
    const { places, asked, spotRadius_m } = whereToRead(job, spots);
    expect([asked.areas, asked.spots, asked.readings]).toEqual([1, 5, 15]);
    expect(spotRadius_m).toBe(0.02);
    expect(places.filter(({ kind }) => kind === 'spread').map(({ area, spot, readings }) => [area, spot, readings])).toEqual([1, 2, 3, 4, 5].map((k) => ['1', `1.${k}`, 3]));
    const more = whereToRead(job, spots, { areas: 3, spots: 15, readings: 45, repeats: 0, source: 'test' });
    expect(new Set(more.places.filter(({ kind }) => kind === 'spread').map(({ area }) => area)).size).toBe(3);
    expect(more.places.filter(({ kind }) => kind === 'spread')).toHaveLength(15);
  });

  it('without a coat says that the model cannot choose', () => {
    const bare = whereToRead(job, surveyOf([], { coats: [] }));
    expect(bare.places).toHaveLength(5);
    expect(bare.doubts.join()).toContain('names no coat');
  });
});

describe('the places as CSV', () => {
  it('filled in is read back as readings at these places, in either system', () => {
    for (const [system, film, um] of [['metric', '11', 11], ['us', '0.5', 12.7]] as const) {
      const lines = placesCsv(whereToRead(job, spots), system).split('\r\n');
      const filled = lines.map((line, i) => (i === 0 || line === '' ? line : line.replace(',,', `,${film},`))).join('\r\n');
      // The thinnest and heaviest places belong to no area: they are a survey of their own.
      const own = filled.split('\r\n').filter((line, i) => i === 0 || line.startsWith('1,')).join('\r\n');
      const { readings } = parseSurveyReadings(own, 'places.csv');
      expect(readings).toHaveLength(15);
      const [first] = readings;
      expect(first).toMatchObject({ kind: 'metal', area: '1', spot: '1.1' });
      expect((first as { dry_um: number }).dry_um).toBeCloseTo(um, 6);
      expect(Math.abs((first!.x_mm as number) - whereToRead(job, spots).places[0]!.at_m[0] * 1e3)).toBeLessThan(0.6);
    }
  });
});
