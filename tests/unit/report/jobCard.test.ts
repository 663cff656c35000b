import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../sim/job/demo.ts';
import type { Job, StepSpec } from '../../../sim/job/schema.ts';
import { cardDayLines } from '../../../sim/report/cardDayLines.ts';
import { handBoxes } from '../../../sim/report/cardLines.ts';
import { jobCardPage } from '../../../sim/report/html/jobCardPage.ts';
import { jobCardJson } from '../../../sim/report/jobCardJson.ts';
import { dayActs, jobCardText } from '../../../sim/report/jobCardText.ts';
import { jobCardOf } from '../../../sim/run/scheme/jobCardOf.ts';
import { planScheme } from '../../../sim/run/scheme/planScheme.ts';
import { schemeAmounts } from '../../../sim/scheme/amounts.ts';

const DEMO = demoJob();
const CARD = jobCardOf(DEMO);
const ENTRIES = CARD.days.flatMap(({ entries }) => entries);
const flat = (text: string): string => text.replaceAll(/\s+/g, ' ');

function renamed(words: string): Job {
  const [scheme] = DEMO.schemes!;
  return { ...DEMO, name: words, schemes: [{ ...scheme!, steps: scheme!.steps.map((step): StepSpec => ({ ...step, name: words, note: words, source: words })) }] };
}

describe('jobCardOf', () => {
  it('has every step once, in order, each day with those that begin on it', () => {
    expect(ENTRIES.map(({ number }) => number)).toEqual(DEMO.schemes![0]!.steps.map((_, k) => k + 1));
    for (const { date, entries } of CARD.days) {
      expect(date).toMatch(/^2026-05-\d\d$/);
      for (const { start, end, waitUntil } of entries) {
        expect(end!).toBeGreaterThanOrEqual(start!);
        if (waitUntil !== null) expect(waitUntil).toBeGreaterThanOrEqual(end!);
      }
    }
    ENTRIES.forEach(({ start }, k) => { if (k > 0) expect(start!).toBeGreaterThanOrEqual(ENTRIES[k - 1]!.waitUntil ?? ENTRIES[k - 1]!.end!); });
  });

  it('pours as much as the parts add to, with what stays in pot and hose', () => {
    const third = ENTRIES.find(({ step }) => step.id === 'clear-3')!;
    const { pour, ratio } = third.mix!;
    expect(pour.finish.volume_m3 + pour.thinner.volume_m3 + pour.retarder.volume_m3).toBeCloseTo(pour.total.volume_m3, 15);
    expect(pour.thinner.volume_m3 / pour.finish.volume_m3).toBeCloseTo(ratio.thinnerPerFinish, 12);
    // What the amounts mix for the coat: 100 mL and a twentieth of what leaves the gun stay behind.
    const plan = planScheme(DEMO);
    const amount = schemeAmounts(plan, DEMO.mixes).coats.find(({ step }) => step.spec.id === 'clear-3')!;
    expect(pour.total.volume_m3).toBeCloseTo(amount.liquid.mixed_m3.value, 15);
    expect(pour.total.volume_m3).toBeCloseTo(1.05 * amount.coat.liquid_m3.value + 100e-6, 12);
  });

  it('tells cup seconds for the air at the hour: longer in the cold morning than at noon', () => {
    const by = (id: string) => ENTRIES.find(({ step }) => step.id === id)!.mix!;
    const [early, late] = ['cream-1', 'cream-2'].map(by);
    expect(early!.temperature_K).toBeLessThan(late!.temperature_K);
    expect(early!.cup.seconds!).toBeGreaterThan(late!.cup.seconds!);
  });

  it('stands without days where no start is known, and says why', () => {
    const card = jobCardOf({ ...DEMO, working: undefined, hours: undefined });
    expect(card.days).toHaveLength(1);
    expect(card.days[0]?.date).toBeNull();
    expect(card.doubts[0]).toMatch(/^No days are laid: /);
    expect(jobCardText(card, 'metric')).toContain('Without a day');
  });
});

describe('the card in words', () => {
  it('says a repeated coat once and names the step where it stands', () => {
    const day = CARD.days.find(({ entries }) => entries.filter(({ step }) => step.id.startsWith('cream')).length > 1)!;
    const lines = cardDayLines(day, 'metric');
    const second = lines.find(({ entry }) => entry.step.id === 'cream-2')!;
    const first = lines.find(({ entry }) => entry.step.id === 'cream-1')!;
    expect(second.lines[0]?.head).toBe(`As ${first.entry.number}`);
    expect(second.isPictured).toBe(false);
    expect(first.isPictured).toBe(true);
    // Together they say all that the coat alone would say.
    expect(second.lines.map(({ head }) => head)).toEqual(expect.arrayContaining(['Cup', 'Film', 'Wait']));
  });

  it('tells distance by the hand and speed by the metre, in both systems', () => {
    const text = flat(jobCardText(CARD, 'metric'));
    expect(text).toContain('200 mm: about a spread hand');
    expect(text).toContain('0.36 m/s: a metre (3 ft 3 in) in 2.78 s');
    const us = flat(jobCardText(CARD, 'us'));
    expect(us).toContain('7.87 in: about a spread hand');
    expect(us).not.toMatch(/\d (?:µm|mL)\b/);
  });

  it('gives each act its cautions, and release on the last page only', () => {
    const acts = CARD.days.map((day, i) => dayActs(day, i === CARD.days.length - 1));
    expect(acts.slice(0, -1).every((each) => !each.includes('release'))).toBe(true);
    expect(acts.at(-1)).toContain('release');
    CARD.days.forEach(({ entries }, i) => {
      expect(acts[i]?.includes('sand')).toBe(entries.some(({ step }) => step.kind === 'sand'));
      expect(acts[i]?.includes('spray')).toBe(entries.some(({ step }) => step.kind === 'spray'));
    });
  });

  it('never calls anything safe, legal or airworthy but to say that it does not', () => {
    const text = flat(jobCardText(CARD, 'metric')).replace('it never calls a room safe, a booth legal or a repair airworthy', '');
    expect(text).not.toMatch(/\bsafe|\blegal|airworth/i);
  });

  it('leaves boxes for what the record needs of a sprayed coat', () => {
    expect(handBoxes(ENTRIES.find(({ step }) => step.kind === 'spray')!.step, 'metric')).toEqual(expect.arrayContaining(['Batch', 'Cup, s', 'RH, %', 'Wet comb, between', 'By']));
  });
});

describe('jobCardPage', () => {
  it('is one file without script or anything from elsewhere', () => {
    const page = jobCardPage(CARD, 'metric');
    expect(page).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)|src=|@import|url\((?!#)/);
    expect(page.match(/<section class="day">/g)).toHaveLength(CARD.days.length);
  });

  it('escapes all that was typed', () => {
    const page = jobCardPage(jobCardOf(renamed('<img src=x onerror=alert(1)> & "')), 'metric');
    expect(page).not.toContain('<img');
    expect(page).toContain('&lt;img src=x onerror=alert(1)&gt; &amp; &quot;');
  });
});

describe('jobCardJson', () => {
  it('keeps times as local texts and numbers with their unit', () => {
    const json = jobCardJson(CARD) as { days: { date: string; steps: Record<string, unknown>[] }[] };
    const third = json.days.flatMap(({ steps }) => steps).find(({ id }) => id === 'clear-3')!;
    expect(third['start']).toMatch(/^2026-05-\d\dT\d\d:\d\d$/);
    expect(third['gun']).toMatchObject({ distance_mm: 200, speed_m_s: 0.36, overlap_percent: 50, cross: true });
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
  });
});
