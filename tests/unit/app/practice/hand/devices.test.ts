import { describe, expect, it } from 'vitest';
import { aimOf } from '../../../../../sim/stroke/path.ts';
import { eventOf, gamepad, HandRig } from './handRig.ts';

const DEGREE = Math.PI / 180;
const pen = (fields: Readonly<Record<string, unknown>>) => ({ pointerId: 2, pointerType: 'pen', ...fields });
const finger = (pointerId: number, buttons: number, x: number, y: number) => ({ pointerId, pointerType: 'touch', buttons, pressure: 0.5, clientX: x, clientY: y });

describe('a mouse', () => {
  it('gives every sample of 2 s at 1000 Hz as a row, in order, at its time and place', () => {
    const rig = new HandRig();
    const first_ms = 5000;
    const place = (i: number) => ({ clientX: 100 + i * 0.25, clientY: 200, buttons: 1 });
    rig.pointer('pointerdown', first_ms, place(0));
    let ticked = 0;
    for (let i = 1; i < 2000; i += 16) {
      const samples = Array.from({ length: Math.min(16, 2000 - i) }, (_, k) => ({ time_ms: first_ms + i + k, fields: place(i + k) }));
      rig.frameOf(samples);
      ticked += rig.run(samples.at(-1)!.time_ms + 0.5, samples.at(-1)!.time_ms + 0.5);
    }
    expect(ticked).toBe(0);
    expect(rig.rows).toHaveLength(2000);
    rig.rows.forEach((row, i) => {
      expect(row.t_s).toBe(i / 1000);
      expect(row.x_m).toBeCloseTo(0.1 + i * 0.00025, 6);
      expect(row).toMatchObject({ trigger: 1, pitch_rad: 0, yaw_rad: 0 });
    });
    expect(rig.last.y_m).toBeCloseTo(0.4, 6);
    expect(rig.last.z_m).toBeCloseTo(0.2, 6);
    expect(rig.last.fan_rad).toBeCloseTo(Math.PI / 2, 12);
  });

  it('takes the event itself where the browser coalesces nothing', () => {
    const rig = new HandRig();
    rig.pointer('pointermove', 10, { clientX: 1 });
    rig.pointer('pointermove', 20, { clientX: 2, getCoalescedEvents: () => [] });
    expect(rig.rows.map((row) => row.t_s)).toEqual([0, 0.01]);
  });

  it('pulls full with the main button, air with the secondary or with Shift', () => {
    const rig = new HandRig();
    const states = [[0, false, 0], [1, false, 1], [1, true, 0.5], [2, false, 0.5], [3, false, 1], [3, true, 0.5], [0, true, 0]] as const;
    states.forEach(([buttons, shiftKey], i) => rig.pointer('pointermove', i, { buttons, shiftKey }));
    expect(rig.triggers).toEqual(states.map(([, , trigger]) => trigger));
  });

  it('turns to air when Shift comes down on a standing mouse', () => {
    const rig = new HandRig();
    rig.pointer('pointerdown', 0, { buttons: 1 });
    rig.window.dispatchEvent(eventOf('keydown', 40, { key: 'Shift' }));
    rig.window.dispatchEvent(eventOf('keyup', 90, { key: 'Shift' }));
    expect(rig.rows.map((row) => [row.t_s, row.trigger])).toEqual([[0, 1], [0.04, 0.5], [0.09, 1]]);
  });

  it('changes the distance by 10 mm a notch of the wheel, from 20 mm to 1 m', () => {
    const rig = new HandRig();
    rig.pointer('pointermove', 0);
    const wheel = (deltaY: number, deltaMode = 0, more = {}) => rig.root.dispatchEvent(eventOf('wheel', 5, { deltaY, deltaX: 0, deltaMode, ctrlKey: false, ...more }));
    const after = (act: () => void): number => {
      act();
      return Math.round(rig.last.z_m * 1e6) / 1000;
    };
    expect(after(() => wheel(-100))).toBe(210);
    expect(after(() => wheel(-240))).toBe(230);
    expect(after(() => wheel(3, 1))).toBe(220);
    expect(after(() => wheel(0, 0, { deltaX: -120 }))).toBe(230);
    expect(after(() => wheel(-25))).toBe(232.5);
    expect(after(() => wheel(-100, 0, { ctrlKey: true }))).toBe(232.5);
    expect(after(() => wheel(90_000))).toBe(20);
    expect(after(() => wheel(-90_000))).toBe(1000);
  });
});

