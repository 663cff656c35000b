import { describe, expect, it } from 'vitest';
import { eventOf, gamepad, HandRig } from './handRig.ts';

const spraying = { buttons: 1, clientX: 200, clientY: 300 };

function sprayingRig(): HandRig {
  const rig = new HandRig();
  rig.pointer('pointerdown', 1000, spraying);
  return rig;
}

describe('a gun that stands', () => {
  it('is written down in every frame of a stop of 0.7 s, so that the stop is no slide', () => {
    const rig = sprayingRig();
    expect(rig.run(1016, 1704, 16)).toBe(44);
    rig.pointer('pointermove', 1704, { ...spraying, clientX: 210 });
    const stop = rig.rows.slice(0, -1);
    expect(stop.every((row) => row.x_m === stop[0]!.x_m && row.trigger === 1)).toBe(true);
    expect(stop.at(-1)!.t_s).toBe(0.696);
    expect(rig.last.t_s).toBe(0.704);
  });

  it('stands until 8 ms ago, so that a move that a frame overtook keeps its own time', () => {
    const rig = sprayingRig();
    rig.run(1016, 1032, 16);
    rig.pointer('pointermove', 1027, { ...spraying, clientX: 203 });
    expect(rig.rows.map((row) => row.t_s)).toEqual([0, 0.008, 0.024, 0.027]);
  });

  it.each([17, 33, 50])('is not written down as standing between the moves of a device that sends one every %i ms', (gap_ms) => {
    const rig = sprayingRig();
    const moves = 60;
    for (let i = 1; i <= moves; i++) {
      rig.run(1000 + (i - 1) * gap_ms + 8, 1000 + i * gap_ms - 1, 8);
      rig.pointer('pointermove', 1000 + i * gap_ms, { ...spraying, clientX: 200 + 4 * i });
    }
    // The first few moves show how slow the device is; from then on each row is a move.
    const late = rig.rows.filter((row) => row.t_s > (moves * gap_ms) / 3000);
    const steps = late.slice(1).map((row, i) => row.x_m - late[i]!.x_m);
    expect(steps.every((step_m) => step_m > 0)).toBe(true);
    expect(late.length).toBeGreaterThan(35);
    // A stop is still seen, a little later.
    const before = rig.rows.length;
    rig.run(1000 + moves * gap_ms + 16, 1000 + moves * gap_ms + 704, 16);
    expect(rig.rows.length - before).toBeGreaterThan(7);
  });

  it('has no rows before it was first put somewhere', () => {
    const rig = new HandRig();
    rig.hand.setPad(1);
    expect(rig.run(0, 200)).toBe(0);
    expect(rig.hand.pose).toBeNull();
    rig.pointer('pointermove', 210);
    expect(rig.hand.pose).toMatchObject({ t_s: 0, trigger: 1 });
  });
});

describe('the trigger closes at once and the gun stays', () => {
  const endings: Readonly<Record<string, (rig: HandRig) => void>> = {
    'when the window loses the focus': (rig) => rig.window.dispatchEvent(eventOf('blur', 1012)),
    'when the page goes': (rig) => rig.window.dispatchEvent(eventOf('pagehide', 1012)),
    'when the tab is hidden': (rig) => {
      rig.document.visibilityState = 'hidden';
      rig.document.dispatchEvent(eventOf('visibilitychange', 1012));
    },
    'when the pointer is cancelled': (rig) => rig.pointer('pointercancel', 1012, { clientX: 0, clientY: 0 }),
    'when the capture is lost in mid-pull': (rig) => rig.pointer('lostpointercapture', 1012, { clientX: 0, clientY: 0 }),
    'when it is told to': (rig) => {
      rig.now_ms = 1012;
      rig.hand.closeTrigger();
    },
    'when the hand stops': (rig) => {
      rig.now_ms = 1012;
      rig.hand.stop();
    },
  };
  for (const [name, end] of Object.entries(endings)) {
    it(name, () => {
      const rig = sprayingRig();
      end(rig);
      expect(rig.rows).toHaveLength(2);
      expect(rig.last).toEqual({ ...rig.rows[0], t_s: 0.012, trigger: 0 });
      // The button is still down: nothing opens until it was let go.
      rig.pointer('pointermove', 1016, { ...spraying, clientX: 220 });
      expect(rig.last.trigger).toBe(0);
    });
  }

  it('and opens again with the next pull', () => {
    const rig = sprayingRig();
    rig.window.dispatchEvent(eventOf('blur', 1012));
    rig.pointer('pointerup', 1020, { ...spraying, buttons: 0 });
    rig.pointer('pointerdown', 1030, spraying);
    expect(rig.triggers).toEqual([1, 0, 0, 1]);
  });

  it('of keys, pad and gamepad too', () => {
    const rig = new HandRig();
    rig.key('keydown', ' ', 0);
    rig.hand.setPad(1);
    rig.pad = gamepad([0, 0, 0, 0], { 7: 1 });
    rig.run(4, 4);
    rig.window.dispatchEvent(eventOf('blur', 8));
    rig.key('keydown', ' ', 10, { repeat: true });
    rig.now_ms = 12;
    rig.hand.setPad(0.9);
    rig.run(40, 100);
    expect(rig.last.trigger).toBe(0);
    rig.pad = gamepad([0, 0, 0, 0]);
    rig.run(104, 104);
    rig.pad = gamepad([0, 0, 0, 0], { 7: 1 });
    rig.run(108, 108);
    expect(rig.last.trigger).toBe(1);
  });

  it('when a hovering pen goes out of reach while keys spray', () => {
    const rig = new HandRig();
    rig.pointer('pointermove', 0, { pointerType: 'pen', clientX: 300, clientY: 300 });
    rig.key('keydown', ' ', 5);
    rig.pointer('pointerleave', 9, { pointerType: 'pen', clientX: 900, clientY: 300 });
    expect(rig.triggers).toEqual([0, 1, 0]);
    expect(rig.last.x_m).toBe(rig.rows[0]!.x_m);
  });

  it('but not at the end of a capture after a release: keys spray on', () => {
    const rig = sprayingRig();
    rig.pointer('pointerup', 1010, { ...spraying, buttons: 0 });
    rig.key('keydown', ' ', 1010);
    rig.pointer('lostpointercapture', 1011, { ...spraying, buttons: 0 });
    rig.run(1040, 1040);
    expect(rig.triggers).toEqual([1, 0, 1, 1]);
  });
});

