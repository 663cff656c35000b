import { describe, expect, it } from 'vitest';
import { localTimeOf, minutesOf } from '../../../sim/base/localTime.ts';
import { dayFindings } from '../../../sim/scheme/dayFindings.ts';
import { allLaid, layLate, shiftsOf } from '../../../sim/scheme/lateTimeline.ts';
import { paceOf } from '../../../sim/scheme/pace.ts';
import { layTimeline, MOST_DAYS, type Timeline } from '../../../sim/scheme/timeline.ts';
import { chainsOf, MONDAY_8, plainSetting, STEADY, type ShortStep } from '../../helpers/daySchemes.ts';

/** Start and end of each task of a chain, as people read them. */
function times({ chains }: Timeline, place = 0): string[] {
  return chains[place]!.laid.map(({ start, end }) => `${localTimeOf(start).slice(8)}-${localTimeOf(end).slice(11)}`);
}

function findingsOf(chains: ReturnType<typeof chainsOf>, setting = plainSetting(), temperature_K = 294.3) {
  const { chains: laid } = layTimeline(chains, setting);
  return laid.flatMap((chain) => dayFindings(chain, { working: setting.working, rulePace: setting.rulePace, temperature_K: () => temperature_K }));
}

describe('layTimeline', () => {
  it('lays one scheme by hand: work within hours, waits day and night', () => {
    const steps: ShortStep[] = [{ work_min: 60, wait_h: 1 }, { work_min: 90, wait_h: 2 }, { work_min: 240, wait_h: 4 }, { work_min: 60, wait_h: 0 }];
    const timeline = layTimeline(chainsOf(steps), plainSetting());
    // The third is ready at 13:30 and ends at 17:30; the last waits to 21:30, and so for the morning.
    expect(times(timeline)).toEqual(['04T08:00-09:00', '04T10:00-11:30', '04T13:30-17:30', '05T08:00-09:00']);
    expect(localTimeOf(timeline.ready)).toBe('2026-05-05T09:00');
    expect(timeline.chains[0]!.laid[3]!.holds.map(({ why }) => why)).toEqual(['hours']);
  });

  it('begins nothing that does not end within the day', () => {
    const timeline = layTimeline(chainsOf([{ work_min: 500, wait_h: 0 }, { work_min: 101, wait_h: 0 }]), plainSetting());
    expect(times(timeline)).toEqual(['04T08:00-16:20', '05T08:00-09:41']);
  });

  it('fills the waits of one scheme with the steps of another', () => {
    const steps: ShortStep[] = [{ work_min: 60, wait_h: 2 }, { work_min: 60, wait_h: 2 }, { work_min: 60, wait_h: 0 }];
    const both = layTimeline(chainsOf(steps, steps), plainSetting());
    const crew = both.chains.flatMap(({ laid }) => laid).map(({ start, end }) => [start, end] as const).sort(([a], [b]) => a - b);
    for (let i = 1; i < crew.length; i++) expect(crew[i]![0]).toBeGreaterThanOrEqual(crew[i - 1]![1]);
    // Alone it takes 7 h; both together 8 h, not 14.
    expect(both.ready - MONDAY_8).toBe(8 * 60);
  });

  it('takes the later of the stated wait and of the model’s, each at its own pace, and says which', () => {
    const steps: ShortStep[] = [{ work_min: 60, wait_h: 1, recoat_min: 45 }, { work_min: 60, wait_h: 0 }];
    const [warm] = layTimeline(chainsOf(steps), plainSetting()).chains;
    expect(warm!.laid[0]!.wait).toMatchObject({ rule: 'stated', until: MONDAY_8 + 120 });
    const [slow] = layTimeline(chainsOf(steps), plainSetting({ modelPace: () => (paceOf([0], [0.5])) })).chains;
    expect(slow!.laid[0]!.wait).toMatchObject({ rule: 'model', until: MONDAY_8 + 150, statedUntil: MONDAY_8 + 120 });
  });

  it('takes masks off when the film is dry to touch, not when it can be coated again', () => {
    const [chain] = layTimeline(chainsOf([{ work_min: 60, wait_h: 0, touch_min: 10, recoat_min: 90 }, { kind: 'unmask', work_min: 15, wait_h: 0 }]), plainSetting()).chains;
    expect(chain!.laid[1]!.start).toBe(MONDAY_8 + 70);
  });

  it('waits for the air with coats only, and says what held them', () => {
    const noon = minutesOf('2026-05-04T12:00');
    const mayBegin = (_: unknown, minute: number) => (minute >= noon ? true as const : 'the air is too cold');
    const timeline = layTimeline(chainsOf([{ kind: 'mask', work_min: 30, wait_h: 0 }, { work_min: 30, wait_h: 0 }]), plainSetting({ mayBegin }));
    expect(times(timeline)).toEqual(['04T08:00-08:30', '04T12:00-12:30']);
    expect(timeline.chains[0]!.laid[1]!.holds).toEqual([{ why: 'air', from: MONDAY_8 + 30, words: 'the air is too cold' }]);
  });

  it('leaves weekends out where asked', () => {
    const friday = minutesOf('2026-05-08T17:00');
    const timeline = layTimeline(chainsOf([{ work_min: 60, wait_h: 1 }, { work_min: 60, wait_h: 0 }]), plainSetting({ start: friday, working: { from_min: 480, to_min: 1080, weekends: false } }));
    expect(times(timeline)).toEqual(['08T17:00-18:00', '11T08:00-09:00']);
  });

  it('keeps what no hour fits, with the reason, and ends its search', () => {
    const timeline = layTimeline(chainsOf([{ work_min: 30, wait_h: 0, kind: 'mask' }, { work_min: 30, wait_h: 0 }, { work_min: 30, wait_h: 0 }]), plainSetting({ mayBegin: () => 'the air is too humid' }));
    const [chain] = timeline.chains;
    expect(chain!.laid).toHaveLength(1);
    expect(chain!.unplaced.map(({ id }) => id)).toEqual(['p0/s1', 'p0/s2']);
    expect(chain!.unplacedHolds).toContainEqual({ why: 'air', from: MONDAY_8 + 30, words: 'the air is too humid' });
    expect(timeline.ready).toBe(MONDAY_8 + 30);
    // In deep frost a wait of a day is over after months: the next step fits nowhere, nothing is lost.
    const frozen = layTimeline(chainsOf([{ work_min: 30, wait_h: 24 }, { work_min: 30, wait_h: 0 }]), plainSetting({ rulePace: paceOf([0], [2 ** -7.4]) }));
    expect(frozen.chains[0]!.unplaced).toHaveLength(1);
    expect(frozen.chains[0]!.laid[0]!.wait!.until).toBeGreaterThan(MONDAY_8 + MOST_DAYS * 1440);
  });

  it('begins what is longer than a day with the day, and lets nothing else in', () => {
    const timeline = layTimeline(chainsOf([{ work_min: 30, wait_h: 0 }, { work_min: 700, wait_h: 0 }, { work_min: 30, wait_h: 0 }]), plainSetting());
    expect(times(timeline)).toEqual(['04T08:00-08:30', '05T08:00-19:40', '06T08:00-08:30']);
  });

  it('works with hours that are off the clock’s steps', () => {
    const timeline = layTimeline(chainsOf([{ work_min: 700, wait_h: 0 }, { work_min: 20, wait_h: 0 }]), plainSetting({ start: MONDAY_8 + 3, working: { from_min: 483, to_min: 1081, weekends: true } }));
    expect(times(timeline)).toEqual(['04T08:05-19:45', '05T08:05-08:25']);
  });

  it('lays five panels step by step where that is ready sooner than panel by panel', () => {
    const steps: ShortStep[] = [{ work_min: 60, wait_h: 2 }, { work_min: 60, wait_h: 0 }];
    const many = layTimeline(chainsOf(steps, steps, steps, steps, steps), plainSetting());
    expect(many.chains.map(({ laid }) => laid.length)).toEqual([2, 2, 2, 2, 2]);
    expect(many.ready - MONDAY_8).toBe(600);
  });
});