describe('a pen', () => {
  it('hovers without spray, then opens with its pressure', () => {
    const rig = new HandRig();
    rig.pointer('pointermove', 0, pen({}));
    rig.pointer('pointerdown', 5, pen({ buttons: 1, pressure: 0.1 }));
    rig.pointer('pointermove', 10, pen({ buttons: 1, pressure: 0.425 }));
    rig.pointer('pointermove', 15, pen({ buttons: 1, pressure: 0.9 }));
    rig.pointer('pointerup', 20, pen({}));
    expect(rig.triggers).toEqual([0, 0.5, 0.75, 1, 0]);
  });

  it('tilts and turns the gun, and a mouse after it holds the gun square again', () => {
    const rig = new HandRig();
    rig.pointer('pointermove', 0, pen({ clientX: 300, clientY: 300, tiltX: 20, twist: 10 }));
    expect(aimOf(rig.last).x_m).toBeCloseTo(0.3 - 0.2 * Math.tan(20 * DEGREE), 5);
    expect(rig.last.fan_rad).toBeCloseTo(80 * DEGREE, 9);
    rig.pointer('pointermove', 5, pen({ twist: 359 }));
    expect(rig.last.fan_rad).toBeCloseTo(91 * DEGREE, 9); // on from 80°, not round by a turn
    rig.pointer('pointerleave', 10, pen({}));
    rig.pointer('pointermove', 15);
    expect([rig.last.pitch_rad, rig.last.yaw_rad]).toEqual([0, 0]);
    expect(rig.last.fan_rad).toBeCloseTo(90 * DEGREE, 9);
  });

  it('is a lever for the distance while it hovers with its barrel button', () => {
    const rig = new HandRig();
    rig.pointer('pointermove', 0, pen({ clientX: 300, clientY: 300 }));
    rig.pointer('pointermove', 5, pen({ clientX: 310, clientY: 290, buttons: 2 }));
    rig.pointer('pointermove', 10, pen({ clientX: 330, clientY: 240, buttons: 2 }));
    expect([rig.last.x_m, rig.last.y_m].map((place_m) => Math.round(place_m * 1000))).toEqual([300, 300]);
    expect(rig.last.z_m).toBeCloseTo(0.25, 6);
    expect(rig.triggers).toEqual([0, 0, 0]);
    rig.pointer('pointermove', 15, pen({ clientX: 330, clientY: 240 }));
    expect(rig.last.x_m).toBeCloseTo(0.33, 6);
  });
});

describe('fingers', () => {
  it('move the gun with the first and its distance with the second, up is farther', () => {
    const rig = new HandRig();
    rig.pointer('pointerdown', 0, finger(5, 1, 200, 300));
    rig.pointer('pointerdown', 2, finger(6, 1, 600, 300));
    rig.pointer('pointermove', 4, finger(6, 1, 650, 260));
    rig.pointer('pointermove', 6, finger(5, 1, 210, 300));
    expect(rig.triggers).toEqual([1, 1]);
    expect(rig.last.x_m).toBeCloseTo(0.21, 6);
    expect(rig.last.z_m).toBeCloseTo(0.24, 6);
    rig.pointer('pointerup', 8, finger(6, 0, 650, 260));
    rig.pointer('pointermove', 9, finger(6, 1, 0, 0));
    rig.pointer('pointerup', 10, finger(5, 0, 210, 300));
    expect(rig.triggers).toEqual([1, 1, 0]);
  });

  it('leave the trigger to the pad where the pad is chosen', () => {
    const rig = new HandRig({ touchTrigger: 'pad' });
    rig.pointer('pointerdown', 0, finger(5, 1, 200, 300));
    rig.now_ms = 10;
    rig.hand.setPad(0.8);
    rig.now_ms = 30;
    rig.hand.setPad(0);
    expect(rig.rows.map((row) => [row.t_s, row.trigger])).toEqual([[0, 0], [0.01, 0.8], [0.03, 0]]);
  });
});

describe('a gamepad', () => {
  it('starts the gun in the middle and moves it by the square of the stick', () => {
    const rig = new HandRig();
    rig.pad = gamepad([0.05, 0.1, 0, 0]);
    rig.run(0, 320);
    expect(rig.hand.pose).toBeNull();
    rig.pad = gamepad([0.56, 0, 0, 0]); // half of the way from 0.12 to 1: a quarter of 1 m/s
    rig.run(336, 336 + 800);
    // From the poll before, 51 frames of 16 ms.
    expect(rig.last.x_m).toBeCloseTo(0.4 + 0.25 * 0.816, 6);
    rig.pad = gamepad([0, -1, 0, 0]);
    rig.run(1152, 1152 + 144);
    expect(rig.last.y_m).toBeCloseTo(0.3 + 0.16, 6);
  });

  it('pulls, tilts, changes the distance and turns the fan', () => {
    const rig = new HandRig();
    const pulls = [[0.05, undefined], [0.2, 0.5], [0.5, 0.5], [0.7, 0.7], [1, 1], [0, 0]] as const;
    pulls.forEach(([value, trigger], i) => {
      rig.pad = gamepad([0, 0, 0, 0], { 7: value });
      rig.run(i * 16, i * 16);
      expect(rig.rows.at(-1)?.trigger).toBe(trigger);
    });
    rig.pad = gamepad([0, 0, 1, 0], { 5: 1, 3: 1 });
    rig.run(96, 96 + 144);
    expect(rig.last.yaw_rad).toBeCloseTo(45 * DEGREE, 9);
    expect(rig.last.z_m).toBeCloseTo(0.2 + 0.1 * 0.16, 6);
    expect(rig.last.fan_rad).toBe(0);
    expect(rig.settingsSeen.map((seen) => seen.fanTurned)).toEqual([true]);
    rig.pad = gamepad([0, 0, 0, -0.56]);
    rig.run(256, 256);
    expect(rig.last.pitch_rad).toBeCloseTo(22.5 * DEGREE, 5);
    rig.pad = null;
    rig.run(272, 272);
    expect(rig.last.pitch_rad).toBe(0);
  });
});
