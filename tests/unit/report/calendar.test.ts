import ICAL from 'ical.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { localTimeOf } from '../../../sim/base/localTime.ts';
import { daysCalendar } from '../../../sim/report/daysCalendar.ts';
import { dayTotals, type DayPlan } from '../../../sim/scheme/dayPlan.ts';
import { dayChain } from '../../../sim/scheme/dayTask.ts';
import { layTimeline } from '../../../sim/scheme/timeline.ts';
import { MONDAY_8, plainSetting, plannedOf, type ShortStep } from '../../helpers/daySchemes.ts';

const STAMP = '2026-05-01T07:30:00Z';

function planOf(steps: readonly ShortStep[], id = 'rudder'): DayPlan {
  const setting = plainSetting();
  const base = layTimeline([dayChain(plannedOf(id, steps, ['left-side']))], setting);
  return { working: setting.working, base, timeline: base, late: new Map(), shifts: [], findings: [], air: 'typed', temperature_K: () => 294.3, factorAt: () => 1, hours: [[]], totals: dayTotals(base) };
}

function eventsOf(text: string): ICAL.Event[] {
  return new ICAL.Component(ICAL.parse(text) as never).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));
}

const STEPS: ShortStep[] = [
  { id: 'one', name: 'First, clear; "brushed" \\ across', work_min: 45, wait_h: 1.5 },
  { id: 'two', name: 'Éclair ✈ 塗装 '.repeat(10), work_min: 60, wait_h: 20 },
];

describe('daysCalendar', () => {
  it('is read back by a parser of general purpose: times, names, waits, reminders', async () => {
    const text = await daysCalendar(planOf(STEPS), { jobName: 'Rudder; first, build', stamp: STAMP });
    const events = eventsOf(text);
    expect(events.map(({ startDate, endDate }) => `${startDate.toString()} ${endDate.toString()}`)).toEqual([
      '2026-05-04T08:00:00 2026-05-04T08:45:00', '2026-05-04T08:45:00 2026-05-04T10:15:00',
      '2026-05-04T10:15:00 2026-05-04T11:15:00', '2026-05-04T11:15:00 2026-05-05T07:15:00',
    ]);
    expect(events.map(({ summary }) => summary)).toEqual([STEPS[0]!.name, `Wait after ${STEPS[0]!.name}`, STEPS[1]!.name, `Wait after ${STEPS[1]!.name}`]);
    expect(events.map(({ component }) => component.getFirstPropertyValue('transp'))).toEqual([null, 'TRANSPARENT', null, 'TRANSPARENT']);
    for (const { component, startDate } of events) {
      // The wall clock of the shop: no zone, no Z.
      expect(startDate.zone.tzid).toBe('floating');
      expect(component.getFirstSubcomponent('valarm')!.getFirstPropertyValue('trigger')!.toString()).toMatch(/^-PT(30|15)M$/);
      expect(component.getFirstPropertyValue('dtstamp')!.toString()).toBe(STAMP);
    }
  });

  it('keeps its ids while names and times change, and no two are alike', async () => {
    const first = eventsOf(await daysCalendar(planOf(STEPS), { jobName: 'Job', stamp: STAMP }));
    const renamed = STEPS.map((step) => ({ ...step, name: 'Another', work_min: 90 }));
    const second = eventsOf(await daysCalendar(planOf(renamed), { jobName: 'Job', stamp: '2027-01-01T00:00:00Z' }));
    expect(second.map(({ uid }) => uid)).toEqual(first.map(({ uid }) => uid));
    expect(new Set(first.map(({ uid }) => uid)).size).toBe(4);
    expect(first[0]!.uid).toBe('Job.rudder.one.step@crosscoat');
  });

  it('is cut into lines of at most 75 octets, each ended by CR LF, and is the same made twice', async () => {
    const make = () => daysCalendar(planOf(STEPS), { jobName: 'Ü'.repeat(200), stamp: STAMP });
    const text = await make();
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    const lines = text.split('\r\n');
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(lines.join('').includes('\n')).toBe(false);
    expect(await make()).toBe(text);
  });

  it('holds any name: what no calendar can hold becomes a space, the rest comes back as it was', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', minLength: 1, maxLength: 200 }), fc.string({ unit: 'binary', maxLength: 80 }), async (name, jobName) => {
        const text = await daysCalendar(planOf([{ id: name.slice(0, 60), name, work_min: 10, wait_h: 1 }]), { jobName, stamp: STAMP });
        const [step, wait] = eventsOf(text);
        const kept = name.replaceAll(/\r\n?/g, '\n').replaceAll(/[\u0000-\u0008\u000b-\u001f\u007f]/g, ' ');
        expect(step!.summary).toBe(kept);
        expect(wait!.summary).toBe(`Wait after ${kept}`);
        expect(step!.startDate.toString()).toBe(`${localTimeOf(MONDAY_8)}:00`);
      }),
      { numRuns: 50 },
    );
  });
});