describe('layLate', () => {
  const steps: ShortStep[] = [{ work_min: 60, wait_h: 1 }, { work_min: 60, wait_h: 0 }];

  it('shows what a late start shifts, and by how much', () => {
    const base = layTimeline(chainsOf(steps), plainSetting());
    const late = layLate(base, plainSetting(), new Map([['p0/s0', 90]]));
    expect(times(late)).toEqual(['04T09:30-10:30', '04T11:30-12:30']);
    expect(shiftsOf(base, late).map(({ id, planned, start }) => [id, start! - planned])).toEqual([['p0/s0', 90], ['p0/s1', 90]]);
    expect(late.chains[0]!.laid[0]!.holds).toEqual([{ why: 'asked', from: MONDAY_8, words: '' }]);
  });

  it('lets another panel go on meanwhile', () => {
    const base = layTimeline(chainsOf(steps, steps), plainSetting());
    const [first] = allLaid(base);
    const late = layLate(base, plainSetting(), new Map([[first!.task.id, 480]]));
    const other = base.chains.findIndex(({ chain }) => chain.schemeId !== first!.task.schemeId);
    expect(times(late, other)).toEqual(times(base, other));
  });

  it('leaves the plan as it is where nothing is late', () => {
    const base = layTimeline(chainsOf(steps, steps, steps), plainSetting());
    expect(layLate(base, plainSetting(), new Map())).toEqual(base);
  });
});