describe('two pointers', () => {
  it('leave the gun with the one that pulls', () => {
    const rig = sprayingRig();
    const other = { pointerId: 9, pointerType: 'pen', buttons: 1, pressure: 1, clientX: 700, clientY: 100 };
    rig.pointer('pointermove', 1002, { ...other, buttons: 0, pressure: 0 });
    rig.pointer('pointerdown', 1003, other);
    rig.pointer('pointercancel', 1004, other);
    rig.pointer('pointerdown', 1005, { ...other, pointerId: 10, pointerType: 'touch' });
    expect(rig.rows).toHaveLength(1);
  });

  it('let a pen take the gun from a mouse that lies there, and not the other way', () => {
    const rig = new HandRig();
    rig.pointer('pointermove', 0, { clientX: 100 });
    rig.pointer('pointermove', 5, { pointerId: 9, pointerType: 'pen', clientX: 300 });
    rig.pointer('pointermove', 10, { clientX: 101 });
    rig.pointer('pointerdown', 12, { clientX: 101, buttons: 1 });
    expect(rig.rows.map((row) => Math.round(row.x_m * 1000))).toEqual([100, 300]);
    rig.pointer('pointerleave', 15, { pointerId: 9, pointerType: 'pen' });
    rig.pointer('pointermove', 20, { clientX: 102, buttons: 1 });
    expect(rig.rows).toHaveLength(2); // pressed before it had the gun
    rig.pointer('pointermove', 25, { clientX: 103 });
    expect(rig.last.x_m).toBeCloseTo(0.103, 6);
  });
});

describe('time', () => {
  it('keeps late samples, and those of a clock set back, just after the last', () => {
    const rig = sprayingRig();
    for (const time_ms of [1010, 1004, 1012, -600, -590]) rig.pointer('pointermove', time_ms, spraying);
    expect(rig.rows.map((row) => row.t_s)).toEqual([0, 0.01, 0.010001, 0.012, 0.012001, 0.022001]);
  });

  it('closes the trigger at the last known time when the machine slept, seen by a frame', () => {
    const rig = sprayingRig();
    rig.run(1020, 1100, 20);
    const before = rig.rows.length;
    expect(rig.run(9000, 9000)).toBe(2);
    expect(rig.rows.slice(before).map((row) => [row.t_s, row.trigger])).toEqual([[0.092001, 0], [8, 0]]);
    expect(rig.rows[before]!.x_m).toBe(rig.rows[0]!.x_m);
  });

  it('closes it too when a sample tells of the sleep, and goes on as the sample says', () => {
    const rig = sprayingRig();
    rig.pointer('pointermove', 9000, { ...spraying, clientX: 500 });
    expect(rig.rows.map((row) => [row.t_s, Math.round(row.x_m * 1000), row.trigger])).toEqual([[0, 200, 1], [0.000001, 200, 0], [8, 500, 1]]);
  });

  it('moves nothing by a key that was held through the sleep', () => {
    const rig = new HandRig();
    rig.key('keydown', 'ArrowUp', 0);
    rig.key('keydown', ' ', 0);
    rig.run(16, 160);
    const { y_m } = rig.last;
    rig.run(60_000, 60_400);
    expect(rig.last).toMatchObject({ y_m, trigger: 0 });
  });

  it('rises strictly through all devices at once', () => {
    const rig = sprayingRig();
    for (let i = 0; i < 300; i++) {
      const time_ms = 1000 + i * 7;
      rig.pointer('pointermove', time_ms - (i % 5) * 3, { ...spraying, clientX: 200 + i });
      if (i % 7 === 0) rig.key(i % 2 === 0 ? 'keydown' : 'keyup', 'ArrowUp', time_ms - 4);
      rig.run(time_ms, time_ms);
    }
    for (let i = 1; i < rig.rows.length; i++) {
      // 1 µs, less the rounding of two doubles of a few seconds.
      expect(rig.rows[i]!.t_s - rig.rows[i - 1]!.t_s).toBeGreaterThanOrEqual(1e-6 - 1e-15);
    }
  });
});
