import { describe, expect, it } from 'vitest';
import { demoJob } from '../../../../sim/job/demo.ts';
import type { Job, PanelSpec } from '../../../../sim/job/schema.ts';
import { amountsCsv } from '../../../../sim/report/amountsCsv.ts';
import { amountsJson } from '../../../../sim/report/amountsJson.ts';
import { amountsText } from '../../../../sim/report/amountsText.ts';
import { amountsOf } from '../../../../sim/run/scheme/amountsOf.ts';
import { hingeBalances } from '../../../../sim/run/scheme/hingeBalances.ts';
import { planScheme } from '../../../../sim/run/scheme/planScheme.ts';

const DEMO = demoJob();
const PLAN = planScheme(DEMO);
const ANSWER = amountsOf(DEMO, PLAN, hingeBalances(DEMO, PLAN));

function withPanel(change: (panel: PanelSpec) => PanelSpec): Job {
  return { ...DEMO, part: { ...DEMO.part, panels: DEMO.part.panels.map(change) } };
}

describe('hingeBalances', () => {
  it('weighs what the plan weighs, right of a hinge line that goes up along the left edge', () => {
    const [found] = ANSWER.balances!;
    expect(found!.balance.weight_kg.value).toBeCloseTo(ANSWER.weight.total_kg.value, 12);
    expect(found!.balance.side).toBe('right');
    expect(Math.abs(found!.balance.arm_m)).toBeGreaterThan(0.2);
    expect(found!.mappedCoats).toBe(6);
  });

  it('moves the hinge line with an outline that is not at the origin', () => {
    const shifted: Job = withPanel((panel) => ({ ...panel, outline: { points_mm: [[1000, 500], [1600, 500], [1600, 1700], [1000, 1700]] }, holes: [], hinge_mm: [[1000, 0], [1000, 900]] }));
    const [found] = hingeBalances(shifted, planScheme(shifted));
    expect(found!.hinge_m[0]).toEqual([0, -0.5]);
    // A board of 600 mm sprayed and brushed evenly: its film’s centre is about its middle.
    expect(found!.balance.arm_m).toBeCloseTo(-0.3, 2);
  });

  it('says nothing of panels without a hinge line', () => {
    const plain = withPanel(({ id, name, outline, holes, attitude, backing }) => ({ id, name, outline, holes, attitude, backing }));
    expect(hingeBalances(plain, PLAN)).toEqual([]);
  });
});

describe('reports of the amounts', () => {
  it('say wet or dry and per coat or in all beside the numbers, what is missing, and the reminder', () => {
    const text = amountsText(ANSWER, 'metric').replaceAll(/\s+/g, ' ');
    for (const part of ['to buy for all coats', 'mixed liquid, wet', 'dry weight by step', 'Cost: not known', 'price of general thinner', 'published weights', 'Check the balance', 'no time at work', 'A teaching and planning estimate']) expect(text).toContain(part);
    expect(amountsText(ANSWER, 'us')).toMatch(/fl oz US/);
    expect(amountsText(ANSWER, 'us')).toMatch(/oz\/yd²/);
    // A tin keeps the label it is sold by, with the reader's unit behind it.
    const us = amountsText(ANSWER, 'us').replaceAll(/\s+/g, ' ').replaceAll(/\b[\d.]+ L \([\d.]+ US (?:qt|gal)\)/g, 'tin');
    expect(us).not.toMatch(/\d (?:mL|L|g\/m²|mm|kg)(?![\w/])/);
    expect(Math.max(...amountsText(ANSWER, 'metric').split('\n').filter((line) => !line.includes('  ')).map((line) => line.length))).toBeLessThanOrEqual(96);
  });

  it('hold every figure in both unit systems', () => {
    const json = JSON.parse(JSON.stringify(amountsJson(ANSWER))) as { liquidWet: { mixed_L: { value: number }; mixed_USgal: { value: number } }; weightDry: { mean_g_m2: { value: number }; mean_oz_yd2: { value: number } }; cost: null; costMissing: string[] };
    expect(json.liquidWet.mixed_L.value / json.liquidWet.mixed_USgal.value).toBeCloseTo(3.785412, 5);
    expect(json.weightDry.mean_g_m2.value / json.weightDry.mean_oz_yd2.value).toBeCloseTo(33.9057, 3);
    expect(json.cost).toBeNull();
    expect(json.costMissing).toEqual(['the price of general thinner, 1 L and 5 L']);
  });

  it('are a table that no spreadsheet takes for formulas', () => {
    const named: Job = { ...DEMO, schemes: [{ ...DEMO.schemes![0]!, steps: DEMO.schemes![0]!.steps.map((step) => ({ ...step, name: '=HYPERLINK("x","y")' })) }] };
    const plan = planScheme(named);
    const lines = amountsCsv(amountsOf(named, plan, null), 'metric').split('\r\n');
    expect(lines.some((line) => line.includes(`"'=HYPERLINK(""x"",""y"")"`))).toBe(true);
    expect(lines.some((line) => /(^|,)"?=/.test(line))).toBe(false);
    const cells = (line: string): number => line.replaceAll(/"[^"]*(?:""[^"]*)*"/g, 'x').split(',').length;
    expect(new Set(lines.filter((line) => line !== '').map(cells)).size).toBe(1);
  });
});