describe('dayFindings', () => {
  it('says nothing of a plain day', () => {
    expect(findingsOf(chainsOf([{ work_min: 60, wait_h: 1 }, { work_min: 60, wait_h: 0 }]))).toEqual([]);
  });

  it('says what begins after its latest start, and what can never meet it', () => {
    const past = findingsOf(chainsOf([{ work_min: 60, wait_h: 9, latest_h: 12 }, { work_min: 60, wait_h: 0 }]));
    expect(past.map(({ kind }) => kind)).toEqual(['past-latest']);
    expect(past[0]).toMatchObject({ by_min: 660 });
    const shut = findingsOf(chainsOf([{ work_min: 60, wait_h: 1, latest_h: 2, recoat_min: 180 }, { work_min: 60, wait_h: 0 }]));
    expect(shut.map(({ kind }) => kind)).toEqual(['shut-window', 'past-latest']);
  });

  it('says which wait runs through a cold night', () => {
    const chains = chainsOf([{ work_min: 60, wait_h: 12 }, { work_min: 60, wait_h: 0 }]);
    expect(findingsOf(chains, plainSetting(), 283).map(({ kind, laid }) => [kind, laid.task.id])).toEqual([['cold-night', 'p0/s0']]);
    expect(findingsOf(chains, plainSetting(), 289)).toEqual([]);
  });

  it('says what is sanded or masked too soon, and what stays masked too long', () => {
    const steps: ShortStep[] = [
      { work_min: 60, wait_h: 1 }, { kind: 'sand', work_min: 30, wait_h: 0 }, { kind: 'mask', work_min: 30, wait_h: 0 }, { work_min: 60, wait_h: 30 }, { kind: 'unmask', work_min: 15, wait_h: 0 },
    ];
    expect(findingsOf(chainsOf(steps)).map(({ kind }) => kind)).toEqual(['early-sanding', 'early-mask', 'long-mask']);
    expect(findingsOf(chainsOf([{ work_min: 60, wait_h: 4 }, { kind: 'sand', work_min: 30, wait_h: 0 }]))).toEqual([]);
  });

  it('says what is longer than a day and whose film the model did not see dry', () => {
    const kinds = findingsOf(chainsOf([{ work_min: 700, wait_h: 1, recoat_min: null }, { work_min: 60, wait_h: 0, recoat_min: null }]), plainSetting({ rulePace: STEADY })).map(({ kind }) => kind);
    expect(kinds).toEqual(['long-work', 'no-model-time']);
  });
});
